// As of which day the pages are; typing one looks back, empty is today.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

Column {
    id: line

    property bool editing: false

    function edit() {
        line.editing = true;
        day.area.text = "";
        day.area.forceActiveFocus();
    }

    QuietLink {
        objectName: "dayLink"
        spread: true
        visible: !line.editing
        width: line.width
        text: Desk.asOfText === "" ? qsTr("As of today") : qsTr("As of %1").arg(Desk.asOfText)
        hint: Desk.asOfText === "" ? "Ctrl+L" : ""
        onClicked: line.edit()
    }

    QuietLink {
        objectName: "todayLink"
        spread: true
        visible: !line.editing && Desk.asOfText !== ""
        width: line.width
        text: qsTr("Back to today")
        onClicked: Desk.lookAt("")
    }

    Entry {
        id: day
        visible: line.editing
        width: line.width
        label: qsTr("As of which day? Empty: today")
        areaName: "dayArea"
        area.onAccepted: if (Desk.lookAt(area.text)) line.editing = false
        area.Keys.onEscapePressed: line.editing = false
    }
}
