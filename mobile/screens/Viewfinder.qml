// What the camera sees, with the picture of before faintly over it, and the shutter. Loaded only
// where there is a camera.
import QtQuick
import QtMultimedia
import Ledgerboard.Look
import Ledgerboard.Phone

Column {
    id: finder

    property url before

    // A picture lies at `path`; whoever keeps it takes the file away.
    signal taken(string path)

    spacing: Theme.gap(3)

    CaptureSession {
        camera: Camera {
            id: camera
            active: finder.visible
        }
        imageCapture: ImageCapture {
            id: capture
            onImageSaved: (id, path) => finder.taken(path)
        }
        videoOutput: output
    }

    Rectangle {
        width: parent.width
        height: Math.round(width * 0.75)
        color: Theme.belt
        clip: true

        VideoOutput {
            id: output
            anchors.fill: parent
            fillMode: VideoOutput.PreserveAspectCrop
        }

        Image {
            objectName: "ghost"
            anchors.fill: parent
            visible: finder.before.toString() !== ""
            source: finder.before
            sourceSize.width: 800
            opacity: 0.35
            fillMode: Image.PreserveAspectCrop
            asynchronous: true
            autoTransform: true
        }
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: camera.error === Camera.NoError ? "" : qsTr("The camera does not start: %1").arg(camera.errorString)
    }

    ActionButton {
        objectName: "shutter"
        width: parent.width
        reach: Theme.gap(16)
        filled: true
        enabled: capture.readyForCapture
        text: qsTr("Take the picture")
        onClicked: capture.captureToFile(Senses.newFile(".jpg"))
    }
}
