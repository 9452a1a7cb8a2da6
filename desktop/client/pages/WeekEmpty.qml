// A job without items: what to do first.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

Column {
    id: empty

    signal scopeAsked()

    spacing: Theme.gap(4)

    Heading {
        width: parent.width
        text: qsTr("There is nothing to add up yet")
    }

    Words {
        objectName: "weekEmpty"
        width: parent.width
        text: qsTr("Enter what is to be done in each room, or paste it from a spreadsheet; then the page "
                   + "says what it will cost, when it will finish and what it will earn.")
    }

    ActionButton {
        objectName: "toScope"
        visible: Desk.hasPage("scope")
        filled: true
        reach: Theme.gap(11)
        text: qsTr("To the scope of work")
        onClicked: empty.scopeAsked()
    }
}
