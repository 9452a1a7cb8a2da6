// Does the forecast equal the budget? A vial with two hairlines and a bubble, which drifts right
// when it will cost more. The difference stands beside it in words.
import QtQuick
import Ledgerboard.Look

Item {
    id: level

    // -1 to 1: where the bubble is; hair: how far from the middle the hairlines are, 0 to 1.
    required property real lean
    required property real hair
    property string spoken: ""

    implicitHeight: Theme.gap(7)
    implicitWidth: Theme.gap(60)
    Accessible.role: Accessible.Graphic
    Accessible.name: spoken

    Rectangle {
        id: vial
        anchors.fill: parent
        radius: height / 2
        color: Theme.plaster
        border.width: Theme.hairline
        border.color: Theme.isSun ? Theme.ink : Theme.pencil
    }

    Rectangle {
        id: bubble
        objectName: "bubble"
        readonly property real reach: (level.width - width) / 2 - Theme.gap(1)

        width: Theme.gap(11)
        height: parent.height - Theme.gap(3)
        radius: height / 2
        anchors.verticalCenter: parent.verticalCenter
        x: level.width / 2 - width / 2 + level.lean * reach
        color: Theme.paper
        border.width: Theme.stroke
        border.color: Theme.ink
    }

    Repeater {
        model: [-1, 1]

        Rectangle {
            required property int modelData

            x: Math.round(level.width / 2 + modelData * level.hair * bubble.reach
                          + modelData * bubble.width / 2)
            width: Theme.isSun ? 3 : 2
            height: parent.height
            color: Theme.ink
        }
    }
}
