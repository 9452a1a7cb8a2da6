// A line to type in, under words that say what.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

Column {
    id: entry

    property string label: ""
    property string areaName: ""
    property alias area: area
    property alias text: area.text

    Words {
        width: parent.width
        text: entry.label
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
        wrapMode: Text.NoWrap
        elide: Text.ElideRight
    }

    TextInput {
        id: area
        objectName: entry.areaName
        width: parent.width
        height: Theme.gap(8)
        color: Theme.ink
        selectionColor: Theme.slate
        selectedTextColor: Theme.paper
        selectByMouse: true
        activeFocusOnTab: true
        clip: true
        verticalAlignment: TextInput.AlignVCenter
        font.family: Theme.words
        font.pixelSize: Theme.bodySize
        Accessible.name: entry.label
        Accessible.role: Accessible.EditableText

        // Where the text has nothing to take back, the book may.
        Keys.onPressed: event => {
            if (event.matches(StandardKey.Undo) && !area.canUndo) {
                Desk.undo();
                event.accepted = true;
            } else if (event.matches(StandardKey.Redo) && !area.canRedo) {
                Desk.redo();
                event.accepted = true;
            }
        }
    }

    Rectangle {
        width: parent.width
        height: area.activeFocus ? Theme.stroke : Theme.hairline
        color: area.activeFocus ? Theme.slate : Theme.pencil
    }
}
