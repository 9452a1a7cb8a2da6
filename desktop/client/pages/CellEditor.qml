// Typing in a cell, with the names that may stand in it below.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

Rectangle {
    id: editor

    required property Sheet sheet
    property string areaName: "cellEditor"
    property bool below: true
    property var choices: []
    property int choice: -1

    signal kept(int down, int right)
    signal dropped()

    function begin(text: string, all: bool) {
        area.text = text;
        editor.choice = -1;
        editor.choices = [];
        area.forceActiveFocus();
        if (all)
            area.selectAll();
    }

    // The names below go with what is typed.
    function edited() {
        editor.choice = -1;
        editor.choices = area.text === "" ? [] : editor.sheet.choices(area.text);
    }

    function release() {
        area.focus = false;
        editor.choices = [];
    }

    // The name chosen below, else what was typed.
    function wanted(): string {
        return editor.choice >= 0 ? editor.choices[editor.choice] : area.text;
    }

    color: Theme.paper
    border.width: Theme.stroke
    border.color: Theme.slate

    TextInput {
        id: area
        objectName: editor.areaName
        anchors { fill: parent; leftMargin: Theme.gap(1) + 1; rightMargin: Theme.gap(2) }
        color: Theme.ink
        selectionColor: Theme.slate
        selectedTextColor: Theme.paper
        selectByMouse: true
        clip: true
        verticalAlignment: TextInput.AlignVCenter
        font.family: Theme.words
        font.pixelSize: Theme.bodySize
        Accessible.name: editor.sheet.itemText
        onTextEdited: editor.edited()
        Keys.onPressed: event => {
            event.accepted = true;
            if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
                editor.kept(event.modifiers & Qt.ShiftModifier ? -1 : 1, 0);
            else if (event.key === Qt.Key_Tab)
                editor.kept(0, 1);
            else if (event.key === Qt.Key_Backtab)
                editor.kept(0, -1);
            else if (event.key === Qt.Key_Escape)
                editor.dropped();
            else if (event.key === Qt.Key_Down && editor.choices.length > 0)
                editor.choice = Math.min(editor.choices.length - 1, editor.choice + 1);
            else if (event.key === Qt.Key_Up && editor.choices.length > 0)
                editor.choice = Math.max(-1, editor.choice - 1);
            else if (event.key === Qt.Key_Down)
                editor.kept(1, 0);
            else if (event.key === Qt.Key_Up)
                editor.kept(-1, 0);
            else
                event.accepted = false;
        }
    }

    Rectangle {
        visible: editor.choices.length > 0
        y: editor.below ? editor.height : -height
        width: Math.max(editor.width, Theme.gap(40))
        height: names.implicitHeight
        color: Theme.paper
        border.width: Theme.hairline
        border.color: Theme.pencil

        Column {
            id: names
            width: parent.width

            Repeater {
                model: editor.choices

                Rectangle {
                    id: name

                    required property string modelData
                    required property int index

                    width: names.width
                    height: Theme.gap(7)
                    color: index === editor.choice ? Theme.slate : "transparent"

                    Words {
                        objectName: "cellChoice"
                        anchors.verticalCenter: parent.verticalCenter
                        leftPadding: Theme.gap(2)
                        text: name.modelData
                        color: name.index === editor.choice ? Theme.paper : Theme.ink
                    }

                    TapHandler {
                        onTapped: {
                            editor.choice = name.index;
                            editor.kept(1, 0);
                        }
                    }
                }
            }
        }
    }
}
