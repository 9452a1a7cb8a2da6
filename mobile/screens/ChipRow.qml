// Choices in one row that slides sideways, one of them chosen.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ListView {
    id: row

    property int chosen: -1
    property string chipName: "chip"

    signal picked(int place, string id)

    orientation: ListView.Horizontal
    height: Math.max(Theme.target, Theme.bodySize * 2)
    spacing: Theme.gap(2)
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    delegate: ChoiceChip {
        required property aboutRow row
        required property int index

        objectName: ListView.view.chipName
        height: ListView.view.height
        text: row.words
        isChosen: index === ListView.view.chosen
        onClicked: ListView.view.picked(index, row.id)
    }
}
