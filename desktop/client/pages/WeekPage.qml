// This week: read in two minutes, each figure with its spread and how it moved since the last
// review, and what to do on Monday.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    signal pageAsked(string key)
    signal scopeAsked(string filter)

    readonly property real side: Theme.gap(9)
    readonly property real inner: width - 2 * side

    function scrollBy(pixels: real) {
        flick.contentY = Math.max(0, Math.min(flick.contentHeight - flick.height,
                                              flick.contentY + pixels));
    }

    // Brings a part that took the focus into view.
    function show(item: Item) {
        if (!item)
            return;
        const top = item.mapToItem(flick.contentItem, 0, 0).y - Theme.gap(4);
        const bottom = top + item.height + Theme.gap(8);
        if (top < flick.contentY)
            flick.contentY = Math.max(0, top);
        else if (bottom > flick.contentY + flick.height)
            flick.contentY = Math.min(Math.max(0, top), bottom - flick.height);
    }

    Shortcut { sequence: "Ctrl+P"; onActivated: printer.ask() }
    Shortcut { sequence: "Ctrl+S"; onActivated: week.keepReview() }
    Keys.onDownPressed: page.scrollBy(Theme.gap(20))
    Keys.onUpPressed: page.scrollBy(-Theme.gap(20))
    Keys.onPressed: event => {
        if (event.key === Qt.Key_PageDown)
            page.scrollBy(flick.height * 0.9);
        else if (event.key === Qt.Key_PageUp)
            page.scrollBy(-flick.height * 0.9);
        else if (event.key === Qt.Key_Home)
            flick.contentY = 0;
        else if (event.key === Qt.Key_End)
            page.scrollBy(flick.contentHeight);
        else
            return;
        event.accepted = true;
    }

    WeekView { id: week }

    Words {
        objectName: "weekTrouble"
        x: page.side
        y: Theme.gap(10)
        width: page.inner
        visible: !week.isReady
        text: week.trouble !== "" ? week.trouble : qsTr("Adding up the week\u2026")
        color: Theme.pencil
    }

    WeekEmpty {
        x: page.side
        y: Theme.gap(10)
        width: Math.min(page.inner, Theme.gap(160))
        visible: week.isEmpty
        onScopeAsked: page.scopeAsked("")
    }

    Flickable {
        id: flick
        objectName: "weekFlick"
        anchors.fill: parent
        visible: week.isReady && !week.isEmpty
        contentWidth: width
        contentHeight: column.implicitHeight + Theme.gap(16)
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        ColumnLayout {
            id: column
            x: page.side
            y: Theme.gap(6)
            width: page.inner
            spacing: Theme.gap(5)

            RowLayout {
                Layout.fillWidth: true
                spacing: Theme.gap(6)

                Heading {
                    objectName: "weekTitle"
                    text: week.title
                    Layout.fillWidth: true
                }

                Words {
                    objectName: "weekWhen"
                    text: week.when
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.NoWrap
                }

                QuietLink {
                    objectName: "printWeek"
                    text: qsTr("One sheet")
                    hint: "Ctrl+P"
                    onClicked: printer.ask()
                }

                QuietLink {
                    objectName: "keepReview"
                    text: qsTr("Keep as review")
                    hint: "Ctrl+S"
                    onClicked: week.keepReview()
                }
            }

            ColumnLayout {
                visible: week.hasLevel
                Layout.fillWidth: true
                spacing: Theme.gap(1)

                Level {
                    objectName: "level"
                    lean: week.lean
                    hair: week.hair
                    spoken: week.levelText.replace(/<[^>]*>/g, "")
                    implicitHeight: Theme.gap(8)
                    Layout.fillWidth: true
                }

                RowLayout {
                    Layout.fillWidth: true

                    Words {
                        text: week.levelLow
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }

                    Words {
                        objectName: "levelText"
                        text: week.levelText + "; " + week.levelScale
                        textFormat: Text.StyledText
                        font.pixelSize: Theme.smallSize
                        horizontalAlignment: Text.AlignHCenter
                        Layout.fillWidth: true
                    }

                    Words {
                        text: week.levelHigh
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }
                }
            }

            Row {
                id: headRow
                spacing: Theme.gap(6)

                Repeater {
                    model: week.head

                    HeadFigure { width: (column.width - 3 * headRow.spacing) / 4 }
                }
            }

            GridLayout {
                Layout.fillWidth: true
                columns: 2
                columnSpacing: Theme.gap(9)
                rowSpacing: Theme.gap(5)

                WeekCurve {
                    objectName: "curvePart"
                    week: week
                    onShown: item => page.show(item)
                    Layout.fillWidth: true
                    Layout.preferredWidth: 66
                    Layout.alignment: Qt.AlignTop
                }

                LineList {
                    objectName: "moversPart"
                    title: qsTr("What moved it")
                    lines: week.movers
                    nothing: qsTr("Nothing to compare with until a baseline is set.")
                    foot: [week.askedText, week.contingencyText].filter(text => text !== "").join(" ")
                    onShown: item => page.show(item)
                    Layout.fillWidth: true
                    Layout.preferredWidth: 34
                    Layout.alignment: Qt.AlignTop
                }
            }

            GridLayout {
                Layout.fillWidth: true
                columns: 2
                columnSpacing: Theme.gap(9)
                rowSpacing: Theme.gap(5)

                LineList {
                    objectName: "mondayPart"
                    title: qsTr("On Monday")
                    lines: week.monday
                    nothing: qsTr("Nothing stands out.")
                    foot: week.reminder
                    onLed: (key, filter) => page.pageAsked(key)
                    onShown: item => page.show(item)
                    Layout.fillWidth: true
                    Layout.preferredWidth: 52
                    Layout.alignment: Qt.AlignTop
                }

                RoomList {
                    objectName: "roomsPart"
                    rooms: week.rooms
                    onChosen: filter => page.scopeAsked(filter)
                    onShown: item => page.show(item)
                    Layout.fillWidth: true
                    Layout.preferredWidth: 48
                    Layout.alignment: Qt.AlignTop
                }
            }

            TradeTable {
                objectName: "tradesPart"
                trades: week.trades
                onChosen: filter => page.scopeAsked(filter)
                onShown: item => page.show(item)
                Layout.fillWidth: true
            }

            GridLayout {
                Layout.fillWidth: true
                columns: 2
                columnSpacing: Theme.gap(9)
                rowSpacing: Theme.gap(5)

                LineList {
                    objectName: "nextPart"
                    title: qsTr("Next 14 days")
                    lines: week.next
                    nothing: qsTr("Nothing is due in the next 14 days.")
                    onShown: item => page.show(item)
                    Layout.fillWidth: true
                    Layout.preferredWidth: 50
                    Layout.alignment: Qt.AlignTop
                }

                LineList {
                    objectName: "papersPart"
                    title: week.papers.length > 0 ? qsTr("Papers missing (%1)").arg(week.papers.length)
                                                  : qsTr("Papers missing")
                    lines: week.papers
                    nothing: qsTr("None is missing.")
                    onShown: item => page.show(item)
                    Layout.fillWidth: true
                    Layout.preferredWidth: 50
                    Layout.alignment: Qt.AlignTop
                }
            }

            AnswerList {
                objectName: "answersPart"
                answers: week.answers
                onShown: item => page.show(item)
                Layout.fillWidth: true
            }

            Row {
                id: photoRow
                visible: week.photos.length > 0
                spacing: Theme.gap(6)

                Repeater {
                    model: week.photos

                    Column {
                        required property var modelData

                        width: (column.width - 2 * photoRow.spacing) / 3
                        spacing: Theme.gap(1)

                        Image {
                            width: parent.width
                            height: width * 0.66
                            source: parent.modelData.source
                            fillMode: Image.PreserveAspectCrop
                            Accessible.role: Accessible.Graphic
                            Accessible.name: parent.modelData.caption
                        }

                        Words {
                            width: parent.width
                            text: parent.modelData.caption
                            color: Theme.pencil
                            font.pixelSize: Theme.smallSize
                        }
                    }
                }
            }

            Words {
                objectName: "leftOut"
                text: [week.buyerText, week.leftOutText].filter(text => text !== "").join(" ")
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                Layout.fillWidth: true
            }
        }
    }

    FileDialog {
        id: printer
        title: qsTr("The page as one sheet")
        fileMode: FileDialog.SaveFile
        nameFilters: [qsTr("PDF (*.pdf)")]

        function ask() {
            printer.currentFile = "file://" + week.printName();
            printer.open();
        }

        onAccepted: week.print(selectedFile)
    }
}
