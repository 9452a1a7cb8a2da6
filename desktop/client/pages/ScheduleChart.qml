// The days across, spaces or crews down; or the table of the same rows.
import QtQuick
import QtQuick.Shapes
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: chart

    required property ScheduleView view
    required property ScheduleLinks links
    // Where the pointer pulls a link to, within the chart; nowhere: a row of -1.
    property int aimedRow: -1
    property point pulledFrom
    property point pulledTo
    property bool asTable: false
    property real zoom: 1
    property real pan: 0
    readonly property int rowHeight: Theme.gap(8)
    readonly property real names: Math.min(Theme.gap(80), Math.max(Theme.gap(60), width * 0.23))
    readonly property real room: Math.max(1, width - names)
    // All days where they fit, a day never narrower than can be told apart.
    readonly property real dayWidth: Math.max(6, (room - Theme.gap(30)) / Math.max(1, view.days)) * zoom
    readonly property real most: Math.max(0, view.days * dayWidth - room + Theme.gap(30))
    readonly property int every: Math.max(1, Math.ceil(Theme.gap(15) / (7 * dayWidth)))
    property var widths: columnWidths()
    property var lefts: widths.map((w, k) => widths.slice(0, k).reduce((a, b) => a + b, 0))

    function columnWidths(): var {
        const wide = Math.max(1, Math.min(1.4, chart.room / Theme.gap(195)));
        const fixed = [19, 19, 14, 14, 21, 18, 22, 21, 14].map(w => Math.round(w * 4 * wide));
        const taken = fixed.reduce((a, b) => a + b, 0);
        return fixed.concat([Math.max(Theme.gap(20), chart.room - taken)]);
    }

    function panTo(x: real) {
        chart.pan = Math.max(0, Math.min(chart.most, x));
    }

    function zoomBy(factor: real) {
        const middle = (chart.pan + chart.room / 2) / chart.dayWidth;
        chart.zoom = Math.max(1, Math.min(12, chart.zoom * factor));
        chart.panTo(middle * chart.dayWidth - chart.room / 2);
    }

    // The line of the row in hand comes into sight.
    function showLine() {
        const item = list.itemAtIndex(chart.view.place);
        if (item === null || item.row.from < 0)
            return;
        const left = item.row.from * chart.dayWidth;
        const right = item.row.to * chart.dayWidth;
        if (left < chart.pan)
            chart.panTo(left - Theme.gap(10));
        else if (right > chart.pan + chart.room - Theme.gap(10))
            chart.panTo(right - chart.room + Theme.gap(40));
    }

    // A link is begun at the end of a line, and pulled to the row of what is to start after it.
    function pullLink(at: point, begins: bool) {
        if (begins) {
            if (!chart.links.begin())
                return;
            chart.pulledFrom = at;
        }
        if (!chart.links.isLinking)
            return;
        chart.pulledTo = at;
        chart.aimedRow = list.indexAt(Theme.gap(1), at.y - list.y + list.contentY);
        chart.links.aim(chart.aimedRow < 0 ? "" : chart.view.itemAt(chart.aimedRow));
    }

    function dropLink(kept: bool) {
        const aimed = chart.aimedRow >= 0 && chart.view.itemAt(chart.aimedRow) !== chart.links.item;
        chart.aimedRow = -1;
        if (!kept || !aimed || !chart.links.letGo())
            chart.links.leave();
    }

    function endLink() {
        if (chart.links.letGo())
            chart.view.filter = "";
    }

    function showRow() {
        list.positionViewAtIndex(Math.max(0, chart.view.place - 1), ListView.Contain);
        list.positionViewAtIndex(chart.view.place, ListView.Contain);
        chart.showLine();
    }

    onMostChanged: panTo(pan)

    Connections {
        target: chart.view

        function onMoved() {
            chart.showRow();
            if (chart.links.isLinking && chart.aimedRow < 0)
                chart.links.aim(chart.view.itemId);
        }
        function onHandChanged() { chart.showLine(); }
    }

    // The head: weeks and what stands on them, or the names of the columns.
    Item {
        id: head
        x: chart.names
        width: chart.room
        height: Theme.gap(11)
        clip: true

        Repeater {
            model: chart.asTable ? chart.view.columns : []

            Words {
                required property string modelData
                required property int index

                objectName: "scheduleColumn"
                x: chart.lefts[index] || 0
                width: (chart.widths[index] || 0) - Theme.gap(index === 2 || index === 3 || index === 8 ? 3 : 0)
                anchors.bottom: parent.bottom
                anchors.bottomMargin: Theme.gap(1)
                text: modelData
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                horizontalAlignment: index === 2 || index === 3 || index === 8 ? Text.AlignRight
                                                                               : Text.AlignLeft
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
            }
        }

        Repeater {
            model: chart.asTable ? [] : chart.view.ticks

            Words {
                required property var modelData
                required property int index

                objectName: "scheduleTick"
                visible: index % chart.every === 0
                x: modelData.day * chart.dayWidth - chart.pan + Theme.gap(1)
                anchors.bottom: parent.bottom
                anchors.bottomMargin: Theme.gap(1)
                text: modelData.text
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                wrapMode: Text.NoWrap
            }
        }

        Words {
            id: todayText
            readonly property bool atLeft: chart.view.target >= chart.view.today || chart.view.target < 0

            objectName: "scheduleToday"
            visible: !chart.asTable && chart.view.today >= 0
            x: chart.view.today * chart.dayWidth - chart.pan + (atLeft ? -width - Theme.gap(1) : Theme.gap(1))
            text: qsTr("today")
            font.pixelSize: Theme.smallSize
            wrapMode: Text.NoWrap
        }

        Words {
            objectName: "scheduleTarget"
            visible: !chart.asTable && chart.view.target >= 0
            x: chart.view.target * chart.dayWidth - chart.pan
               + (todayText.atLeft ? Theme.gap(1) : -width - Theme.gap(1))
            text: chart.view.targetText
            font.pixelSize: Theme.smallSize
            wrapMode: Text.NoWrap
        }
    }

    Hairline {
        y: head.height
        width: parent.width
        color: Theme.pencil
    }

    // Behind the rows: days not worked, weeks, today, the target.
    Item {
        id: ground
        x: chart.names
        y: head.height + 1
        width: chart.room
        height: Math.min(list.height, list.contentHeight)
        visible: !chart.asTable && chart.view.count > 0
        clip: true

        Repeater {
            model: chart.view.daysOff

            Rectangle {
                required property var modelData

                x: modelData.x * chart.dayWidth - chart.pan
                width: modelData.y * chart.dayWidth
                height: ground.height
                color: Theme.plaster
                opacity: 0.55
            }
        }

        Repeater {
            model: chart.view.ticks

            Rectangle {
                required property var modelData

                x: Math.round(modelData.day * chart.dayWidth - chart.pan)
                width: Theme.hairline
                height: ground.height
                color: Theme.rule
            }
        }
    }

    ListView {
        id: list
        objectName: "scheduleRows"
        anchors { fill: parent; topMargin: head.height + 1 }
        focus: true
        activeFocusOnTab: true
        clip: true
        model: chart.view
        currentIndex: -1
        reuseItems: true
        cacheBuffer: 0
        boundsBehavior: Flickable.StopAtBounds
        Accessible.role: Accessible.Table
        Accessible.name: [chart.view.itemText].concat(
                             chart.view.inHand ? [chart.view.moveText, chart.view.pushText]
                                               : chart.view.details).join(". ")

        function inHandKey(event: var): bool {
            const far = (event.modifiers & Qt.ShiftModifier) !== 0 ? 5 : 1;
            if (event.key === Qt.Key_Right)
                chart.view.shift(far);
            else if (event.key === Qt.Key_Left)
                chart.view.shift(-far);
            else if (event.key === Qt.Key_PageDown)
                chart.view.shift(5);
            else if (event.key === Qt.Key_PageUp)
                chart.view.shift(-5);
            else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
                chart.view.letGo();
            else if (event.key === Qt.Key_Escape)
                chart.view.putBack();
            else
                return false;
            return true;
        }

        // While a link is being made: up and down to the item that waits, sideways for its lag.
        function linkKey(event: var): bool {
            const far = (event.modifiers & Qt.ShiftModifier) !== 0 ? 5 : 1;
            if (event.key === Qt.Key_Right)
                chart.links.shift(far);
            else if (event.key === Qt.Key_Left)
                chart.links.shift(-far);
            else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
                chart.endLink();
            else if (event.key === Qt.Key_Escape)
                chart.links.leave();
            else
                return list.freeKey(event);
            return true;
        }

        function freeKey(event: var): bool {
            const control = (event.modifiers & Qt.ControlModifier) !== 0;
            const screen = Math.max(1, Math.floor(list.height / chart.rowHeight) - 1);
            if (event.key === Qt.Key_Down)
                chart.view.move(1);
            else if (event.key === Qt.Key_Up)
                chart.view.move(-1);
            else if (event.key === Qt.Key_PageDown)
                chart.view.move(screen);
            else if (event.key === Qt.Key_PageUp)
                chart.view.move(-screen);
            else if (event.key === Qt.Key_Home)
                chart.view.move(-chart.view.count);
            else if (event.key === Qt.Key_End)
                chart.view.move(chart.view.count);
            else if (event.key === Qt.Key_Right)
                chart.panTo(chart.pan + 7 * chart.dayWidth);
            else if (event.key === Qt.Key_Left)
                chart.panTo(chart.pan - 7 * chart.dayWidth);
            else if (control && (event.key === Qt.Key_Plus || event.key === Qt.Key_Equal))
                chart.zoomBy(1.5);
            else if (control && event.key === Qt.Key_Minus)
                chart.zoomBy(1 / 1.5);
            else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter || event.key === Qt.Key_F2)
                chart.view.take();
            else if (event.key === Qt.Key_Escape)
                chart.view.filter = "";
            else if (event.key === Qt.Key_Backspace)
                chart.view.filter = chart.view.filter.slice(0, -1);
            else if (!control && event.text.length === 1 && event.text >= " ")
                chart.view.filter = chart.view.filter + event.text;
            else
                return false;
            return true;
        }

        Keys.onPressed: event => {
            event.accepted = chart.view.inHand ? list.inHandKey(event)
                             : chart.links.isLinking ? list.linkKey(event) : list.freeKey(event);
        }

        delegate: ScheduleDelegate {
            width: list.width
            height: chart.rowHeight
            view: chart.view
            asTable: chart.asTable
            names: chart.names
            dayWidth: chart.dayWidth
            pan: chart.pan
            lefts: chart.lefts
            widths: chart.widths
            isHere: index === chart.view.place
            isBegun: chart.links.isLinking && chart.view.itemAt(index) === chart.links.from
            onPressed: {
                list.forceActiveFocus();
                if (chart.links.isLinking)
                    chart.links.leave();
                chart.view.place = index;
            }
            onLinkBegun: point => chart.pullLink(mapToItem(chart, point.x, point.y), true)
            onLinkPulled: point => chart.pullLink(mapToItem(chart, point.x, point.y), false)
            onLinkDropped: kept => chart.dropLink(kept)
        }

        HoverHandler { id: pointer }
    }

    // Today and the target, over the rows.
    Item {
        x: chart.names
        y: head.height + 1
        width: chart.room
        height: ground.height
        visible: ground.visible
        clip: true

        Shape {
            anchors.fill: parent
            visible: chart.view.today >= 0

            ShapePath {
                strokeColor: Theme.ink
                strokeWidth: 1
                fillColor: "transparent"
                strokeStyle: ShapePath.DashLine
                dashPattern: [3, 4]
                startX: Math.round(chart.view.today * chart.dayWidth - chart.pan)
                startY: 0

                PathLine {
                    x: Math.round(chart.view.today * chart.dayWidth - chart.pan)
                    y: ground.height
                }
            }
        }

        Rectangle {
            visible: chart.view.target >= 0
            x: Math.round(chart.view.target * chart.dayWidth - chart.pan)
            width: Theme.stroke
            height: parent.height
            color: Theme.ink
            opacity: 0.5
        }
    }

    // The link that is being pulled.
    Shape {
        objectName: "pulledLink"
        anchors.fill: parent
        visible: chart.aimedRow >= 0

        ShapePath {
            strokeColor: Theme.slate
            strokeWidth: Theme.stroke
            fillColor: "transparent"
            startX: chart.pulledFrom.x
            startY: chart.pulledFrom.y

            PathLine { x: chart.pulledTo.x; y: chart.pulledTo.y }
        }
    }

    Rectangle {
        readonly property Item item: chart.aimedRow >= 0 ? list.itemAtIndex(chart.aimedRow) : null

        visible: item !== null && !item.row.isHeading
        x: 0
        y: item !== null ? list.y + item.y - list.contentY : 0
        width: parent.width
        height: chart.rowHeight
        color: "transparent"
        border.width: Theme.stroke
        border.color: Theme.slate
    }

    // What the pointer is on.
    Rectangle {
        id: told
        readonly property real down: pointer.point.position.y
        readonly property int at: pointer.hovered
                                  ? list.indexAt(Theme.gap(1), down + list.contentY) : -1
        readonly property Item item: at >= 0 ? list.itemAtIndex(at) : null
        readonly property real across: pointer.point.position.x - chart.names

        objectName: "scheduleTold"
        visible: item !== null && !item.row.isHeading && !chart.view.inHand && !chart.links.isLinking && !chart.asTable
                 && across > 0
        x: Math.max(0, Math.min(chart.width - width, chart.names + across + Theme.gap(3)))
        y: Math.max(0, Math.min(chart.height - height, list.y + down + Theme.gap(4)))
        width: words.implicitWidth + Theme.gap(6)
        height: words.implicitHeight + Theme.gap(4)
        color: Theme.paper
        border.width: Theme.hairline
        border.color: Theme.pencil

        Column {
            id: words
            x: Theme.gap(3)
            y: Theme.gap(2)

            Words {
                objectName: "toldDay"
                text: chart.view.dayAt((told.across + chart.pan) / chart.dayWidth)
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                wrapMode: Text.NoWrap
            }

            Words {
                objectName: "toldText"
                text: told.item !== null ? told.item.row.told : ""
                font.pixelSize: Theme.smallSize
                wrapMode: Text.NoWrap
            }
        }
    }

    Rectangle {
        anchors.fill: parent
        anchors.margins: -Theme.gap(1)
        color: "transparent"
        visible: list.activeFocus
        border.width: Theme.hairline
        border.color: Theme.slate
    }
}
