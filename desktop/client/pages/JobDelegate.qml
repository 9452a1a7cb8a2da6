// A job of the book, to be opened.
import QtQuick
import Ledgerboard.Look

PressArea {
    id: line

    required property var row
    required property int index
    property bool isHere: false

    signal chosen()

    objectName: "job"
    text: row.name
    focusPolicy: Qt.NoFocus
    height: Theme.gap(17)
    onClicked: line.chosen()

    background: Item {
        Rectangle {
            anchors.fill: parent
            color: Theme.plaster
            visible: line.isHere || line.hovered
            opacity: line.isHere ? 1 : 0.5
        }

        Rectangle {
            x: Theme.gap(8)
            width: Theme.gap(1)
            height: parent.height
            visible: line.isHere
            color: Theme.slate
        }

        Hairline { x: Theme.gap(12); width: parent.width - Theme.gap(24) }
    }

    contentItem: Item {
        JobCells {
            x: Theme.gap(12)
            width: parent.width - Theme.gap(24)
            anchors.verticalCenter: parent.verticalCenter
            job: line.row.name
            done: line.row.done
            plan: line.row.plan
            hasWork: line.row.hasWork
            finished: line.row.finished
            doneText: !line.row.isReady ? (line.row.trouble !== "" ? line.row.trouble : qsTr("\u2026"))
                      : line.row.hasWork ? line.row.doneText : qsTr("no items yet")
            hasLevel: line.row.hasLevel
            lean: line.row.lean
            hair: line.row.hair
            level: line.row.hasWork ? line.row.overText : ""
            cost: line.row.hasWork ? line.row.cost : ""
            finish: line.row.hasWork ? line.row.finish : ""
            late: line.row.hasWork ? line.row.late : ""
            earn: line.row.isReady ? line.row.earn : ""
        }
    }
}
