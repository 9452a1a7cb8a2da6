// The figures behind a chart: a row for each week, a column for each of its lines.
import QtQuick
import Ledgerboard.Look

FocusScope {
    id: table

    required property Plot plot

    signal pictureAsked()

    implicitHeight: Theme.gap(75)
    activeFocusOnTab: true
    Keys.onPressed: event => {
        if (event.key === Qt.Key_T && event.modifiers === Qt.NoModifier)
            table.pictureAsked();
        else if (event.key === Qt.Key_Down)
            list.flick(0, -600);
        else if (event.key === Qt.Key_Up)
            list.flick(0, 600);
        else
            return;
        event.accepted = true;
    }

    component Cells: Row {
        id: cells

        property string when
        property var figures
        property bool bold: false

        spacing: Theme.gap(4)

        Words {
            text: cells.when
            font.pixelSize: Theme.smallSize
            font.bold: cells.bold
            width: Theme.gap(30)
        }

        Repeater {
            model: cells.figures

            Words {
                required property string modelData

                objectName: "plotCell"
                text: modelData
                horizontalAlignment: Text.AlignRight
                font.pixelSize: Theme.smallSize
                font.bold: cells.bold
                width: Theme.gap(24)
            }
        }
    }

    Cells {
        id: head
        when: qsTr("Week to")
        figures: table.plot.lines.map(line => line.name)
        bold: true
    }

    ListView {
        id: list
        anchors.fill: parent
        anchors.topMargin: head.height + Theme.gap(1)
        clip: true
        model: table.plot.rows
        boundsBehavior: Flickable.StopAtBounds

        delegate: Item {
            required property var modelData

            width: list.width
            height: cells.implicitHeight + Theme.gap(1)

            Hairline { width: parent.width }

            Cells {
                id: cells
                y: Theme.gap(1)
                when: parent.modelData.when
                figures: parent.modelData.figures
            }
        }
    }

    Rectangle {
        anchors.fill: parent
        anchors.margins: -Theme.gap(1)
        color: "transparent"
        visible: table.activeFocus
        border.width: Theme.stroke
        border.color: Theme.slate
    }
}
