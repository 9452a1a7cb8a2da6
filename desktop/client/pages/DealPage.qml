// Deal: what the house earns line by line, what it would if something were different, and the profit
// by weeks later and resale value.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)
    readonly property real half: (width - 2 * side - Theme.gap(10)) / 2

    function restsOn() {
        form.beginJob();
        if (form.isOpen)
            panel.begin();
    }

    Shortcut { sequence: "Ctrl+R"; onActivated: deal.forget() }
    Shortcut { sequence: "Ctrl+I"; onActivated: page.restsOn() }
    Keys.onDownPressed: paper.contentY = Math.max(0, Math.min(paper.contentHeight - paper.height,
                                                              paper.contentY + Theme.gap(20)))
    Keys.onUpPressed: paper.contentY = Math.max(0, paper.contentY - Theme.gap(20))

    DealView { id: deal }

    RecordForm { id: form }

    Words {
        objectName: "dealTrouble"
        x: page.side
        y: Theme.gap(10)
        width: parent.width - 2 * page.side
        visible: !deal.isReady
        text: deal.trouble !== "" ? deal.trouble : qsTr("Adding up the deal\u2026")
        color: Theme.pencil
    }

    Flickable {
        id: paper
        anchors.fill: parent
        visible: deal.isReady
        contentHeight: Math.max(sums.implicitHeight, supposing.implicitHeight) + head.height + Theme.gap(20)
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Item {
            id: head
            x: page.side
            y: Theme.gap(6)
            width: page.width - 2 * page.side
            height: Theme.gap(22)

            Heading {
                objectName: "dealTitle"
                text: qsTr("Deal")
            }

            Row {
                y: Theme.gap(10)
                spacing: Theme.gap(8)

                Column {
                    Words {
                        text: qsTr("Will earn, before income tax")
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }

                    Heading {
                        objectName: "dealProfit"
                        text: deal.profit
                    }
                }

                Column {
                    visible: deal.isSupposed

                    Words {
                        text: qsTr("As supposed")
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }

                    Heading {
                        objectName: "dealThen"
                        text: deal.profitThen + "  (" + deal.profitChange + ")"
                    }
                }

                Words {
                    objectName: "dealSpread"
                    anchors.bottom: parent.bottom
                    bottomPadding: Theme.gap(1)
                    text: deal.spread
                    color: Theme.pencil
                }
            }
        }

        Column {
            id: sums
            x: page.side
            y: head.y + head.height + Theme.gap(5)
            width: page.half

            Item {
                width: parent.width
                height: Theme.gap(7)

                Words {
                    id: nowHead
                    anchors.right: thenHead.left
                    width: Theme.gap(24)
                    text: qsTr("now")
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    horizontalAlignment: Text.AlignRight
                }

                Words {
                    id: thenHead
                    anchors.right: parent.right
                    width: deal.isSupposed ? Theme.gap(44) : 0
                    visible: deal.isSupposed
                    text: qsTr("as supposed")
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    horizontalAlignment: Text.AlignRight
                }
            }

            Repeater {
                model: deal.lines

                Item {
                    id: line

                    required property var modelData

                    width: sums.width
                    height: Theme.gap(7)

                    Hairline { width: parent.width }

                    Words {
                        anchors { left: parent.left; right: now.left; verticalCenter: parent.verticalCenter }
                        text: line.modelData.what
                        font.bold: line.modelData.isTotal
                        wrapMode: Text.NoWrap
                        elide: Text.ElideRight
                    }

                    Words {
                        id: now
                        objectName: "dealNow"
                        anchors { right: then.left; verticalCenter: parent.verticalCenter }
                        width: Theme.gap(24)
                        text: line.modelData.now
                        font.bold: line.modelData.isTotal
                        horizontalAlignment: Text.AlignRight
                    }

                    Words {
                        id: then
                        objectName: "dealSupposed"
                        anchors { right: change.left; verticalCenter: parent.verticalCenter }
                        width: deal.isSupposed ? Theme.gap(24) : 0
                        visible: deal.isSupposed
                        text: line.modelData.then
                        font.bold: line.modelData.isTotal || line.modelData.change !== ""
                        horizontalAlignment: Text.AlignRight
                    }

                    Words {
                        id: change
                        anchors { right: parent.right; verticalCenter: parent.verticalCenter }
                        width: deal.isSupposed ? Theme.gap(20) : 0
                        visible: deal.isSupposed
                        text: line.modelData.change
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                        horizontalAlignment: Text.AlignRight
                    }
                }
            }

            Hairline { width: parent.width }
        }

        Column {
            id: supposing
            x: page.width - page.side - page.half
            y: sums.y
            width: page.half
            spacing: Theme.gap(2)

            Item {
                width: parent.width
                height: what.implicitHeight

                Heading {
                    id: what
                    text: qsTr("What if")
                    font.pixelSize: Theme.bodySize
                }

                QuietLink {
                    objectName: "dealForget"
                    anchors.right: parent.right
                    width: implicitWidth
                    visible: deal.isSupposed
                    text: qsTr("All as it stands")
                    hint: "Ctrl+R"
                    onClicked: deal.forget()
                }
            }

            Repeater {
                id: whatIfs
                // Their number stays, so that the one being pulled stays too.
                model: 4

                WhatIfSlider {
                    required property int index

                    objectName: "whatIf" + index
                    width: supposing.width
                    focus: index === 0
                    supposition: deal.suppositions[index]
                    onMoved: at => deal.suppose(index, at)
                }
            }

            Heading {
                topPadding: Theme.gap(4)
                visible: deal.profitRows.length > 0
                text: qsTr("Profit, by finish and resale")
                font.pixelSize: Theme.bodySize
            }

            Repeater {
                model: deal.profitRows.length > 0
                       ? [{ when: qsTr("Finished"), sold: qsTr("sold"), profits: deal.profitValues }].concat(
                             deal.profitRows) : []

                Item {
                    id: row

                    required property var modelData
                    required property int index

                    width: supposing.width
                    height: Theme.gap(7)

                    Hairline { width: parent.width; visible: row.index > 0 }

                    Words {
                        anchors { left: parent.left; right: sold.left; verticalCenter: parent.verticalCenter }
                        text: row.modelData.when
                        color: row.index === 0 ? Theme.pencil : Theme.ink
                        font.pixelSize: row.index === 0 ? Theme.smallSize : Theme.bodySize
                        wrapMode: Text.NoWrap
                        elide: Text.ElideRight
                    }

                    Words {
                        id: sold
                        anchors { right: profits.left; verticalCenter: parent.verticalCenter }
                        width: Theme.gap(17)
                        text: row.modelData.sold
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }

                    Row {
                        id: profits
                        anchors { right: parent.right; verticalCenter: parent.verticalCenter }

                        Repeater {
                            model: row.modelData.profits

                            Words {
                                required property string modelData

                                objectName: row.index === 0 ? "profitValue" : "profitCell"
                                width: Theme.gap(20)
                                text: modelData
                                color: row.index === 0 ? Theme.pencil : Theme.ink
                                font.pixelSize: row.index === 0 ? Theme.smallSize : Theme.bodySize
                                horizontalAlignment: Text.AlignRight
                            }
                        }
                    }
                }
            }

            Item { width: 1; height: Theme.gap(2) }

            Repeater {
                model: deal.notes

                Words {
                    required property string modelData

                    objectName: "dealNote"
                    width: supposing.width
                    text: modelData
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                }
            }
        }
    }

    QuietLink {
        objectName: "restsOnLink"
        anchors { right: parent.right; rightMargin: page.side; top: parent.top; topMargin: Theme.gap(6) }
        width: implicitWidth
        text: qsTr("What it rests on")
        hint: "Ctrl+I"
        onClicked: page.restsOn()
    }

    RecordPanel {
        id: panel
        objectName: "panel"
        anchors {
            right: parent.right
            rightMargin: page.side
            top: parent.top
            topMargin: Theme.gap(16)
            bottom: parent.bottom
            bottomMargin: Theme.gap(4)
        }
        width: Math.min(parent.width - 2 * page.side, Theme.gap(112))
        form: form
        onClosed: whatIfs.itemAt(0).forceActiveFocus()
    }
}
