// A line of a bank's download: when, how much, what the bank writes; what it is taken for and why.
import QtQuick
import Ledgerboard.Look

Item {
    id: line

    required property var modelData

    readonly property bool isTitled: line.modelData.heading !== ""

    height: head.height + Math.max(words.height, written.implicitHeight) + Theme.gap(3)

    Words {
        id: head
        objectName: "downloadHeading"
        width: parent.width
        height: line.isTitled ? implicitHeight : 0
        visible: line.isTitled
        text: line.modelData.heading
        topPadding: Theme.gap(2)
        bottomPadding: Theme.gap(2)
        font.bold: true
    }

    Hairline {
        y: head.height
        width: parent.width
    }

    Words {
        id: day
        y: words.y
        width: Theme.gap(28)
        text: line.modelData.day
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
        wrapMode: Text.NoWrap
    }

    Words {
        id: amount
        anchors.left: day.right
        y: words.y
        width: Theme.gap(24)
        text: line.modelData.amount
        horizontalAlignment: Text.AlignRight
        font.pixelSize: Theme.smallSize
        wrapMode: Text.NoWrap
    }

    Words {
        id: written
        anchors { left: amount.right; leftMargin: Theme.gap(5) }
        y: words.y
        width: Math.max(Theme.gap(30), line.width * 0.27)
        text: line.modelData.written
        font.pixelSize: Theme.smallSize
    }

    Column {
        id: words
        anchors {
            left: written.right
            leftMargin: Theme.gap(4)
            right: parent.right
        }
        y: head.height + Theme.gap(1)

        Words {
            objectName: "downloadTaken"
            visible: text !== ""
            width: parent.width
            text: line.modelData.sure === "" ? line.modelData.taken
                                             : line.modelData.taken + ", " + line.modelData.sure
            font.bold: line.modelData.sure !== ""
            font.pixelSize: Theme.smallSize
        }

        Words {
            objectName: "downloadWhy"
            width: parent.width
            text: line.modelData.why
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }
    }
}
