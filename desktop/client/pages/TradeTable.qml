// Money by trade: six figures that are never mixed, and how each trade stands. Enter opens its lines
// in the scope.
import QtQuick
import Ledgerboard.Look

FocusScope {
    id: part

    required property var trades
    property int place: 0

    signal chosen(string filter)
    signal shown(Item item)

    readonly property var headings: [qsTr("Budget now"), qsTr("Committed"), qsTr("Billed"), qsTr("Held"),
                                     qsTr("Paid"), qsTr("Forecast"), qsTr("Over or early")]

    function move(to: int) {
        part.place = Math.max(0, Math.min(part.trades.length - 1, to));
        part.shown(rows.itemAt(part.place));
    }

    function go() {
        const trade = part.trades[part.place];
        if (trade && trade.filter !== "")
            part.chosen(trade.filter);
    }

    implicitHeight: column.implicitHeight
    activeFocusOnTab: true
    onActiveFocusChanged: if (activeFocus) part.move(part.place)
    Keys.onDownPressed: event => {
        event.accepted = part.place < part.trades.length - 1;
        part.move(part.place + 1);
    }
    Keys.onUpPressed: event => {
        event.accepted = part.place > 0;
        part.move(part.place - 1);
    }
    Keys.onReturnPressed: part.go()
    Keys.onEnterPressed: part.go()

    // No layout here: what a Repeater takes away must not wait to be laid out.
    component Cells: Row {
        id: cells

        property string first
        property var rest
        property color tone: Theme.ink
        property bool bold: false
        property int size: Theme.bodySize

        Words {
            width: cells.width * 2 / 9
            text: cells.first
            color: cells.tone
            font.pixelSize: cells.size
            font.bold: cells.bold
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
        }

        Repeater {
            model: cells.rest

            Words {
                required property string modelData

                objectName: "tradeCell"
                width: cells.width / 9
                text: modelData
                color: cells.tone
                font.pixelSize: cells.size
                font.bold: cells.bold
                wrapMode: Text.NoWrap
                horizontalAlignment: Text.AlignRight
            }
        }
    }

    Column {
        id: column
        width: parent.width

        Heading {
            width: parent.width
            bottomPadding: Theme.gap(2)
            text: qsTr("Money by trade")
            font.pixelSize: Theme.bodySize
        }

        Cells {
            width: parent.width
            first: qsTr("Trade")
            rest: part.headings
            tone: Theme.pencil
            size: Theme.smallSize
        }

        Repeater {
            id: rows
            model: part.trades

            Item {
                id: trade

                required property var modelData
                required property int index

                objectName: "trade"
                width: column.width
                height: Theme.gap(8)
                Accessible.role: Accessible.ListItem
                Accessible.name: [modelData.trade].concat(modelData.cells.map(
                                     (cell, k) => part.headings[k] + " " + cell)).join(", ")

                Hairline { width: parent.width }

                Rectangle {
                    anchors.fill: parent
                    anchors.topMargin: 1
                    anchors.leftMargin: -Theme.gap(2)
                    anchors.rightMargin: -Theme.gap(2)
                    visible: (part.activeFocus && part.place === trade.index)
                             || (pointer.hovered && trade.modelData.filter !== "")
                    color: Theme.plaster

                    Rectangle {
                        width: Theme.gap(1)
                        height: parent.height
                        visible: part.activeFocus && part.place === trade.index
                        color: Theme.slate
                    }
                }

                Cells {
                    width: parent.width
                    anchors.verticalCenter: parent.verticalCenter
                    first: trade.modelData.trade
                    rest: trade.modelData.cells
                    bold: trade.modelData.isTotal
                }

                HoverHandler {
                    id: pointer
                    cursorShape: trade.modelData.filter !== "" ? Qt.PointingHandCursor : Qt.ArrowCursor
                }

                TapHandler {
                    onTapped: {
                        part.place = trade.index;
                        part.forceActiveFocus();
                        part.go();
                    }
                }
            }
        }

        Hairline { width: parent.width }
    }
}
