// Plain text in the type and ink of the page.
import QtQuick
import Ledgerboard.Look

Text {
    color: Theme.ink
    font.family: Theme.words
    font.pixelSize: Theme.bodySize
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    lineHeight: 1.15
}
