// A sum as it is typed, large, with what it is beside it.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

RowLayout {
    id: line

    required property string label
    required property string figure

    spacing: Theme.gap(3)

    Words {
        text: line.label
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
        Layout.alignment: Qt.AlignBaseline
        Layout.maximumWidth: line.width / 3
    }

    Heading {
        text: line.figure
        font.pixelSize: Theme.figureSize
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 20
        wrapMode: Text.NoWrap
        horizontalAlignment: Text.AlignRight
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignBaseline
    }
}
