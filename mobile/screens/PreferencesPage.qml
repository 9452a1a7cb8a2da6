// How this phone shows things: light, size of type, hand, motion, language.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    signal done()

    component Part: Heading {
        width: column.width
        topPadding: Theme.gap(5)
        font.pixelSize: Theme.largeSize
    }

    Flickable {
        anchors.fill: parent
        contentHeight: column.implicitHeight + Theme.gap(8)
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column
            x: Theme.edge
            width: parent.width - 2 * Theme.edge

            PageHead {
                width: parent.width
                canGoBack: true
                title: qsTr("This phone")
                onBack: page.done()
            }

            Part { text: qsTr("Light") }

            Repeater {
                model: [qsTr("By day"), qsTr("In the dark"), qsTr("Out in the sun: black on white")]

                Choice {
                    required property string modelData
                    required property int index

                    objectName: "theme" + index
                    width: column.width
                    text: modelData
                    chosen: Preferences.themeMode === index
                    onClicked: Preferences.themeMode = index
                }
            }

            Part { text: qsTr("Type") }

            Repeater {
                model: [100, 130, 160, 200]

                Choice {
                    required property int modelData

                    objectName: "type" + modelData
                    width: column.width
                    text: qsTr("%1 % of its size").arg(modelData)
                    chosen: Preferences.textPercent === modelData
                    onClicked: Preferences.textPercent = modelData
                }
            }

            Part { text: qsTr("Language") }

            Repeater {
                model: [
                    { code: "", words: qsTr("As the phone") },
                    { code: "en", words: "English" },
                    { code: "es", words: "Español" }
                ]

                Choice {
                    required property var modelData

                    objectName: "language" + modelData.code
                    width: column.width
                    text: modelData.words
                    chosen: Preferences.language === modelData.code
                    onClicked: Preferences.language = modelData.code
                }
            }

            Part { text: qsTr("Hand and motion") }

            Choice {
                objectName: "leftHand"
                width: column.width
                text: qsTr("For the left hand")
                chosen: Preferences.leftHand
                chosenWords: qsTr("yes")
                onClicked: Preferences.leftHand = !Preferences.leftHand
            }

            Choice {
                objectName: "stillness"
                width: column.width
                text: qsTr("Nothing moves by itself")
                chosen: Preferences.stillness
                chosenWords: qsTr("yes")
                onClicked: Preferences.stillness = !Preferences.stillness
            }
        }
    }
}
