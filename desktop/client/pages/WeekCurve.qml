// Planned, earned, spent: the curve, or the table behind it.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

ColumnLayout {
    id: part

    required property WeekView week
    property bool asTable: false

    signal shown(Item item)

    function turn(toTable: bool) {
        part.asTable = toTable;
        (toTable ? table : picture).forceActiveFocus();
    }

    spacing: Theme.gap(2)

    RowLayout {
        Layout.fillWidth: true

        Heading {
            text: qsTr("Planned, earned, spent")
            font.pixelSize: Theme.bodySize
            Layout.fillWidth: true
        }

        QuietLink {
            objectName: "curveTurn"
            visible: !part.week.plot.isEmpty
            text: part.asTable ? qsTr("Curve") : qsTr("Table")
            hint: "T"
            onClicked: part.turn(!part.asTable)
        }
    }

    PlotPicture {
        id: picture
        objectName: "curve"
        visible: !part.asTable && !part.week.plot.isEmpty
        plot: part.week.plot
        onTableAsked: part.turn(true)
        onActiveFocusChanged: if (activeFocus) part.shown(this)
        Layout.fillWidth: true
        Layout.preferredHeight: implicitHeight
    }

    PlotTable {
        id: table
        objectName: "curveTable"
        visible: part.asTable && !part.week.plot.isEmpty
        plot: part.week.plot
        onPictureAsked: part.turn(false)
        onActiveFocusChanged: if (activeFocus) part.shown(this)
        Layout.fillWidth: true
        Layout.preferredHeight: implicitHeight
    }

    Words {
        visible: part.week.plot.isEmpty
        text: qsTr("Nothing to draw yet: no item has planned dates, and nothing was marked or billed.")
        color: Theme.pencil
        Layout.fillWidth: true
    }

    Words {
        objectName: "progressText"
        text: part.week.progressText
        Layout.fillWidth: true
    }

    Words {
        text: part.week.methodsText
        visible: text !== ""
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
        Layout.fillWidth: true
    }
}
