// Something was found: its picture, words, what it is about, maybe what it may cost.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property string spaceId
    property string itemId: ""
    property bool asksForMoney: false

    title: qsTr("Found something")
    under: JobBook.isOwner ? qsTr("It is kept as a change that is asked for: it counts once it is signed.")
                           : qsTr("It goes to the owner, who says yes or no.")
    keepText: qsTr("Keep what was found")
    onKeepAsked: if (desk.keepFound(words.text, pictures.chosen, page.itemId))
                     page.done()

    FoundDesk {
        id: desk
        spaceId: page.spaceId
    }

    LineField {
        id: words
        areaName: "foundWords"
        width: parent.width
        label: qsTr("What was found")
    }

    ChipRow {
        width: parent.width
        chipName: "foundAt"
        model: desk
        chosen: Math.max(0, desk.placeOf(page.itemId))
        onPicked: (place, id) => page.itemId = id
    }

    PictureGrid {
        id: pictures
        width: parent.width
        rowsShown: 1
        onTaken: path => chosen = path === chosen ? "" : path
    }

    TextLink {
        objectName: "askForMoney"
        width: parent.width
        visible: !page.asksForMoney
        text: qsTr("Say what it may cost")
        glyph: "receipt"
        onClicked: page.asksForMoney = true
    }

    AmountLine {
        width: parent.width
        visible: page.asksForMoney
        label: qsTr("What it may cost")
        figure: desk.amount.text
    }

    KeyPad {
        width: parent.width
        visible: page.asksForMoney
        onDigits: typed => desk.amount.type(typed)
        onRubbed: desk.amount.rub()
    }
}
