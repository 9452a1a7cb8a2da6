// One space: what it still needs, its notes. A row is marked by touching it.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    required property spaceRow row
    property string jobName: ""
    property string waiting: ""

    signal houseAsked()
    signal itemChosen(string id)
    signal noteAsked()
    signal typeOutAsked(string noteId)
    signal draftAsked()
    signal toolAsked(string tool)
    signal punchChosen(var punch)
    signal punchListAsked()

    // More are on a page of their own.
    readonly property int mostPunches: 6

    ItemList {
        id: itemRows
        spaceId: page.row.id
    }

    PunchItems {
        id: punchRows
        spaceId: page.row.id
    }

    NoteList {
        id: noteRows
        spaceId: page.row.id
    }

    PageList {
        id: list
        objectName: "items"
        anchors.fill: parent
        model: itemRows
        // A page is born while a swipe goes on: no more rows than are seen.
        cacheBuffer: Theme.gap(40)

        header: Column {
            width: list.width
            padding: Theme.edge
            topPadding: 0
            bottomPadding: Theme.gap(3)

            PageHead {
                width: parent.width - 2 * Theme.edge
                where: page.jobName
                aside: page.waiting
                title: page.row.name
                under: page.row.left
            }

            Item {
                width: 1
                height: photos.visible ? Theme.gap(3) : 0
            }

            PhotoStrip {
                id: photos
                width: parent.width - 2 * Theme.edge
                spaceId: page.row.id
            }
        }

        delegate: ItemDelegate {
            width: list.width
            onChosen: page.itemChosen(row.id)
        }

        footer: Column {
            width: list.width
            bottomPadding: Theme.gap(8)

            Hairline { width: parent.width }

            Heading {
                visible: punchRows.count > 0
                padding: Theme.edge
                bottomPadding: Theme.gap(2)
                text: qsTr("To be put right")
                font.pixelSize: Theme.bodySize
            }

            Repeater {
                model: FirstRows {
                    rows: punchRows
                    most: page.mostPunches
                }

                PunchDelegate {
                    width: list.width
                    onChosen: page.punchChosen(row)
                }
            }

            TextLink {
                objectName: "allPunches"
                visible: punchRows.count > page.mostPunches
                x: Theme.edge
                width: list.width - 2 * Theme.edge
                text: qsTr("All %n to be put right", "", punchRows.count)
                glyph: "punch"
                onClicked: page.punchListAsked()
            }

            Hairline {
                visible: punchRows.count > 0
                width: parent.width
            }

            Words {
                visible: itemRows.count === 0
                width: parent.width
                padding: Theme.edge
                text: qsTr("Nothing is written down for this space. A note is a beginning.")
            }

            Repeater {
                model: noteRows

                Column {
                    required property noteRow row

                    width: list.width
                    leftPadding: Theme.edge
                    rightPadding: Theme.edge

                    Words {
                        width: parent.width - 2 * Theme.edge
                        topPadding: Theme.gap(3)
                        visible: text !== ""
                        text: parent.row.about === "" ? parent.row.text
                                                      : parent.row.about + ": " + parent.row.text
                    }

                    Words {
                        width: parent.width - 2 * Theme.edge
                        bottomPadding: Theme.gap(3)
                        text: parent.row.spoken ? qsTr("Spoken note, not typed yet") : qsTr("Note")
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }

                    TextLink {
                        objectName: "typeOut"
                        visible: parent.row.spoken
                        width: parent.width - 2 * Theme.edge
                        text: qsTr("Hear it and type it out")
                        glyph: "speak"
                        onClicked: page.typeOutAsked(parent.row.id)
                    }
                }
            }

            TextLink {
                objectName: "addItems"
                visible: JobBook.isOwner
                x: Theme.edge
                width: list.width - 2 * Theme.edge
                text: qsTr("Walk it: say what is to be done")
                glyph: "walk"
                onClicked: page.draftAsked()
            }

            TextLink {
                objectName: "addFound"
                x: Theme.edge
                width: list.width - 2 * Theme.edge
                text: qsTr("Found something")
                glyph: "found"
                onClicked: page.toolAsked("found")
            }

            TextLink {
                objectName: "addPresence"
                x: Theme.edge
                width: list.width - 2 * Theme.edge
                text: qsTr("Who is here today")
                glyph: "people"
                onClicked: page.toolAsked("presence")
            }

            TextLink {
                objectName: "addDelivery"
                x: Theme.edge
                width: list.width - 2 * Theme.edge
                text: qsTr("Something was delivered")
                glyph: "truck"
                onClicked: page.toolAsked("delivery")
            }

            TextLink {
                objectName: "addSpoken"
                visible: JobBook.isOwner
                x: Theme.edge
                width: list.width - 2 * Theme.edge
                text: qsTr("Speak a note")
                glyph: "speak"
                onClicked: page.toolAsked("spoken")
            }

            TextLink {
                objectName: "addNote"
                visible: JobBook.isOwner
                x: Theme.edge
                width: list.width - 2 * Theme.edge
                text: qsTr("Write a note")
                glyph: "note"
                onClicked: page.noteAsked()
            }
        }
    }
}
