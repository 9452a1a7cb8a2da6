// A small link with the key that does the same.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look

PressArea {
    id: link

    property string hint: ""
    // Its key at the far end of its width, as in a column of links.
    property bool spread: false

    reach: Theme.gap(7)

    background: Rectangle {
        color: link.hovered || link.down ? Theme.rule : "transparent"
        opacity: 0.6
        border.width: link.visualFocus ? Theme.stroke : 0
        border.color: Theme.slate
    }

    contentItem: RowLayout {
        Words {
            text: link.text
            color: Theme.slate
            font.pixelSize: Theme.smallSize
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
            Layout.fillWidth: link.spread
        }

        Words {
            visible: link.hint !== ""
            text: link.hint
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            rightPadding: link.spread ? Theme.gap(2) : 0
        }

        Item { visible: !link.spread; Layout.fillWidth: true }
    }
}
