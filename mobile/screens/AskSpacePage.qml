// Which space is it about? Asked where a tool is taken in the house.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    required property SpaceList spaces
    required property string tool

    signal spaceChosen(string id, string tool)
    signal done()

    PageList {
        id: list
        objectName: "askedSpaces"
        anchors.fill: parent
        model: page.spaces

        header: Column {
            width: list.width
            leftPadding: Theme.edge
            rightPadding: Theme.edge
            bottomPadding: Theme.gap(3)

            PageHead {
                width: parent.width - 2 * Theme.edge
                canGoBack: true
                title: qsTr("In which space?")
                onBack: page.done()
            }
        }

        delegate: SpaceDelegate {
            width: list.width
            onChosen: page.spaceChosen(row.id, page.tool)
        }
    }
}
