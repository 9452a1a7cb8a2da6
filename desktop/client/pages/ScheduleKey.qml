// What the lines and marks of the schedule mean.
import QtQuick
import Ledgerboard.Look

Row {
    id: key

    spacing: Theme.gap(5)

    component Meaning: Row {
        id: meaning

        property string text
        property int thickness: 0
        property color tone: Theme.ink
        property int kind: 0  // 0: a line; 1: planned; 2: order by; 3: goods; 4: may slip

        spacing: Theme.gap(2)

        Item {
            width: meaning.kind === 2 || meaning.kind === 3 ? Theme.gap(3) : Theme.gap(6)
            height: words.height

            Rectangle {
                visible: meaning.kind === 0
                anchors.verticalCenter: parent.verticalCenter
                width: parent.width
                height: meaning.thickness
                color: meaning.tone
            }

            Rectangle {
                visible: meaning.kind === 1 || meaning.kind === 4
                anchors.verticalCenter: parent.verticalCenter
                width: parent.width
                height: 1
                color: meaning.tone
            }

            Rectangle {
                visible: meaning.kind === 1
                anchors.verticalCenter: parent.verticalCenter
                width: 2
                height: 5
                color: meaning.tone
            }

            Rectangle {
                visible: meaning.kind === 1 || meaning.kind === 4
                anchors { verticalCenter: parent.verticalCenter; right: parent.right }
                width: meaning.kind === 1 ? 2 : 1
                height: meaning.kind === 1 ? 5 : 7
                color: meaning.tone
            }

            Rectangle {
                visible: meaning.kind === 2
                anchors.centerIn: parent
                width: 9
                height: 9
                rotation: 45
                color: Theme.paper
                border.width: 2
                border.color: Theme.ink
            }

            Rectangle {
                visible: meaning.kind === 3
                anchors.centerIn: parent
                width: 7
                height: 7
                color: Theme.pencil
            }
        }

        Words {
            id: words
            text: meaning.text
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            wrapMode: Text.NoWrap
        }
    }

    Meaning { text: qsTr("no float"); thickness: Theme.gap(3) }
    Meaning { text: qsTr("2 days or less"); thickness: 7 }
    Meaning { text: qsTr("more"); thickness: 3 }
    Meaning { text: qsTr("may slip"); kind: 4; tone: Theme.pencil }
    Meaning { text: qsTr("was done"); thickness: 5; tone: Theme.moss }
    Meaning { text: qsTr("planned"); kind: 1; tone: Theme.slate }
    Meaning { text: qsTr("order by"); kind: 2 }
    Meaning { text: qsTr("goods come"); kind: 3 }
}
