// What the item in hand waits for and what waits for it: the days between, how they wait, and that
// they no longer do.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: panel

    required property ScheduleLinks links
    property string name: ""
    property int at: 0

    signal closed()
    signal linkAsked()

    function begin() {
        panel.visible = true;
        panel.at = 0;
        list.forceActiveFocus();
    }

    function leave() {
        panel.visible = false;
    }

    function close() {
        panel.visible = false;
        panel.closed();
    }

    visible: false
    Keys.onEscapePressed: panel.close()

    Rectangle {
        anchors.fill: parent
        color: Theme.plaster
        border.width: Theme.hairline
        border.color: Theme.pencil

        MouseArea { anchors.fill: parent }
    }

    Heading {
        id: head
        objectName: "linksTitle"
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.gap(4) }
        text: panel.name
        font.pixelSize: Theme.largeSize
        maximumLineCount: 2
        elide: Text.ElideRight
    }

    Words {
        objectName: "noLinks"
        anchors { left: parent.left; right: parent.right; top: head.bottom; margins: Theme.gap(4) }
        visible: list.count === 0
        text: qsTr("It waits for nothing, and nothing waits for it.")
        color: Theme.pencil
    }

    ListView {
        id: list
        objectName: "links"
        anchors {
            left: parent.left
            right: parent.right
            top: head.bottom
            bottom: foot.top
            margins: Theme.gap(4)
        }
        clip: true
        model: panel.links.rows
        currentIndex: Math.min(panel.at, count - 1)
        activeFocusOnTab: true
        boundsBehavior: Flickable.StopAtBounds
        Accessible.role: Accessible.List
        Accessible.name: panel.name

        Keys.onPressed: event => {
            const far = (event.modifiers & Qt.ShiftModifier) !== 0 ? 5 : 1;
            const row = list.currentIndex;
            if (event.key === Qt.Key_Down)
                panel.at = Math.min(list.count - 1, row + 1);
            else if (event.key === Qt.Key_Up)
                panel.at = Math.max(0, row - 1);
            else if (event.key === Qt.Key_Right)
                panel.links.shiftLag(row, far);
            else if (event.key === Qt.Key_Left)
                panel.links.shiftLag(row, -far);
            else if (event.key === Qt.Key_Space)
                panel.links.turnKind(row);
            else if (event.key === Qt.Key_Delete)
                panel.links.unlink(row);
            else
                return;
            event.accepted = true;
        }

        delegate: Item {
            id: link

            required property var modelData
            required property int index

            readonly property bool isHere: list.currentIndex === link.index
            readonly property bool isTitled: link.modelData.heading !== ""

            width: list.width
            height: heading.height + words.implicitHeight + Theme.gap(4)

            Words {
                id: heading
                objectName: "linkHeading"
                width: parent.width
                height: link.isTitled ? implicitHeight : 0
                visible: link.isTitled
                text: link.modelData.heading
                color: Theme.pencil
                topPadding: link.index > 0 ? Theme.gap(3) : 0
                bottomPadding: Theme.gap(1)
            }

            Rectangle {
                anchors.fill: words
                anchors.margins: -Theme.gap(1)
                color: Theme.paper
                visible: link.isHere
                border.width: list.activeFocus ? Theme.stroke : Theme.hairline
                border.color: Theme.slate
            }

            MouseArea {
                anchors.fill: words
                onPressed: {
                    list.forceActiveFocus();
                    panel.at = link.index;
                }
            }

            Column {
                id: words
                x: Theme.gap(2)
                y: heading.height + Theme.gap(1)
                width: parent.width - Theme.gap(4)

                Words {
                    objectName: "linkOther"
                    width: parent.width
                    text: link.modelData.other
                    font.bold: true
                }

                Words {
                    objectName: "linkHow"
                    width: parent.width
                    text: link.modelData.how
                    font.pixelSize: Theme.smallSize
                }

                Flow {
                    width: parent.width
                    visible: link.isHere
                    spacing: Theme.gap(4)

                    QuietLink {
                        objectName: "linkSooner"
                        reach: Theme.gap(5)
                        text: qsTr("A day sooner")
                        hint: "\u2190"
                        onClicked: panel.links.shiftLag(link.index, -1)
                    }

                    QuietLink {
                        objectName: "linkLater"
                        reach: Theme.gap(5)
                        text: qsTr("A day later")
                        hint: "\u2192"
                        onClicked: panel.links.shiftLag(link.index, 1)
                    }

                    QuietLink {
                        objectName: "linkKind"
                        reach: Theme.gap(5)
                        text: qsTr("Wait otherwise")
                        hint: qsTr("Space")
                        onClicked: panel.links.turnKind(link.index)
                    }

                    QuietLink {
                        objectName: "linkDrop"
                        reach: Theme.gap(5)
                        text: qsTr("Unlink")
                        hint: qsTr("Del")
                        onClicked: panel.links.unlink(link.index)
                    }
                }
            }
        }
    }

    Row {
        id: foot
        anchors { left: parent.left; bottom: parent.bottom; margins: Theme.gap(4) }
        spacing: Theme.gap(4)

        ActionButton {
            objectName: "linkAdd"
            reach: Theme.gap(10)
            text: qsTr("Something after it")
            onClicked: panel.linkAsked()
        }

        QuietLink {
            objectName: "linksClose"
            anchors.verticalCenter: parent.verticalCenter
            width: implicitWidth
            text: qsTr("Close")
            hint: "Esc"
            onClicked: panel.close()
        }
    }
}
