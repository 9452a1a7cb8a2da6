// A scope without items: how to begin.
import QtQuick
import Ledgerboard.Look

Column {
    id: empty

    signal addAsked()
    signal pasteAsked()

    spacing: Theme.gap(4)

    Heading {
        width: parent.width
        text: qsTr("Nothing is to be done yet")
    }

    Words {
        objectName: "scopeEmpty"
        width: parent.width
        text: qsTr("Say what is to be done and where, such as \u201cKitchen: replace faucet\u201d, or copy the "
                   + "rows of a spreadsheet and paste them here: you see what is wrong with them before anything "
                   + "comes in.")
    }

    Row {
        spacing: Theme.gap(4)

        ActionButton {
            objectName: "emptyAdd"
            filled: true
            reach: Theme.gap(11)
            text: qsTr("The first item")
            onClicked: empty.addAsked()
        }

        ActionButton {
            objectName: "emptyPaste"
            reach: Theme.gap(11)
            text: qsTr("Paste rows")
            onClicked: empty.pasteAsked()
        }
    }
}
