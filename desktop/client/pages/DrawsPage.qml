// Draws: what can be asked of the lender now, line by line; the draws asked, visited and funded;
// the pictures that go with the request.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)
    readonly property var sheets: [lines, draws, visits, photos]
    readonly property RecordSheet sheet: page.sheets[page.part]
    property int part: 0

    function toSheet() {
        const table = tables.itemAt(page.part);
        if (table)
            table.forceActiveFocus();
    }

    function turn(part: int) {
        form.close();
        page.part = part;
        // The draw that waits for its visit stands first.
        if (part === 2)
            visits.toEnd(false);
        page.toSheet();
    }

    function whole() {
        if (!page.sheet.onItem || page.part === 3)
            return;
        form.begin(page.sheet.kindName, page.sheet.recordId);
        if (form.isOpen)
            panel.begin();
    }

    function add() {
        if (page.part > 1)
            return;
        form.beginNew(page.sheet.kindName, page.part === 1 ? ({ asked_on: Desk.todayText }) : ({ share_lent: "100" }));
        panel.begin();
    }

    function act() {
        if (page.part === 3) {
            photos.turnChosen();
        } else if (page.part === 2) {
            visits.allowAsAsked();
        } else if (view.ask()) {
            page.turn(1);
        }
    }

    onActiveFocusChanged: if (activeFocus && !form.isOpen) page.toSheet()

    Shortcut { sequence: "Ctrl+N"; onActivated: page.add() }
    Shortcut { sequence: "Ctrl+E"; onActivated: parts.next() }
    Shortcut { sequence: "Ctrl+I"; onActivated: page.whole() }
    Shortcut { sequence: "Ctrl+S"; onActivated: page.act() }
    Shortcut { sequence: "Ctrl+P"; enabled: view.hasLoan; onActivated: saving.ask() }

    DrawsView { id: view }

    LenderSheet { id: lines }

    DrawSheet { id: draws }

    VisitSheet { id: visits }

    PhotoSheet { id: photos }

    FileDialog {
        id: saving
        fileMode: FileDialog.SaveFile
        title: qsTr("The request to the lender")
        nameFilters: [qsTr("PDF (*.pdf)")]

        function ask() {
            saving.currentFile = "file://" + view.printName();
            saving.open();
        }

        onAccepted: view.print(selectedFile)
    }

    RecordForm {
        id: form
        onKept: id => {
            page.sheet.show(id);
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
        spacing: Theme.gap(3)

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap(6)

            Heading {
                objectName: "drawsTitle"
                text: qsTr("Draws")
                wrapMode: Text.NoWrap
            }

            FilterNote {
                sheet: page.sheet
                onCleared: page.toSheet()
            }

            Item { Layout.fillWidth: true }

            QuietLink {
                objectName: "askLink"
                visible: page.part === 3 ? photos.onItem : page.part === 2 ? visits.canAllow : view.canAsk
                text: page.part === 3 ? qsTr("For the lender")
                      : page.part === 2 ? qsTr("The rest as asked") : qsTr("Ask for it today")
                hint: "Ctrl+S"
                onClicked: page.act()
            }

            QuietLink {
                objectName: "requestLink"
                visible: view.canAsk || draws.count > 0
                text: qsTr("The request (PDF)")
                hint: "Ctrl+P"
                onClicked: saving.ask()
            }

            QuietLink {
                objectName: "wholeLink"
                visible: page.part < 3 && page.sheet.onItem
                text: qsTr("All of it")
                hint: "Ctrl+I"
                onClicked: page.whole()
            }

            QuietLink {
                objectName: "addLink"
                visible: page.part < 2
                text: page.part === 0 ? qsTr("New line") : qsTr("New draw")
                hint: "Ctrl+N"
                onClicked: page.add()
            }
        }

        MoneyFigures {
            head: view
            sentences: view.notes
            Layout.fillWidth: true
        }

        RowLayout {
            Layout.fillWidth: true

            PartLinks {
                id: parts
                objectName: "parts"
                parts: [qsTr("Lender's lines"), qsTr("Draws so far"), qsTr("What was allowed"), qsTr("Pictures")]
                open: page.part
                onTurned: part => page.turn(part)
            }

            Words {
                text: "Ctrl+E"
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                leftPadding: Theme.gap(3)
                Layout.fillWidth: true
            }
        }

        Item {
            id: body
            Layout.fillWidth: true
            Layout.fillHeight: true

            Repeater {
                id: tables
                model: page.sheets

                SheetView {
                    required property var modelData
                    required property int index

                    objectName: "sheet" + index
                    width: index === 3 ? parent.width * 0.62 : parent.width
                    height: parent.height
                    visible: index === page.part
                    sheet: modelData
                    onOpened: page.whole()
                    nothing: [noLines, noDraws, noVisits, noPictures][index]
                }
            }

            Image {
                objectName: "drawPicture"
                visible: page.part === 3 && source != ""
                anchors { right: parent.right; top: parent.top }
                width: parent.width * 0.35
                height: parent.height
                source: page.part === 3 ? photos.picture : ""
                fillMode: Image.PreserveAspectFit
                verticalAlignment: Image.AlignTop
                Accessible.name: photos.itemText
            }
        }

        SheetFoot {
            sheet: page.sheet
            lines: 4
            Layout.fillWidth: true
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

    Component {
        id: noLines

        SheetNothing {
            head: view.hasLoan ? qsTr("The lender's lines are not entered") : qsTr("There is no loan for the work")
            words: qsTr("The lender pays out by lines: carpentry, plumbing and so on, each with its amount and the share "
                        + "lent. Items of the scope point at a line: Ctrl+I in the scope, \u201cLender line\u201d. The "
                        + "loan itself is entered on the page Deal, with Ctrl+I.")
            begin: qsTr("The first line")
            onAsked: page.add()
        }
    }

    Component {
        id: noDraws

        SheetNothing {
            head: qsTr("No draw was asked for yet")
            words: qsTr("A draw is asked for when work is in place; the lender comes to look, then the money arrives.")
        }
    }

    Component {
        id: noVisits

        SheetNothing {
            head: qsTr("No line of a draw was asked for yet")
            words: qsTr("Once a draw is asked for and the lender's inspector has been, what was allowed of each line is "
                        + "entered here, and why where it was less.")
        }
    }

    Component {
        id: noPictures

        SheetNothing {
            head: qsTr("There are no pictures of the site")
            words: qsTr("A phone takes them, room by room. Those you let the lender see go with the request.")
        }
    }
}
