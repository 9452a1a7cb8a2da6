// Nothing to show yet: begin a job, open a book; or why the book cannot be opened.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Dialogs
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    required property PeerDesk peer
    property bool isBeginning: false
    property bool isJoining: false

    Column {
        visible: !page.isBeginning && !page.isJoining
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        anchors.margins: Theme.edge
        anchors.bottomMargin: Theme.gap(10)
        spacing: Theme.gap(3)

        Heading {
            width: parent.width
            text: JobBook.state === JobBook.InTrouble ? qsTr("The book does not open")
                : JobBook.state === JobBook.Opening ? qsTr("Opening the book")
                : JobBook.state === JobBook.NoJob ? qsTr("No job in this book yet")
                                                  : qsTr("Which house?")
        }

        Words {
            objectName: "startWords"
            width: parent.width
            bottomPadding: Theme.gap(4)
            text: JobBook.state === JobBook.InTrouble ? JobBook.trouble
                : JobBook.state === JobBook.NoJob ? qsTr("It comes with the first meeting with its peer.")
                : JobBook.state === JobBook.Opening ? ""
                    : qsTr("A job is a house under renovation, kept in a book: one file on this phone.")
        }

        ActionButton {
            objectName: "begin"
            width: parent.width
            visible: JobBook.state !== JobBook.Opening
            text: qsTr("Begin a job")
            filled: true
            onClicked: page.isBeginning = true
        }

        ActionButton {
            objectName: "joinPeer"
            width: parent.width
            visible: JobBook.state !== JobBook.Opening
            text: JobBook.state === JobBook.NoJob ? qsTr("Meet the peer") : qsTr("Join one by a code")
            onClicked: page.isJoining = true
        }

        ActionButton {
            objectName: "openBook"
            width: parent.width
            visible: JobBook.state !== JobBook.Opening
            text: qsTr("Open a book")
            onClicked: files.open()
        }

        ActionButton {
            objectName: "openDemo"
            width: parent.width
            visible: JobBook.state === JobBook.NoBook
            text: qsTr("Look at a house made up for show")
            onClicked: JobBook.openDemo()
        }
    }

    BeginPage {
        objectName: "beginPage"
        anchors.fill: parent
        visible: page.isBeginning
        onDone: page.isBeginning = false
    }

    DevicesPage {
        objectName: "joinPage"
        anchors.fill: parent
        visible: page.isJoining
        peer: page.peer
        onDone: page.isJoining = false
    }

    FileDialog {
        id: files
        title: qsTr("Open a book")
        nameFilters: [qsTr("Books (*.book)"), qsTr("All files (*)")]
        onAccepted: JobBook.open(selectedFile)
    }
}
