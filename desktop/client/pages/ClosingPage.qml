// Closing: what still stands between this job and finished, each a jump to its page; what releases
// each crew, in order; the folder that goes with the house.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)
    readonly property real half: (width - 2 * side - Theme.gap(10)) / 2

    signal pageAsked(string key)
    signal scopeAsked(string filter)

    function reveal(item: Item) {
        if (!item)
            return;
        const top = item.mapToItem(paper.contentItem, 0, 0).y;
        if (top < paper.contentY)
            paper.contentY = Math.max(0, top - Theme.gap(12));
        else if (top + item.height > paper.contentY + paper.height)
            paper.contentY = Math.min(paper.contentHeight - paper.height,
                                      top + item.height - paper.height + Theme.gap(4));
    }

    onActiveFocusChanged: {
        const first = standsList.itemAt(0);
        if (activeFocus && first)
            first.forceActiveFocus();
    }
    Keys.onDownPressed: paper.contentY = Math.max(0, Math.min(paper.contentHeight - paper.height,
                                                              paper.contentY + Theme.gap(20)))
    Keys.onUpPressed: paper.contentY = Math.max(0, paper.contentY - Theme.gap(20))

    ClosingView { id: closing }

    Flickable {
        id: paper
        anchors.fill: parent
        contentHeight: Math.max(standing.y + standing.implicitHeight, releasing.y + releasing.implicitHeight) + Theme.gap(16)
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Heading {
            id: head
            objectName: "closingTitle"
            x: page.side
            y: Theme.gap(6)
            text: qsTr("Closing")
        }

        Words {
            id: sum
            objectName: "closingSum"
            x: page.side
            y: head.y + head.height + Theme.gap(2)
            width: parent.width - 2 * page.side
            visible: !closing.isEmpty
            text: closing.title
        }

        SheetNothing {
            x: page.side
            y: Theme.gap(50)
            width: Math.min(parent.width - 2 * page.side, Theme.gap(150))
            visible: closing.isEmpty
            head: qsTr("There is nothing to finish yet")
            words: qsTr("Once there is a scope of work, what is still to be done, signed, paid and filed stands here.")
        }

        Column {
            id: standing
            x: page.side
            y: sum.y + sum.height + Theme.gap(6)
            width: page.half
            visible: !closing.isEmpty
            spacing: Theme.gap(6)

            Repeater {
                id: standsList
                model: closing.stands

                LineList {
                    required property var modelData

                    objectName: "stands"
                    width: standing.width
                    title: modelData.title
                    lines: modelData.lines
                    onLed: (key, filter) => filter !== "" ? page.scopeAsked(filter) : page.pageAsked(key)
                    onShown: item => page.reveal(item)
                }
            }
        }

        Column {
            id: releasing
            x: page.width - page.side - page.half
            y: standing.y
            width: page.half
            visible: !closing.isEmpty
            spacing: Theme.gap(6)

            Words {
                width: parent.width
                visible: closing.releases.length > 0
                text: qsTr("What releases each crew, in this order (common practice, no source)")
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }

            Repeater {
                model: closing.releases

                LineList {
                    required property var modelData

                    objectName: "release"
                    width: releasing.width
                    title: modelData.title
                    lines: modelData.lines
                    foot: modelData.foot
                    onShown: item => page.reveal(item)
                }
            }

            LineList {
                objectName: "folder"
                width: parent.width
                title: qsTr("The folder of the house")
                lines: closing.papers
                foot: qsTr("Forms of waivers, retainage and leave to occupy differ by place: a local lawyer and the "
                           + "building office decide.")
                onShown: item => page.reveal(item)
            }
        }
    }
}
