// A chart of a few lines over time. What each says at a place is told under the pointer, and along
// the chart with the arrow keys; lines are told apart by stroke and by the label at their end.
import QtQuick
import QtQuick.Shapes
import Ledgerboard.Look

FocusScope {
    id: picture

    required property Plot plot
    property int stop: -1
    // Room for the labels of the lines at the right, and of the levels at the left.
    property int labelRoom: Theme.gap(36)
    property int levelRoom: Theme.gap(11)

    signal tableAsked()

    function move(to: int) {
        picture.stop = Math.max(0, Math.min(picture.plot.stops - 1, to));
    }

    function toneOf(stroke: int): color {
        return stroke === 0 ? Theme.slate : stroke === 2 ? Theme.moss : Theme.ink;
    }

    implicitHeight: Theme.gap(75)
    activeFocusOnTab: true
    Accessible.role: Accessible.Chart
    Accessible.name: picture.stop < 0 ? picture.plot.spoken
                     : [picture.plot.whenOf(picture.stop)].concat(
                           picture.plot.figuresOf(picture.stop)).join(", ")
    Accessible.focusable: true
    onActiveFocusChanged: if (activeFocus && picture.stop < 0) picture.move(picture.plot.todayStop)
    Keys.onRightPressed: picture.move(picture.stop + 1)
    Keys.onLeftPressed: picture.move(picture.stop - 1)
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Home)
            picture.move(0);
        else if (event.key === Qt.Key_End)
            picture.move(picture.plot.stops - 1);
        else if (event.key === Qt.Key_PageDown)
            picture.move(picture.stop + 7);
        else if (event.key === Qt.Key_PageUp)
            picture.move(picture.stop - 7);
        else if (event.key === Qt.Key_T && event.modifiers === Qt.NoModifier)
            picture.tableAsked();
        else
            return;
        event.accepted = true;
    }

    Item {
        id: field
        objectName: "plotField"
        anchors.fill: parent
        anchors.leftMargin: picture.levelRoom
        anchors.rightMargin: picture.labelRoom
        anchors.topMargin: Theme.gap(2)
        anchors.bottomMargin: Theme.gap(8)

        Repeater {
            model: picture.plot.levels

            Item {
                required property var modelData

                y: Math.round((1 - modelData.place) * field.height)
                width: field.width

                Rectangle {
                    width: parent.width
                    height: Theme.hairline
                    color: Theme.rule
                }

                Words {
                    anchors.right: parent.left
                    anchors.rightMargin: Theme.gap(2)
                    anchors.verticalCenter: parent.top
                    text: parent.modelData.text
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                }
            }
        }

        Repeater {
            model: picture.plot.days

            Item {
                required property var modelData

                x: Math.round(modelData.place * field.width)
                y: field.height

                Rectangle {
                    width: Theme.hairline
                    height: Theme.gap(1)
                    color: Theme.pencil
                }

                Words {
                    y: Theme.gap(2)
                    anchors.horizontalCenter: parent.left
                    text: parent.modelData.text
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.NoWrap
                }
            }
        }

        Shape {
            anchors.fill: parent
            visible: picture.plot.today >= 0

            ShapePath {
                strokeColor: Theme.pencil
                strokeWidth: 1
                fillColor: "transparent"
                strokeStyle: ShapePath.DashLine
                dashPattern: [3, 4]
                startX: Math.round(picture.plot.today * field.width)
                startY: 0

                PathLine {
                    x: Math.round(picture.plot.today * field.width)
                    y: field.height
                }
            }
        }

        Words {
            visible: picture.plot.today >= 0
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.gap(1)
            x: picture.plot.today > 0.5 ? picture.plot.today * field.width - width - Theme.gap(2)
                                        : picture.plot.today * field.width + Theme.gap(2)
            text: picture.plot.todayText
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        Repeater {
            model: picture.plot.lines

            Item {
                id: line

                required property var modelData
                required property int index
                readonly property color tone: picture.toneOf(modelData.stroke)

                anchors.fill: parent

                Shape {
                    anchors.fill: parent

                    ShapePath {
                        strokeColor: line.tone
                        strokeWidth: line.modelData.stroke === 2 ? 3.5 : 2
                        fillColor: "transparent"
                        joinStyle: ShapePath.RoundJoin
                        strokeStyle: line.modelData.stroke === 0 ? ShapePath.DashLine
                                                                 : ShapePath.SolidLine
                        dashPattern: [4, 3]

                        PathPolyline {
                            path: picture.plot.path(line.index, field.width, field.height)
                        }
                    }

                    // From the end of the line to its label.
                    ShapePath {
                        strokeColor: Theme.rule
                        strokeWidth: 1
                        fillColor: "transparent"
                        startX: line.modelData.endAcross * field.width + 6
                        startY: (1 - line.modelData.endUp) * field.height

                        PathLine {
                            x: field.width + Theme.gap(2)
                            y: (1 - line.modelData.labelUp) * field.height
                        }
                    }
                }

                Repeater {
                    model: picture.plot.marksStops ? picture.plot.stops : 0

                    Rectangle {
                        required property int index
                        readonly property real up: picture.plot.upOf(index, line.index)

                        visible: up >= 0
                        x: picture.plot.acrossOf(index) * field.width - width / 2
                        y: (1 - up) * field.height - height / 2
                        width: 9
                        height: 9
                        radius: 4.5
                        color: line.tone
                    }
                }

                Rectangle {
                    x: line.modelData.endAcross * field.width - width / 2
                    y: (1 - line.modelData.endUp) * field.height - height / 2
                    width: 7
                    height: 7
                    radius: 3.5
                    color: line.tone
                }

                Words {
                    objectName: "plotLabel"
                    x: field.width + Theme.gap(3)
                    y: (1 - line.modelData.labelUp) * field.height - height / 2
                    text: line.modelData.label
                    color: line.tone
                    font.pixelSize: Theme.smallSize
                    font.bold: line.modelData.stroke === 2
                    wrapMode: Text.NoWrap
                }
            }
        }

        Item {
            id: told
            objectName: "plotTold"
            visible: picture.stop >= 0 && (picture.activeFocus || pointer.hovered)
            x: Math.round(picture.plot.acrossOf(picture.stop) * field.width)
            height: field.height

            Rectangle {
                width: Theme.hairline
                height: parent.height
                color: Theme.ink
            }

            Repeater {
                model: picture.plot.lines

                Rectangle {
                    required property var modelData
                    required property int index
                    readonly property real up: picture.plot.upOf(picture.stop, index)

                    visible: up >= 0
                    x: -4
                    y: (1 - up) * field.height - 4
                    width: 9
                    height: 9
                    radius: 4.5
                    color: Theme.paper
                    border.width: 2
                    border.color: picture.toneOf(modelData.stroke)
                }
            }

            Rectangle {
                readonly property bool atLeft: told.x > field.width / 2

                x: atLeft ? -width - Theme.gap(3) : Theme.gap(3)
                y: 0
                width: toldWords.implicitWidth + Theme.gap(6)
                height: toldWords.implicitHeight + Theme.gap(4)
                color: Theme.paper
                border.width: Theme.hairline
                border.color: Theme.pencil

                Column {
                    id: toldWords
                    x: Theme.gap(3)
                    y: Theme.gap(2)

                    Words {
                        objectName: "plotWhen"
                        text: picture.plot.whenOf(picture.stop)
                        font.pixelSize: Theme.smallSize
                        font.bold: true
                        wrapMode: Text.NoWrap
                    }

                    Repeater {
                        model: picture.plot.figuresOf(picture.stop)

                        Words {
                            required property string modelData

                            objectName: "plotFigure"
                            text: modelData
                            font.pixelSize: Theme.smallSize
                            wrapMode: Text.NoWrap
                        }
                    }
                }
            }
        }

        HoverHandler {
            id: pointer

            // A pointer that lies still must not fight the keys.
            property real last: -1

            onPointChanged: {
                if (point.position.x === last)
                    return;
                last = point.position.x;
                picture.move(picture.plot.nearest(last / field.width));
            }
        }
    }

    Rectangle {
        anchors.fill: parent
        anchors.margins: -Theme.gap(1)
        color: "transparent"
        visible: picture.activeFocus
        border.width: Theme.stroke
        border.color: Theme.slate
    }
}
