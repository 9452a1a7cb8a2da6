// A receipt: its picture first, then its amount, then what it is for.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property string spaceId
    property string itemId: ""
    property int what: -1

    title: qsTr("Receipt")
    keepText: qsTr("Keep the receipt")
    onKeepAsked: if (desk.keepReceipt(pictures.chosen, page.itemId, payee.text))
                     page.done()

    ReceiptDesk {
        id: desk
        spaceId: page.spaceId
    }

    PictureGrid {
        id: pictures
        width: parent.width
        rowsShown: 1
        onTaken: path => chosen = path === chosen ? "" : path
    }

    Heading {
        objectName: "amount"
        width: parent.width
        text: desk.amountText
        font.pixelSize: Theme.figureSize
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 20
        wrapMode: Text.NoWrap
        horizontalAlignment: Text.AlignRight
    }

    ChipRow {
        width: parent.width
        chipName: "payFor"
        model: desk
        chosen: page.what
        onPicked: (place, id) => {
            page.what = place;
            page.itemId = id;
        }
    }

    KeyPad {
        width: parent.width
        onDigits: typed => desk.type(typed)
        onRubbed: desk.rub()
    }

    LineField {
        id: payee
        areaName: "payee"
        width: parent.width
        label: qsTr("Where it was bought")
    }
}
