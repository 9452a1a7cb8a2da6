// The photos of a space beside each other, from before to after.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ListView {
    id: strip

    required property string spaceId
    // Large type needs a second line for the caption.
    readonly property int captionLines: Theme.smallSize > 18 ? 2 : 1

    orientation: ListView.Horizontal
    height: count > 0 ? Theme.gap(22) + captionLines * (Theme.smallSize + Theme.gap(2)) : 0
    visible: count > 0
    spacing: Theme.gap(2)
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    model: SitePhotos { spaceId: strip.spaceId }

    delegate: Column {
        id: photo

        required property photoRow row

        width: (strip.width - Theme.gap(2)) / 2
        spacing: Theme.gap(1)

        Rectangle {
            width: parent.width
            height: Theme.gap(22)
            color: Theme.plaster

            Image {
                anchors.fill: parent
                source: photo.row.url
                sourceSize.width: 320
                fillMode: Image.PreserveAspectCrop
                asynchronous: true
                autoTransform: true
                Accessible.role: Accessible.Graphic
                Accessible.name: photo.row.words
            }

            Words {
                anchors.centerIn: parent
                visible: photo.row.url.toString() === ""
                text: qsTr("not on this phone yet")
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }
        }

        Words {
            width: parent.width
            text: photo.row.words
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            elide: Text.ElideRight
            maximumLineCount: strip.captionLines
            wrapMode: strip.captionLines > 1 ? Text.Wrap : Text.NoWrap
        }
    }
}
