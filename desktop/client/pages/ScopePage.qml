// Scope of work: a sheet that is edited in place, filtered by typing, grouped by space, trade or
// crew.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)

    function filterFor(text: string) {
        sheet.filter = text;
    }

    function toSheet() {
        table.forceActiveFocus();
    }

    function addItem() {
        adding.visible = true;
        adding.text = "";
        adding.area.forceActiveFocus();
    }

    function takeOff() {
        if (!sheet.onItem)
            return;
        helper.visible = true;
        helper.begin();
    }

    function readCaution() {
        if (sheet.cautionAbout === "")
            return;
        marking.close();
        caution.visible = true;
        caution.begin();
    }

    function mark() {
        if (!sheet.onItem)
            return;
        caution.visible = false;
        form.close();
        marking.begin(sheet.recordId);
        if (marking.isOpen)
            marker.begin();
    }

    // What the sheet has no column for.
    function whole() {
        if (!sheet.onItem)
            return;
        marking.close();
        form.begin("item", sheet.recordId);
        if (form.isOpen)
            panel.begin();
    }

    Shortcut { sequence: "Ctrl+N"; onActivated: page.addItem() }
    Shortcut { sequence: "Ctrl+I"; onActivated: page.whole() }
    Shortcut { sequence: "Ctrl+S"; onActivated: sheet.finish() }
    Shortcut { sequence: "Ctrl+M"; onActivated: page.mark() }
    Shortcut { sequence: "Ctrl+F"; onActivated: frozen.begin() }
    Shortcut { sequence: "Ctrl+K"; onActivated: page.readCaution() }
    Shortcut { sequence: "Ctrl+G"; onActivated: sheet.nextGroup() }
    Shortcut { sequence: "Ctrl+B"; onActivated: sheet.usePriceBook() }
    Shortcut { sequence: "Ctrl+T"; onActivated: page.takeOff() }

    ScopeSheet { id: sheet }

    RecordForm { id: form }

    MarkForm { id: marking }

    BaselineForm { id: frozen }

    PasteDesk {
        id: paste
        onChanged: if (!isOpen) page.toSheet()
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
                objectName: "scopeTitle"
                text: qsTr("Scope of work")
                wrapMode: Text.NoWrap
            }

            FilterNote {
                sheet: sheet
                onCleared: page.toSheet()
            }

            Item { Layout.fillWidth: true }

            QuietLink {
                objectName: "groupLink"
                text: sheet.groupText
                hint: "Ctrl+G"
                onClicked: {
                    sheet.nextGroup();
                    page.toSheet();
                }
            }

            QuietLink {
                objectName: "addLink"
                text: qsTr("New item")
                hint: "Ctrl+N"
                onClicked: page.addItem()
            }

            QuietLink {
                objectName: "pasteLink"
                // Room for what is filtered by.
                visible: sheet.filter === ""
                text: qsTr("Paste rows")
                hint: "Ctrl+V"
                onClicked: paste.tryClipboard()
            }

            QuietLink {
                objectName: "takeOffLink"
                visible: sheet.onItem
                text: qsTr("Take-off")
                hint: "Ctrl+T"
                onClicked: page.takeOff()
            }
        }

        Entry {
            id: adding
            visible: false
            label: qsTr("What is to be done? Such as \u201creplace faucet\u201d; in another space: "
                        + "\u201cHall bath: replace faucet\u201d")
            areaName: "newItem"
            area.onAccepted: if (sheet.addItem(area.text)) {
                adding.visible = false;
                page.toSheet();
            }
            area.Keys.onEscapePressed: {
                adding.visible = false;
                page.toSheet();
            }
            Layout.fillWidth: true
        }

        Item {
            id: body
            Layout.fillWidth: true
            Layout.fillHeight: true

            SheetView {
                id: table
                objectName: "sheet"
                anchors.fill: parent
                focus: true
                sheet: sheet
                onOpened: page.whole()
                onPasteAsked: paste.tryClipboard()

                nothing: ScopeEmpty {
                    onAddAsked: page.addItem()
                    onPasteAsked: paste.tryClipboard()
                }
            }

            // Beside the quantity, over the columns at the right of it.
            TakeOffPanel {
                id: helper
                objectName: "takeOff"
                anchors { right: parent.right; top: parent.top; bottom: parent.bottom }
                width: Theme.gap(100)
                visible: false
                sheet: sheet
                onClosed: {
                    visible = false;
                    page.toSheet();
                }
            }
        }

        ScopeFoot {
            objectName: "scopeFoot"
            sheet: sheet
            onFinishAsked: {
                sheet.finish();
                page.toSheet();
            }
            onMarkAsked: page.mark()
            onBaselineAsked: frozen.begin()
            onWholeAsked: page.whole()
            Layout.fillWidth: true
        }
    }

    CautionPanel {
        id: caution
        objectName: "caution"
        anchors {
            right: paper.right
            top: paper.top
            bottom: paper.bottom
            topMargin: body.y
        }
        width: Math.min(paper.width, Theme.gap(112))
        visible: false
        sheet: sheet
        onClosed: {
            visible = false;
            page.toSheet();
        }
    }

    MarkPanel {
        id: marker
        objectName: "markPanel"
        anchors {
            right: paper.right
            top: paper.top
            bottom: paper.bottom
            topMargin: body.y
        }
        width: Math.min(paper.width, Theme.gap(112))
        form: marking
        onClosed: page.toSheet()
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

    BaselinePanel {
        objectName: "baselinePanel"
        anchors.fill: parent
        form: frozen
        onClosed: page.toSheet()
    }

    PastePanel {
        objectName: "pastePanel"
        anchors.fill: parent
        desk: paste
    }
}
