// The tools, always at the thumb.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

Rectangle {
    id: belt

    property string inUse: ""

    // Held, a tool opens its second.
    signal toolUsed(string tool)

    readonly property var tools: [
        { tool: "photo", words: qsTr("Photo"), held: "found" },
        { tool: "mark", words: qsTr("Mark"), held: "presence" }
    ].concat(JobBook.isOwner ? [
        { tool: "punch", words: qsTr("Punch"), held: "spoken" },
        { tool: "receipt", words: qsTr("Receipt"), held: "delivery" }
    ] : [])

    // Large type makes the tools higher.
    readonly property int toolHeight: Math.max(Theme.beltTarget, 2 * Theme.smallSize + Theme.gap(9))

    implicitHeight: belt.toolHeight + Theme.gap(5)
    color: Theme.belt

    Row {
        id: row
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
        anchors.margins: Theme.gap(2)
        spacing: Theme.gap(2)
        layoutDirection: Theme.leftHand ? Qt.RightToLeft : Qt.LeftToRight

        Repeater {
            model: belt.tools

            BeltTool {
                required property var modelData

                objectName: "tool-" + modelData.tool
                width: Math.floor((row.width - (belt.tools.length - 1) * row.spacing) / belt.tools.length)
                height: belt.toolHeight
                glyph: modelData.tool
                text: modelData.words
                inUse: belt.inUse === modelData.tool
                onClicked: belt.toolUsed(modelData.tool)
                onPressAndHold: if (modelData.held)
                                    belt.toolUsed(modelData.held)
            }
        }
    }
}
