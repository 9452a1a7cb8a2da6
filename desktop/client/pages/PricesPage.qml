// Price book: prices by object and treatment, where each came from, what each is used for; edited in
// place, added, pasted.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)

    function toSheet() {
        table.forceActiveFocus();
    }

    function whole() {
        if (!prices.onItem)
            return;
        form.begin(prices.kindName, prices.recordId);
        if (form.isOpen)
            panel.begin();
    }

    function add() {
        form.beginNew(prices.kindName, { as_of: Desk.todayText });
        panel.begin();
    }

    onActiveFocusChanged: if (activeFocus && !form.isOpen && !paste.isOpen) page.toSheet()

    Shortcut { sequence: "Ctrl+N"; onActivated: page.add() }
    Shortcut { sequence: "Ctrl+I"; onActivated: page.whole() }

    PriceSheet { id: prices }

    PasteDesk {
        id: paste
        kind: "prices"
        onChanged: if (!isOpen) page.toSheet()
    }

    RecordForm {
        id: form
        onKept: id => {
            prices.show(id);
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
                objectName: "pricesTitle"
                text: qsTr("Price book")
                wrapMode: Text.NoWrap
            }

            FilterNote {
                sheet: prices
                onCleared: page.toSheet()
            }

            Item { Layout.fillWidth: true }

            QuietLink {
                objectName: "wholeLink"
                visible: prices.onItem
                text: qsTr("All of it")
                hint: "Ctrl+I"
                onClicked: page.whole()
            }

            QuietLink {
                objectName: "addLink"
                text: qsTr("New price")
                hint: "Ctrl+N"
                onClicked: page.add()
            }

            QuietLink {
                objectName: "pasteLink"
                text: qsTr("Paste rows")
                hint: "Ctrl+V"
                onClicked: paste.tryClipboard()
            }
        }

        Words {
            objectName: "pricesSum"
            text: prices.sumText
            Layout.fillWidth: true
        }

        Item {
            id: body
            Layout.fillWidth: true
            Layout.fillHeight: true

            SheetView {
                id: table
                objectName: "prices"
                anchors.fill: parent
                focus: true
                sheet: prices
                onOpened: page.whole()
                onPasteAsked: paste.tryClipboard()
                nothing: noPrices
            }
        }

        SheetFoot {
            sheet: prices
            lines: 3
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

    PastePanel {
        objectName: "pastePanel"
        anchors.fill: parent
        desk: paste
    }

    Component {
        id: noPrices

        SheetNothing {
            head: qsTr("There is no price yet")
            words: qsTr("A price says what a unit of some work costs, in material and labour, and where that was "
                        + "heard. Items of every job in this book without a price of their own are priced by it.")
            begin: qsTr("The first price")
            onAsked: page.add()
        }
    }
}
