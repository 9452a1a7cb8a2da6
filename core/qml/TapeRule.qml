// The tape made large: pull the blade along the rule to say how far it is. It stops at `stops`
// places; arrows move it by one.
import QtQuick
import Ledgerboard.Look

Item {
    id: rule

    required property int stops
    property int stop: 0
    // 0 to 1, below 0 where there is none.
    property real last: -1
    property real plan: -1
    property string lastText: ""
    property string planText: ""
    property string spoken: ""

    signal pulled(int stop)

    readonly property real place: stops > 0 ? stop / stops : 0
    readonly property int labelHeight: lastLabel.implicitHeight

    function moveTo(wanted: int) {
        const kept = Math.max(0, Math.min(rule.stops, wanted));
        if (kept !== rule.stop)
            rule.pulled(kept);
    }

    implicitHeight: 2 * labelHeight + Theme.gap(26)
    activeFocusOnTab: true
    Accessible.role: Accessible.Slider
    Accessible.name: spoken
    Accessible.focusable: true
    Accessible.onIncreaseAction: rule.moveTo(rule.stop + 1)
    Accessible.onDecreaseAction: rule.moveTo(rule.stop - 1)
    Keys.onRightPressed: rule.moveTo(rule.stop + 1)
    Keys.onLeftPressed: rule.moveTo(rule.stop - 1)

    Words {
        id: planLabel
        visible: rule.plan >= 0
        text: rule.planText
        font.pixelSize: Theme.smallSize
        x: Math.max(0, Math.min(rule.width - width, rule.width * rule.plan - width / 2))
        y: 0
    }

    Words {
        id: lastLabel
        visible: rule.last >= 0
        text: rule.lastText
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
        x: Math.max(0, Math.min(rule.width - width, rule.width * rule.last - width / 2))
        y: rule.labelHeight
    }

    Item {
        id: steel
        y: 2 * rule.labelHeight + Theme.gap(3)
        width: parent.width
        height: Theme.gap(12)

        Rectangle {
            objectName: "blade"
            width: rule.width * rule.place
            height: parent.height
            color: rule.stop === rule.stops ? Theme.moss : Theme.slate
        }

        // The hook at the end of the blade, which the thumb takes hold of.
        Rectangle {
            objectName: "hook"
            x: Math.max(0, Math.min(rule.width - width, rule.width * rule.place - width / 2))
            y: -Theme.gap(3)
            width: Theme.gap(3)
            height: parent.height + Theme.gap(3)
            radius: 2
            color: Theme.ink
        }
    }

    // The last mark: a dashed pencil line.
    Column {
        visible: rule.last >= 0
        x: Math.max(0, Math.min(rule.width - width, rule.width * rule.last - width / 2))
        y: 2 * rule.labelHeight
        spacing: 3

        Repeater {
            model: 8

            Rectangle {
                width: 2
                height: 5
                color: rule.last < rule.place - 0.01 ? Theme.paper : Theme.pencil
            }
        }
    }

    Rectangle {
        visible: rule.plan >= 0
        x: Math.max(0, Math.min(rule.width - width, rule.width * rule.plan - width / 2))
        y: rule.labelHeight
        width: 3
        height: rule.labelHeight + Theme.gap(15)
        color: rule.plan < rule.place - 0.02 ? Theme.paper : Theme.ink
    }

    Rectangle {
        y: steel.y + steel.height
        width: parent.width
        height: Theme.stroke
        color: Theme.ink
    }

    Repeater {
        model: 21

        Rectangle {
            required property int index

            x: Math.min(rule.width - width, index * rule.width / 20)
            y: steel.y + steel.height
            width: index % 5 === 0 ? Theme.stroke : 1
            height: index % 5 === 0 ? Theme.gap(5) : Theme.gap(2)
            color: index % 5 === 0 ? Theme.ink : Theme.pencil
        }
    }

    MouseArea {
        objectName: "pull"
        anchors.fill: parent
        anchors.topMargin: -Theme.gap(2)
        anchors.bottomMargin: -Theme.gap(2)
        preventStealing: true
        onPressed: mouse => rule.moveTo(Math.round(mouse.x / rule.width * rule.stops))
        onPositionChanged: mouse => rule.moveTo(Math.round(mouse.x / rule.width * rule.stops))
    }

    Rectangle {
        anchors.fill: parent
        anchors.margins: -Theme.gap(1)
        color: "transparent"
        visible: rule.activeFocus
        border.width: Theme.stroke
        border.color: Theme.slate
    }
}
