// A hazard of the item: what it is, what the rule is and where it is from. Work is marked begun
// once somebody says that they have read it.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

ColumnLayout {
    id: panel

    required property string about
    required property string says
    required property string source

    signal acknowledged(string testResult)

    spacing: Theme.gap(3)

    RowLayout {
        spacing: Theme.gap(3)
        Layout.fillWidth: true

        Sign {
            name: "warning"
            tone: Theme.brick
            Layout.alignment: Qt.AlignTop
        }

        Heading {
            text: qsTr("Caution: %1").arg(panel.about)
            color: Theme.brick
            font.pixelSize: Theme.largeSize
            Layout.fillWidth: true
        }
    }

    Words {
        text: panel.says
        Layout.fillWidth: true
    }

    Words {
        text: panel.source
        color: Theme.pencil
        font.pixelSize: Theme.smallSize
        Layout.fillWidth: true
    }

    LineField {
        id: result
        areaName: "testResult"
        label: qsTr("Result of a test, where there is one")
        Layout.fillWidth: true
    }

    ActionButton {
        objectName: "acknowledge"
        text: qsTr("I have read it")
        onClicked: panel.acknowledged(result.text)
        Layout.fillWidth: true
        Layout.bottomMargin: Theme.gap(6)
    }
}
