// What the rows come to, and what is known of the item in hand: its price and where that is from.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

ColumnLayout {
    id: foot

    required property ScopeSheet sheet

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
            Layout.fillWidth: true
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
        Layout.preferredHeight: Theme.gap(19)
        clip: true

        Column {
            width: parent.width
            spacing: Theme.gap(1)

            Words {
                objectName: "itemText"
                width: parent.width
                text: foot.sheet.itemText
                font.bold: true
                elide: Text.ElideRight
                wrapMode: Text.NoWrap
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
