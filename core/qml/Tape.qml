// How far it is: the blade drawn out to what is done, a tick at each quarter, a notch where the
// plan says it should be. The figure always stands beside it in words.
import QtQuick
import Ledgerboard.Look

Item {
    id: tape

    // 0 to 1; plan below 0 where there is none.
    required property real done
    property real plan: -1
    property bool finished: false

    implicitHeight: Theme.gap(4)
    implicitWidth: Theme.gap(32)
    Accessible.ignored: true

    Rectangle {
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 2
        width: parent.width
        height: Theme.hairline
        color: Theme.isSun ? Theme.ink : Theme.pencil
        opacity: Theme.isSun ? 1 : 0.55
    }

    Rectangle {
        objectName: "blade"
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 2
        width: tape.width * tape.done
        height: Theme.isSun ? 8 : 6
        color: tape.finished ? Theme.moss : Theme.slate
    }

    Repeater {
        model: 3

        Rectangle {
            required property int index
            readonly property real place: (index + 1) / 4

            x: Math.round(tape.width * place)
            anchors.bottom: parent.bottom
            anchors.bottomMargin: 2
            width: 1
            height: 6
            color: place < tape.done ? Theme.paper : Theme.pencil
            visible: !tape.finished
        }
    }

    Rectangle {
        objectName: "notch"
        visible: tape.plan >= 0 && !tape.finished
        x: Math.min(tape.width - width, Math.max(0, Math.round(tape.width * tape.plan) - 1))
        anchors.bottom: parent.bottom
        width: Theme.isSun ? 4 : 3
        height: parent.height
        color: Theme.ink
    }
}
