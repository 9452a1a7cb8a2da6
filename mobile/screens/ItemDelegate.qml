// An item of a space: what is done to what, its tape, what stands in the way.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

PressArea {
    id: item

    required property itemRow row

    signal chosen()

    objectName: "item"
    enabled: row.canMark
    text: row.spoken
    implicitHeight: Math.max(Theme.gap(18), content.implicitHeight + Theme.gap(6))
    onClicked: item.chosen()

    Hairline {
        anchors { left: parent.left; right: parent.right; top: parent.top }
    }

    contentItem: Item {
        ColumnLayout {
            id: content
            anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
            anchors.leftMargin: Theme.edge
            anchors.rightMargin: Theme.edge
            spacing: Theme.gap(1)

            Words {
                text: item.row.title
                textFormat: Text.StyledText
                color: item.row.canMark ? Theme.ink : Theme.pencil
                Layout.fillWidth: true
            }

            RowLayout {
                visible: !item.row.kept
                spacing: Theme.gap(3)
                Layout.fillWidth: true

                Tape {
                    done: item.row.done
                    plan: item.row.plan
                    finished: item.row.finished
                    Layout.fillWidth: true
                    Layout.alignment: Qt.AlignVCenter
                }

                Words {
                    text: item.row.figure
                    wrapMode: Text.NoWrap
                    horizontalAlignment: Text.AlignRight
                    Layout.minimumWidth: Theme.bodySize * 3
                }
            }

            Words {
                visible: text !== ""
                text: item.row.under
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
                Layout.fillWidth: true
            }

            RowLayout {
                visible: item.row.caution !== ""
                spacing: Theme.gap(2)
                Layout.fillWidth: true

                Sign {
                    name: "warning"
                    tone: Theme.brick
                    Layout.alignment: Qt.AlignTop
                }

                Words {
                    text: item.row.caution
                    color: Theme.brick
                    font.pixelSize: Theme.smallSize
                    font.bold: Theme.isSun
                    Layout.fillWidth: true
                }
            }
        }
    }
}
