// What was just kept, with undo for ten seconds; or why it was not kept.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

Rectangle {
    id: note

    readonly property bool isRefusal: JobBook.notKeptText !== ""

    visible: JobBook.keptText !== "" || isRefusal
    implicitHeight: row.implicitHeight + Theme.gap(2)
    height: visible ? implicitHeight : 0
    color: Theme.plaster
    Accessible.role: Accessible.AlertMessage
    Accessible.name: words.text

    Hairline {
        width: parent.width
        height: Theme.stroke
        color: note.isRefusal ? Theme.ink : Theme.moss
    }

    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
        anchors.leftMargin: Theme.edge
        anchors.rightMargin: Theme.gap(2)
        spacing: Theme.gap(3)
        layoutDirection: Theme.leftHand ? Qt.RightToLeft : Qt.LeftToRight

        Words {
            id: words
            objectName: "keptWords"
            text: note.isRefusal ? qsTr("Not kept. %1").arg(JobBook.notKeptText) : JobBook.keptText
            maximumLineCount: 6
            elide: Text.ElideRight
            Layout.fillWidth: true
            Layout.topMargin: Theme.gap(2)
            Layout.bottomMargin: Theme.gap(2)
        }

        ActionButton {
            objectName: "undo"
            visible: JobBook.canUndo
            reach: Theme.target
            text: qsTr("Undo")
            onClicked: JobBook.undo()
        }

        PressArea {
            objectName: "closeNote"
            visible: !JobBook.canUndo
            text: qsTr("Close")
            onClicked: JobBook.forgetKept()

            contentItem: Item {
                Sign {
                    anchors.centerIn: parent
                    name: "close"
                }
            }
        }
    }
}
