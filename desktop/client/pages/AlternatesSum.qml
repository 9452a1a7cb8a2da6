// What is best together and why, within which limits, and what each sum of money buys: the picture,
// or the table behind it.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

Column {
    id: sum

    required property AlternatesView view
    property bool asTable: false

    signal gone()

    function turn(toTable: bool) {
        sum.asTable = toTable;
        (toTable ? table : picture).forceActiveFocus();
    }

    function limit() {
        sum.view.limit(cash.text, finish.text, chance.text);
    }

    spacing: Theme.gap(2)

    Heading {
        text: qsTr("Best together")
        font.pixelSize: Theme.bodySize
    }

    Repeater {
        model: sum.view.bestOptions

        Words {
            required property string modelData

            objectName: "bestOption"
            width: sum.width
            text: modelData
            font.bold: true
        }
    }

    Words {
        objectName: "bestFigures"
        width: parent.width
        text: sum.view.bestFigures
    }

    Repeater {
        model: sum.view.bestWhy

        Words {
            required property string modelData

            objectName: "bestWhy"
            width: sum.width
            text: modelData
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }
    }

    Row {
        width: parent.width
        spacing: Theme.gap(5)

        Entry {
            id: cash
            width: (sum.width - 2 * parent.spacing) / 3
            label: qsTr("Costs no more than")
            areaName: "limitCash"
            area.onAccepted: sum.limit()
            area.Keys.onEscapePressed: sum.gone()
        }

        Entry {
            id: finish
            width: cash.width
            label: qsTr("Work ends by")
            areaName: "limitFinish"
            area.onAccepted: sum.limit()
            area.Keys.onEscapePressed: sum.gone()
        }

        Entry {
            id: chance
            width: cash.width
            label: qsTr("At a chance of, %")
            areaName: "limitChance"
            area.onAccepted: sum.limit()
            area.Keys.onEscapePressed: sum.gone()
        }
    }

    Words {
        objectName: "limitTrouble"
        width: parent.width
        visible: text !== ""
        text: sum.view.limitTrouble
    }

    Item {
        width: parent.width
        height: Math.max(title.implicitHeight, turnLink.implicitHeight) + Theme.gap(2)

        Heading {
            id: title
            anchors.bottom: parent.bottom
            text: qsTr("What each cost earns")
            font.pixelSize: Theme.bodySize
        }

        QuietLink {
            id: turnLink
            objectName: "frontierTurn"
            anchors { right: parent.right; bottom: parent.bottom }
            width: implicitWidth
            visible: sum.view.sets.length > 0
            text: sum.asTable ? qsTr("Picture") : qsTr("Table")
            hint: "T"
            onClicked: sum.turn(!sum.asTable)
        }
    }

    PlotPicture {
        id: picture
        objectName: "frontier"
        width: parent.width
        height: Theme.gap(52)
        visible: !sum.asTable && !sum.view.plot.isEmpty
        labelRoom: Theme.gap(29)
        plot: sum.view.plot
        onTableAsked: sum.turn(true)
        Keys.onEscapePressed: sum.gone()
    }

    Words {
        width: parent.width
        visible: !sum.asTable && sum.view.plot.isEmpty
        text: qsTr("There is but one set to choose, so there is nothing to draw.")
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
    }

    FocusScope {
        id: table
        objectName: "frontierTable"
        width: parent.width
        implicitHeight: rows.implicitHeight
        height: implicitHeight
        visible: sum.asTable
        activeFocusOnTab: true
        Keys.onEscapePressed: sum.gone()
        Keys.onPressed: event => {
            if (event.key !== Qt.Key_T || event.modifiers !== Qt.NoModifier)
                return;
            sum.turn(false);
            event.accepted = true;
        }

        Column {
            id: rows
            width: parent.width

            Repeater {
                model: [{ cost: qsTr("Costs"), finish: qsTr("Work ends"), net: qsTr("Earns"),
                          standing: "", options: "" }].concat(sum.view.sets)

                Item {
                    id: row

                    required property var modelData
                    required property int index
                    readonly property color tone: index === 0 ? Theme.pencil : Theme.ink

                    width: rows.width
                    height: Math.max(Theme.gap(6), names.implicitHeight + Theme.gap(2))

                    Hairline { width: parent.width; visible: row.index > 0 }

                    Words {
                        objectName: row.index === 0 ? "setHead" : "setCost"
                        y: Theme.gap(1)
                        width: Theme.gap(14)
                        text: row.modelData.cost
                        color: row.tone
                        font.pixelSize: Theme.smallSize
                        horizontalAlignment: Text.AlignRight
                    }

                    Words {
                        objectName: row.index === 0 ? "setHead" : "setFinish"
                        x: Theme.gap(17)
                        y: Theme.gap(1)
                        width: Theme.gap(20)
                        text: row.modelData.finish
                        color: row.tone
                        font.pixelSize: Theme.smallSize
                    }

                    Words {
                        objectName: row.index === 0 ? "setHead" : "setNet"
                        x: Theme.gap(36)
                        y: Theme.gap(1)
                        width: Theme.gap(14)
                        text: row.modelData.net
                        color: row.tone
                        font.pixelSize: Theme.smallSize
                        font.bold: row.index > 0
                        horizontalAlignment: Text.AlignRight
                    }

                    Words {
                        id: names
                        x: Theme.gap(53)
                        y: Theme.gap(1)
                        width: parent.width - x
                        text: [row.modelData.standing, row.modelData.options]
                              .filter(part => part !== "").join(": ")
                        font.pixelSize: Theme.smallSize
                    }
                }
            }
        }

        Rectangle {
            anchors.fill: parent
            anchors.margins: -Theme.gap(1)
            color: "transparent"
            visible: table.activeFocus
            border.width: Theme.stroke
            border.color: Theme.slate
        }
    }

    Item { width: 1; height: Theme.gap(1) }

    Repeater {
        model: sum.view.rests

        Words {
            required property string modelData

            objectName: "alternatesRest"
            width: sum.width
            text: modelData
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }
    }
}
