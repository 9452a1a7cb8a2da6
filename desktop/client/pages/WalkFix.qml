// Correcting a row of the draft: its parts side by side, Tab from one to the next, Enter keeps them.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: fix

    required property WalkDesk walk
    readonly property var labels: [qsTr("Space"), qsTr("Treatment"), qsTr("Object"), qsTr("Quantity"),
                                   qsTr("Unit"), qsTr("Cost")]
    readonly property var widths: [32, 31, 40, 23, 17, 21]
    property var values: []

    signal done()

    function begin() {
        fix.values = fix.walk.parts();
        fix.visible = true;
        parts.itemAt(2).area.forceActiveFocus();
        parts.itemAt(2).area.selectAll();
    }

    function keep() {
        const texts = [];
        for (let k = 0; k < parts.count; ++k)
            texts.push(parts.itemAt(k).area.text);
        if (fix.walk.correct(texts))
            fix.leave();
    }

    function leave() {
        fix.visible = false;
        fix.done();
    }

    visible: false
    height: row.implicitHeight + Theme.gap(6)
    Keys.onEscapePressed: fix.leave()
    Keys.onReturnPressed: fix.keep()
    Keys.onEnterPressed: fix.keep()

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
        border.width: Theme.stroke
        border.color: Theme.slate
    }

    Row {
        id: row
        x: Theme.gap(3)
        y: Theme.gap(3)
        spacing: Theme.gap(3)

        Repeater {
            id: parts
            model: fix.labels

            Entry {
                required property string modelData
                required property int index

                width: (fix.width - Theme.gap(6) - 5 * row.spacing) * fix.widths[index] / 164
                label: modelData
                areaName: "part" + index
                text: fix.values[index] || ""
            }
        }
    }
}
