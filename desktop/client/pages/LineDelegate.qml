// A line of a part of the page.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look

Item {
    id: line

    required property var modelData
    required property int index
    property bool isHere: false

    signal pressed()

    objectName: "line"
    implicitHeight: row.implicitHeight + Theme.gap(3)
    Accessible.role: Accessible.ListItem
    Accessible.name: [modelData.day, modelData.what, modelData.why, modelData.figure,
                      modelData.page].filter(text => text !== "").join(", ")

    Hairline { width: parent.width }

    Rectangle {
        anchors.fill: parent
        anchors.topMargin: 1
        anchors.leftMargin: -Theme.gap(2)
        anchors.rightMargin: -Theme.gap(2)
        visible: line.isHere || (pointer.hovered && line.modelData.pageKey !== "")
        color: Theme.plaster

        Rectangle {
            width: Theme.gap(1)
            height: parent.height
            visible: line.isHere
            color: Theme.slate
        }
    }

    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
        spacing: Theme.gap(4)

        Words {
            visible: text !== ""
            text: line.modelData.day
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            Layout.preferredWidth: Theme.gap(19)
            Layout.alignment: Qt.AlignTop
        }

        Column {
            Layout.fillWidth: true

            Words {
                objectName: "lineWhat"
                width: parent.width
                text: line.modelData.what
                color: line.modelData.isBarred ? Theme.brick : Theme.ink
                font.bold: line.modelData.isPressing || line.modelData.isTotal
            }

            Words {
                width: parent.width
                visible: text !== ""
                text: line.modelData.why
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }
        }

        Words {
            objectName: "lineFigure"
            visible: text !== ""
            text: line.modelData.figure
            font.bold: line.modelData.isTotal
            wrapMode: Text.NoWrap
            Layout.alignment: Qt.AlignTop
        }

        Words {
            visible: text !== ""
            text: line.modelData.page
            color: line.modelData.pageKey !== "" ? Theme.slate : Theme.pencil
            font.pixelSize: Theme.smallSize
            wrapMode: Text.NoWrap
            Layout.alignment: Qt.AlignTop
        }
    }

    HoverHandler {
        id: pointer
        cursorShape: line.modelData.pageKey !== "" ? Qt.PointingHandCursor : Qt.ArrowCursor
    }

    TapHandler { onTapped: line.pressed() }
}
