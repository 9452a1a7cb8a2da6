// The house: how the cost stands, what needs somebody today, every space.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    required property SpaceList spaces
    required property HouseView house

    signal spaceChosen(string id)
    signal itemChosen(string id)
    signal changeChosen(string id)
    property string met: ""

    signal devicesAsked()
    signal preferencesAsked()

    NeedList { id: needs }
    DayList { id: days }

    PageList {
        id: list
        objectName: "spaces"
        anchors.fill: parent
        model: page.spaces

        header: Column {
            width: list.width
            leftPadding: Theme.edge
            rightPadding: Theme.edge
            spacing: Theme.gap(2)
            readonly property real inner: width - 2 * Theme.edge

            PageHead {
                width: parent.inner
                where: [page.house.waitingText, page.met].filter(part => part !== "").join("; ")
                aside: page.house.dayText
                title: page.house.name
                under: page.house.accessText
            }

            Level {
                width: parent.inner
                visible: page.house.hasLevel
                lean: page.house.lean
                hair: page.house.hair
                spoken: page.house.levelText.replace(/<[^>]*>/g, "")
            }

            RowLayout {
                // The words between the two ends need a line of their own.
                readonly property bool isLarge: Theme.textPercent > 130

                width: parent.inner
                visible: page.house.hasLevel

                Words {
                    text: qsTr("less")
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    Layout.alignment: Qt.AlignTop
                }

                Words {
                    text: parent.isLarge ? "" : page.house.levelText
                    textFormat: Text.StyledText
                    horizontalAlignment: Text.AlignHCenter
                    Layout.fillWidth: true
                }

                Words {
                    text: qsTr("more")
                    color: Theme.pencil
                    font.pixelSize: Theme.smallSize
                    Layout.alignment: Qt.AlignTop
                }
            }

            Words {
                visible: page.house.hasLevel && Theme.textPercent > 130
                width: parent.inner
                text: page.house.levelText
                textFormat: Text.StyledText
            }

            Heading {
                topPadding: Theme.gap(3)
                width: parent.inner
                text: needs.count > 0 ? qsTr("Needs you today") : qsTr("Nothing needs you today")
                font.pixelSize: Theme.bodySize
            }

            Column {
                x: 0
                width: list.width
                leftPadding: 0

                Repeater {
                    model: needs

                    NeedDelegate {
                        x: -Theme.edge
                        width: list.width
                        onChosen: row.changeId !== "" ? page.changeChosen(row.changeId)
                                : row.itemId !== "" ? page.itemChosen(row.itemId)
                                                    : page.spaceChosen(row.spaceId)
                    }
                }

                Hairline {
                    x: -Theme.edge
                    visible: needs.count > 0
                    width: list.width
                }
            }

            Heading {
                visible: !JobBook.isOwner
                topPadding: Theme.gap(3)
                width: parent.inner
                text: days.count > 0 ? qsTr("Your work, by day") : qsTr("All of your work is finished")
                font.pixelSize: Theme.largeSize
            }

            Column {
                width: list.width

                Repeater {
                    model: days

                    DayDelegate {
                        x: -Theme.edge
                        width: list.width
                        onChosen: page.itemChosen(row.id)
                    }
                }

                Hairline {
                    x: -Theme.edge
                    visible: days.count > 0
                    width: list.width
                }
            }

            Heading {
                topPadding: Theme.gap(3)
                bottomPadding: Theme.gap(2)
                width: parent.inner
                text: qsTr("Rooms")
                font.pixelSize: Theme.bodySize
            }
        }

        delegate: SpaceDelegate {
            width: list.width
            onChosen: page.spaceChosen(row.id)
        }

        footer: Column {
            width: list.width
            topPadding: Theme.gap(4)
            bottomPadding: Theme.gap(8)

            Hairline { width: parent.width }

            TextLink {
                objectName: "devices"
                x: Theme.edge
                width: list.width - 2 * Theme.edge
                text: qsTr("Devices: what waits, joining, meeting")
                glyph: "devices"
                onClicked: page.devicesAsked()
            }

            TextLink {
                objectName: "preferences"
                x: Theme.edge
                width: list.width - 2 * Theme.edge
                text: qsTr("This phone: light, type, hand, language")
                glyph: "sun"
                onClicked: page.preferencesAsked()
            }
        }
    }
}
