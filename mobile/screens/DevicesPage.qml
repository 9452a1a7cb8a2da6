// The peer this phone meets: what waits, when it last met, joining one by a code.
import QtQuick
import QtQuick.Dialogs
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property PeerDesk peer
    property string waiting: ""
    property bool noCode: false

    // What an invitation's picture says joins at once.
    function readCode(picture: string) {
        const words = eye.readPicture(picture);
        page.noCode = words === "";
        if (!page.noCode)
            page.peer.join(words, "");
    }

    title: qsTr("Devices")
    under: page.peer.hasPeer ? page.peer.peerText : qsTr("This phone meets no peer yet.")
    canKeep: !page.peer.isBusy
    keepText: page.peer.isBusy ? qsTr("Meeting ...")
            : page.peer.hasPeer ? qsTr("Meet the peer now") : qsTr("Join")
    onKeepAsked: page.peer.hasPeer ? page.peer.meet() : page.peer.join(address.text, code.text)

    Words {
        width: parent.width
        visible: page.peer.hasPeer
        text: [page.waiting, page.peer.metText].filter(part => part !== "").join("; ")
    }

    Words {
        objectName: "clockText"
        width: parent.width
        visible: text !== ""
        text: page.peer.clockText
        font.bold: true
    }

    Words {
        objectName: "peerSaid"
        width: parent.width
        visible: text !== ""
        text: page.peer.said
        font.bold: page.peer.isTrouble
    }

    Words {
        width: parent.width
        visible: !page.peer.hasPeer
        text: qsTr("An owner makes an invitation, which shows an address and a code of five groups. The book on this phone comes along where the invitation is an owner's.")
    }

    Loader {
        id: finder
        width: parent.width
        active: page.visible && !page.peer.hasPeer && !page.peer.isBusy && Senses.hasCamera
        visible: active
        source: "CodeFinder.qml"
    }

    Connections {
        target: finder.item

        function onSeen(words: string) {
            page.peer.join(words, "");
        }
    }

    CodeEye { id: eye }

    TextLink {
        objectName: "codePicture"
        visible: !page.peer.hasPeer
        width: parent.width
        text: qsTr("Read the invitation from a picture")
        glyph: "photo"
        onClicked: pictures.open()
    }

    Words {
        objectName: "noCode"
        width: parent.width
        visible: page.noCode
        text: qsTr("No invitation is read in that picture. Take it straight on and close, or type the code.")
        font.bold: true
    }

    FileDialog {
        id: pictures
        title: qsTr("Read the invitation from a picture")
        nameFilters: [qsTr("Pictures (*.png *.jpg *.jpeg)"), qsTr("All files (*)")]
        onAccepted: page.readCode(selectedFile)
    }

    LineField {
        id: address
        areaName: "peerAddress"
        visible: !page.peer.hasPeer
        width: parent.width
        label: qsTr("Address, or all that the picture says")
        onEntered: code.take()
    }

    LineField {
        id: code
        areaName: "peerCode"
        visible: !page.peer.hasPeer
        width: parent.width
        label: qsTr("Code")
    }
}
