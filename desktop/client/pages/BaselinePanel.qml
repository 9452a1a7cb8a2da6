// Asks once before today's budget and plan become what the week compares with.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: panel

    required property BaselineForm form

    signal closed()

    visible: panel.form.isOpen
    onVisibleChanged: {
        if (visible)
            keeper.forceActiveFocus(Qt.TabFocusReason);
        else
            panel.closed();
    }
    Keys.onEscapePressed: panel.form.close()

    Rectangle {
        anchors.fill: parent
        color: Theme.belt
        opacity: 0.45

        MouseArea { anchors.fill: parent }
    }

    Rectangle {
        anchors.centerIn: parent
        width: Math.min(parent.width - Theme.gap(16), Theme.gap(150))
        height: body.implicitHeight + Theme.gap(14)
        color: Theme.paper
        border.width: Theme.hairline
        border.color: Theme.pencil

        Column {
            id: body
            anchors { fill: parent; margins: Theme.gap(7) }
            spacing: Theme.gap(3)

            Heading {
                width: parent.width
                text: qsTr("Fix the baseline?")
            }

            Repeater {
                model: panel.form.words

                Words {
                    required property string modelData
                    required property int index

                    objectName: "baselineWords"
                    width: body.width
                    text: modelData
                    font.bold: index === 0
                }
            }

            Row {
                topPadding: Theme.gap(2)
                spacing: Theme.gap(4)

                ActionButton {
                    id: keeper
                    objectName: "fixBaseline"
                    filled: true
                    reach: Theme.gap(10)
                    text: qsTr("Fix it")
                    onClicked: panel.form.keep()
                }

                ActionButton {
                    objectName: "leaveBaseline"
                    reach: Theme.gap(10)
                    text: qsTr("Not now")
                    onClicked: panel.form.close()
                }
            }
        }
    }
}
