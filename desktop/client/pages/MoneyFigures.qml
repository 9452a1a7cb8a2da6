// How the money stands, in a row of figures, with what is of concern below.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

Column {
    id: figures

    required property var head
    // Sentences below: those that speak of a payment that must not be made are barred.
    property string barred: ""
    property var sentences: []

    spacing: Theme.gap(2)

    Row {
        width: parent.width

        Repeater {
            model: figures.head.figures

            Column {
                id: one

                required property var modelData

                width: figures.width / 5

                Words {
                    width: parent.width
                    text: one.modelData.name
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                }

                Heading {
                    objectName: "moneyFigure"
                    text: one.modelData.figure
                    font.pixelSize: Theme.largeSize
                    wrapMode: Text.NoWrap
                }

                Words {
                    width: parent.width
                    text: one.modelData.rest
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                }
            }
        }
    }

    Words {
        objectName: "barredOwed"
        width: parent.width
        visible: text !== ""
        text: figures.barred
        color: Theme.brick
        font.bold: true
    }

    Words {
        objectName: "moneySentence"
        width: parent.width
        visible: text !== ""
        text: figures.sentences.filter(sentence => sentence !== "").join("  ")
    }
}
