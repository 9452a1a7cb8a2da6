// The line between two rows.
import QtQuick
import Ledgerboard.Look

Rectangle {
    height: Theme.hairline
    color: Theme.rule
}
