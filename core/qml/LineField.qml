// A line, or a few, to be typed or dictated, under words that say what.
import QtQuick
import QtQuick.Controls.Basic
import Ledgerboard.Look

Column {
    id: field

    property string label: ""
    property bool oneLine: true
    property alias text: area.text
    property alias inputMethodHints: area.inputMethodHints
    property string areaName: ""

    signal entered()

    function take() {
        area.forceActiveFocus();
    }

    Words {
        width: parent.width
        text: field.label
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
    }

    TextArea {
        id: area
        objectName: field.areaName
        width: parent.width
        color: Theme.ink
        selectionColor: Theme.slate
        selectedTextColor: Theme.paper
        font.family: Theme.words
        font.pixelSize: Theme.bodySize
        textFormat: TextEdit.PlainText
        wrapMode: TextEdit.Wrap
        leftPadding: 0
        rightPadding: 0
        topPadding: Theme.gap(2)
        bottomPadding: Theme.gap(2)
        implicitHeight: Math.max(Theme.target, contentHeight + topPadding + bottomPadding)
        Accessible.name: field.label

        // Return ends a single line; a note goes on.
        Keys.onReturnPressed: event => {
            if (field.oneLine)
                field.entered();
            else
                event.accepted = false;
        }
        Keys.onTabPressed: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
        Keys.onBacktabPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.TabFocusReason)

        background: Item {
            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: area.activeFocus ? Theme.stroke : Theme.hairline
                color: area.activeFocus ? Theme.slate : Theme.pencil
            }
        }
    }
}
