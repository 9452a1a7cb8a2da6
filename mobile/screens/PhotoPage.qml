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

    Loader {
        id: finder
        width: parent.width
        active: Senses.hasCamera
        visible: active
        source: "Viewfinder.qml"
    }

    Binding {
        target: finder.item
        property: "before"
        value: page.stage === 2 ? photos.before : ""
        when: finder.item !== null
    }

    Connections {
        target: finder.item

        function onTaken(path: string) {
            photos.keepPicture(path, page.stage);
            Senses.forget(path);
        }
    }

    Words {
        objectName: "noCamera"
        width: parent.width
        visible: !Senses.hasCamera
        text: qsTr("No camera is open to this program here: pictures come from this device's folder.")
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
    }

    Column {
        width: parent.width
        visible: !Senses.hasCamera && page.stage === 2 && photos.before.toString() !== ""
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
