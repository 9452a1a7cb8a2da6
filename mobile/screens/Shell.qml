// The frame of every screen: the page in hand, the strip of the house, the belt, and what was kept.
// The walk through the spaces lies at the bottom; whatever else is opened lies on it.
import QtQuick
import QtQuick.Controls.Basic
import Ledgerboard.Look
import Ledgerboard.Phone

FocusScope {
    id: shell

    readonly property bool isOpen: JobBook.state === JobBook.Open
    readonly property string pageName: pages.currentItem ? pages.currentItem.objectName : ""
    readonly property bool inWalk: pages.depth <= 1

    focus: true
    Keys.onEscapePressed: shell.back()
    Keys.onBackPressed: shell.back()

    function back() {
        if (pages.depth > 1)
            pages.pop(StackView.Immediate);
    }

    function goHouse() {
        pages.pop(null, StackView.Immediate);
        pages.push(housePage, {}, StackView.Immediate);
    }

    function goSpace(id: string) {
        pages.pop(null, StackView.Immediate);
        walk.goTo(id);
    }

    function openItem(id: string) {
        pages.push(markPage, { itemId: id }, StackView.Immediate);
    }

    function openPunch(row: var) {
        pages.push(lookPage, { row: row, spaceId: walk.currentId, place: walk.currentName },
                   StackView.Immediate);
    }

    // A tool of the belt works in the space on screen; from the house it first asks which.
    function useTool(tool: string) {
        if (shell.pageName === "housePage") {
            pages.push(askSpacePage, { tool: tool }, StackView.Immediate);
            return;
        }
        pages.pop(null, StackView.Immediate);
        shell.startTool(tool, walk.currentId);
    }

    function startTool(tool: string, spaceId: string) {
        const page = { photo: photoPage, mark: markListPage, punch: punchPage,
                       receipt: receiptPage, presence: presencePage,
                       delivery: deliveryPage, found: foundPage, spoken: spokenPage }[tool];
        pages.push(page, { spaceId: spaceId, place: walk.currentName }, StackView.Immediate);
    }

    Binding { target: Theme; property: "mode"; value: Preferences.themeMode }
    Binding { target: Theme; property: "textPercent"; value: Preferences.textPercent }
    Binding { target: Theme; property: "leftHand"; value: Preferences.leftHand }
    Binding { target: Theme; property: "stillness"; value: Preferences.stillness }

    SpaceList { id: spaceRows }
    HouseView { id: houseNow }
    PeerDesk { id: peerDesk }

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }

    StackView {
        id: pages
        objectName: "pages"
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: strip.top }
        visible: shell.isOpen
        initialItem: WalkPage {
            id: walk
            objectName: "walkPage"
            spaces: spaceRows
            jobName: houseNow.name
            waiting: houseNow.waitingText
            onHouseAsked: shell.goHouse()
            onItemChosen: id => shell.openItem(id)
            onPunchChosen: row => shell.openPunch(row)
            onPunchListAsked: pages.push(punchListPage, { spaceId: walk.currentId,
                                                          place: walk.currentName },
                                         StackView.Immediate)
            onDraftAsked: spaceId => pages.push(draftPage, { spaceId: spaceId, place: walk.currentName },
                                                StackView.Immediate)
            onToolAsked: tool => shell.startTool(tool, walk.currentId)
            onTypeOutAsked: (spaceId, noteId) => pages.push(
                notePage, { spaceId: spaceId, place: walk.currentName, noteId: noteId },
                StackView.Immediate)
            onNoteAsked: spaceId => pages.push(notePage, { spaceId: spaceId, place: walk.currentName },
                                               StackView.Immediate)
        }
    }

    StartPage {
        objectName: "startPage"
        peer: peerDesk
        anchors.fill: parent
        visible: !shell.isOpen
    }

    HouseStrip {
        id: strip
        objectName: "houseStrip"
        anchors { left: parent.left; right: parent.right; bottom: belt.top }
        height: visible ? implicitHeight : 0
        visible: shell.isOpen && shell.inWalk && spaceRows.count > 0
        spaces: spaceRows
        currentId: walk.currentId
        onSpaceChosen: id => walk.goTo(id)
        onHouseAsked: shell.goHouse()
    }

    Belt {
        id: belt
        objectName: "belt"
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: visible ? implicitHeight : 0
        visible: shell.isOpen && spaceRows.count > 0
        inUse: ({ markPage: "mark", markListPage: "mark", photoPage: "photo", foundPage: "photo",
                  punchPage: "punch", spokenPage: "punch", receiptPage: "receipt",
                  deliveryPage: "receipt",
                  presencePage: "mark" })[shell.pageName] || ""
        onToolUsed: tool => shell.useTool(tool)
    }

    UndoNote {
        objectName: "undoNote"
        anchors { left: parent.left; right: parent.right; bottom: strip.top }
    }

    Component {
        id: housePage

        HousePage {
            objectName: "housePage"
            spaces: spaceRows
            house: houseNow
            onSpaceChosen: id => shell.goSpace(id)
            onItemChosen: id => shell.openItem(id)
            onChangeChosen: id => pages.push(changePage, { changeId: id }, StackView.Immediate)
            met: peerDesk.metText
            onDevicesAsked: pages.push(devicesPage, {}, StackView.Immediate)
            onPreferencesAsked: pages.push(preferencesPage, {}, StackView.Immediate)
        }
    }

    Component {
        id: markPage

        MarkPage {
            objectName: "markPage"
            onDone: shell.back()
            onFoundAsked: (spaceId, itemId, place) => pages.push(
                foundPage, { spaceId: spaceId, itemId: itemId, place: place }, StackView.Immediate)
        }
    }

    Component {
        id: markListPage

        MarkListPage {
            objectName: "markListPage"
            onItemChosen: id => shell.openItem(id)
            onDone: shell.back()
        }
    }

    Component {
        id: photoPage

        PhotoPage {
            objectName: "photoPage"
            onDone: shell.back()
        }
    }

    Component {
        id: punchPage

        PunchPage {
            objectName: "punchPage"
            onDone: shell.back()
        }
    }

    Component {
        id: lookPage

        LookPage {
            objectName: "lookPage"
            onDone: shell.back()
        }
    }

    Component {
        id: punchListPage

        PunchListPage {
            objectName: "punchListPage"
            onPunchChosen: row => shell.openPunch(row)
            onDone: shell.back()
        }
    }

    Component {
        id: spokenPage

        SpokenPage {
            objectName: "spokenPage"
            onNoteAsked: {
                shell.back();
                pages.push(notePage, { spaceId: walk.currentId, place: walk.currentName },
                           StackView.Immediate);
            }
            onDone: shell.back()
        }
    }

    Component {
        id: foundPage

        FoundPage {
            objectName: "foundPage"
            onDone: shell.back()
        }
    }

    Component {
        id: changePage

        ChangePage {
            objectName: "changePage"
            onDone: shell.back()
        }
    }

    Component {
        id: receiptPage

        ReceiptPage {
            objectName: "receiptPage"
            onDone: shell.back()
        }
    }

    Component {
        id: devicesPage

        DevicesPage {
            objectName: "devicesPage"
            peer: peerDesk
            waiting: houseNow.waitingText
            onDone: shell.back()
        }
    }

    Component {
        id: draftPage

        DraftPage {
            objectName: "draftPage"
            onDone: shell.back()
        }
    }

    Component {
        id: presencePage

        PresencePage {
            objectName: "presencePage"
            onDone: shell.back()
        }
    }

    Component {
        id: deliveryPage

        DeliveryPage {
            objectName: "deliveryPage"
            onDone: shell.back()
        }
    }

    Component {
        id: notePage

        NotePage {
            objectName: "notePage"
            onDone: shell.back()
        }
    }

    Component {
        id: askSpacePage

        AskSpacePage {
            objectName: "askSpacePage"
            spaces: spaceRows
            onDone: shell.back()
            onSpaceChosen: (id, tool) => {
                shell.goSpace(id);
                shell.startTool(tool, id);
            }
        }
    }

    Component {
        id: preferencesPage

        PreferencesPage {
            objectName: "preferencesPage"
            onDone: shell.back()
        }
    }
}
