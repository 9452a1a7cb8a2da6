// Photos of a space: each picture touched is kept at once, several in a row.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property string spaceId
    property int stage: photos.guess

    title: qsTr("Photo")
    under: qsTr("Touch a picture to keep it here. The original stays as it is.")

    SitePhotos {
        id: photos
        spaceId: page.spaceId
    }

    Chips {
        width: parent.width
        chipName: "stage"
        names: [qsTr("Before"), qsTr("During"), qsTr("After")]
        chosen: page.stage
        onPicked: place => page.stage = place
    }

    Column {
        width: parent.width
        visible: page.stage === 2 && photos.before.toString() !== ""
        spacing: Theme.gap(1)

        Image {
            width: parent.width
            height: Math.min(width * 0.6, Theme.gap(50))
            source: visible ? photos.before : ""
            sourceSize.width: 512
            fillMode: Image.PreserveAspectCrop
            asynchronous: true
            autoTransform: true
        }

        Words {
            width: parent.width
            text: qsTr("Before, from this spot: stand where it was taken.")
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }
    }

    PictureGrid {
        width: parent.width
        rowsShown: 5
        onTaken: path => {
            if (photos.keepPicture(path, page.stage))
                chosen = path;
        }
    }
}
