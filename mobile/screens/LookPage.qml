// A look at a punch item: a crew says it is fixed, the owner accepts it or sends it back.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property punchRow row
    required property string spaceId

    title: row.what
    under: row.looked === "" ? row.who : row.who + ". " + row.looked
    keepText: JobBook.isOwner ? qsTr("Accepted") : qsTr("It is fixed")
    onKeepAsked: page.look(JobBook.isOwner ? "accepted" : "fixed")

    function look(said: string) {
        if (punches.keepLook(page.row.id, said, note.text, pictures.chosen))
            page.done();
    }

    PunchItems {
        id: punches
        spaceId: page.spaceId
    }

    Row {
        width: parent.width
        spacing: Theme.gap(2)
        visible: page.row.photos.length > 0

        Repeater {
            model: page.row.photos.slice(-2)

            Image {
                required property url modelData

                width: (page.inner - Theme.gap(2)) / 2
                height: width * 0.75
                source: modelData
                sourceSize.width: 400
                fillMode: Image.PreserveAspectCrop
                asynchronous: true
                autoTransform: true
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("Picture of it")
            }
        }
    }

    LineField {
        id: note
        areaName: "lookNote"
        width: parent.width
        label: qsTr("What was seen")
    }

    PictureGrid {
        id: pictures
        width: parent.width
        rowsShown: 2
        onTaken: path => chosen = path === chosen ? "" : path
    }

    ActionButton {
        objectName: "notRight"
        visible: JobBook.isOwner
        width: parent.width
        text: qsTr("Not right: fix again")
        onClicked: page.look("notRight")
    }
}
