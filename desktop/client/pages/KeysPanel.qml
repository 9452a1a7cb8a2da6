// What the keys do, on the page that is open and everywhere.
import QtQuick
import Ledgerboard.Look

FocusScope {
    id: panel

    property string page: ""

    signal closed()

    function open() {
        panel.visible = true;
        panel.forceActiveFocus();
    }

    function close() {
        panel.visible = false;
        panel.closed();
    }

    readonly property var everywhere: [
        ["Ctrl+1, Ctrl+2\u2026", qsTr("a page of the folder")],
        ["Ctrl+0", qsTr("the list of jobs")],
        ["Ctrl+Z", qsTr("takes back what was done last")],
        ["Ctrl+Shift+Z", qsTr("does it again")],
        ["Ctrl+L", qsTr("as of another day")],
        ["Tab", qsTr("the next part of the page")],
        ["F1", qsTr("these keys")]
    ]
    readonly property var here: ({
        jobs: [
            ["\u2191 \u2193", qsTr("another job")],
            ["Enter", qsTr("opens its folder")],
            ["Ctrl+N", qsTr("a new job")],
            ["Ctrl+O", qsTr("another book")]
        ],
        week: [
            ["\u2190 \u2192", qsTr("on the curve: another day")],
            ["T", qsTr("on the curve: its table, and back")],
            ["\u2191 \u2193", qsTr("up and down the page; in a list, another line")],
            ["Enter", qsTr("on a line: the page it leads to")],
            ["Ctrl+P", qsTr("the page as one sheet (PDF)")],
            ["Ctrl+S", qsTr("keeps it as this week's review")]
        ],
        deal: [
            ["Tab", qsTr("the next thing to suppose")],
            ["\u2190 \u2192", qsTr("supposes a little less or more")],
            ["Home", qsTr("puts that one back as it stands")],
            ["Ctrl+R", qsTr("everything as it stands")],
            ["Ctrl+I", qsTr("what it rests on: price, resale, loans, days")]
        ],
        walk: [
            ["Tab", qsTr("from the notes to the draft, and back with Shift")],
            ["\u2191 \u2193", qsTr("another row; its sentence shows in the notes")],
            ["Enter", qsTr("corrects the row")],
            [qsTr("Space, Del"), qsTr("drops the row, or takes it back in")],
            ["Ctrl+Enter", qsTr("keeps what was not dropped")],
            ["Ctrl+O", qsTr("a file of notes")]
        ],
        alternates: [
            ["\u2191 \u2193", qsTr("another alternate")],
            ["\u2190 \u2192", qsTr("another of its options")],
            ["Enter", qsTr("decides for the option in hand; then say why")],
            ["C", qsTr("carries it: it counts until it is decided")],
            ["Ctrl+E", qsTr("asks for the change order a decision wants")],
            ["Ctrl+N", qsTr("a new alternate; then its options, until Esc")],
            ["Ctrl+Shift+N", qsTr("an option more")],
            ["Ctrl+I", qsTr("all of the option; with Shift, of the alternate")],
            ["Ctrl+Del", qsTr("drops the option; with Shift, the alternate")],
            ["T", qsTr("the table behind the picture, and back")]
        ],
        devices: [
            ["\u2191 \u2193", qsTr("another device")],
            ["Ctrl+S", qsTr("starts or stops the peer on this computer")],
            ["Ctrl+M", qsTr("meets the peer now")],
            ["Ctrl+N", qsTr("opens a way in for another device")],
            ["Del", qsTr("shuts the device in hand out; twice, to be sure")],
            ["Esc", qsTr("puts the way in away")]
        ],
        prices: [
            ["\u2190 \u2191 \u2192 \u2193", qsTr("another cell; with Shift, several rows")],
            ["Enter, F2", qsTr("edits the cell; Enter keeps, Esc leaves it")],
            [qsTr("Letters"), qsTr("filter the rows; Backspace and Esc undo that")],
            ["Ctrl+N", qsTr("a new price")],
            ["Ctrl+I", qsTr("all that is known of it")],
            ["Ctrl+V", qsTr("brings in rows copied from a spreadsheet")],
            ["Ctrl+C", qsTr("copies the rows for a spreadsheet")],
            ["Ctrl+Del", qsTr("drops the price")]
        ],
        punch: [
            ["\u2190 \u2191 \u2192 \u2193", qsTr("another cell; with Shift, several rows")],
            ["Enter, F2", qsTr("edits the cell; Enter keeps, Esc leaves it")],
            [qsTr("Letters"), qsTr("filter the rows; Backspace and Esc undo that")],
            ["Ctrl+S", qsTr("accepts it: it was looked at and is right")],
            ["Ctrl+R", qsTr("sends it back, with what is not right")],
            ["Ctrl+G", qsTr("by space or by crew")],
            ["Ctrl+O", qsTr("open only, and all of it")],
            ["Ctrl+N", qsTr("a new punch item")],
            ["Ctrl+I", qsTr("all that is known of it")],
            ["Ctrl+P", qsTr("the sheets for the crew leads (PDF)")]
        ],
        schedule: [
            ["\u2191 \u2193", qsTr("another item; its days stand at the foot")],
            ["Enter", qsTr("takes the item in hand, and lets it go")],
            ["\u2190 \u2192", qsTr("in hand: a day sooner or later; with Shift, five")],
            ["Esc", qsTr("in hand: puts it back; else every row")],
            [qsTr("Letters"), qsTr("filter the rows; Backspace and Esc undo that")],
            ["Ctrl+G", qsTr("by space or by crew")],
            ["Ctrl+O", qsTr("open work only, and all of it")],
            ["Ctrl+T", qsTr("the table behind the lines, and back")],
            ["Ctrl+J", qsTr("links what starts after it; with the mouse, pull the end of its line")],
            ["Ctrl+I", qsTr("its links: days between, another kind, or none")],
            ["Ctrl+U", qsTr("links items in the usual order of the trades")],
            ["Ctrl+K", qsTr("keeps these days as the planned ones")],
            [qsTr("Ctrl and +, \u2212"), qsTr("wider and narrower days")]
        ],
        contracts: [
            ["Ctrl+E", qsTr("contracts, changes, goods")],
            ["\u2190 \u2191 \u2192 \u2193", qsTr("another cell; with Shift, several rows")],
            ["Enter, F2", qsTr("edits the cell; on a figure, all of the row")],
            [qsTr("Letters"), qsTr("filter the rows; Backspace and Esc undo that")],
            ["Ctrl+I", qsTr("all of the row, field by field")],
            ["Ctrl+N", qsTr("a new one")],
            ["Ctrl+S", qsTr("signed today; goods: arrived today")],
            ["Ctrl+R", qsTr("a change: refused today")],
            ["Ctrl+C", qsTr("copies the rows for a spreadsheet")],
            ["Ctrl+Del", qsTr("drops the row")]
        ],
        spend: [
            ["Ctrl+E", qsTr("bills and receipts, the bank, payee rules")],
            ["Enter, F2", qsTr("edits the cell; on a figure, all of the row")],
            [qsTr("Letters"), qsTr("filter the rows; Backspace and Esc undo that")],
            ["Ctrl+N", qsTr("a new entry; Ctrl+Enter keeps it")],
            ["Ctrl+I", qsTr("all of the row, field by field")],
            ["Ctrl+P", qsTr("an invoice: enters its payment")],
            ["Ctrl+S", qsTr("its paper was seen, or was not")],
            ["Ctrl+O", qsTr("the bank: brings in a download (OFX, QFX)")],
            ["Ctrl+T", qsTr("the bank: takes the guess")],
            ["Ctrl+F", qsTr("the bank: files the line to what you name")],
            ["Enter", qsTr("the bank: a new row of the line")],
            ["Ctrl+X", qsTr("the bank: the line is not ours")],
            ["Ctrl+Del", qsTr("drops the row")]
        ],
        draws: [
            ["Ctrl+E", qsTr("the lender's lines, draws so far, what was allowed, pictures")],
            ["Enter, F2", qsTr("edits the cell; on a figure, all of the row")],
            [qsTr("Letters"), qsTr("filter the rows; Backspace and Esc undo that")],
            ["Ctrl+S", qsTr("asks for what can be drawn; what was allowed: the rest as asked; a picture: for the lender, or not")],
            ["Ctrl+P", qsTr("the request to the lender (PDF)")],
            ["Ctrl+I", qsTr("all of the row, field by field")],
            ["Ctrl+N", qsTr("a new one")],
            ["Ctrl+Del", qsTr("drops the row")]
        ],
        closing: [
            ["Tab", qsTr("the next part of the page")],
            ["\u2191 \u2193", qsTr("up and down the page; in a list, another line")],
            ["Enter", qsTr("on a line: the page it leads to")]
        ],
        scope: [
            ["\u2190 \u2191 \u2192 \u2193", qsTr("another cell; with Shift, several rows")],
            ["Enter, F2", qsTr("edits the cell; Enter keeps, Esc leaves it")],
            [qsTr("Letters"), qsTr("filter the rows; Backspace and Esc undo that")],
            ["Ctrl+G", qsTr("groups by space, trade, crew, or not")],
            ["Ctrl+D", qsTr("fills the rows chosen with the top one's cell")],
            ["Ctrl+C", qsTr("copies the rows for a spreadsheet")],
            ["Ctrl+V", qsTr("brings in rows copied from a spreadsheet")],
            ["Ctrl+N", qsTr("a new item in this space")],
            ["Del", qsTr("clears the cell")],
            ["Ctrl+Del", qsTr("drops the item")],
            ["Ctrl+I", qsTr("more of the item: contract, lender line, lead days")],
            ["Ctrl+S", qsTr("finished today")],
            ["Ctrl+M", qsTr("how far it is: a percent, a count, its steps")],
            ["Ctrl+F", qsTr("fixes the baseline, which the week compares with")],
            ["Ctrl+K", qsTr("the caution that is open on the item")],
            ["Ctrl+B", qsTr("the price book's price, not its own")],
            ["Ctrl+T", qsTr("take-off: the quantity from sizes")]
        ]
    })[panel.page] || []

    visible: false
    Keys.onPressed: event => {
        panel.close();
        event.accepted = true;
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.belt
        opacity: 0.45

        MouseArea {
            anchors.fill: parent
            onClicked: panel.close()
        }
    }

    Rectangle {
        anchors.centerIn: parent
        width: Math.min(parent.width - Theme.gap(20), Theme.gap(210))
        height: columns.implicitHeight + Theme.gap(16)
        color: Theme.paper
        border.width: Theme.hairline
        border.color: Theme.pencil

        Row {
            id: columns
            x: Theme.gap(8)
            y: Theme.gap(7)
            width: parent.width - Theme.gap(16)
            spacing: Theme.gap(10)

            Repeater {
                model: [{ title: qsTr("On this page"), keys: panel.here },
                        { title: qsTr("Everywhere"), keys: panel.everywhere }]

                Column {
                    id: part

                    required property var modelData

                    visible: modelData.keys.length > 0
                    width: (columns.width - columns.spacing) / 2
                    spacing: Theme.gap(2)

                    Heading {
                        text: part.modelData.title
                        font.pixelSize: Theme.largeSize
                    }

                    Repeater {
                        model: part.modelData.keys

                        Row {
                            id: line

                            required property var modelData

                            spacing: Theme.gap(3)

                            Words {
                                width: Theme.gap(27)
                                text: line.modelData[0]
                                font.bold: true
                                font.pixelSize: Theme.smallSize
                                wrapMode: Text.NoWrap
                            }

                            Words {
                                width: part.width - Theme.gap(30)
                                text: line.modelData[1]
                                font.pixelSize: Theme.smallSize
                            }
                        }
                    }
                }
            }
        }
    }
}
