// Something that needs a person today, as a sentence; touching it leads there.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

PressArea {
    id: need

    required property needRow row

    signal chosen()

    objectName: "need"
    text: need.row.why === "" ? need.row.what : need.row.what + ". " + need.row.why
    implicitHeight: Math.max(Theme.gap(14), content.implicitHeight + Theme.gap(5))
    onClicked: need.chosen()

    Hairline {
        anchors { left: parent.left; right: parent.right; top: parent.top }
    }

    contentItem: Item {
        RowLayout {
            id: content
            anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
            anchors.leftMargin: Theme.edge
            anchors.rightMargin: Theme.edge
            spacing: Theme.gap(2)

            Sign {
                visible: need.row.hazard
                name: "warning"
                tone: Theme.brick
                Layout.alignment: Qt.AlignTop
            }

            ColumnLayout {
                spacing: 0
                Layout.fillWidth: true

                Words {
                    text: need.row.what
                    Layout.fillWidth: true
                }

                Words {
                    visible: text !== ""
                    text: need.row.why
                    color: need.row.hazard ? Theme.brick : Theme.pencil
                    font.pixelSize: Theme.smallSize
                    Layout.fillWidth: true
                }
            }
        }
    }
}
