// Words that lead somewhere.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look

PressArea {
    id: link

    property string glyph: ""

    contentItem: RowLayout {
        spacing: Theme.gap(3)

        Sign {
            visible: link.glyph !== ""
            name: link.glyph
            tone: Theme.slate
        }

        Words {
            text: link.text
            color: Theme.slate
            Layout.fillWidth: true
        }
    }
}
