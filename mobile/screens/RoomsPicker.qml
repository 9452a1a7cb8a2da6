// Rooms that most houses have, chosen by touch in walking order; a second touch takes one out.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Flow {
    id: picker

    property var chosen: []
    readonly property var usual: [
        qsTr("Entry"), qsTr("Living room"), qsTr("Dining room"), qsTr("Kitchen"), qsTr("Hall"),
        qsTr("Hall bath"), qsTr("Half bath"), qsTr("Front bedroom"), qsTr("Back bedroom"),
        qsTr("Primary bedroom"), qsTr("Primary bath"), qsTr("Laundry room"), qsTr("Stairs"),
        qsTr("Attic"), qsTr("Basement"), qsTr("Garage"), qsTr("Porch"), qsTr("Outside"),
        qsTr("Back yard")
    ]

    spacing: Theme.gap(2)

    function flip(name: string) {
        const without = picker.chosen.filter(one => one !== name);
        picker.chosen = without.length < picker.chosen.length ? without : picker.chosen.concat([name]);
    }

    Repeater {
        model: picker.usual

        PressArea {
            id: room

            required property string modelData
            readonly property int place: picker.chosen.indexOf(modelData)

            objectName: "room-" + modelData
            text: place >= 0 ? qsTr("%1, room %2").arg(modelData).arg(place + 1) : modelData
            Accessible.role: Accessible.CheckBox
            Accessible.checked: place >= 0
            onClicked: picker.flip(modelData)

            background: Rectangle {
                radius: 4
                color: room.place >= 0 ? Theme.ink : room.down ? Theme.plaster : "transparent"
                border.width: room.visualFocus ? Theme.stroke : Theme.hairline
                border.color: room.visualFocus ? Theme.slate : Theme.pencil
            }

            contentItem: Words {
                text: room.place >= 0 ? (room.place + 1) + "  " + room.modelData : room.modelData
                color: room.place >= 0 ? Theme.paper : Theme.ink
                leftPadding: Theme.gap(3)
                rightPadding: Theme.gap(3)
                wrapMode: Text.NoWrap
                verticalAlignment: Text.AlignVCenter
            }
        }
    }
}
