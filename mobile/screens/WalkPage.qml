// The walk through the house: one space fills the screen, a swipe sideways leads to the next.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: walk

    required property SpaceList spaces
    property string jobName: ""
    property string waiting: ""
    readonly property string currentId: spaces.idAt(view.currentIndex)
    readonly property string currentName: view.currentItem ? view.currentItem.row.name : ""

    signal houseAsked()
    signal itemChosen(string id)
    signal noteAsked(string spaceId)
    signal typeOutAsked(string spaceId, string noteId)
    signal draftAsked(string spaceId)
    signal toolAsked(string tool)
    signal punchChosen(var row)
    signal punchListAsked()

    function goTo(id: string) {
        view.highlightMoveDuration = 0;
        view.currentIndex = walk.spaces.placeOf(id);
        view.positionViewAtIndex(view.currentIndex, ListView.SnapPosition);
        view.highlightMoveDuration = Theme.motionMs;
    }

    ListView {
        id: view
        objectName: "rooms"
        anchors.fill: parent
        clip: true
        orientation: ListView.Horizontal
        snapMode: ListView.SnapOneItem
        highlightRangeMode: ListView.StrictlyEnforceRange
        highlightMoveDuration: Theme.motionMs
        // Past the last room a swipe is felt, and is no touch of what lies under it.
        boundsBehavior: Flickable.DragOverBounds
        cacheBuffer: 0
        model: walk.spaces
        onCurrentIndexChanged: if (walk.currentId !== "")
                                   Preferences.lastSpace = walk.currentId
        onCountChanged: Qt.callLater(view.openLast)

        property bool opened: false

        // The space that was on screen when the program ended.
        function openLast() {
            if (view.opened || view.count === 0)
                return;
            view.opened = true;
            walk.goTo(Preferences.lastSpace);
        }

        delegate: SpacePage {
            width: view.width
            height: view.height
            jobName: walk.jobName
            waiting: walk.waiting
            onHouseAsked: walk.houseAsked()
            onItemChosen: id => walk.itemChosen(id)
            onNoteAsked: walk.noteAsked(row.id)
            onTypeOutAsked: noteId => walk.typeOutAsked(row.id, noteId)
            onDraftAsked: walk.draftAsked(row.id)
            onToolAsked: tool => walk.toolAsked(tool)
            onPunchChosen: punch => walk.punchChosen(punch)
            onPunchListAsked: walk.punchListAsked()
        }
    }

    Column {
        anchors.centerIn: parent
        width: parent.width - 2 * Theme.edge
        spacing: Theme.gap(2)
        visible: walk.spaces.count === 0

        Heading {
            width: parent.width
            text: qsTr("No rooms yet")
        }

        Words {
            width: parent.width
            text: qsTr("Walk notes read on the desktop bring them in; so does meeting another device.")
        }
    }
}
