// One thing supposed: a rule with a hook to pull along it; arrows move it by a step, Home puts it
// back.
import QtQuick
import Ledgerboard.Look

FocusScope {
    id: slider

    required property var supposition

    signal moved(int at)

    readonly property real span: supposition.high - supposition.low

    function placeOf(at: real): real {
        return (at - slider.supposition.low) / slider.span * rule.width;
    }

    function pull(x: real) {
        const step = slider.supposition.step;
        slider.moved(Math.round((slider.supposition.low + x / rule.width * slider.span) / step) * step);
    }

    implicitHeight: Theme.gap(14)
    activeFocusOnTab: true
    Accessible.role: Accessible.Slider
    Accessible.name: supposition.name + ", " + supposition.said
    Accessible.focusable: true
    Keys.onRightPressed: slider.moved(supposition.at + supposition.step)
    Keys.onLeftPressed: slider.moved(supposition.at - supposition.step)
    Keys.onPressed: event => {
        if (event.key !== Qt.Key_Home)
            return;
        slider.moved(0);
        event.accepted = true;
    }

    Words {
        id: name
        text: slider.supposition.name
    }

    Words {
        objectName: "whatIfSaid"
        anchors.right: parent.right
        text: slider.supposition.said
        font.bold: slider.supposition.at !== 0
        color: slider.supposition.at !== 0 ? Theme.ink : Theme.pencil
    }

    Item {
        id: rule
        y: name.height + Theme.gap(2)
        width: parent.width
        height: Theme.gap(5)

        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width
            height: Theme.stroke
            color: Theme.rule
        }

        // As it stands.
        Rectangle {
            x: slider.placeOf(0) - 1
            width: Theme.stroke
            height: parent.height
            color: Theme.pencil
        }

        Rectangle {
            x: Math.min(slider.placeOf(0), slider.placeOf(slider.supposition.at))
            anchors.verticalCenter: parent.verticalCenter
            width: Math.abs(slider.placeOf(slider.supposition.at) - slider.placeOf(0))
            height: Theme.gap(1)
            color: Theme.slate
        }

        Rectangle {
            x: slider.placeOf(slider.supposition.at) - width / 2
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.gap(3)
            height: Theme.gap(5)
            radius: 2
            color: Theme.ink
        }

        MouseArea {
            objectName: "whatIfRule"
            anchors.fill: parent
            preventStealing: true
            onPressed: mouse => {
                slider.forceActiveFocus();
                slider.pull(mouse.x);
            }
            onPositionChanged: mouse => slider.pull(mouse.x)
        }
    }

    Rectangle {
        anchors.fill: parent
        anchors.margins: -Theme.gap(1)
        color: "transparent"
        visible: slider.activeFocus
        border.width: Theme.stroke
        border.color: Theme.slate
    }
}
