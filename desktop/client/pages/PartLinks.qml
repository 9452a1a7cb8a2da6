// The parts of a page, one beside the other; the one that is open in bold.
import QtQuick
import Ledgerboard.Look

Row {
    id: links

    required property var parts  // their names, in order
    property int open: 0

    signal turned(int part)

    function next() {
        links.turned((links.open + 1) % links.parts.length);
    }

    spacing: Theme.gap(4)

    Repeater {
        model: links.parts

        PressArea {
            id: link

            required property string modelData
            required property int index

            objectName: "part" + index
            reach: Theme.gap(8)
            text: modelData
            onClicked: links.turned(index)

            contentItem: Words {
                text: link.text
                color: link.index === links.open ? Theme.ink : Theme.slate
                font.bold: link.index === links.open
                verticalAlignment: Text.AlignVCenter
                wrapMode: Text.NoWrap
            }

            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: Theme.stroke
                visible: link.index === links.open
                color: Theme.ink
            }
        }
    }
}
