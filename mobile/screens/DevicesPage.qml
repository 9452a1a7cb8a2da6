// The peer this phone meets: what waits, when it last met, joining one by a code.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property PeerDesk peer
    property string waiting: ""

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
