// How far the item in hand is: the rule to pull, the figure to type, or the steps that are done;
// the day it was seen, and what was seen.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: panel

    required property MarkForm form

    signal closed()

    function begin() {
        day.text = Desk.todayText;
        note.text = "";
        if (panel.form.isSteps) {
            if (steps.count > 0)
                steps.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
        } else {
            figure.area.forceActiveFocus();
            figure.area.selectAll();
        }
    }

    function keep() {
        if (panel.form.keep(day.text, note.text))
            panel.leave();
    }

    function leave() {
        panel.form.close();
        panel.closed();
    }

    visible: panel.form.isOpen
    Keys.onEscapePressed: panel.leave()

    Shortcut { sequences: ["Ctrl+Return", "Ctrl+Enter"]; enabled: panel.visible; onActivated: panel.keep() }

    Rectangle {
        anchors.fill: parent
        color: Theme.plaster
        border.width: Theme.hairline
        border.color: Theme.pencil

        MouseArea { anchors.fill: parent }
    }

    Flickable {
        anchors { fill: parent; margins: Theme.gap(4) }
        contentHeight: column.implicitHeight
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: column
            width: parent.width
            spacing: Theme.gap(3)

            Heading {
                objectName: "markTitle"
                width: parent.width
                text: panel.form.itemText
                font.pixelSize: Theme.largeSize
            }

            Words {
                objectName: "markMethod"
                width: parent.width
                text: panel.form.methodText
                color: Theme.pencil
            }

            TapeRule {
                objectName: "markRule"
                visible: !panel.form.isSteps
                width: parent.width
                stops: panel.form.stops
                stop: panel.form.stop
                last: panel.form.last
                lastText: panel.form.lastText
                spoken: panel.form.percentText
                onPulled: stop => panel.form.pull(stop)
            }

            Row {
                visible: !panel.form.isSteps
                width: parent.width
                spacing: Theme.gap(4)

                Entry {
                    id: figure
                    width: Theme.gap(40)
                    label: qsTr("Done")
                    areaName: "markFigure"
                    text: panel.form.figure
                    area.onTextEdited: panel.form.figure = figure.text
                    area.onAccepted: panel.keep()

                    // What is pulled shows, also after something was typed.
                    Connections {
                        target: panel.form

                        function onChanged() {
                            if (figure.text !== panel.form.figure)
                                figure.text = panel.form.figure;
                        }
                    }
                }

                Words {
                    objectName: "markPercent"
                    anchors.bottom: parent.bottom
                    text: panel.form.percentText
                    font.family: Theme.slab
                    font.pixelSize: Theme.titleSize
                }
            }

            Column {
                visible: panel.form.isSteps
                width: parent.width

                Repeater {
                    id: steps
                    model: panel.form.isSteps ? panel.form.steps.length : 0

                    PressArea {
                        id: step

                        required property int index

                        readonly property var row: panel.form.steps[step.index]

                        objectName: "markStep"
                        width: column.width
                        reach: Theme.gap(9)
                        checkable: false
                        text: step.row ? step.row.words : ""
                        Accessible.role: Accessible.CheckBox
                        Accessible.checked: step.row !== undefined && step.row.isDone
                        onClicked: panel.form.turn(step.index)
                        Keys.onDownPressed: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
                        Keys.onUpPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.TabFocusReason)

                        contentItem: Item {
                            Rectangle {
                                id: box
                                anchors.verticalCenter: parent.verticalCenter
                                x: Theme.gap(1)
                                width: Theme.gap(4)
                                height: width
                                color: step.row && step.row.isDone ? Theme.moss : "transparent"
                                border.width: Theme.stroke
                                border.color: Theme.ink
                            }

                            Words {
                                anchors {
                                    left: box.right
                                    leftMargin: Theme.gap(3)
                                    right: state.left
                                    verticalCenter: parent.verticalCenter
                                }
                                text: step.text
                                font.bold: step.row !== undefined && step.row.isDone
                                wrapMode: Text.NoWrap
                                elide: Text.ElideRight
                            }

                            Words {
                                id: state
                                objectName: "markStepState"
                                anchors { right: parent.right; rightMargin: Theme.gap(2); verticalCenter: parent.verticalCenter }
                                text: step.row && step.row.isDone ? qsTr("done") : qsTr("not yet")
                                color: Theme.pencil
                                font.pixelSize: Theme.smallSize
                            }
                        }
                    }
                }

                Words {
                    objectName: "markStepsPercent"
                    text: panel.form.percentText
                    font.family: Theme.slab
                    font.pixelSize: Theme.titleSize
                }
            }

            Entry {
                id: day
                width: parent.width
                label: qsTr("Seen on")
                areaName: "markDay"
                area.onAccepted: panel.keep()
            }

            Entry {
                id: note
                width: parent.width
                label: qsTr("What was seen")
                areaName: "markNote"
                area.onAccepted: panel.keep()
            }

            Row {
                spacing: Theme.gap(4)

                ActionButton {
                    objectName: "markKeep"
                    filled: true
                    reach: Theme.gap(10)
                    text: qsTr("Mark it")
                    onClicked: panel.keep()
                }

                QuietLink {
                    objectName: "markClose"
                    anchors.verticalCenter: parent.verticalCenter
                    width: implicitWidth
                    text: qsTr("Close")
                    hint: "Esc"
                    onClicked: panel.leave()
                }
            }
        }
    }
}
