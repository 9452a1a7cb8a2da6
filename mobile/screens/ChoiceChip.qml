// One of a few choices beside each other: filled where it is the chosen one.
import QtQuick
import Ledgerboard.Look

PressArea {
    id: chip

    property bool isChosen: false

    Accessible.role: Accessible.RadioButton
    Accessible.checked: chip.isChosen

    background: Rectangle {
        radius: 4
        color: chip.isChosen ? Theme.ink : chip.down ? Theme.plaster : "transparent"
        border.width: chip.visualFocus ? Theme.stroke : Theme.hairline
        border.color: chip.visualFocus ? Theme.slate : Theme.pencil
    }

    contentItem: Words {
        text: chip.text
        color: chip.isChosen ? Theme.paper : Theme.ink
        leftPadding: Theme.gap(3)
        rightPadding: Theme.gap(3)
        wrapMode: Text.NoWrap
        verticalAlignment: Text.AlignVCenter
    }
}
