// A row that is chosen or not: told by a check and a word, not by colour.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

PressArea {
    id: choice

    property bool chosen: false
    property string chosenWords: qsTr("chosen")

    implicitHeight: Math.max(Theme.gap(13), label.implicitHeight + Theme.gap(4))
    Accessible.role: Accessible.CheckBox
    Accessible.checked: choice.chosen

    Hairline {
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
    }

    contentItem: RowLayout {
        spacing: Theme.gap(3)

        Sign {
            name: choice.chosen ? "check" : "less"
            tone: choice.chosen ? Theme.moss : Theme.pencil
        }

        Words {
            id: label
            text: choice.text
            font.bold: choice.chosen
            Layout.fillWidth: true
        }

        Words {
            visible: choice.chosen
            text: choice.chosenWords
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }
    }
}
