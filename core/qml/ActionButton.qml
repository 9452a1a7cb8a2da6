// A button that does something: filled where it is the likely next step, else in outline.
import QtQuick
import Ledgerboard.Look

PressArea {
    id: button

    property bool filled: false
    property color tone: Theme.ink

    reach: Theme.gap(14)
    implicitWidth: label.implicitWidth + Theme.gap(8)
    implicitHeight: Math.max(reach, label.implicitHeight + Theme.gap(4))
    opacity: enabled ? 1 : 0.45

    background: Rectangle {
        radius: 4
        color: button.filled ? button.tone : button.down ? Theme.plaster : "transparent"
        border.width: button.visualFocus ? Theme.stroke + 1 : button.filled ? 0 : Theme.hairline
        border.color: button.visualFocus ? Theme.slate : button.tone

        Rectangle {
            anchors.fill: parent
            radius: parent.radius
            visible: button.filled && button.down
            color: Theme.ink
            opacity: 0.25
        }
    }

    contentItem: Words {
        id: label
        text: button.text
        color: button.filled ? Theme.paper : button.tone
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        leftPadding: Theme.gap(2)
        rightPadding: Theme.gap(2)
    }
}
