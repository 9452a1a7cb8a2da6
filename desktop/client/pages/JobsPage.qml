// The jobs of the book, how each stands, and what is at stake across all of them.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    property bool adding: false

    Shortcut { sequence: "Ctrl+N"; onActivated: page.add() }
    Shortcut { sequence: "Ctrl+O"; onActivated: chooser.open() }

    function add() {
        page.adding = true;
        form.forceActiveFocus();
    }

    JobList { id: jobs }

    Column {
        id: head
        x: Theme.gap(12)
        y: Theme.gap(8)
        width: parent.width - Theme.gap(24)
        spacing: Theme.gap(5)

        RowLayout {
            width: parent.width
            spacing: Theme.gap(8)

            Heading {
                objectName: "jobsTitle"
                text: jobs.count === 0 ? qsTr("A book without a job") : qsTr("Jobs")
                Layout.fillWidth: true
            }

            QuietLink {
                objectName: "otherBook"
                text: qsTr("Another book\u2026")
                hint: "Ctrl+O"
                onClicked: chooser.open()
            }

            QuietLink {
                objectName: "addJob"
                text: qsTr("A new job")
                hint: "Ctrl+N"
                onClicked: page.add()
            }

            ThemeLink { }
        }

        Words {
            width: parent.width
            visible: jobs.count === 0
            text: qsTr("It has not met its peer yet, or nothing was begun in it. Begin a job below.")
            color: Theme.pencil
        }

        NewJobForm {
            id: form
            objectName: "newJobForm"
            focus: visible
            width: Math.min(parent.width, Theme.gap(150))
            visible: page.adding || (jobs.count === 0 && Desk.state === Desk.Open)
            onVisibleChanged: if (!visible && page.activeFocus) list.forceActiveFocus()
            Keys.onEscapePressed: {
                page.adding = false;
                list.forceActiveFocus();
            }
        }

        Row {
            id: stakes
            width: parent.width
            visible: jobs.count > 0
            spacing: Theme.gap(8)

            Repeater {
                model: [{ name: "stakeCost", what: qsTr("All of it will cost"), figure: jobs.stakeCost },
                        { name: "stakeSpent", what: qsTr("Spent so far"), figure: jobs.stakeSpent },
                        { name: "stakeToGo", what: qsTr("Still to go"), figure: jobs.stakeToGo },
                        { name: "stakeEarn", what: qsTr("Will earn, before income tax"), figure: jobs.stakeEarn }]

                Column {
                    required property var modelData

                    width: (stakes.width - 3 * stakes.spacing) / 4

                    Words {
                        text: parent.modelData.what
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }

                    Heading {
                        objectName: parent.modelData.name
                        text: parent.modelData.figure === "" ? "\u2013" : parent.modelData.figure
                        font.pixelSize: Theme.titleSize
                    }
                }
            }
        }

        Words {
            objectName: "stakeNote"
            width: parent.width
            visible: jobs.count > 0 && text !== ""
            text: jobs.stakeNote
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        JobCells {
            visible: jobs.count > 0
            width: parent.width
            isHead: true
            job: qsTr("Job")
            doneText: qsTr("Done")
            cost: qsTr("Will cost")
            finish: qsTr("Will finish")
            earn: qsTr("Will earn")
            level: qsTr("Against budget")
        }
    }

    ListView {
        id: list
        objectName: "jobs"
        anchors {
            left: parent.left; right: parent.right; bottom: parent.bottom
            top: head.bottom; topMargin: Theme.gap(1)
        }
        focus: !form.visible
        clip: true
        model: jobs
        keyNavigationEnabled: true
        highlightFollowsCurrentItem: true
        highlightMoveDuration: 0
        onCountChanged: if (currentIndex < 0 && count > 0) currentIndex = 0
        boundsBehavior: Flickable.StopAtBounds
        Keys.onReturnPressed: if (currentIndex >= 0) Desk.openJob(jobs.idAt(currentIndex))
        Keys.onEnterPressed: if (currentIndex >= 0) Desk.openJob(jobs.idAt(currentIndex))

        delegate: JobDelegate {
            width: list.width
            isHere: ListView.isCurrentItem && list.activeFocus
            onChosen: Desk.openJob(row.id)
        }
    }

    FileDialog {
        id: chooser
        title: qsTr("Open a book")
        nameFilters: [qsTr("Books (*.book)"), qsTr("All files (*)")]
        onAccepted: Desk.open(selectedFile)
    }
}
