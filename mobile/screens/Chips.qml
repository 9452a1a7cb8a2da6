// A few choices beside each other, one of them chosen.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Flow {
    id: chips

    required property var names
    property int chosen: -1
    property string chipName: "chip"

    signal picked(int place)

    spacing: Theme.gap(2)

    Repeater {
        model: chips.names

        ChoiceChip {
            required property string modelData
            required property int index

            objectName: chips.chipName
            text: modelData
            isChosen: index === chips.chosen
            onClicked: chips.picked(index)
        }
    }
}
