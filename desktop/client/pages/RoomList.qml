// How far each room is, and what it does to the cost. Enter opens its lines in the scope.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look

FocusScope {
    id: part

    required property var rooms
    property int place: 0

    signal chosen(string filter)
    signal shown(Item item)

    function move(to: int) {
        part.place = Math.max(0, Math.min(part.rooms.length - 1, to));
        part.shown(rows.itemAt(part.place));
    }

    function go() {
        const room = part.rooms[part.place];
        if (room && room.filter !== "")
            part.chosen(room.filter);
    }

    implicitHeight: column.implicitHeight
    activeFocusOnTab: true
    onActiveFocusChanged: if (activeFocus) part.move(part.place)
    Keys.onDownPressed: event => {
        event.accepted = part.place < part.rooms.length - 1;
        part.move(part.place + 1);
    }
    Keys.onUpPressed: event => {
        event.accepted = part.place > 0;
        part.move(part.place - 1);
    }
    Keys.onReturnPressed: part.go()
    Keys.onEnterPressed: part.go()

    Column {
        id: column
        width: parent.width

        Heading {
            width: parent.width
            bottomPadding: Theme.gap(2)
            text: qsTr("By room")
            font.pixelSize: Theme.bodySize
        }

        Repeater {
            id: rows
            model: part.rooms

            Item {
                id: room

                required property var modelData
                required property int index

                objectName: "room"
                width: column.width
                height: Theme.gap(9)
                Accessible.role: Accessible.ListItem
                Accessible.name: [modelData.name, modelData.doneText, modelData.planText,
                                  modelData.over].filter(text => text !== "").join(", ")

                Hairline { width: parent.width }

                Rectangle {
                    anchors.fill: parent
                    anchors.topMargin: 1
                    anchors.leftMargin: -Theme.gap(2)
                    anchors.rightMargin: -Theme.gap(2)
                    visible: (part.activeFocus && part.place === room.index) || pointer.hovered
                    color: Theme.plaster

                    Rectangle {
                        width: Theme.gap(1)
                        height: parent.height
                        visible: part.activeFocus && part.place === room.index
                        color: Theme.slate
                    }
                }

                RowLayout {
                    anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
                    spacing: Theme.gap(2)

                    Swatch {
                        shortName: room.modelData.shortName === "" ? "\u2013" : room.modelData.shortName
                        ground: room.modelData.ground
                        text: room.modelData.ink
                        Layout.preferredWidth: Theme.gap(9)
                    }

                    Words {
                        text: room.modelData.name
                        wrapMode: Text.NoWrap
                        elide: Text.ElideRight
                        Layout.fillWidth: true
                    }

                    Tape {
                        opacity: room.modelData.hasWork ? 1 : 0
                        done: room.modelData.done
                        plan: room.modelData.plan
                        finished: room.modelData.finished
                        Layout.preferredWidth: Theme.gap(24)
                    }

                    Words {
                        objectName: "roomDone"
                        text: room.modelData.doneText
                        horizontalAlignment: Text.AlignRight
                        Layout.preferredWidth: Theme.gap(12)
                    }

                    Words {
                        text: room.modelData.planText
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                        horizontalAlignment: Text.AlignRight
                        Layout.preferredWidth: Theme.gap(18)
                    }

                    Words {
                        objectName: "roomOver"
                        text: room.modelData.over
                        horizontalAlignment: Text.AlignRight
                        Layout.preferredWidth: Theme.gap(15)
                    }
                }

                HoverHandler { id: pointer; cursorShape: Qt.PointingHandCursor }

                TapHandler {
                    onTapped: {
                        part.place = room.index;
                        part.forceActiveFocus();
                        part.go();
                    }
                }
            }
        }

        Hairline { width: parent.width }
    }
}
