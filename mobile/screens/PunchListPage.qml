// All punch items of a space, where they are more than its page shows.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    required property string spaceId
    required property string place

    signal punchChosen(var punch)
    signal done()

    PunchItems {
        id: punchRows
        spaceId: page.spaceId
    }

    PageList {
        id: list
        objectName: "allPunches"
        anchors.fill: parent
        model: punchRows

        header: Column {
            width: list.width
            leftPadding: Theme.edge
            rightPadding: Theme.edge
            bottomPadding: Theme.gap(3)

            PageHead {
                width: parent.width - 2 * Theme.edge
                canGoBack: true
                where: page.place
                title: qsTr("To be put right")
                under: qsTr("%n punch item(s) open.", "", punchRows.count)
                onBack: page.done()
            }
        }

        delegate: PunchDelegate {
            width: list.width
            onChosen: page.punchChosen(row)
        }
    }
}
