// What the rows come to, and what is known of the item in hand: its price and where that is from.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

ColumnLayout {
    id: foot

    required property ScopeSheet sheet

    signal finishAsked()
    signal markAsked()
    signal baselineAsked()
    signal wholeAsked()

    spacing: Theme.gap(1)

    Hairline {
        Layout.fillWidth: true
        color: Theme.pencil
    }

    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap(8)

        Words {
            objectName: "countText"
            text: foot.sheet.countText
            color: Theme.pencil
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
            Layout.fillWidth: true
        }

        QuietLink {
            objectName: "baselineLink"
            visible: !foot.sheet.isEmpty
            text: qsTr("Fix the baseline")
            hint: "Ctrl+F"
            onClicked: foot.baselineAsked()
        }

        Words {
            text: qsTr("Lines by today's prices")
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        Words {
            objectName: "lineSum"
            text: foot.sheet.lineSum
            font.bold: true
            font.family: Theme.slab
        }

        Words {
            visible: foot.sheet.hasBaseline
            text: qsTr("Budget now")
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        Words {
            objectName: "budgetSum"
            visible: foot.sheet.hasBaseline
            text: foot.sheet.budgetSum
            font.bold: true
            font.family: Theme.slab
        }
    }

    // Of one height, so that the sheet does not jump from item to item.
    Item {
        Layout.fillWidth: true
        Layout.preferredHeight: Theme.gap(21)
        clip: true

        Column {
            width: parent.width
            spacing: Theme.gap(1)

            RowLayout {
                width: parent.width
                spacing: Theme.gap(6)

                Words {
                    objectName: "itemText"
                    text: foot.sheet.itemText
                    font.bold: true
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    Layout.fillWidth: true
                }

                QuietLink {
                    objectName: "finishLink"
                    visible: foot.sheet.onItem
                    text: qsTr("Finished today")
                    hint: "Ctrl+S"
                    onClicked: foot.finishAsked()
                }

                QuietLink {
                    objectName: "markLink"
                    visible: foot.sheet.onItem
                    text: qsTr("How far")
                    hint: "Ctrl+M"
                    onClicked: foot.markAsked()
                }

                QuietLink {
                    objectName: "wholeLink"
                    visible: foot.sheet.onItem
                    text: qsTr("More of it")
                    hint: "Ctrl+I"
                    onClicked: foot.wholeAsked()
                }
            }

            Repeater {
                model: foot.sheet.details

                Words {
                    required property string modelData

                    objectName: "itemDetail"
                    width: foot.width
                    text: modelData
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    elide: Text.ElideRight
                    maximumLineCount: 2
                }
            }
        }
    }
}
