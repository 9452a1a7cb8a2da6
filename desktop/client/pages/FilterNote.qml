// What a sheet is filtered by, and the way back to all of its rows.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

RowLayout {
    id: note

    required property Sheet sheet

    signal cleared()

    spacing: Theme.gap(2)
    visible: sheet.filter !== ""
    // Where a page's links need the room, what was typed is cut short first.
    Layout.fillWidth: true
    Layout.maximumWidth: implicitWidth

    Words {
        text: qsTr("Only with:")
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
    }

    Words {
        objectName: "filterText"
        text: note.sheet.filter
        font.bold: true
        wrapMode: Text.NoWrap
        elide: Text.ElideRight
        Layout.fillWidth: true
        Layout.minimumWidth: Math.min(implicitWidth, Theme.gap(14))
        Layout.maximumWidth: Theme.gap(60)
    }

    QuietLink {
        objectName: "clearFilter"
        text: qsTr("All rows")
        hint: "Esc"
        onClicked: {
            note.sheet.filter = "";
            note.cleared();
        }
    }
}
