// What is known of the record in hand, below its sheet.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

ColumnLayout {
    id: foot

    required property Sheet sheet
    // Said first, of a payment that must not be made.
    property string barred: ""
    property int lines: 5

    spacing: Theme.gap(1)

    Hairline {
        Layout.fillWidth: true
        color: Theme.pencil
    }

    Words {
        objectName: "rowCount"
        text: foot.sheet.countText
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
        Layout.fillWidth: true
    }

    // Of one height, so that the sheet does not jump from row to row.
    Item {
        Layout.fillWidth: true
        Layout.preferredHeight: Theme.gap(6) + foot.lines * Theme.gap(5)
        clip: true

        Column {
            width: parent.width
            spacing: Theme.gap(1)

            Words {
                objectName: "inHandText"
                width: parent.width
                text: foot.sheet.itemText
                font.bold: true
                elide: Text.ElideRight
                wrapMode: Text.NoWrap
            }

            Words {
                objectName: "barredText"
                width: parent.width
                visible: text !== ""
                text: foot.barred
                color: Theme.brick
                font.bold: true
                maximumLineCount: 2
                elide: Text.ElideRight
            }

            Repeater {
                model: foot.sheet.details

                Words {
                    required property string modelData

                    objectName: "inHandDetail"
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
