// A glyph in the ink of the page, as large as the type beside it.
import QtQuick
import Ledgerboard.Look

Glyph {
    size: Math.round(24 * Math.min(Theme.textPercent, 150) / 100)
    tone: Theme.ink
    heavy: Theme.isSun
}
