// A bank's download before it comes in: which file, what each of its lines would be taken for and
// why. Nothing comes in before somebody says so.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: panel

    required property BankDesk desk

    signal closed()

    function choose() {
        chooser.open();
    }

    // The next thing to press or to type.
    function toNext() {
        if (panel.desk.isWorking)
            stopper.forceActiveFocus();
        else if (panel.desk.fresh > 0)
            bringer.forceActiveFocus();
        else
            where.area.forceActiveFocus();
    }

    visible: panel.desk.isOpen
    onVisibleChanged: {
        if (visible) {
            where.text = "";
            panel.toNext();
        } else {
            panel.closed();
        }
    }
    Keys.onEscapePressed: panel.desk.isWorking ? panel.desk.stop() : panel.desk.close()
    Keys.onDownPressed: list.flick(0, -700)
    Keys.onUpPressed: list.flick(0, 700)

    Shortcut { sequence: "Ctrl+O"; enabled: panel.visible; onActivated: panel.choose() }
    Shortcut { sequence: "Ctrl+Return"; enabled: panel.visible; onActivated: panel.desk.bring() }

    Connections {
        target: panel.desk

        function onChanged() {
            if (panel.desk.isOpen)
                panel.toNext();
        }
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.belt
        opacity: 0.45

        MouseArea { anchors.fill: parent }
    }

    Rectangle {
        anchors.centerIn: parent
        width: Math.min(parent.width - Theme.gap(16), Theme.gap(230))
        height: Math.min(parent.height - Theme.gap(16), body.implicitHeight + Theme.gap(14))
        color: Theme.paper
        border.width: Theme.hairline
        border.color: Theme.pencil

        ColumnLayout {
            id: body
            anchors { fill: parent; margins: Theme.gap(7) }
            spacing: Theme.gap(3)

            Heading {
                objectName: "bankTitle"
                text: panel.desk.title
                wrapMode: Text.NoWrap
                elide: Text.ElideMiddle
                Layout.fillWidth: true
            }

            RowLayout {
                visible: !panel.desk.isWorking
                spacing: Theme.gap(4)
                Layout.fillWidth: true

                Entry {
                    id: where
                    label: qsTr("The file as it was downloaded (OFX, QFX); Enter looks into it")
                    areaName: "bankFile"
                    area.onAccepted: panel.desk.tryFile(where.text)
                    Layout.fillWidth: true
                }

                ActionButton {
                    objectName: "chooseDownload"
                    reach: Theme.gap(10)
                    text: qsTr("Choose\u2026")
                    onClicked: panel.choose()
                    Layout.alignment: Qt.AlignBottom
                }
            }

            Words {
                objectName: "bankProgress"
                visible: panel.desk.isWorking
                text: panel.desk.progressText
                color: Theme.pencil
                Layout.fillWidth: true
            }

            Words {
                objectName: "bankRefused"
                visible: text !== ""
                text: panel.desk.refused
                Layout.fillWidth: true
            }

            Words {
                objectName: "bankSum"
                visible: text !== ""
                text: panel.desk.sumText
                Layout.fillWidth: true
            }

            ListView {
                id: list
                objectName: "bankLines"
                visible: !panel.desk.isWorking && count > 0
                clip: true
                model: panel.desk.lines
                boundsBehavior: Flickable.StopAtBounds
                activeFocusOnTab: true
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredHeight: Math.min(contentHeight, Theme.gap(110))
                Layout.minimumHeight: Theme.gap(24)

                delegate: DownloadDelegate { width: list.width }
            }

            Row {
                spacing: Theme.gap(4)

                ActionButton {
                    id: bringer
                    objectName: "bringDownload"
                    visible: panel.desk.fresh > 0 && !panel.desk.isWorking
                    filled: true
                    reach: Theme.gap(10)
                    text: qsTr("Bring in the %n line(s)", "", panel.desk.fresh)
                    onClicked: panel.desk.bring()
                }

                ActionButton {
                    id: stopper
                    objectName: "stopDownload"
                    visible: panel.desk.isWorking
                    reach: Theme.gap(10)
                    text: qsTr("Stop")
                    onClicked: panel.desk.stop()
                }

                ActionButton {
                    objectName: "bringNoDownload"
                    visible: !panel.desk.isWorking
                    reach: Theme.gap(10)
                    text: panel.desk.fresh > 0 ? qsTr("Bring in nothing") : qsTr("Close")
                    onClicked: panel.desk.close()
                }
            }
        }
    }

    FileDialog {
        id: chooser
        title: qsTr("A bank's download")
        nameFilters: [qsTr("Downloads (*.ofx *.OFX *.qfx *.QFX)"), qsTr("All files (*)")]
        onAccepted: panel.desk.tryFile(selectedFile)
    }
}
