// Keep what the rule says, or say finished in one tap. One above the other where type is large.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

GridLayout {
    id: buttons

    property bool canKeep: true
    property bool onlyFinished: false
    property string keepText: ""

    signal kept()
    signal finished()

    columns: Theme.textPercent > 130 ? 1 : 2
    columnSpacing: Theme.gap(3)
    rowSpacing: Theme.gap(3)
    layoutDirection: Theme.leftHand ? Qt.RightToLeft : Qt.LeftToRight

    ActionButton {
        objectName: "keep"
        enabled: buttons.canKeep || buttons.onlyFinished
        text: buttons.keepText
        reach: Theme.gap(16)
        onClicked: buttons.kept()
        Layout.fillWidth: true
        Layout.preferredWidth: 1
    }

    ActionButton {
        objectName: "finished"
        text: qsTr("Finished")
        filled: true
        tone: Theme.moss
        reach: Theme.gap(16)
        onClicked: buttons.finished()
        Layout.fillWidth: true
        Layout.preferredWidth: 1
    }
}
