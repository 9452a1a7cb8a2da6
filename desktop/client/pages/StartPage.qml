// Nothing is open, or a book does not open: what is the matter, and what to do next.
import QtQuick
import QtQuick.Dialogs
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property bool inTrouble: Desk.state === Desk.InTrouble

    Column {
        anchors.centerIn: parent
        width: Theme.gap(150)
        spacing: Theme.gap(4)
        visible: Desk.state !== Desk.Opening

        Heading {
            objectName: "startTitle"
            width: parent.width
            text: page.inTrouble ? Desk.troubleHead : "Ledgerboard"
            font.pixelSize: page.inTrouble ? Theme.titleSize : Theme.figureSize
        }

        Words {
            objectName: "troubleText"
            width: parent.width
            text: page.inTrouble ? Desk.trouble
                                 : qsTr("The numbers of a house under renovation, from the first walk to the "
                                        + "sale: one book for all your jobs, one file on this computer.")
        }

        Words {
            width: parent.width
            visible: page.inTrouble && Desk.isThere
            text: qsTr("Nothing in it was changed.")
            color: Theme.pencil
        }

        Item { width: 1; height: Theme.gap(2) }

        NewJobForm {
            objectName: "newJobForm"
            focus: true
            width: parent.width
            visible: !page.inTrouble
        }

        Row {
            spacing: Theme.gap(4)

            ActionButton {
                objectName: "tryAgain"
                visible: page.inTrouble
                filled: true
                reach: Theme.gap(11)
                text: qsTr("Try again")
                onClicked: Desk.openAgain()
            }

            ActionButton {
                objectName: "openBook"
                reach: Theme.gap(11)
                text: qsTr("Open a book\u2026")
                onClicked: chooser.open()
            }

            ActionButton {
                objectName: "openDemo"
                reach: Theme.gap(11)
                text: qsTr("Look at a house made up for show")
                onClicked: Desk.openDemo()
            }

            ActionButton {
                objectName: "leaveBook"
                visible: page.inTrouble
                reach: Theme.gap(11)
                text: qsTr("Begin another")
                onClicked: Desk.close()
            }
        }
    }

    Words {
        anchors.centerIn: parent
        visible: Desk.state === Desk.Opening
        text: qsTr("Opening the book\u2026")
        color: Theme.pencil
    }

    FileDialog {
        id: chooser
        title: qsTr("Open a book")
        nameFilters: [qsTr("Books (*.book)"), qsTr("All files (*)")]
        onAccepted: Desk.open(selectedFile)
    }
}
