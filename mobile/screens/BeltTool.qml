// One tool of the belt.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

PressArea {
    id: tool

    property string glyph: ""
    property bool inUse: false
    readonly property color tone: tool.inUse ? Theme.belt : Theme.beltInk

    background: Rectangle {
        radius: 5
        color: tool.inUse ? Theme.beltInk : tool.down ? Theme.pencil : Theme.beltTool
        border.width: tool.visualFocus || Theme.isSun ? Theme.stroke : 0
        border.color: tool.visualFocus && !Theme.isSun ? Theme.slate : Theme.beltInk
    }

    contentItem: Item {
        Column {
            anchors.centerIn: parent
            width: parent.width
            spacing: 2

            Sign {
                anchors.horizontalCenter: parent.horizontalCenter
                name: tool.glyph
                tone: tool.tone
            }

            Words {
                width: parent.width - Theme.gap(2)
                anchors.horizontalCenter: parent.horizontalCenter
                text: tool.text
                color: tool.tone
                font.pixelSize: Theme.smallSize
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 13
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
        }
    }
}
