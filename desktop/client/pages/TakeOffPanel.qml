// The quantity from sizes: what is measured, what must be bought, what was assumed and from where.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: panel

    required property ScopeSheet sheet

    signal closed()

    function begin() {
        const item = panel.sheet;
        desk.begin(item.itemText, item.floorArea, item.wallArea);
        kinds.forceActiveFocus();
    }

    Keys.onEscapePressed: panel.closed()

    TakeOffDesk { id: desk }

    Rectangle {
        anchors.fill: parent
        color: Theme.plaster
        border.width: Theme.hairline
        border.color: Theme.pencil

        MouseArea { anchors.fill: parent }
    }

    Flickable {
        anchors { fill: parent; margins: Theme.gap(4) }
        contentHeight: column.implicitHeight
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        // No layouts here: what they lay out must not be taken away while they wait to do it.
        Column {
            id: column
            width: parent.width - Theme.gap(1)
            spacing: Theme.gap(2)

            Item {
                width: parent.width
                height: heading.implicitHeight

                Heading {
                    id: heading
                    text: qsTr("Take-off")
                    font.pixelSize: Theme.largeSize
                }

                QuietLink {
                    objectName: "takeOffClose"
                    anchors.right: parent.right
                    width: implicitWidth
                    text: qsTr("Close")
                    hint: "Esc"
                    onClicked: panel.closed()
                }
            }

            Small { text: panel.sheet.itemText }

            // Which kind of work; arrows choose.
            PressArea {
                id: kinds
                objectName: "takeOffKind"
                width: parent.width
                reach: Theme.gap(9)
                text: desk.kinds[desk.kind] || ""
                onClicked: desk.kind = (desk.kind + 1) % desk.kinds.length
                Keys.onDownPressed: desk.kind = Math.min(desk.kinds.length - 1, desk.kind + 1)
                Keys.onUpPressed: desk.kind = Math.max(0, desk.kind - 1)

                contentItem: Item {
                    Words {
                        anchors.verticalCenter: parent.verticalCenter
                        leftPadding: Theme.gap(1)
                        text: kinds.text
                        font.bold: true
                    }

                    Words {
                        anchors { right: parent.right; verticalCenter: parent.verticalCenter }
                        rightPadding: Theme.gap(1)
                        text: "\u2191 \u2193"
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }
                }
            }

            Small { text: desk.says }

            Small {
                objectName: "takeOffRefused"
                visible: text !== ""
                text: desk.refused
                color: Theme.ink
            }

            Repeater {
                model: desk.quantities

                Item {
                    id: taken

                    required property var modelData

                    width: column.width
                    height: use.height

                    Words {
                        anchors.verticalCenter: parent.verticalCenter
                        text: taken.modelData.what
                    }

                    Words {
                        objectName: "takenFigure"
                        anchors {
                            right: use.left
                            rightMargin: Theme.gap(3)
                            verticalCenter: parent.verticalCenter
                        }
                        text: taken.modelData.figure
                        font.bold: true
                    }

                    ActionButton {
                        id: use
                        objectName: "putQuantity"
                        anchors.right: parent.right
                        reach: Theme.gap(8)
                        text: qsTr("Use it")
                        onClicked: if (panel.sheet.putQuantity(taken.modelData.exact, taken.modelData.unit))
                            panel.closed()
                    }
                }
            }

            Grid {
                id: grid
                columns: 2
                columnSpacing: Theme.gap(4)
                rowSpacing: Theme.gap(2)

                Repeater {
                    model: desk.sizes

                    Entry {
                        required property var modelData

                        width: (column.width - grid.columnSpacing) / 2
                        label: modelData.label
                               + (modelData.usual === "" ? "" : " (" + modelData.usual + ")")
                        areaName: "size-" + modelData.key
                        text: modelData.text
                        area.onTextEdited: desk.give(modelData.key, area.text)
                    }
                }
            }

            Repeater {
                model: desk.buy

                Small {
                    required property var modelData

                    objectName: "takenBuy"
                    text: qsTr("Buy %1: %2 (%3)").arg(modelData.what).arg(modelData.figure).arg(modelData.why)
                    color: Theme.ink
                }
            }

            Repeater {
                model: desk.assumed

                Small {
                    required property string modelData

                    text: modelData
                }
            }

            Small {
                visible: text !== ""
                text: desk.source === "" ? "" : qsTr("Arithmetic: %1.").arg(desk.source)
            }

            Small {
                visible: text !== ""
                text: desk.caution
                color: Theme.brick
            }
        }
    }

    component Small: Words {
        width: column.width
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
    }
}
