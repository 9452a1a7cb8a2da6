// A step down or up.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

PressArea {
    id: step

    property string glyph: ""

    reach: Theme.gap(14)

    background: Rectangle {
        radius: 4
        color: step.down ? Theme.plaster : "transparent"
        border.width: step.visualFocus ? Theme.stroke : Theme.hairline
        border.color: step.visualFocus ? Theme.slate : Theme.pencil
    }

    contentItem: Item {
        Sign {
            anchors.centerIn: parent
            name: step.glyph
        }
    }
}
