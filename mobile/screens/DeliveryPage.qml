// What came? One of the deliveries that are waited for, and what is wrong or missing.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property string spaceId
    property int what: 0

    title: deliveries.count > 0 ? qsTr("What came?") : qsTr("No delivery is waited for")
    under: deliveries.count > 0 ? "" : qsTr("What was ordered is written down with its item, on the desktop.")
    keepText: deliveries.count > 0 ? qsTr("It came today") : ""
    onKeepAsked: if (deliveries.keepArrived(page.what, wrong.text))
                     page.done()

    DeliveryList {
        id: deliveries
        spaceId: page.spaceId
    }

    Column {
        width: parent.width

        Repeater {
            model: deliveries

            Choice {
                required property deliveryRow row
                required property int index

                objectName: "delivery"
                width: page.inner
                text: row.words
                chosen: index === page.what
                onClicked: page.what = index
            }
        }
    }

    LineField {
        id: wrong
        areaName: "wrongOrMissing"
        visible: deliveries.count > 0
        width: parent.width
        label: qsTr("What is wrong or missing, if anything is")
    }
}
