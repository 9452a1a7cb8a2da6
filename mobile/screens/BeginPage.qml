// A new job in under a minute: what the house is called, when it was built, which rooms it has.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    signal done()

    Flickable {
        id: scroll
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: foot.top }
        contentHeight: column.implicitHeight + Theme.gap(6)
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column
            x: Theme.edge
            width: parent.width - 2 * Theme.edge
            spacing: Theme.gap(2)

            PageHead {
                width: parent.width
                canGoBack: true
                title: qsTr("Begin a job")
                onBack: page.done()
            }

            LineField {
                id: name
                areaName: "jobName"
                width: parent.width
                label: qsTr("Street and number, or what you call it")
                onEntered: year.take()
            }

            LineField {
                id: year
                areaName: "builtYear"
                width: parent.width
                label: qsTr("Year it was built, where known")
                inputMethodHints: Qt.ImhDigitsOnly
            }

            Words {
                width: parent.width
                text: qsTr("Houses built before 1978 bring cautions about old paint; the year decides which.")
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }

            Heading {
                width: parent.width
                topPadding: Theme.gap(3)
                text: qsTr("Its rooms, as you walk them")
                font.pixelSize: Theme.largeSize
            }

            RoomsPicker {
                id: rooms
                objectName: "rooms"
                width: parent.width
            }
        }
    }

    Rectangle {
        id: foot
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: footColumn.implicitHeight + Theme.gap(8)
        color: Theme.plaster

        Column {
            id: footColumn
            anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
            anchors.margins: Theme.edge
            spacing: Theme.gap(2)

            Words {
                objectName: "whyNot"
                width: parent.width
                visible: JobBook.notKeptText !== ""
                text: JobBook.notKeptText
            }

            ActionButton {
                objectName: "beginJob"
                width: parent.width
                text: rooms.chosen.length > 0 ? qsTr("Begin with %n room(s)", "", rooms.chosen.length)
                                              : qsTr("Begin")
                filled: true
                onClicked: if (JobBook.beginJob(name.text, year.text, rooms.chosen))
                               page.done()
            }
        }
    }
}
