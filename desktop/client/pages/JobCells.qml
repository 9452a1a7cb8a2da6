// The columns of the list of jobs: of a job, or their headings.
import QtQuick
import Ledgerboard.Look

Item {
    id: cells

    property bool isHead: false
    property string job
    property string doneText
    property string cost
    property string finish
    property string earn
    property string level
    property string late: ""
    property real done: 0
    property real plan: -1
    property bool hasWork: false
    property bool finished: false
    property bool hasLevel: false
    property real lean: 0
    property real hair: 0.5
    readonly property color tone: isHead ? Theme.pencil : Theme.ink
    readonly property int size: isHead ? Theme.smallSize : Theme.bodySize
    readonly property int space: Theme.gap(6)

    implicitHeight: name.implicitHeight

    component Figure: Words {
        color: cells.tone
        font.pixelSize: cells.size
        horizontalAlignment: Text.AlignRight
        wrapMode: Text.NoWrap
        anchors.verticalCenter: parent.verticalCenter
    }

    Words {
        id: name
        objectName: "jobNameCell"
        anchors { left: parent.left; right: tape.left; rightMargin: cells.space
                  verticalCenter: parent.verticalCenter }
        text: cells.job
        color: cells.tone
        font.pixelSize: cells.size
        font.bold: !cells.isHead
        elide: Text.ElideRight
        maximumLineCount: 2
    }

    Tape {
        id: tape
        anchors { right: doneFigure.left; verticalCenter: parent.verticalCenter }
        width: Theme.gap(36)
        opacity: !cells.isHead && cells.hasWork ? 1 : 0
        done: cells.done
        plan: cells.plan
        finished: cells.finished
    }

    Figure {
        id: doneFigure
        objectName: "jobDone"
        anchors { right: vial.left; rightMargin: cells.space }
        width: Theme.gap(14)
        text: cells.doneText
    }

    Level {
        id: vial
        anchors { right: over.left; rightMargin: Theme.gap(3); verticalCenter: parent.verticalCenter }
        width: Theme.gap(36)
        height: Theme.gap(6)
        opacity: !cells.isHead && cells.hasLevel ? 1 : 0
        lean: cells.lean
        hair: cells.hair
        spoken: cells.level
    }

    Words {
        visible: cells.isHead
        anchors { left: vial.left; verticalCenter: parent.verticalCenter }
        text: cells.level
        color: cells.tone
        font.pixelSize: Theme.smallSize
    }

    Words {
        id: over
        objectName: "jobOver"
        anchors { right: costFigure.left; rightMargin: cells.space; verticalCenter: parent.verticalCenter }
        width: Theme.gap(34)
        text: cells.isHead ? "" : cells.level
        color: cells.tone
        font.pixelSize: Theme.smallSize
    }

    Figure {
        id: costFigure
        objectName: "jobCost"
        anchors { right: days.left; rightMargin: cells.space }
        width: Theme.gap(22)
        text: cells.cost
    }

    Column {
        id: days
        anchors { right: earnFigure.left; rightMargin: cells.space; verticalCenter: parent.verticalCenter }
        width: Theme.gap(38)

        Words {
            objectName: "jobFinish"
            width: parent.width
            text: cells.finish
            color: cells.tone
            font.pixelSize: cells.size
            horizontalAlignment: Text.AlignRight
            wrapMode: Text.NoWrap
        }

        Words {
            width: parent.width
            visible: cells.late !== ""
            text: cells.late
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            horizontalAlignment: Text.AlignRight
            wrapMode: Text.NoWrap
        }
    }

    Figure {
        id: earnFigure
        objectName: "jobEarn"
        anchors.right: parent.right
        width: Theme.gap(24)
        text: cells.earn
    }
}
