// A figure of the page's head, with how it stands, how it moved and how sure it is.
import QtQuick
import Ledgerboard.Look

Column {
    id: head

    required property var modelData

    Words {
        width: parent.width
        text: head.modelData.name
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
    }

    Heading {
        objectName: "headFigure"
        width: parent.width
        text: head.modelData.figure
        font.pixelSize: Theme.titleSize
        wrapMode: Text.NoWrap
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Theme.largeSize
    }

    Words {
        objectName: "headRest"
        width: parent.width
        text: (head.modelData.strong === "" ? "" : "<b>" + head.modelData.strong + "</b>")
              + head.modelData.rest
        textFormat: Text.StyledText
    }

    Words {
        objectName: "headSpread"
        width: parent.width
        visible: text !== ""
        text: head.modelData.spread
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
    }
}
