// A row of the schedule: who or where, then its line across the days, or its figures.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

Item {
    id: line

    required property var row
    required property int index
    required property ScheduleView view
    required property bool asTable
    required property real names      // width of the names
    required property real dayWidth
    required property real pan
    required property var lefts
    required property var widths
    property bool isHere: false
    property bool isBegun: false  // a link is begun at it
    readonly property bool hasLine: row.from >= 0 || row.doneFrom >= 0
    readonly property real thickness: row.weight === 2 ? Theme.gap(3) : row.weight === 1 ? 7 : 3

    signal pressed()
    signal taken()
    // A link is pulled out of the end of the line; points within this row.
    signal linkBegun(point at)
    signal linkPulled(point at)
    signal linkDropped(bool kept)

    function across(day: real): real {
        return day * line.dayWidth - line.pan;
    }

    objectName: row.isHeading ? "scheduleHeading" : "scheduleRow"
    Accessible.role: Accessible.ListItem
    Accessible.name: row.isHeading ? row.name : row.told

    Rectangle {
        anchors.fill: parent
        visible: line.row.isHeading || line.isHere
        color: Theme.plaster
        opacity: line.row.isHeading ? 1 : 0.8
    }

    Rectangle {
        width: Theme.gap(1)
        height: parent.height
        visible: line.isHere
        color: Theme.slate
    }

    Rectangle {
        anchors.fill: parent
        visible: line.isBegun
        color: "transparent"
        border.width: Theme.hairline
        border.color: Theme.slate
    }

    Hairline {
        anchors.bottom: parent.bottom
        width: parent.width
    }

    Words {
        objectName: "scheduleHeadingText"
        visible: line.row.isHeading
        x: Theme.gap(2)
        anchors.verticalCenter: parent.verticalCenter
        text: line.row.name
        font.bold: true
        wrapMode: Text.NoWrap
    }

    Words {
        visible: line.row.isHeading
        x: line.names
        anchors.verticalCenter: parent.verticalCenter
        text: line.row.aside
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
        wrapMode: Text.NoWrap
    }

    Rectangle {
        visible: !line.row.isHeading && line.row.chip !== ""
        x: Theme.gap(2)
        anchors.verticalCenter: parent.verticalCenter
        width: Theme.gap(8)
        height: Theme.gap(5)
        radius: 3
        color: line.row.ground

        Words {
            anchors.centerIn: parent
            text: line.row.chip
            color: line.row.ink
            font.pixelSize: Theme.smallSize
            font.bold: true
        }
    }

    Words {
        objectName: "scheduleName"
        visible: !line.row.isHeading
        x: Theme.gap(12)
        width: line.names - x - Theme.gap(2)
        height: parent.height
        text: line.row.name
        font.bold: line.row.weight === 2
        wrapMode: Text.NoWrap
        elide: Text.ElideRight
        verticalAlignment: Text.AlignVCenter
        lineHeight: 1
    }

    // The figures.
    Repeater {
        model: line.asTable && !line.row.isHeading ? line.row.cells : []

        Words {
            required property string modelData
            required property int index

            objectName: "scheduleCell" + index
            x: line.names + (line.lefts[index] || 0)
            width: (line.widths[index] || 0) - Theme.gap(index === 2 || index === 3 || index === 8 ? 3 : 0)
            height: line.height
            text: modelData
            font.pixelSize: Theme.smallSize
            font.bold: line.row.weight === 2
            horizontalAlignment: index === 2 || index === 3 || index === 8 ? Text.AlignRight
                                                                           : Text.AlignLeft
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
        }
    }

    MouseArea {
        anchors.fill: parent
        onPressed: line.pressed()
    }

    // The line across the days.
    Item {
        id: field
        x: line.names
        width: parent.width - line.names
        height: parent.height
        visible: !line.asTable && !line.row.isHeading
        clip: true

        // Planned: between two ticks, under the line.
        Item {
            visible: line.row.plannedTo > line.row.plannedFrom
            x: line.across(line.row.plannedFrom)
            y: parent.height - Theme.gap(2)
            width: Math.max(3, (line.row.plannedTo - line.row.plannedFrom) * line.dayWidth)

            Rectangle { y: 2; width: parent.width; height: 1; color: Theme.slate }
            Rectangle { width: 2; height: 5; color: Theme.slate }
            Rectangle { x: parent.width - 2; width: 2; height: 5; color: Theme.slate }
        }

        // As far as it may slip.
        Item {
            visible: line.row.mayEnd > line.row.to && line.row.from >= 0
            x: line.across(line.row.to)
            y: bar.y + bar.height / 2
            width: (line.row.mayEnd - line.row.to) * line.dayWidth

            Rectangle { width: parent.width; height: 1; color: Theme.pencil; opacity: 0.7 }
            Rectangle { x: parent.width - 1; y: -3; width: 1; height: 7; color: Theme.pencil }
        }

        Rectangle {
            visible: line.row.doneTo > line.row.doneFrom
            x: line.across(line.row.doneFrom)
            anchors.verticalCenter: bar.verticalCenter
            width: (line.row.doneTo - line.row.doneFrom) * line.dayWidth - 1
            height: 5
            color: Theme.moss
        }

        // Where it stands while a move pushes it.
        Rectangle {
            visible: line.row.wasTo > line.row.wasFrom
            x: line.across(line.row.wasFrom)
            anchors.verticalCenter: bar.verticalCenter
            width: (line.row.wasTo - line.row.wasFrom) * line.dayWidth - 1
            height: Theme.gap(3)
            color: "transparent"
            border.width: 1
            border.color: Theme.pencil
        }

        Rectangle {
            id: bar
            objectName: "scheduleBar"
            visible: line.row.from >= 0
            x: line.across(line.row.from)
            y: Math.round((parent.height - Theme.gap(2) - height) / 2)
            width: Math.max(3, (line.row.to - line.row.from) * line.dayWidth - 1)
            height: line.thickness
            color: line.row.wasTo > line.row.wasFrom ? Theme.slate : Theme.ink
        }

        Rectangle {
            objectName: "scheduleOrder"
            visible: line.row.orderBy >= 0
            x: line.across(line.row.orderBy) + line.dayWidth / 2 - width / 2
            anchors.verticalCenter: bar.verticalCenter
            width: 9
            height: 9
            rotation: 45
            color: Theme.paper
            border.width: 2
            border.color: Theme.ink
        }

        Rectangle {
            visible: line.row.goods >= 0
            x: line.across(line.row.goods) + line.dayWidth / 2 - width / 2
            anchors.verticalCenter: bar.verticalCenter
            width: 7
            height: 7
            color: Theme.pencil
        }

        Words {
            readonly property real last: Math.max(line.row.to, line.row.mayEnd, line.row.doneTo)

            visible: line.hasLine && x < parent.width - Theme.gap(8)
            x: line.across(last) + Theme.gap(line.isHere ? 5 : 2)
            anchors.verticalCenter: bar.verticalCenter
            text: [line.row.label, line.row.aside].filter(part => part !== "").join(", ")
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            wrapMode: Text.NoWrap
        }

        MouseArea {
            id: hold
            objectName: "scheduleHold"
            // A line of a day is hard to hit: a little more than it.
            x: bar.x - Theme.gap(2)
            width: bar.width + Theme.gap(4)
            height: parent.height
            visible: bar.visible
            preventStealing: true
            cursorShape: line.view.inHand ? Qt.ClosedHandCursor : Qt.OpenHandCursor

            property real pressedAt: 0
            property real dayAt: 0

            onPressed: mouse => {
                pressedAt = mapToItem(field, mouse.x, 0).x;
                dayAt = line.row.from;
                line.pressed();
            }
            onPositionChanged: mouse => {
                const moved = mapToItem(field, mouse.x, 0).x - pressedAt;
                if (!line.view.inHand) {
                    if (Math.abs(moved) < Theme.gap(1) || !pressed || dayAt < 0)
                        return;
                    if (!line.view.take()) {
                        dayAt = -1;
                        return;
                    }
                    line.taken();
                }
                if (dayAt >= 0)
                    line.view.dragTo(dayAt + moved / line.dayWidth + 0.5);
            }
            onReleased: if (dayAt >= 0) line.view.letGo()
            onCanceled: line.view.putBack()
        }

        // The end of the line, to pull a link out of.
        Rectangle {
            objectName: "scheduleEnd"
            visible: end.visible
            x: bar.x + bar.width + Theme.gap(1)
            anchors.verticalCenter: bar.verticalCenter
            width: 9
            height: 9
            radius: 5
            color: end.containsMouse || end.pressed ? Theme.slate : Theme.paper
            border.width: 2
            border.color: Theme.slate
        }

        MouseArea {
            id: end
            objectName: "scheduleEndHold"
            x: bar.x + bar.width
            width: Theme.gap(5)
            height: parent.height
            visible: bar.visible && line.isHere && !line.view.inHand
            hoverEnabled: true
            preventStealing: true
            cursorShape: Qt.CrossCursor
            Accessible.name: qsTr("Pull to the item that starts after it")
            onPressed: mouse => {
                line.pressed();
                line.linkBegun(mapToItem(line, mouse.x, mouse.y));
            }
            onPositionChanged: mouse => {
                if (pressed)
                    line.linkPulled(mapToItem(line, mouse.x, mouse.y));
            }
            onReleased: line.linkDropped(true)
            onCanceled: line.linkDropped(false)
        }
    }
}
