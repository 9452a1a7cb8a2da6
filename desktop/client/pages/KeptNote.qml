// What was kept, undone or refused, at the foot of the page for a while.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

Rectangle {
    id: note

    readonly property bool isRefusal: Desk.notKeptText !== ""

    signal closed()

    visible: Desk.keptText !== "" || note.isRefusal
    width: Math.min(Theme.gap(180), row.implicitWidth + Theme.gap(8))
    height: row.implicitHeight + Theme.gap(4)
    radius: 4
    color: Theme.belt
    Accessible.role: Accessible.AlertMessage
    Accessible.name: words.text

    RowLayout {
        id: row
        anchors.centerIn: parent
        width: Math.min(implicitWidth, Theme.gap(172))
        spacing: Theme.gap(6)

        Words {
            id: words
            objectName: "keptText"
            text: note.isRefusal ? Desk.notKeptText : Desk.keptText
            color: Theme.beltInk
            Layout.maximumWidth: Theme.gap(140)
        }

        PressArea {
            objectName: "undoButton"
            visible: !note.isRefusal && Desk.undoText !== ""
            reach: Theme.gap(8)
            text: qsTr("Undo")
            onClicked: Desk.undo()

            contentItem: Words {
                text: qsTr("Undo")
                color: Theme.beltInk
                font.bold: true
                verticalAlignment: Text.AlignVCenter
                leftPadding: Theme.gap(2)
                rightPadding: Theme.gap(2)
            }
        }

        PressArea {
            objectName: "closeNote"
            visible: note.isRefusal
            reach: Theme.gap(8)
            text: qsTr("Close")
            onClicked: {
                Desk.forgetKept();
                note.closed();
            }

            contentItem: Words {
                text: qsTr("Close")
                color: Theme.beltInk
                font.bold: true
                verticalAlignment: Text.AlignVCenter
                leftPadding: Theme.gap(2)
                rightPadding: Theme.gap(2)
            }
        }
    }
}
