// A row of the draft that was read from the notes.
import QtQuick
import Ledgerboard.Look

Item {
    id: line

    required property var row
    required property int index
    property bool isHere: false
    property bool isFocused: false

    signal pointed()
    signal pressed()
    signal flipped()

    objectName: row.isHeading ? "draftHeading" : "draftRow"
    height: row.isHeading ? Theme.gap(10) : words.implicitHeight + Theme.gap(3)
    Accessible.role: Accessible.ListItem
    Accessible.name: [row.what, row.figures, row.note, row.sure].filter(text => text !== "").join(", ")

    Heading {
        anchors { bottom: parent.bottom; bottomMargin: Theme.gap(1) }
        visible: line.row.isHeading
        text: line.row.what
        font.pixelSize: Theme.bodySize
    }

    Rectangle {
        anchors.fill: parent
        visible: line.isHere && !line.row.isHeading
        color: Theme.plaster

        Rectangle {
            width: Theme.gap(1)
            height: parent.height
            visible: line.isFocused
            color: Theme.slate
        }
    }

    Hairline {
        anchors.bottom: parent.bottom
        width: parent.width
    }

    Column {
        id: words
        visible: !line.row.isHeading
        anchors {
            left: parent.left
            right: sure.left
            leftMargin: Theme.gap(2)
            rightMargin: Theme.gap(3)
            verticalCenter: parent.verticalCenter
        }
        opacity: line.row.isDropped ? 0.5 : 1

        Words {
            objectName: "draftWhat"
            width: parent.width
            text: line.row.what + (line.row.figures === "" ? "" : ", " + line.row.figures)
            color: line.row.isHazard ? Theme.brick : Theme.ink
            font.strikeout: line.row.isDropped
        }

        Words {
            width: parent.width
            visible: text !== ""
            text: line.row.note
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            font.strikeout: line.row.isDropped
        }
    }

    Words {
        id: sure
        visible: !line.row.isHeading
        anchors { right: drop.left; rightMargin: Theme.gap(3); verticalCenter: parent.verticalCenter }
        text: line.row.sure
        color: line.row.isUnsure ? Theme.ink : Theme.pencil
        font.pixelSize: Theme.smallSize
        font.bold: line.row.isUnsure
        wrapMode: Text.NoWrap
    }

    HoverHandler { onHoveredChanged: if (hovered && !line.row.isHeading) line.pointed() }

    TapHandler { onTapped: if (!line.row.isHeading) line.pressed() }

    QuietLink {
        id: drop
        objectName: "dropRow"
        visible: !line.row.isHeading
        anchors { right: parent.right; rightMargin: Theme.gap(2); verticalCenter: parent.verticalCenter }
        width: Theme.gap(18)
        focusPolicy: Qt.NoFocus
        text: line.row.isDropped ? qsTr("Take in") : qsTr("Drop")
        onClicked: line.flipped()
    }
}
