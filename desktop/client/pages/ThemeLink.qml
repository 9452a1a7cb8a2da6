// Light or dark.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

QuietLink {
    objectName: "themeLink"
    text: Theme.mode === Theme.Dark ? qsTr("Light pages") : qsTr("Dark pages")
    onClicked: Preferences.themeMode = Theme.mode === Theme.Dark ? Theme.Light : Theme.Dark
}
