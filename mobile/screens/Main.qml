// The window of the phone.
import QtQuick
import QtQuick.Window
import Ledgerboard.Look
import Ledgerboard.Phone

Window {
    width: 390
    height: 844
    visible: true
    title: "Ledgerboard"
    color: Theme.paper

    Shell {
        anchors.fill: parent
    }
}
