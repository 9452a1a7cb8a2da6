// The camera looks for an invitation's picture. Loaded only where there is a camera.
import QtQuick
import QtMultimedia
import Ledgerboard.Look
import Ledgerboard.Phone

Rectangle {
    id: finder

    signal seen(string words)

    implicitHeight: Math.round(width * 0.75)
    color: Theme.belt
    clip: true

    CaptureSession {
        camera: Camera { active: finder.visible }
        videoOutput: output
    }

    VideoOutput {
        id: output
        anchors.fill: parent
        fillMode: VideoOutput.PreserveAspectCrop
    }

    CodeEye {
        sink: output.videoSink
        onSeen: words => finder.seen(words)
    }
}
