// A sheet without rows: what it is for and how to begin.
import QtQuick
import Ledgerboard.Look

Column {
    id: empty

    required property string head
    required property string words
    property string begin: ""

    signal asked()

    spacing: Theme.gap(4)

    Heading {
        objectName: "nothingHead"
        width: parent.width
        text: empty.head
    }

    Words {
        width: parent.width
        text: empty.words
    }

    ActionButton {
        objectName: "nothingBegin"
        visible: empty.begin !== ""
        filled: true
        reach: Theme.gap(11)
        text: empty.begin
        onClicked: empty.asked()
    }
}
