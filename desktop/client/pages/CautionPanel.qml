// The caution that holds up the item in hand, to be read before its work is marked; what was found
// where it was tested, and that it was read.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: panel

    required property ScopeSheet sheet

    signal closed()

    function begin() {
        found.text = "";
        found.area.forceActiveFocus();
    }

    function keep() {
        if (panel.sheet.acknowledge(found.text))
            panel.closed();
    }

    Keys.onEscapePressed: panel.closed()

    Rectangle {
        anchors.fill: parent
        color: Theme.plaster
        border.width: Theme.hairline
        border.color: Theme.pencil

        MouseArea { anchors.fill: parent }
    }

    Flickable {
        anchors { fill: parent; margins: Theme.gap(4) }
        contentHeight: column.implicitHeight
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: column
            width: parent.width
            spacing: Theme.gap(3)

            Heading {
                objectName: "cautionAbout"
                width: parent.width
                text: panel.sheet.cautionAbout
                color: Theme.brick
                font.pixelSize: Theme.largeSize
            }

            Words {
                width: parent.width
                text: panel.sheet.itemText
                font.bold: true
            }

            Words {
                objectName: "cautionText"
                width: parent.width
                text: panel.sheet.cautionText
            }

            Words {
                width: parent.width
                text: panel.sheet.cautionSource
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }

            Entry {
                id: found
                width: parent.width
                label: qsTr("Tested? What was found")
                areaName: "cautionFound"
                area.onAccepted: panel.keep()
            }

            Row {
                spacing: Theme.gap(4)

                ActionButton {
                    objectName: "cautionRead"
                    filled: true
                    reach: Theme.gap(10)
                    text: qsTr("I have read it")
                    onClicked: panel.keep()
                }

                QuietLink {
                    objectName: "cautionClose"
                    anchors.verticalCenter: parent.verticalCenter
                    width: implicitWidth
                    text: qsTr("Close")
                    hint: "Esc"
                    onClicked: panel.closed()
                }
            }
        }
    }
}
