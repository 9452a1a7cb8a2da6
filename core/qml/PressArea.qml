// What can be pressed: a target of 48 pixels at the least, told when pressed or focused.
import QtQuick
import QtQuick.Controls.Basic
import Ledgerboard.Look

AbstractButton {
    id: area

    property int reach: Theme.target

    implicitHeight: Math.max(area.reach, contentItem ? contentItem.implicitHeight : 0)
    implicitWidth: Math.max(area.reach, contentItem ? contentItem.implicitWidth : 0)
    focusPolicy: Qt.TabFocus
    Accessible.role: Accessible.Button
    Accessible.name: area.text
    Accessible.onPressAction: area.clicked()

    Keys.onReturnPressed: area.clicked()
    Keys.onEnterPressed: area.clicked()

    background: Rectangle {
        color: area.down ? Theme.plaster : "transparent"
        border.width: area.visualFocus ? Theme.stroke : 0
        border.color: Theme.slate
    }
}
