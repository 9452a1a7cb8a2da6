// A note about a space.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    required property string spaceId
    required property string place
    // A spoken note to be typed out; "" for a new one.
    property string noteId: ""
    property string trouble: ""

    signal done()

    NoteList {
        id: notes
        spaceId: page.spaceId
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.edge
        anchors.rightMargin: Theme.edge
        anchors.bottomMargin: Theme.gap(6)
        spacing: Theme.gap(3)

        PageHead {
            canGoBack: true
            where: page.place
            title: qsTr("Note")
            under: qsTr("Only owners read notes.")
            onBack: page.done()
            Layout.fillWidth: true
        }

        SoundDesk {
            id: sound
            onFailed: why => page.trouble = why
        }

        TextLink {
            objectName: "play"
            visible: page.noteId !== ""
            text: qsTr("Hear it")
            glyph: "speak"
            onClicked: sound.play(page.noteId)
            Layout.fillWidth: true
        }

        Words {
            visible: text !== ""
            text: page.trouble
            Layout.fillWidth: true
        }

        Flickable {
            contentHeight: field.implicitHeight
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            Layout.fillWidth: true
            Layout.fillHeight: true

            LineField {
                id: field
                areaName: "noteText"
                width: parent.width
                label: qsTr("Type it, or use the keyboard's microphone")
                oneLine: false
            }
        }

        ActionButton {
            objectName: "keepNote"
            text: qsTr("Keep the note")
            enabled: field.text.trim() !== ""
            filled: true
            onClicked: if (page.noteId === "" ? notes.keepNote(field.text)
                                              : notes.typeOut(page.noteId, field.text))
                           page.done()
            Layout.fillWidth: true
        }
    }

    Component.onCompleted: field.take()
}
