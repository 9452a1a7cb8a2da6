// Schedule: what is on site when, what drives the finish, what must be ordered by when; an item is
// moved along its days, and what that pushes shows before it is let go.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)

    signal pageAsked(string key)

    function toChart() {
        chart.forceActiveFocus();
    }

    function turnTable() {
        chart.asTable = !chart.asTable;
        page.toChart();
    }

    Shortcut { sequence: "Ctrl+G"; onActivated: schedule.nextGroup() }
    Shortcut { sequence: "Ctrl+O"; onActivated: schedule.openOnly = !schedule.openOnly }
    Shortcut { sequence: "Ctrl+T"; onActivated: page.turnTable() }
    // What starts after the item in hand?
    function link() {
        if (schedule.inHand || schedule.isEmpty)
            return;
        panel.leave();
        if (links.isLinking)
            links.leave();
        else
            links.begin();
        page.toChart();
    }

    function showLinks() {
        if (schedule.inHand || schedule.itemId === "")
            return;
        links.leave();
        panel.begin();
    }

    Shortcut { sequence: "Ctrl+K"; onActivated: schedule.keepPlan() }
    Shortcut { sequence: "Ctrl+J"; onActivated: page.link() }
    Shortcut { sequence: "Ctrl+I"; onActivated: page.showLinks() }
    Shortcut { sequence: "Ctrl+U"; enabled: schedule.canLink; onActivated: schedule.linkUsually() }

    ScheduleView { id: schedule }

    ScheduleLinks {
        id: links
        // While one is made it stays with the item it was begun at.
        item: schedule.itemId
    }

    Words {
        objectName: "scheduleTrouble"
        x: page.side
        y: Theme.gap(10)
        width: parent.width - 2 * page.side
        visible: !schedule.isReady
        text: schedule.trouble !== "" ? schedule.trouble : qsTr("Laying out the days\u2026")
        color: Theme.pencil
    }

    ColumnLayout {
        anchors {
            fill: parent
            leftMargin: page.side
            rightMargin: page.side
            topMargin: Theme.gap(6)
            bottomMargin: Theme.gap(4)
        }
        visible: schedule.isReady
        spacing: Theme.gap(2)

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap(6)

            Heading {
                objectName: "scheduleTitle"
                text: qsTr("Schedule")
                wrapMode: Text.NoWrap
            }

            Item { Layout.fillWidth: true }

            QuietLink {
                objectName: "scheduleGroup"
                text: schedule.groupText
                hint: "Ctrl+G"
                onClicked: {
                    schedule.nextGroup();
                    page.toChart();
                }
            }

            QuietLink {
                objectName: "scheduleOpen"
                text: schedule.openOnly ? qsTr("All work") : qsTr("Open work only")
                hint: "Ctrl+O"
                onClicked: {
                    schedule.openOnly = !schedule.openOnly;
                    page.toChart();
                }
            }

            QuietLink {
                objectName: "scheduleTurn"
                text: chart.asTable ? qsTr("Days") : qsTr("Table")
                hint: "Ctrl+T"
                onClicked: page.turnTable()
            }

            QuietLink {
                objectName: "scheduleLink"
                visible: schedule.canLink
                text: qsTr("Usual order")
                hint: "Ctrl+U"
                onClicked: schedule.linkUsually()
            }

            QuietLink {
                objectName: "scheduleKeep"
                text: qsTr("Keep as planned")
                hint: "Ctrl+K"
                onClicked: schedule.keepPlan()
            }
        }

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap(3)
            visible: !schedule.isEmpty

            Words {
                text: qsTr("Will finish")
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                wrapMode: Text.NoWrap
                Layout.alignment: Qt.AlignBaseline
            }

            Heading {
                objectName: "scheduleFinish"
                text: schedule.finish
                font.pixelSize: Theme.largeSize
                wrapMode: Text.NoWrap
                Layout.alignment: Qt.AlignBaseline
            }

            Words {
                objectName: "scheduleRest"
                text: schedule.finishRest
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignBaseline
            }

            RowLayout {
                spacing: Theme.gap(2)
                visible: schedule.filter !== ""

                Words {
                    text: qsTr("Only with:")
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.NoWrap
                }

                Words {
                    objectName: "scheduleFilter"
                    text: schedule.filter
                    font.bold: true
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    Layout.maximumWidth: Theme.gap(50)
                }

                QuietLink {
                    objectName: "scheduleAll"
                    text: qsTr("All rows")
                    hint: "Esc"
                    onClicked: {
                        schedule.filter = "";
                        page.toChart();
                    }
                }
            }

            Words {
                objectName: "scheduleCount"
                visible: schedule.filter === ""
                text: schedule.countText
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                wrapMode: Text.NoWrap
                Layout.alignment: Qt.AlignBaseline
            }
        }

        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true

            ScheduleChart {
                id: chart
                objectName: "schedule"
                anchors.fill: parent
                visible: !schedule.isEmpty
                focus: true
                view: schedule
                links: links
            }

            Column {
                anchors.centerIn: parent
                width: Math.min(parent.width, Theme.gap(150))
                visible: schedule.isEmpty
                spacing: Theme.gap(3)

                Words {
                    objectName: "scheduleEmpty"
                    width: parent.width
                    text: qsTr("Nothing to lay out yet. Items come from the walk or are entered in "
                               + "the scope of work; with days on them, and the order they come in, "
                               + "this page tells when each is on site and when it all ends.")
                    color: Theme.pencil
                }

                QuietLink {
                    objectName: "scheduleToScope"
                    text: qsTr("To the scope of work")
                    hint: "Ctrl+3"
                    onClicked: page.pageAsked("scope")
                }
            }

            Words {
                anchors.centerIn: parent
                visible: schedule.isReady && !schedule.isEmpty && schedule.count === 0
                text: schedule.filter === "" ? qsTr("All of it is finished. Ctrl+O shows every row.")
                      : qsTr("No row has all of \u201c%1\u201d. Esc shows every row.").arg(schedule.filter)
                color: Theme.pencil
            }
        }

        ScheduleKey {
            visible: !schedule.isEmpty && !chart.asTable
            Layout.alignment: Qt.AlignRight
        }

        Hairline {
            visible: !schedule.isEmpty
            Layout.fillWidth: true
            color: Theme.pencil
        }

        // Of one height, so that the rows do not jump from item to item.
        Item {
            visible: !schedule.isEmpty
            Layout.fillWidth: true
            Layout.preferredHeight: Theme.gap(24)
            clip: true

            Column {
                width: parent.width
                spacing: Theme.gap(1)
                visible: schedule.inHand

                Words {
                    objectName: "moveText"
                    width: parent.width
                    text: schedule.moveText
                    font.bold: true
                    maximumLineCount: 2
                    elide: Text.ElideRight
                }

                Words {
                    objectName: "pushText"
                    width: parent.width
                    text: schedule.pushText
                    maximumLineCount: 2
                    elide: Text.ElideRight
                }

                Words {
                    width: parent.width
                    text: qsTr("Arrows move it by a day, with Shift by five. Enter lets it go, Esc puts it back.")
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                }
            }

            Column {
                width: parent.width
                spacing: Theme.gap(1)
                visible: links.isLinking

                Words {
                    objectName: "aimText"
                    width: parent.width
                    text: links.aimText
                    font.bold: true
                    maximumLineCount: 2
                    elide: Text.ElideRight
                }

                Words {
                    objectName: "aimRest"
                    width: parent.width
                    text: links.aimRest
                    maximumLineCount: 2
                    elide: Text.ElideRight
                }

                Words {
                    width: parent.width
                    text: qsTr("\u2191 \u2193 and letters go to it, \u2190 \u2192 change the days between. Enter links them, Esc leaves it.")
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                }
            }

            Column {
                width: parent.width
                spacing: Theme.gap(1)
                visible: !schedule.inHand && !links.isLinking

                RowLayout {
                    width: parent.width
                    spacing: Theme.gap(6)

                    Words {
                        objectName: "scheduleItem"
                        text: schedule.itemText
                        font.bold: true
                        elide: Text.ElideRight
                        wrapMode: Text.NoWrap
                        Layout.fillWidth: true
                    }

                    QuietLink {
                        objectName: "scheduleJoin"
                        visible: schedule.itemId !== ""
                        text: qsTr("Something after it")
                        hint: "Ctrl+J"
                        onClicked: page.link()
                    }

                    QuietLink {
                        objectName: "scheduleLinks"
                        visible: schedule.itemId !== ""
                        text: qsTr("Its links")
                        hint: "Ctrl+I"
                        onClicked: page.showLinks()
                    }
                }

                Repeater {
                    model: schedule.details

                    Words {
                        required property string modelData

                        objectName: "scheduleDetail"
                        width: chart.width
                        text: modelData
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                        elide: Text.ElideRight
                        wrapMode: Text.NoWrap
                    }
                }
            }
        }

        Repeater {
            model: schedule.notes

            Words {
                required property string modelData

                objectName: "scheduleNote"
                text: modelData
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                maximumLineCount: 2
                elide: Text.ElideRight
                Layout.fillWidth: true
            }
        }
    }

    LinksPanel {
        id: panel
        objectName: "linksPanel"
        anchors {
            right: parent.right
            rightMargin: page.side
            top: parent.top
            topMargin: Theme.gap(25)
            bottom: parent.bottom
            bottomMargin: Theme.gap(4)
        }
        width: Math.min(parent.width - 2 * page.side, Theme.gap(112))
        links: links
        name: schedule.itemText
        onClosed: page.toChart()
        onLinkAsked: page.link()
    }
}
