// Contracts and orders: what is signed, billed, paid and left on each, what bars paying it; changes
// asked, signed and refused; goods that are waited for.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)
    readonly property var sheets: [contracts, changes, goods]
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
        page.toSheet();
    }

    function whole() {
        if (!page.sheet.onItem)
            return;
        form.begin(page.sheet.kindName, page.sheet.recordId);
        if (form.isOpen)
            panel.begin();
    }

    function add() {
        const known = page.part === 0 ? ({ type: "subcontract" })
            : page.part === 1 ? ({ contract: contracts.itemText, asked_on: Desk.todayText })
            : ({ item: goods.itemText, ordered_on: Desk.todayText });
        form.beginNew(page.sheet.kindName, known);
        panel.begin();
    }

    function sign() {
        if (page.part === 0)
            contracts.setToday("signed_on");
        else if (page.part === 1)
            changes.sign();
        else
            goods.setToday("arrived_on");
    }

    onActiveFocusChanged: if (activeFocus && !form.isOpen) page.toSheet()

    Shortcut { sequence: "Ctrl+N"; onActivated: page.add() }
    Shortcut { sequence: "Ctrl+E"; onActivated: parts.next() }
    Shortcut { sequence: "Ctrl+I"; onActivated: page.whole() }
    Shortcut { sequence: "Ctrl+S"; onActivated: page.sign() }
    Shortcut { sequence: "Ctrl+R"; enabled: page.part === 1; onActivated: changes.refuse() }

    MoneyHead { id: money }

    ContractSheet { id: contracts }

    ChangeSheet { id: changes }

    GoodsSheet { id: goods }

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
                objectName: "contractsTitle"
                text: qsTr("Contracts and orders")
                wrapMode: Text.NoWrap
            }

            FilterNote {
                sheet: page.sheet
                onCleared: page.toSheet()
            }

            Item { Layout.fillWidth: true }

            QuietLink {
                objectName: "signLink"
                visible: page.sheet.onItem
                text: page.part === 2 ? qsTr("Arrived today") : qsTr("Signed today")
                hint: "Ctrl+S"
                onClicked: {
                    page.sign();
                    page.toSheet();
                }
            }

            QuietLink {
                objectName: "refuseLink"
                visible: page.part === 1 && page.sheet.onItem
                text: qsTr("Refused")
                hint: "Ctrl+R"
                onClicked: {
                    changes.refuse();
                    page.toSheet();
                }
            }

            QuietLink {
                objectName: "wholeLink"
                visible: page.sheet.onItem
                text: qsTr("All of it")
                hint: "Ctrl+I"
                onClicked: page.whole()
            }

            QuietLink {
                objectName: "addLink"
                text: page.part === 0 ? qsTr("New contract")
                      : page.part === 1 ? qsTr("New change") : qsTr("New delivery")
                hint: "Ctrl+N"
                onClicked: page.add()
            }
        }

        MoneyFigures {
            head: money
            barred: money.barredText
            sentences: [money.aheadText, money.askedText]
            Layout.fillWidth: true
        }

        RowLayout {
            Layout.fillWidth: true

            PartLinks {
                id: parts
                objectName: "parts"
                parts: [qsTr("Contracts"), qsTr("Changes"), qsTr("Goods")]
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

            // One for each part, so that each keeps where it was.
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
                    nothing: [noContracts, noChanges, noGoods][index]
                }
            }
        }

        SheetFoot {
            sheet: page.sheet
            barred: page.part === 0 ? contracts.barredText : ""
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
        id: noContracts

        SheetNothing {
            head: qsTr("Nothing is signed yet")
            words: qsTr("A contract says what a crew does for which sum; an order, which goods are bought. "
                        + "What is signed here is committed, and bills and payments are held against it.")
            begin: qsTr("The first contract")
            onAsked: page.add()
        }
    }

    Component {
        id: noChanges

        SheetNothing {
            head: qsTr("No change was asked for")
            words: qsTr("What is found on the way, or wished for later, is asked here with its sum and days. It "
                        + "counts from the day it is signed.")
            begin: qsTr("The first change")
            onAsked: page.add()
        }
    }

    Component {
        id: noGoods

        SheetNothing {
            head: qsTr("Nothing is waited for")
            words: qsTr("Items with days from order to delivery stand here with the day to order by, until their "
                        + "goods are there.")
        }
    }
}
