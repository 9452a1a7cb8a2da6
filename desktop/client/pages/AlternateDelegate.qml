// An open alternate: its options side by side, a line for each figure; then until when it can wait.
import QtQuick
import Ledgerboard.Look

Item {
    id: alternate

    required property var modelData
    required property int index
    required property var figureNames
    property bool isHere: false
    property int option: -1      // in hand
    property bool isAsking: false
    readonly property real labels: Theme.gap(34)
    readonly property real column: (width - labels) / Math.max(1, modelData.options.length)

    signal pressed(int option)
    signal chosen(string why)
    signal gone()
    signal optionAsked()
    signal wholeAsked(string kind)
    signal dropAsked(string kind)

    // The reason is asked for; the decision is kept with it.
    function ask() {
        why.text = "";
        why.area.forceActiveFocus();
    }

    objectName: "alternate"
    implicitHeight: body.implicitHeight + Theme.gap(8)
    onIsAskingChanged: if (isAsking) ask()

    Hairline { width: parent.width; color: Theme.pencil }

    // The option in hand.
    Rectangle {
        visible: alternate.isHere && alternate.option >= 0
        x: alternate.labels + alternate.option * alternate.column
        y: body.y + table.y - Theme.gap(1)
        width: alternate.column
        height: table.height + Theme.gap(1)
        color: Theme.plaster

        Rectangle { width: parent.width; height: Theme.stroke; color: Theme.slate }
    }

    Column {
        id: body
        y: Theme.gap(3)
        width: parent.width
        spacing: Theme.gap(1)

        Heading {
            objectName: "alternateName"
            width: parent.width
            text: alternate.modelData.name
            font.pixelSize: Theme.largeSize
        }

        Words {
            objectName: "alternateBy"
            width: parent.width
            text: alternate.modelData.decideBy
            font.bold: alternate.modelData.isLate
        }

        Item { width: 1; height: Theme.gap(1) }

        Column {
            id: table
            width: parent.width

            // Names, and how each stands.
            Row {
                Item { width: alternate.labels; height: 1 }

                Repeater {
                    model: alternate.modelData.options

                    Column {
                        id: head

                        required property var modelData

                        width: alternate.column
                        padding: Theme.gap(2)
                        spacing: Theme.gap(1)

                        Words {
                            objectName: "optionName"
                            width: parent.width - Theme.gap(4)
                            text: head.modelData.name
                            font.bold: head.modelData.isBest
                        }

                        Words {
                            objectName: "optionStanding"
                            width: parent.width - Theme.gap(4)
                            text: head.modelData.standing
                            color: Theme.pencil
                            font.pixelSize: Theme.smallSize
                        }
                    }
                }
            }

            Repeater {
                model: alternate.figureNames

                Item {
                    id: line

                    required property string modelData
                    required property int index

                    width: table.width
                    height: Theme.gap(7)

                    Hairline { width: parent.width }

                    Words {
                        width: alternate.labels
                        anchors.verticalCenter: parent.verticalCenter
                        text: line.modelData
                        leftPadding: line.index === 4 || line.index === 5 ? Theme.gap(3) : 0
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                        wrapMode: Text.NoWrap
                        elide: Text.ElideRight
                    }

                    Repeater {
                        model: alternate.modelData.options

                        Words {
                            required property var modelData
                            required property int index

                            objectName: "optionFigure"
                            x: alternate.labels + index * alternate.column
                            width: alternate.column
                            leftPadding: Theme.gap(2)
                            anchors.verticalCenter: parent.verticalCenter
                            text: modelData.figures[line.index]
                            font.bold: line.index === 3
                            font.pixelSize: line.index === 4 || line.index === 5 ? Theme.smallSize : Theme.bodySize
                            wrapMode: Text.NoWrap
                            elide: Text.ElideRight
                        }
                    }
                }
            }

            Row {
                Item { width: alternate.labels; height: 1 }

                Repeater {
                    model: alternate.modelData.options

                    Column {
                        id: foot

                        required property var modelData

                        width: alternate.column
                        padding: Theme.gap(2)

                        Repeater {
                            model: foot.modelData.notes

                            Words {
                                required property string modelData

                                objectName: "optionNote"
                                width: foot.width - Theme.gap(4)
                                text: modelData
                                color: Theme.pencil
                                font.pixelSize: Theme.smallSize
                            }
                        }
                    }
                }
            }
        }

        Words {
            objectName: "alternateWait"
            width: parent.width
            text: alternate.modelData.waiting
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        Words {
            objectName: "noOptions"
            width: parent.width
            visible: alternate.modelData.options.length < 2
            text: alternate.modelData.options.length === 0
                  ? qsTr("It has no option yet: add two or more; one may be to leave things as they are.")
                  : qsTr("It has one option: add another, so that there is something to choose.")
        }

        // What is to be changed of it, where it is in hand.
        Flow {
            width: parent.width
            visible: alternate.isHere && !alternate.isAsking
            spacing: Theme.gap(4)

            QuietLink {
                objectName: "addOption"
                reach: Theme.gap(5)
                text: qsTr("New option")
                hint: "Ctrl+Shift+N"
                onClicked: alternate.optionAsked()
            }

            QuietLink {
                objectName: "wholeOption"
                reach: Theme.gap(5)
                visible: alternate.modelData.options.length > 0
                text: qsTr("All of the option")
                hint: "Ctrl+I"
                onClicked: alternate.wholeAsked("option")
            }

            QuietLink {
                objectName: "wholeAlternate"
                reach: Theme.gap(5)
                text: qsTr("Its question and day")
                hint: "Ctrl+Shift+I"
                onClicked: alternate.wholeAsked("alternate")
            }

            QuietLink {
                objectName: "dropOption"
                reach: Theme.gap(5)
                visible: alternate.modelData.options.length > 0
                text: qsTr("Drop the option")
                hint: "Ctrl+Del"
                onClicked: alternate.dropAsked("option")
            }

            QuietLink {
                objectName: "dropAlternate"
                reach: Theme.gap(5)
                text: qsTr("Drop it all")
                hint: "Ctrl+Shift+Del"
                onClicked: alternate.dropAsked("alternate")
            }
        }

        Entry {
            id: why
            visible: alternate.isAsking
            width: parent.width
            label: alternate.isAsking && alternate.option >= 0
                   ? qsTr("Decided for \u201c%1\u201d. Why? Enter keeps it, Esc leaves it open.")
                         .arg(alternate.modelData.options[alternate.option].name) : ""
            areaName: "whyEntry"
            // Taken here, so that the same key does not begin the next decision.
            area.Keys.onReturnPressed: alternate.chosen(area.text)
            area.Keys.onEnterPressed: alternate.chosen(area.text)
            area.Keys.onEscapePressed: alternate.gone()
        }
    }

    MouseArea {
        y: table.y + body.y
        width: parent.width
        height: table.height
        enabled: alternate.modelData.options.length > 0
        onPressed: mouse => alternate.pressed(
            Math.max(0, Math.min(alternate.modelData.options.length - 1,
                                 Math.floor((mouse.x - alternate.labels) / alternate.column))))
    }
}
