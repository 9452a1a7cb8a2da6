// The chip of a space: its colour with its short name. Stands wherever the space is mentioned.
import QtQuick
import Ledgerboard.Look

Rectangle {
    id: swatch

    required property string shortName
    required property color ground
    required property color text

    implicitWidth: Math.max(letters.implicitWidth + Theme.gap(3), Theme.gap(9))
    implicitHeight: letters.implicitHeight + Theme.gap(2)
    radius: 3
    color: Theme.isSun ? Theme.paper : swatch.ground
    border.width: Theme.isSun ? Theme.hairline : 0
    border.color: Theme.ink

    Words {
        id: letters
        anchors.centerIn: parent
        text: swatch.shortName
        color: Theme.isSun ? Theme.ink : swatch.text
        font.pixelSize: Theme.smallSize
        font.bold: true
        font.letterSpacing: 0.5
        lineHeight: 1
    }
}
