// What a page or a part of it is called.
import QtQuick
import Ledgerboard.Look

Text {
    color: Theme.ink
    font.family: Theme.slab
    font.pixelSize: Theme.titleSize
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    Accessible.role: Accessible.Heading
    Accessible.name: text
}
