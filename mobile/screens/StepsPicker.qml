// The steps of an item, each done or not.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

Column {
    id: picker

    required property var names
    required property var done

    signal toggled(var done)

    function flip(name: string) {
        const without = picker.done.filter(one => one !== name);
        picker.toggled(without.length < picker.done.length ? without : picker.done.concat([name]));
    }

    Repeater {
        model: picker.names

        Choice {
            required property string modelData

            objectName: "choice"
            width: picker.width
            text: modelData
            chosen: picker.done.indexOf(modelData) >= 0
            chosenWords: qsTr("done")
            onClicked: picker.flip(modelData)
        }
    }
}
