// Digits for a thumb.
import QtQuick
import Ledgerboard.Look

Grid {
    id: pad

    signal digits(string typed)
    signal rubbed()

    columns: 3
    columnSpacing: Theme.gap(2)
    rowSpacing: Theme.gap(2)

    Repeater {
        model: ["1", "2", "3", "4", "5", "6", "7", "8", "9", "00", "0", ""]

        PressArea {
            id: key

            required property string modelData

            objectName: "key" + key.modelData
            text: key.modelData === "" ? qsTr("Rub out the last digit") : key.modelData
            width: Math.floor((pad.width - 2 * pad.columnSpacing) / 3)
            height: Math.max(Theme.gap(13), Theme.largeSize + Theme.gap(5))
            onClicked: key.modelData === "" ? pad.rubbed() : pad.digits(key.modelData)

            background: Rectangle {
                radius: 4
                color: key.down ? Theme.rule : Theme.plaster
                border.width: key.visualFocus ? Theme.stroke : Theme.isSun ? Theme.hairline : 0
                border.color: key.visualFocus ? Theme.slate : Theme.ink
            }

            contentItem: Item {
                Words {
                    anchors.centerIn: parent
                    text: key.modelData
                    font.family: Theme.slab
                    font.pixelSize: Theme.largeSize
                }

                Sign {
                    anchors.centerIn: parent
                    visible: key.modelData === ""
                    name: "rub"
                }
            }
        }
    }
}
