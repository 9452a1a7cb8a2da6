// Punch list: what is to be put right, by space or crew; a look accepts it or sends it back; the
// sheets for crew leads.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)

    function toSheet() {
        back.visible = false;
        table.forceActiveFocus();
    }

    function whole() {
        if (!punch.onItem)
            return;
        form.begin(punch.kindName, punch.recordId);
        if (form.isOpen)
            panel.begin();
    }

    function add() {
        form.beginNew(punch.kindName, { space: punch.spaceText, crew: punch.crewText,
                                        found_on: Desk.todayText });
        panel.begin();
    }

    function sendBack() {
        if (!punch.onItem)
            return;
        back.visible = true;
        back.text = "";
        back.area.forceActiveFocus();
    }

    onActiveFocusChanged: if (activeFocus && !form.isOpen && !back.visible) page.toSheet()

    Shortcut { sequence: "Ctrl+N"; onActivated: page.add() }
    Shortcut { sequence: "Ctrl+G"; onActivated: punch.nextGroup() }
    Shortcut { sequence: "Ctrl+O"; onActivated: punch.turnOpen() }
    Shortcut { sequence: "Ctrl+I"; onActivated: page.whole() }
    Shortcut { sequence: "Ctrl+S"; onActivated: punch.accept() }
    Shortcut { sequence: "Ctrl+R"; onActivated: page.sendBack() }
    Shortcut { sequence: "Ctrl+P"; onActivated: printer.ask() }

    PunchSheet {
        id: punch
        objectName: "punchSheet"
    }

    RecordForm {
        id: form
        onKept: id => {
            punch.show(id);
            page.toSheet();
        }
    }

    ColumnLayout {
        id: paper
        anchors {
            fill: parent
            leftMargin: page.side
            rightMargin: page.side
            topMargin: Theme.gap(6)
            bottomMargin: Theme.gap(4)
        }
        spacing: Theme.gap(2)

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap(6)

            Heading {
                objectName: "punchTitle"
                text: qsTr("Punch list")
                wrapMode: Text.NoWrap
            }

            FilterNote {
                sheet: punch
                onCleared: page.toSheet()
            }

            Item { Layout.fillWidth: true }

            QuietLink {
                objectName: "acceptLink"
                visible: punch.onItem
                text: qsTr("Accepted")
                hint: "Ctrl+S"
                onClicked: {
                    punch.accept();
                    page.toSheet();
                }
            }

            QuietLink {
                objectName: "backLink"
                visible: punch.onItem
                text: qsTr("Not right")
                hint: "Ctrl+R"
                onClicked: page.sendBack()
            }

            QuietLink {
                objectName: "punchGroup"
                text: punch.groupText
                hint: "Ctrl+G"
                onClicked: {
                    punch.nextGroup();
                    page.toSheet();
                }
            }

            QuietLink {
                objectName: "punchOpen"
                text: punch.openOnly ? qsTr("All of it") : qsTr("Open only")
                hint: "Ctrl+O"
                onClicked: {
                    punch.turnOpen();
                    page.toSheet();
                }
            }

            QuietLink {
                objectName: "addLink"
                text: qsTr("New")
                hint: "Ctrl+N"
                onClicked: page.add()
            }

            QuietLink {
                objectName: "printLink"
                text: qsTr("For the crews")
                hint: "Ctrl+P"
                onClicked: printer.ask()
            }
        }

        Words {
            objectName: "punchSum"
            text: punch.sumText
            elide: Text.ElideRight
            maximumLineCount: 2
            Layout.fillWidth: true
        }

        Item {
            id: body
            Layout.fillWidth: true
            Layout.fillHeight: true

            SheetView {
                id: table
                objectName: "punch"
                anchors.fill: parent
                focus: true
                sheet: punch
                onOpened: page.whole()
                nothing: noPunch
            }
        }

        Entry {
            id: back
            visible: false
            label: qsTr("What is not right yet? Enter sends it back, Esc leaves it.")
            areaName: "backEntry"
            area.Keys.onReturnPressed: if (punch.sendBack(area.text)) page.toSheet()
            area.Keys.onEnterPressed: if (punch.sendBack(area.text)) page.toSheet()
            area.Keys.onEscapePressed: page.toSheet()
            Layout.fillWidth: true
        }

        RowLayout {
            spacing: Theme.gap(6)
            Layout.fillWidth: true

            SheetFoot {
                sheet: punch
                lines: 5
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignTop
            }

            // Of one height with or without, so that the sheet does not jump.
            Row {
                id: pictures
                spacing: Theme.gap(4)
                Layout.preferredHeight: Math.round(Math.min(Theme.gap(72), page.height * 0.27))
                Layout.alignment: Qt.AlignTop

                Repeater {
                    model: [{ source: punch.beforePicture, text: punch.beforeText, name: "before" },
                            { source: punch.afterPicture, text: punch.afterText, name: "after" }]

                    Column {
                        id: picture

                        required property var modelData

                        spacing: Theme.gap(1)
                        visible: modelData.source !== ""

                        Image {
                            objectName: "punchPicture-" + picture.modelData.name
                            height: pictures.height - Theme.gap(6)
                            width: Math.round(height * 4 / 3)
                            source: picture.modelData.source
                            fillMode: Image.PreserveAspectFit
                            asynchronous: false
                            Accessible.role: Accessible.Graphic
                            Accessible.name: picture.modelData.text
                        }

                        Words {
                            objectName: "punchPictureText"
                            width: parent.width
                            text: picture.modelData.text
                            color: Theme.pencil
                            font.pixelSize: Theme.smallSize
                            wrapMode: Text.NoWrap
                            elide: Text.ElideRight
                        }
                    }
                }
            }
        }
    }

    RecordPanel {
        id: panel
        objectName: "panel"
        anchors {
            right: paper.right
            top: paper.top
            bottom: paper.bottom
            topMargin: body.y
        }
        width: Math.min(paper.width, Theme.gap(112))
        form: form
        onClosed: page.toSheet()
    }

    FileDialog {
        id: printer
        title: qsTr("The sheets for the crew leads")
        fileMode: FileDialog.SaveFile
        nameFilters: [qsTr("PDF (*.pdf)")]

        function ask() {
            printer.currentFile = "file://" + punch.printName();
            printer.open();
        }

        onAccepted: punch.print(selectedFile)
    }

    Component {
        id: noPunch

        SheetNothing {
            head: punch.openOnly ? qsTr("Nothing is left to put right")
                                 : qsTr("Nothing was found yet")
            words: punch.openOnly ? qsTr("What is found on a walk through the rooms stands here, with who puts "
                                         + "it right and by when, until a look accepts it. Ctrl+O shows what "
                                         + "was accepted.")
                                  : qsTr("What is found on a walk through the rooms stands here, with who puts "
                                         + "it right and by when, until a look accepts it.")
            begin: qsTr("A punch item")
            onAsked: page.add()
        }
    }
}
