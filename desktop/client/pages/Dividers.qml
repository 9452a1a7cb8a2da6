// The dividers of the folder, down its left edge: the job, its pages, how it stands with the peer.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

Rectangle {
    id: dividers

    signal turned(string key)
    signal keysAsked()

    function editDay() {
        day.edit();
    }

    // All of them stand above the foot, however low the window.
    readonly property int step: Math.max(Theme.gap(8), Math.min(Theme.gap(11),
        (height - Theme.gap(5) - gap.y - gap.height - foot.implicitHeight - Theme.gap(7)) / Desk.dividers.length))

    color: Theme.plaster

    Rectangle {
        anchors.right: parent.right
        width: Theme.hairline
        height: parent.height
        color: Theme.rule
    }

    Column {
        anchors { left: parent.left; right: parent.right; top: parent.top; topMargin: Theme.gap(5) }

        Heading {
            objectName: "dividerJob"
            x: Theme.edge
            width: parent.width - Theme.edge - Theme.gap(2)
            text: Desk.jobName
            font.pixelSize: Theme.largeSize
            maximumLineCount: 3
            elide: Text.ElideRight
        }

        QuietLink {
            objectName: "allJobs"
            spread: true
            x: Theme.edge
            width: parent.width - Theme.edge
            text: qsTr("All jobs")
            hint: "Ctrl+0"
            onClicked: dividers.turned("jobs")
        }

        Item { id: gap; width: 1; height: Theme.gap(3) }

        Repeater {
            model: Desk.dividers

            PressArea {
                id: divider

                required property var modelData
                readonly property bool isOpen: Desk.page === modelData.key

                objectName: "divider-" + modelData.key
                width: dividers.width
                height: dividers.step
                reach: dividers.step
                text: modelData.name
                Accessible.description: modelData.shortcut
                onClicked: dividers.turned(modelData.key)

                // The open one is one sheet with its page.
                background: Item {
                    Rectangle {
                        anchors.fill: parent
                        anchors.leftMargin: Theme.gap(3)
                        visible: divider.isOpen
                        color: Theme.paper

                        Rectangle { width: parent.width; height: Theme.hairline; color: Theme.rule }
                        Rectangle {
                            y: parent.height - height
                            width: parent.width
                            height: Theme.hairline
                            color: Theme.rule
                        }
                        Rectangle { width: Theme.hairline; height: parent.height; color: Theme.rule }
                    }

                    Rectangle {
                        anchors.fill: parent
                        anchors.leftMargin: Theme.gap(3)
                        visible: !divider.isOpen && (divider.hovered || divider.down)
                        color: Theme.rule
                        opacity: 0.5
                    }

                    Rectangle {
                        anchors.fill: parent
                        anchors.margins: Theme.gap(1)
                        visible: divider.visualFocus
                        color: "transparent"
                        border.width: Theme.stroke
                        border.color: Theme.slate
                    }
                }

                contentItem: RowLayout {
                    Words {
                        leftPadding: Theme.edge
                        text: divider.text
                        font.bold: divider.isOpen
                        Layout.fillWidth: true
                    }

                    Words {
                        rightPadding: Theme.gap(3)
                        text: divider.modelData.shortcut
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }
                }
            }
        }
    }

    Column {
        id: foot
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; bottomMargin: Theme.gap(4) }
        leftPadding: Theme.edge
        rightPadding: Theme.gap(3)
        spacing: Theme.gap(2)

        readonly property real inner: width - leftPadding - rightPadding

        DayLine {
            id: day
            objectName: "dayLine"
            width: parent.inner
        }

        Hairline { width: parent.inner }

        Words {
            objectName: "peerText"
            width: parent.inner
            text: Desk.peerText
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        Words {
            objectName: "busyText"
            width: parent.inner
            text: Desk.isBusy ? qsTr("Working it out\u2026") : qsTr("Book: %1").arg(Desk.bookName)
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            elide: Text.ElideMiddle
            wrapMode: Text.NoWrap
        }

        QuietLink {
            objectName: "keysLink"
            spread: true
            width: parent.inner
            text: qsTr("Keys")
            hint: "F1"
            onClicked: dividers.keysAsked()
        }
    }
}
