// Every space as its chip, to jump there; pulled up, or by its first place, the whole house.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Rectangle {
    id: strip

    required property SpaceList spaces
    property string currentId: ""

    signal spaceChosen(string id)
    signal houseAsked()

    implicitHeight: Theme.gap(14)
    color: Theme.plaster

    Hairline {
        width: parent.width
    }

    PressArea {
        id: wholeHouse
        objectName: "wholeHouse"
        anchors { left: parent.left; leftMargin: Theme.gap(2); verticalCenter: parent.verticalCenter }
        text: qsTr("The whole house")
        onClicked: strip.houseAsked()

        contentItem: Item {
            Sign {
                anchors.centerIn: parent
                name: "house"
            }
        }
    }

    ListView {
        id: chips
        objectName: "chips"
        anchors { left: wholeHouse.right; right: parent.right; top: parent.top; bottom: parent.bottom }
        orientation: ListView.Horizontal
        clip: true
        spacing: 0
        model: strip.spaces
        currentIndex: strip.spaces.count > 0 ? strip.spaces.placeOf(strip.currentId) : -1
        highlightMoveDuration: Theme.motionMs
        highlightRangeMode: ListView.ApplyRange
        preferredHighlightBegin: Theme.gap(8)
        preferredHighlightEnd: width - Theme.gap(20)
        boundsBehavior: Flickable.StopAtBounds

        delegate: PressArea {
            id: chip

            required property spaceRow row
            readonly property bool isHere: row.id === strip.currentId

            objectName: "chip" + row.shortName
            text: chip.isHere ? qsTr("%1, on screen").arg(row.name) : row.name
            height: chips.height
            width: Math.max(Theme.target, swatch.implicitWidth + Theme.gap(2))
            onClicked: strip.spaceChosen(row.id)

            contentItem: Item {
                Swatch {
                    id: swatch
                    anchors.centerIn: parent
                    height: implicitHeight + (chip.isHere ? Theme.gap(2) : 0)
                    shortName: chip.row.shortName
                    ground: chip.row.ground
                    text: chip.row.ink
                }

                Rectangle {
                    visible: chip.isHere
                    anchors { bottom: parent.bottom; horizontalCenter: parent.horizontalCenter }
                    width: swatch.width
                    height: Theme.stroke + 1
                    color: Theme.ink
                }
            }
        }
    }

    // Pulling the strip up leads to the house.
    DragHandler {
        target: null
        xAxis.enabled: false
        grabPermissions: PointerHandler.CanTakeOverFromAnything
        onTranslationChanged: if (active && translation.y < -Theme.gap(8))
                                  strip.houseAsked()
    }
}
