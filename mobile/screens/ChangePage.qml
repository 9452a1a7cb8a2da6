// A change that is asked for: yes, out of contingency or as new money; or no.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    required property string changeId

    title: desk.what
    under: [desk.asked, desk.items].filter(part => part !== "").join(". ")

    function end(kept: bool) {
        if (kept)
            page.done();
    }

    ChangeDesk {
        id: desk
        changeId: page.changeId
    }

    Image {
        width: parent.width
        height: visible ? Math.round(width * 0.6) : 0
        visible: desk.picture.toString() !== ""
        source: desk.picture
        sourceSize.width: 800
        fillMode: Image.PreserveAspectCrop
        asynchronous: true
        autoTransform: true
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Picture of it")
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: desk.why
    }

    Heading {
        width: parent.width
        text: desk.sum
    }

    ActionButton {
        objectName: "signContingency"
        width: parent.width
        text: qsTr("Sign it, out of contingency")
        filled: true
        onClicked: page.end(desk.sign(true))
    }

    ActionButton {
        objectName: "signNewMoney"
        width: parent.width
        text: qsTr("Sign it, with new money")
        onClicked: page.end(desk.sign(false))
    }

    ActionButton {
        objectName: "refuseChange"
        width: parent.width
        text: qsTr("Refuse it")
        onClicked: page.end(desk.refuse())
    }
}
