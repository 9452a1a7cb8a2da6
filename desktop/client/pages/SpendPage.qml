// Spend: bills, receipts and payments, those to be completed first; lines of the bank that wait,
// each with the best guess; the rules learnt of payees.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)
    readonly property var sheets: [spends, bank, rules]
    readonly property RecordSheet sheet: page.sheets[page.part]
    property int part: 0

    function toSheet() {
        const table = tables.itemAt(page.part);
        if (table)
            table.forceActiveFocus();
    }

    function turn(part: int) {
        form.close();
        filing.visible = false;
        page.part = part;
        page.toSheet();
    }

    function whole() {
        if (!page.sheet.onItem)
            return;
        if (page.part === 1)
            form.beginFromLine(bank.recordId);
        else
            form.begin(page.sheet.kindName, page.sheet.recordId);
        if (form.isOpen)
            panel.begin();
    }

    function add() {
        if (page.part === 1)
            page.turn(0);
        form.beginNew(page.sheet.kindName,
                      page.part === 0 ? ({ type: "receipt", spent_on: Desk.todayText }) : ({}));
        panel.begin();
    }

    function pay() {
        const known = spends.paymentOf();
        if (known.type === undefined)
            return;
        form.beginNew("spend", known);
        panel.begin();
    }

    function fetch() {
        form.close();
        filing.visible = false;
        download.open();
    }

    function file() {
        if (!bank.onItem)
            return;
        filing.text = "";
        filing.visible = true;
        filing.area.forceActiveFocus();
    }

    onActiveFocusChanged: if (activeFocus && !form.isOpen && !filing.visible && !download.isOpen) page.toSheet()

    Shortcut { sequence: "Ctrl+N"; onActivated: page.add() }
    Shortcut { sequence: "Ctrl+E"; onActivated: parts.next() }
    Shortcut { sequence: "Ctrl+I"; enabled: page.part !== 1; onActivated: page.whole() }
    Shortcut { sequence: "Ctrl+O"; enabled: !download.isOpen && !form.isNew; onActivated: page.fetch() }
    Shortcut { sequence: "Ctrl+P"; enabled: page.part === 0; onActivated: page.pay() }
    Shortcut { sequence: "Ctrl+S"; enabled: page.part === 0; onActivated: spends.turnPaper() }
    Shortcut { sequence: "Ctrl+T"; enabled: page.part === 1; onActivated: bank.takeGuess() }
    Shortcut { sequence: "Ctrl+F"; enabled: page.part === 1; onActivated: page.file() }
    Shortcut { sequence: "Ctrl+X"; enabled: page.part === 1 && !filing.visible; onActivated: bank.leaveOut() }

    MoneyHead { id: money }

    SpendSheet { id: spends }

    BankSheet { id: bank }

    RuleSheet { id: rules }

    BankDesk {
        id: download
        onBrought: page.turn(1)
    }

    SpendForm {
        id: form
        onKept: id => {
            if (page.part === 0)
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
                objectName: "spendTitle"
                text: qsTr("Spend")
                wrapMode: Text.NoWrap
            }

            FilterNote {
                sheet: page.sheet
                onCleared: page.toSheet()
            }

            Item { Layout.fillWidth: true }

            QuietLink {
                objectName: "payLink"
                visible: page.part === 0 && page.sheet.onItem
                text: qsTr("Pay it")
                hint: "Ctrl+P"
                onClicked: page.pay()
            }

            QuietLink {
                objectName: "paperLink"
                visible: page.part === 0 && page.sheet.onItem
                text: qsTr("Paper seen")
                hint: "Ctrl+S"
                onClicked: {
                    spends.turnPaper();
                    page.toSheet();
                }
            }

            QuietLink {
                objectName: "takeLink"
                visible: page.part === 1 && page.sheet.onItem
                text: qsTr("Take the guess")
                hint: "Ctrl+T"
                onClicked: {
                    bank.takeGuess();
                    page.toSheet();
                }
            }

            QuietLink {
                objectName: "fileLink"
                visible: page.part === 1 && page.sheet.onItem
                text: qsTr("File it")
                hint: "Ctrl+F"
                onClicked: page.file()
            }

            QuietLink {
                objectName: "newFromLink"
                visible: page.part === 1 && page.sheet.onItem
                text: qsTr("A new row of it")
                hint: "Enter"
                onClicked: page.whole()
            }

            QuietLink {
                objectName: "leaveLink"
                visible: page.part === 1 && page.sheet.onItem
                text: qsTr("Not ours")
                hint: "Ctrl+X"
                onClicked: {
                    bank.leaveOut();
                    page.toSheet();
                }
            }

            QuietLink {
                objectName: "fetchLink"
                visible: page.part === 1
                text: qsTr("A download\u2026")
                hint: "Ctrl+O"
                onClicked: page.fetch()
            }

            QuietLink {
                objectName: "wholeLink"
                visible: page.part !== 1 && page.sheet.onItem
                text: qsTr("All of it")
                hint: "Ctrl+I"
                onClicked: page.whole()
            }

            QuietLink {
                objectName: "addLink"
                visible: page.part !== 1
                text: page.part === 2 ? qsTr("New rule") : qsTr("New entry")
                hint: "Ctrl+N"
                onClicked: page.add()
            }
        }

        MoneyFigures {
            head: money
            barred: money.barredText
            sentences: [money.aheadText, money.unfinishedText]
            Layout.fillWidth: true
        }

        RowLayout {
            Layout.fillWidth: true

            PartLinks {
                id: parts
                objectName: "parts"
                parts: [qsTr("Bills and receipts"),
                        money.waiting > 0 ? qsTr("The bank (%1 wait)").arg(money.waiting) : qsTr("The bank"),
                        qsTr("Payee rules")]
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

        Entry {
            id: filing
            visible: false
            label: qsTr("What is it for? An item, a contract, a crew, an invoice it pays, a draw, or \u201cjob\u201d; "
                        + "Shift+Enter learns no rule")
            areaName: "fileTo"
            area.Keys.onPressed: event => {
                if (event.key === Qt.Key_Escape) {
                    filing.visible = false;
                    page.toSheet();
                    event.accepted = true;
                } else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter) {
                    event.accepted = true;
                    if (bank.fileTo(filing.text, (event.modifiers & Qt.ShiftModifier) !== 0)) {
                        filing.visible = false;
                        page.toSheet();
                    }
                }
            }
            Layout.fillWidth: true
        }

        Words {
            objectName: "nearNames"
            visible: filing.visible && filing.text !== ""
            text: visible ? bank.near(filing.text).join("   ") : ""
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
            Layout.fillWidth: true
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
                    anchors.fill: parent
                    visible: index === page.part
                    sheet: modelData
                    onOpened: page.whole()
                    nothing: [noSpend, noLines, noRules][index]
                }
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
        beside: besideEntry
        onClosed: page.toSheet()
    }

    BankPanel {
        objectName: "bankPanel"
        anchors.fill: parent
        desk: download
        onClosed: page.toSheet()
    }

    Component {
        id: besideEntry

        Column {
            spacing: Theme.gap(1)

            Words {
                width: parent.width
                visible: form.isNew && form.fits.length > 0
                text: qsTr("Lines of the bank that may be its payment; a click lets one go with it")
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }

            Repeater {
                model: form.fits

                PressArea {
                    id: fit

                    required property var modelData
                    required property int index

                    objectName: "bankFit"
                    width: parent.width
                    reach: Theme.gap(10)
                    text: modelData.words
                    onClicked: form.choose(index)

                    contentItem: Item {
                        Words {
                            id: fitAmount
                            anchors { right: parent.right; top: parent.top }
                            text: fit.modelData.amount
                            font.bold: fit.modelData.isChosen
                        }

                        Words {
                            anchors { left: parent.left; right: fitAmount.left; top: parent.top }
                            text: fit.modelData.words
                            font.bold: fit.modelData.isChosen
                            wrapMode: Text.NoWrap
                            elide: Text.ElideRight
                        }

                        Words {
                            anchors { left: parent.left; bottom: parent.bottom }
                            text: fit.modelData.isChosen ? qsTr("goes with it: %1").arg(fit.modelData.why)
                                                         : fit.modelData.why
                            color: Theme.pencil
                            font.pixelSize: Theme.smallSize
                        }
                    }
                }
            }

            Image {
                objectName: "paperPicture"
                visible: form.picture !== ""
                width: parent.width
                height: visible ? Theme.gap(44) : 0
                source: form.picture
                fillMode: Image.PreserveAspectFit
                asynchronous: true
                Accessible.name: qsTr("Picture of the paper")
            }
        }
    }

    Component {
        id: noSpend

        SheetNothing {
            head: qsTr("Nothing was spent yet")
            words: qsTr("A bill is what is owed, a payment what left the account, a receipt both at once. Enter "
                        + "the first here; those a phone begins on site come in by themselves.")
            begin: qsTr("The first entry")
            onAsked: page.add()
        }
    }

    Component {
        id: noLines

        SheetNothing {
            head: qsTr("No line of the bank waits")
            words: qsTr("Lines of a bank's download (OFX or QFX) that nobody has said what they are for stand here.")
            begin: qsTr("Bring in a download\u2026")
            onAsked: page.fetch()
        }
    }

    Component {
        id: noRules

        SheetNothing {
            head: qsTr("No rule was learnt yet")
            words: qsTr("When a line of the bank is filed, lines of the same payee are taken for the same from then "
                        + "on. Such rules stand here, to be changed or dropped.")
        }
    }
}
