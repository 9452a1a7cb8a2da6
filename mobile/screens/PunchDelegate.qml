// A punch item as a sentence: who, by when, what.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

PressArea {
    id: punch

    required property punchRow row

    signal chosen()

    objectName: "punchItem"
    text: [row.who + ": " + row.what, row.looked].filter(part => part !== "").join(". ")
    implicitHeight: Math.max(Theme.gap(14), content.implicitHeight + Theme.gap(5))
    onClicked: punch.chosen()

    Hairline {
        anchors { left: parent.left; right: parent.right; top: parent.top }
    }

    contentItem: Item {
        ColumnLayout {
            id: content
            anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
            anchors.leftMargin: Theme.edge
            anchors.rightMargin: Theme.edge
            spacing: 0

            Words {
                text: punch.row.who + ": " + punch.row.what
                Layout.fillWidth: true
            }

            Words {
                visible: text !== ""
                text: punch.row.looked
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                Layout.fillWidth: true
            }
        }
    }
}
