// The head of a page: a quiet line with where one is and what waits, then what the page is called.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

Column {
    id: head

    property string where: ""
    property string aside: ""
    property string title: ""
    property string under: ""
    property bool canGoBack: false
    property string backText: qsTr("Back")

    signal back()

    spacing: Theme.gap(1)

    RowLayout {
        width: parent.width
        spacing: Theme.gap(2)

        PressArea {
            id: backArea
            objectName: "back"
            visible: head.canGoBack
            text: head.backText
            Layout.leftMargin: -Theme.gap(3)
            onClicked: head.back()

            contentItem: Item {
                Sign {
                    anchors.centerIn: parent
                    name: "back"
                }
            }
        }

        Words {
            text: head.where
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            maximumLineCount: 2
            elide: Text.ElideRight
            Layout.fillWidth: true
            Layout.topMargin: head.canGoBack ? 0 : Theme.gap(3)
        }

        Words {
            objectName: "aside"
            visible: text !== ""
            text: head.aside
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            horizontalAlignment: Text.AlignRight
            Layout.maximumWidth: head.width / 2
            Layout.topMargin: head.canGoBack ? 0 : Theme.gap(3)
        }
    }

    Heading {
        objectName: "title"
        width: parent.width
        text: head.title
        // What is as long as a sentence is written smaller, and whole.
        font.pixelSize: head.title.length > 80 ? Theme.bodySize
                      : head.title.length > 26 ? Theme.largeSize : Theme.titleSize
        maximumLineCount: 12
        elide: Text.ElideRight
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: head.under
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
    }
}
