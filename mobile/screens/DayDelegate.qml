// An own item of a crew lead under its day: where, what, until when.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

Column {
    id: day

    required property dayRow row

    signal chosen()

    Heading {
        width: parent.width
        visible: text !== ""
        leftPadding: Theme.edge
        rightPadding: Theme.edge
        topPadding: Theme.gap(4)
        bottomPadding: Theme.gap(2)
        text: day.row.day
        font.pixelSize: Theme.bodySize
    }

    PressArea {
        objectName: "dayItem"
        width: parent.width
        text: [day.row.title, day.row.figure, day.row.under].join(". ")
        implicitHeight: Math.max(Theme.gap(14), content.implicitHeight + Theme.gap(5))
        onClicked: day.chosen()

        Hairline {
            anchors { left: parent.left; right: parent.right; top: parent.top }
        }

        contentItem: Item {
            RowLayout {
                id: content
                anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
                anchors.leftMargin: Theme.edge
                anchors.rightMargin: Theme.edge
                spacing: Theme.gap(3)

                Swatch {
                    shortName: day.row.shortName
                    ground: day.row.ground
                    text: day.row.ink
                    Layout.alignment: Qt.AlignTop
                }

                ColumnLayout {
                    spacing: 0
                    Layout.fillWidth: true

                    Words {
                        text: day.row.title
                        Layout.fillWidth: true
                    }

                    Words {
                        text: day.row.under
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                        Layout.fillWidth: true
                    }
                }

                Words {
                    text: day.row.figure
                    wrapMode: Text.NoWrap
                    Layout.alignment: Qt.AlignTop
                }
            }
        }
    }
}
