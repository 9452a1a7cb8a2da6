// Rows from a spreadsheet before they come in: what would come, what is wrong and where. Nothing
// comes in before somebody says so.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: panel

    required property PasteDesk desk

    visible: panel.desk.isOpen
    onVisibleChanged: if (visible) panel.forceActiveFocus()
    Keys.onEscapePressed: panel.desk.close()
    Keys.onDownPressed: list.flick(0, -700)
    Keys.onUpPressed: list.flick(0, 700)

    Rectangle {
        anchors.fill: parent
        color: Theme.belt
        opacity: 0.45

        MouseArea { anchors.fill: parent }
    }

    Rectangle {
        anchors.centerIn: parent
        width: Math.min(parent.width - Theme.gap(16), Theme.gap(260))
        height: Math.min(parent.height - Theme.gap(16),
                         body.implicitHeight + Theme.gap(14))
        color: Theme.paper
        border.width: Theme.hairline
        border.color: Theme.pencil

        ColumnLayout {
            id: body
            anchors { fill: parent; margins: Theme.gap(7) }
            spacing: Theme.gap(3)

            Heading {
                objectName: "pasteTitle"
                text: panel.desk.title
                Layout.fillWidth: true
            }

            Words {
                objectName: "pasteRefused"
                visible: text !== ""
                text: panel.desk.refused
                Layout.fillWidth: true
            }

            Words {
                objectName: "pasteGood"
                visible: text !== ""
                text: qsTr("Can come in: %1.").arg(panel.desk.goodText)
                Layout.fillWidth: true
            }

            Words {
                visible: text !== ""
                text: panel.desk.headingsText
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                Layout.fillWidth: true
            }

            Words {
                objectName: "pasteWrong"
                visible: panel.desk.wrong > 0
                text: qsTr("%n row(s) with something wrong:", "", panel.desk.wrong)
                font.bold: true
                Layout.fillWidth: true
            }

            ListView {
                id: list
                objectName: "pasteProblems"
                visible: panel.desk.wrong > 0
                clip: true
                model: panel.desk.problems
                boundsBehavior: Flickable.StopAtBounds
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredHeight: Math.min(contentHeight, Theme.gap(100))
                Layout.minimumHeight: Theme.gap(24)

                delegate: Item {
                    id: line

                    required property var modelData

                    width: list.width
                    height: row.implicitHeight + Theme.gap(3)

                    Hairline { width: parent.width }

                    RowLayout {
                        id: row
                        anchors {
                            left: parent.left
                            right: parent.right
                            verticalCenter: parent.verticalCenter
                        }
                        spacing: Theme.gap(4)

                        Words {
                            text: line.modelData.row
                            color: Theme.pencil
                            font.pixelSize: Theme.smallSize
                            Layout.preferredWidth: Theme.gap(16)
                            Layout.alignment: Qt.AlignTop
                        }

                        Words {
                            text: line.modelData.column
                            font.pixelSize: Theme.smallSize
                            font.bold: true
                            Layout.preferredWidth: Theme.gap(28)
                            Layout.alignment: Qt.AlignTop
                        }

                        Column {
                            Layout.fillWidth: true

                            Words {
                                objectName: "problemText"
                                width: parent.width
                                text: line.modelData.what
                                font.pixelSize: Theme.smallSize
                            }

                            Words {
                                width: parent.width
                                text: line.modelData.content
                                color: Theme.pencil
                                font.pixelSize: Theme.smallSize
                                wrapMode: Text.NoWrap
                                elide: Text.ElideRight
                            }
                        }
                    }
                }
            }

            Row {
                spacing: Theme.gap(4)

                ActionButton {
                    objectName: "bringNothing"
                    focus: true
                    reach: Theme.gap(10)
                    filled: panel.desk.good === 0
                    text: panel.desk.good === 0 ? qsTr("Close") : qsTr("Bring in nothing")
                    onClicked: panel.desk.close()
                }

                ActionButton {
                    objectName: "bringGood"
                    visible: panel.desk.good > 0 && !panel.desk.isWorking && panel.desk.refused === ""
                    filled: panel.desk.wrong === 0
                    reach: Theme.gap(10)
                    text: panel.desk.wrong === 0 ? qsTr("Bring them in")
                                                 : qsTr("Bring in the %n that are right", "",
                                                        panel.desk.good)
                    onClicked: panel.desk.bring()
                }

                ActionButton {
                    objectName: "copyWrong"
                    visible: panel.desk.wrong > 0
                    reach: Theme.gap(10)
                    text: qsTr("Copy the wrong rows")
                    onClicked: panel.desk.copyWrong()
                }
            }
        }
    }
}
