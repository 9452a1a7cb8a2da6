// A punch item: what is to be put right, by which crew, until when, with a picture.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property string spaceId
    property int crew: -1
    property int due: 1

    title: qsTr("Punch item")
    keepText: qsTr("Keep the punch item")
    onKeepAsked: if (punches.keepItem(what.text, page.crew, page.due, pictures.chosen))
                     page.done()

    PunchItems {
        id: punches
        spaceId: page.spaceId
    }

    LineField {
        id: what
        areaName: "punchWhat"
        width: parent.width
        label: qsTr("What is to be put right")
    }

    Column {
        width: parent.width
        visible: punches.crews.length > 0
        spacing: Theme.gap(2)

        Words {
            text: qsTr("Who")
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        Chips {
            width: parent.width
            chipName: "crew"
            names: punches.crews
            chosen: page.crew
            onPicked: place => page.crew = place === page.crew ? -1 : place
        }
    }

    Column {
        width: parent.width
        spacing: Theme.gap(2)

        Words {
            text: qsTr("By when")
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        Chips {
            width: parent.width
            chipName: "due"
            names: punches.dueWords
            chosen: page.due
            onPicked: place => page.due = place
        }
    }

    PictureGrid {
        id: pictures
        width: parent.width
        rowsShown: 2
        onTaken: path => chosen = path === chosen ? "" : path
    }
}
