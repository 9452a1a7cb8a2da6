// The figure of the rule, large, with a step down and a step up beside it.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

RowLayout {
    id: figure

    required property string figure
    required property string count

    signal less()
    signal more()

    spacing: Theme.gap(2)

    StepButton {
        objectName: "less"
        text: qsTr("One step less")
        glyph: "less"
        onClicked: figure.less()
    }

    ColumnLayout {
        spacing: 0
        Layout.fillWidth: true

        Heading {
            objectName: "figure"
            text: figure.figure
            font.pixelSize: Theme.figureSize
            horizontalAlignment: Text.AlignHCenter
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 28
            wrapMode: Text.NoWrap
            Layout.fillWidth: true
        }

        Words {
            visible: text !== ""
            text: figure.count
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
        }
    }

    StepButton {
        objectName: "more"
        text: qsTr("One step more")
        glyph: "more"
        onClicked: figure.more()
    }
}
