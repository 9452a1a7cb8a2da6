// The questions an owner asks every week, each with its answer.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look

FocusScope {
    id: part

    required property var answers

    signal shown(Item item)

    implicitHeight: column.implicitHeight
    activeFocusOnTab: answers.length > 0
    onActiveFocusChanged: if (activeFocus) part.shown(this)

    Column {
        id: column
        width: parent.width

        Heading {
            width: parent.width
            bottomPadding: Theme.gap(2)
            text: qsTr("Asked every week")
            font.pixelSize: Theme.bodySize
        }

        Repeater {
            model: part.answers

            Item {
                id: answer

                required property var modelData

                objectName: "answer"
                width: column.width
                height: row.implicitHeight + Theme.gap(3)

                Hairline { width: parent.width }

                RowLayout {
                    id: row
                    anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
                    spacing: Theme.gap(6)

                    Words {
                        text: answer.modelData.what
                        font.bold: true
                        Layout.preferredWidth: Theme.gap(80)
                        Layout.alignment: Qt.AlignTop
                    }

                    Words {
                        text: answer.modelData.why
                        Layout.fillWidth: true
                        Layout.alignment: Qt.AlignTop
                    }
                }
            }
        }

        Hairline { width: parent.width }
    }

    Rectangle {
        anchors.fill: parent
        anchors.margins: -Theme.gap(2)
        color: "transparent"
        visible: part.activeFocus
        border.width: Theme.stroke
        border.color: Theme.slate
    }
}
