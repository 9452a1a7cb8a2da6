// Walk notes of a space, typed or dictated, and the items they would become: each kept or dropped.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property string spaceId

    title: qsTr("Walk")
    under: qsTr("Say what is to be done here, in English. Each item read can be dropped.")
    keepText: qsTr("Keep the items")
    canKeep: draft.count > 0
    onKeepAsked: if (draft.keep())
                     page.done()

    WalkDraft { id: draft }

    LineField {
        id: notes
        areaName: "walkNotes"
        width: parent.width
        label: qsTr("Notes")
        oneLine: false
        onTextChanged: pause.restart()
    }

    // Read once the typing rests.
    Timer {
        id: pause
        interval: 400
        onTriggered: draft.read(page.place, notes.text)
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: draft.why
        color: Theme.pencil
    }

    Column {
        width: parent.width

        Repeater {
            model: draft

            Choice {
                required property draftRow row
                required property int index

                objectName: "draftItem"
                width: page.inner
                text: row.words
                chosen: row.kept
                chosenWords: qsTr("kept")
                onClicked: draft.flip(index)
            }
        }
    }
}
