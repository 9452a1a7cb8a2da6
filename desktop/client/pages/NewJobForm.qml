// A job begun: its name, the year of the house.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: form

    signal begun()

    function begin() {
        if (Desk.beginJob(name.text, built.text))
            form.begun();
    }

    implicitHeight: column.implicitHeight
    onActiveFocusChanged: if (activeFocus && !name.area.activeFocus && !built.area.activeFocus
                              && !button.activeFocus) name.area.forceActiveFocus()

    ColumnLayout {
        id: column
        width: parent.width
        spacing: Theme.gap(4)

        RowLayout {
            spacing: Theme.gap(6)

            Entry {
                id: name
                label: qsTr("Name of the job, such as street and number")
                areaName: "jobName"
                area.focus: true
                area.onAccepted: built.area.forceActiveFocus()
                Layout.fillWidth: true
            }

            Entry {
                id: built
                label: qsTr("Built (where known)")
                areaName: "builtYear"
                area.onAccepted: form.begin()
                Layout.preferredWidth: Theme.gap(40)
            }
        }

        ActionButton {
            id: button
            objectName: "beginJob"
            filled: true
            reach: Theme.gap(11)
            text: qsTr("Begin this job")
            onClicked: form.begin()
        }
    }
}
