// The rows of the sheet, the cell in hand, and typing in it. Arrows move, Enter edits in place,
// letters filter.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: view

    required property Sheet sheet
    property string listName: "sheetRows"
    property string cellName: "cell"
    property string editorName: "cellEditor"
    // What stands in a sheet without rows.
    property Component nothing: null
    // Letters begin to fill in the cell, rather than to filter the rows.
    property bool typesInto: false
    property bool editing: false
    readonly property int rowHeight: Theme.gap(7)
    readonly property int firstCell: sheet.hasChips ? 1 : 0
    readonly property var columns: sheet.columns
    // On a wide screen every column is wider, up to half as much.
    readonly property real wider: Math.max(1, Math.min(1.5, width / Theme.gap(254)))
    readonly property real stretch: columnWidths()
    property var lefts: []
    property var widths: []

    signal pasteAsked()
    // Enter on a cell that is worked out.
    signal opened()

    // Widths of the columns: one takes what the others leave.
    function columnWidths(): real {
        let fixed = 0;
        for (const column of view.columns)
            fixed += Math.round(column.width * view.wider);
        return Math.max(Theme.gap(30), view.width - fixed);
    }

    function place() {
        const lefts = [], widths = [];
        let x = 0;
        for (const column of view.columns) {
            const w = column.width > 0 ? Math.round(column.width * view.wider) : view.stretch;
            lefts.push(x);
            widths.push(w);
            x += w;
        }
        view.lefts = lefts;
        view.widths = widths;
    }

    function edit(all: bool) {
        if (!view.sheet.canEdit()) {
            view.opened();
            return;
        }
        view.editing = true;
        editor.begin(view.sheet.cellText(), all);
    }

    function type(letter: string) {
        if (!view.sheet.canEdit())
            return;
        view.editing = true;
        editor.begin(letter, false);
        editor.edited();
    }

    function keep(down: int, right: int) {
        if (!view.sheet.put(editor.wanted()))
            return;
        view.leave();
        view.sheet.move(down, right, false);
    }

    function leave() {
        view.editing = false;
        editor.release();
        list.forceActiveFocus();
    }

    onStretchChanged: place()
    onColumnsChanged: place()
    Component.onCompleted: place()

    Connections {
        target: view.sheet

        function onMoved() {
            // The row above as well: it may be the heading of the group.
            list.positionViewAtIndex(Math.max(0, view.sheet.place - 1), ListView.Contain);
            list.positionViewAtIndex(view.sheet.place, ListView.Contain);
        }
    }

    Row {
        id: head

        Repeater {
            model: view.columns

            Words {
                required property var modelData
                required property int index

                width: view.widths[index] || 0
                leftPadding: Theme.gap(1)
                rightPadding: Theme.gap(2)
                text: modelData.title
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                horizontalAlignment: modelData.right ? Text.AlignRight : Text.AlignLeft
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
            }
        }
    }

    Hairline {
        y: head.height + Theme.gap(1)
        width: parent.width
        color: Theme.pencil
    }

    ListView {
        id: list
        objectName: view.listName
        anchors { fill: parent; topMargin: head.height + Theme.gap(1) + 1 }
        focus: true
        activeFocusOnTab: true
        clip: true
        model: view.sheet
        // The cell in hand is the sheet's own; the list has no current item to take the focus.
        currentIndex: -1
        reuseItems: true
        cacheBuffer: 0
        boundsBehavior: Flickable.StopAtBounds
        interactive: true
        Accessible.role: Accessible.Table
        Accessible.name: view.sheet.itemText

        Keys.onPressed: event => {
            const shift = (event.modifiers & Qt.ShiftModifier) !== 0;
            const control = (event.modifiers & Qt.ControlModifier) !== 0;
            const screen = Math.max(1, Math.floor(list.height / view.rowHeight) - 1);
            event.accepted = true;
            if (control && (event.key === Qt.Key_Return || event.key === Qt.Key_Enter))
                event.accepted = false;
            else if (event.key === Qt.Key_Down)
                view.sheet.move(1, 0, shift);
            else if (event.key === Qt.Key_Up)
                view.sheet.move(-1, 0, shift);
            else if (event.key === Qt.Key_Right)
                view.sheet.move(0, 1, shift);
            else if (event.key === Qt.Key_Left)
                view.sheet.move(0, -1, shift);
            else if (event.key === Qt.Key_PageDown)
                view.sheet.move(screen, 0, shift);
            else if (event.key === Qt.Key_PageUp)
                view.sheet.move(-screen, 0, shift);
            else if (event.key === Qt.Key_Home)
                view.sheet.toEnd(false);
            else if (event.key === Qt.Key_End)
                view.sheet.toEnd(true);
            else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter
                     || event.key === Qt.Key_F2)
                view.edit(true);
            else if (event.key === Qt.Key_Escape && view.sheet.filter === "")
                event.accepted = false;
            else if (event.key === Qt.Key_Escape)
                view.sheet.filter = "";
            else if (event.key === Qt.Key_Backspace)
                view.sheet.filter = view.sheet.filter.slice(0, -1);
            else if (event.key === Qt.Key_Delete && control)
                view.sheet.dropItems();
            else if (event.key === Qt.Key_Delete)
                view.sheet.put("");
            else if (event.key === Qt.Key_D && control)
                view.sheet.fill();
            else if (event.key === Qt.Key_C && control)
                view.sheet.copyRows();
            else if (event.key === Qt.Key_V && control)
                view.pasteAsked();
            else if (view.typesInto && !control && event.text.length === 1 && event.text > " ")
                view.type(event.text);
            else if (!view.typesInto && !control && event.text.length === 1 && event.text >= " ")
                view.sheet.filter = view.sheet.filter + event.text;
            else
                event.accepted = false;
        }

        delegate: Item {
            id: line

            required property var row
            required property int index

            objectName: row.isHeading ? "sheetHeading" : "sheetRow"
            width: list.width
            height: view.rowHeight

            Rectangle {
                anchors.fill: parent
                visible: line.row.isHeading
                color: Theme.plaster
            }

            Words {
                objectName: "headingText"
                visible: line.row.isHeading
                anchors.verticalCenter: parent.verticalCenter
                leftPadding: Theme.gap(1)
                text: line.row.heading
                font.bold: true
            }

            Words {
                visible: line.row.isHeading
                anchors.verticalCenter: parent.verticalCenter
                x: view.lefts[view.sheet.asideColumn] || 0
                leftPadding: Theme.gap(1)
                text: line.row.aside
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }

            Words {
                objectName: "headingSum"
                visible: line.row.isHeading
                anchors.verticalCenter: parent.verticalCenter
                x: view.lefts[view.sheet.sumColumn] || 0
                width: view.widths[view.sheet.sumColumn] || 0
                rightPadding: Theme.gap(2)
                text: line.row.sum
                font.bold: true
                horizontalAlignment: Text.AlignRight
            }

            Rectangle {
                anchors.fill: parent
                visible: !line.row.isHeading && line.index > Math.min(view.sheet.place, view.sheet.from) - 1
                         && line.index < Math.max(view.sheet.place, view.sheet.from) + 1
                color: Theme.plaster
                opacity: 0.7
            }

            Hairline {
                anchors.bottom: parent.bottom
                width: parent.width
            }

            Rectangle {
                visible: view.sheet.hasChips && !line.row.isHeading && (line.row.cells[0] || "") !== ""
                x: Theme.gap(1)
                anchors.verticalCenter: parent.verticalCenter
                width: Theme.gap(8)
                height: Theme.gap(5)
                radius: 3
                color: line.row.ground
                opacity: line.row.isDim ? 0.5 : 1

                Words {
                    anchors.centerIn: parent
                    text: line.row.cells[0] || ""
                    color: line.row.ink
                    font.pixelSize: Theme.smallSize
                    font.bold: true
                }
            }

            Repeater {
                model: line.row.isHeading ? 0 : view.columns.length - view.firstCell

                Words {
                    required property int index
                    readonly property int column: index + view.firstCell
                    readonly property bool isStrong: column === line.row.strongCell

                    objectName: view.cellName + column
                    x: view.lefts[column] || 0
                    width: view.widths[column] || 0
                    height: line.height
                    leftPadding: Theme.gap(1)
                    rightPadding: Theme.gap(2)
                    text: line.row.cells[column] || ""
                    color: isStrong && line.row.isBarred ? Theme.brick
                           : line.row.isDim || !view.columns[column].editable ? Theme.pencil : Theme.ink
                    font.bold: isStrong
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    verticalAlignment: Text.AlignVCenter
                    horizontalAlignment: view.columns[column].right ? Text.AlignRight : Text.AlignLeft
                    lineHeight: 1
                }
            }

            MouseArea {
                anchors.fill: parent
                onPressed: mouse => {
                    view.leave();
                    let column = 0;
                    for (let k = 0; k < view.lefts.length; ++k)
                        if (mouse.x >= view.lefts[k])
                            column = k;
                    view.sheet.place = line.index;
                    view.sheet.column = column;
                }
                onDoubleClicked: view.edit(true)
            }
        }

        // The cell in hand.
        Rectangle {
            objectName: "inHand"
            parent: list.contentItem
            z: 2
            visible: view.sheet.onItem
            x: (view.lefts[view.sheet.column] || 0) - 1
            y: view.sheet.place * view.rowHeight - 1
            width: (view.widths[view.sheet.column] || 0) + 1
            height: view.rowHeight + 1
            color: "transparent"
            border.width: list.activeFocus ? Theme.stroke : Theme.hairline
            border.color: Theme.slate
        }

        CellEditor {
            id: editor
            parent: list.contentItem
            z: 3
            visible: view.editing
            sheet: view.sheet
            x: (view.lefts[view.sheet.column] || 0) - 1
            y: view.sheet.place * view.rowHeight - 1
            width: Math.max(Theme.gap(24), (view.widths[view.sheet.column] || 0) + 1)
            height: view.rowHeight + 1
            areaName: view.editorName
            below: y - list.contentY < list.height - Theme.gap(60)
            onKept: (down, right) => view.keep(down, right)
            onDropped: view.leave()
        }
    }

    Loader {
        anchors.centerIn: parent
        width: Math.min(parent.width, Theme.gap(150))
        active: view.sheet.isEmpty
        sourceComponent: view.nothing
    }

    Words {
        anchors.centerIn: parent
        visible: view.sheet.isReady && !view.sheet.isEmpty && view.sheet.count === 0
        text: qsTr("No row has all of \u201c%1\u201d. Esc shows every row.").arg(view.sheet.filter)
        color: Theme.pencil
    }
}
