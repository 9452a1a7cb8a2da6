// A part of the page in lines: what, why, how much; some lead to another page. Arrows move from line
// to line, Enter goes where it leads.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look

FocusScope {
    id: part

    required property string title
    required property var lines
    property string nothing: ""
    property string foot: ""
    property int place: 0

    signal led(string key, string filter)
    signal shown(Item item)

    function move(to: int) {
        part.place = Math.max(0, Math.min(part.lines.length - 1, to));
        part.shown(rows.itemAt(part.place));
    }

    function go() {
        const line = part.lines[part.place];
        if (line && line.pageKey !== "")
            part.led(line.pageKey, line.filter || "");
    }

    implicitHeight: column.implicitHeight
    activeFocusOnTab: lines.length > 0
    onActiveFocusChanged: if (activeFocus) part.move(part.place)
    Keys.onDownPressed: event => {
        event.accepted = part.place < part.lines.length - 1;
        part.move(part.place + 1);
    }
    Keys.onUpPressed: event => {
        event.accepted = part.place > 0;
        part.move(part.place - 1);
    }
    Keys.onReturnPressed: part.go()
    Keys.onEnterPressed: part.go()

    Column {
        id: column
        width: parent.width

        Heading {
            width: parent.width
            bottomPadding: Theme.gap(2)
            text: part.title
            font.pixelSize: Theme.bodySize
        }

        Repeater {
            id: rows
            model: part.lines

            LineDelegate {
                width: column.width
                isHere: part.activeFocus && part.place === index
                onPressed: {
                    part.place = index;
                    part.forceActiveFocus();
                    part.go();
                }
            }
        }

        Hairline {
            width: parent.width
            visible: part.lines.length > 0
        }

        Words {
            width: parent.width
            visible: part.lines.length === 0
            text: part.nothing
            color: Theme.pencil
        }

        Words {
            width: parent.width
            topPadding: Theme.gap(1)
            visible: part.foot !== ""
            text: part.foot
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }
    }
}
