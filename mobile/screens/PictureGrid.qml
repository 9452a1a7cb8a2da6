// The pictures of this phone, the newest first; one is taken by touching it.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Column {
    id: grid

    // The path of the one taken; "" for none.
    property string chosen: ""
    property int rowsShown: 3
    readonly property int side: Math.floor((width - 2 * Theme.gap(2)) / 3)

    signal taken(string path)

    spacing: Theme.gap(2)

    PictureFolder { id: pictures }

    Words {
        width: parent.width
        visible: pictures.count === 0
        text: qsTr("No pictures on this phone yet. Take one with its camera, then come back.")
        color: Theme.pencil
    }

    TextLink {
        objectName: "lookAgain"
        text: qsTr("Look for new pictures")
        glyph: "again"
        onClicked: pictures.refresh()
    }

    GridView {
        id: view
        objectName: "pictures"
        width: parent.width + Theme.gap(2)
        height: Math.min(grid.rowsShown, Math.ceil(pictures.count / 3)) * cellHeight
        cellWidth: grid.side + Theme.gap(2)
        cellHeight: grid.side + Theme.gap(2)
        clip: true
        model: pictures
        boundsBehavior: Flickable.StopAtBounds

        delegate: PressArea {
            id: picture

            required property pictureRow row
            readonly property bool isChosen: row.id === grid.chosen

            objectName: "picture"
            text: picture.isChosen ? qsTr("%1, taken").arg(row.spoken) : row.spoken
            width: grid.side
            height: grid.side
            onClicked: grid.taken(row.id)

            contentItem: Item {
                Image {
                    anchors.fill: parent
                    source: picture.row.url
                    sourceSize.width: 256
                    fillMode: Image.PreserveAspectCrop
                    asynchronous: true
                    autoTransform: true
                }

                Rectangle {
                    anchors.fill: parent
                    visible: picture.isChosen || picture.visualFocus
                    color: "transparent"
                    border.width: Theme.gap(1)
                    border.color: Theme.slate
                }

                Rectangle {
                    visible: picture.isChosen
                    anchors { right: parent.right; bottom: parent.bottom }
                    width: Theme.gap(8)
                    height: width
                    color: Theme.slate

                    Sign {
                        anchors.centerIn: parent
                        name: "check"
                        tone: Theme.paper
                    }
                }
            }
        }
    }
}
