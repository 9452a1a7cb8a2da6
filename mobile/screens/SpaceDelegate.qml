// A space as a row of the house: its chip, its name, its tape and what is done.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

PressArea {
    id: space

    required property spaceRow row
    // With large type the tape takes a line of its own.
    readonly property bool isStacked: Theme.textPercent > 130

    signal chosen()

    objectName: "space"
    text: [row.name, row.figure, row.left].filter(part => part !== "").join(". ")
    implicitHeight: Math.max(Theme.gap(13), content.implicitHeight + Theme.gap(4))
    onClicked: space.chosen()

    contentItem: Item {
        GridLayout {
            id: content
            anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
            anchors.leftMargin: Theme.edge
            anchors.rightMargin: Theme.edge
            columnSpacing: Theme.gap(3)
            rowSpacing: Theme.gap(1)
            columns: space.isStacked ? 3 : 4

            Swatch {
                shortName: space.row.shortName
                ground: space.row.ground
                text: space.row.ink
            }

            Words {
                text: space.row.name
                maximumLineCount: 3
                elide: Text.ElideRight
                Layout.fillWidth: true
            }

            Tape {
                visible: space.row.hasWork
                done: space.row.done
                plan: space.row.plan
                finished: space.row.finished
                Layout.row: space.isStacked ? 1 : 0
                Layout.column: space.isStacked ? 0 : 2
                Layout.columnSpan: space.isStacked ? 3 : 1
                Layout.preferredWidth: space.isStacked ? -1 : space.width * 0.28
                Layout.fillWidth: space.isStacked
            }

            Words {
                text: space.row.hasWork ? space.row.figure : qsTr("no work")
                color: space.row.hasWork ? Theme.ink : Theme.pencil
                wrapMode: Text.NoWrap
                horizontalAlignment: Text.AlignRight
                Layout.row: 0
                Layout.column: space.isStacked ? 2 : 3
                Layout.minimumWidth: Theme.bodySize * 3
            }
        }
    }
}
