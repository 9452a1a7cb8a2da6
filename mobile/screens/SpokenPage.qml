// A spoken note: kept as sound, typed later.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property string spaceId
    property string path: ""
    property string trouble: ""

    signal noteAsked()

    title: qsTr("Spoken note")
    under: Senses.hasMicrophone ? qsTr("Kept as sound. What it says can be typed later.")
                                : qsTr("No microphone is found on this device.")
    keepText: Senses.hasMicrophone ? (desk.isRecording ? qsTr("Stop and keep it") : qsTr("Speak"))
                                   : qsTr("Type a note instead")
    onKeepAsked: {
        if (!Senses.hasMicrophone)
            page.noteAsked();
        else if (desk.isRecording)
            desk.stop();
        else
            desk.start(Senses.newFile(".ogg"));
    }

    SoundDesk {
        id: desk
        onFailed: why => page.trouble = why
        onRecorded: path => {
            const kept = desk.keepSound(path, page.spaceId);
            Senses.forget(path);
            if (kept)
                page.done();
        }
    }

    Heading {
        width: parent.width
        visible: desk.isRecording
        text: desk.lengthText
        font.pixelSize: Theme.figureSize
        horizontalAlignment: Text.AlignHCenter
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: page.trouble === "" ? "" : qsTr("It was not recorded: %1").arg(page.trouble)
    }
}
