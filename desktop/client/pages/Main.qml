// The window of the desktop.
import QtQuick
import QtQuick.Window
import Ledgerboard.Look
import Ledgerboard.Desk

Window {
    width: 1280
    height: 800
    minimumWidth: 1100
    minimumHeight: 640
    visible: true
    title: Desk.jobName !== "" ? Desk.jobName + " \u2013 Ledgerboard" : "Ledgerboard"
    color: Theme.paper

    Folder {
        anchors.fill: parent
    }
}
