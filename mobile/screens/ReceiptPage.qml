// A receipt: its picture first, then its amount, then what it is for.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property string spaceId
    property string itemId: ""
    property int what: -1
    property bool isTax: false
    readonly property TypedAmount typed: page.isTax ? desk.tax : desk.amount

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

    AmountLine {
        objectName: "amount"
        width: parent.width
        label: page.isTax ? qsTr("Tax in it") : qsTr("Sum")
        figure: page.typed.text
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
        onDigits: typed => page.typed.type(typed)
        onRubbed: page.typed.rub()
    }

    Chips {
        width: parent.width
        chipName: "typed"
        names: [qsTr("Sum %1").arg(desk.amount.text), qsTr("Tax in it %1").arg(desk.tax.text)]
        chosen: page.isTax ? 1 : 0
        onPicked: place => page.isTax = place === 1
    }

    LineField {
        id: payee
        areaName: "payee"
        width: parent.width
        label: qsTr("Where it was bought")
    }
}
