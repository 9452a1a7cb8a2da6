// Everything of one record, field by field, at the right of the sheet it stands in; or a new one.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: panel

    required property RecordForm form
    // What stands between the fields and the foot.
    property Component beside: null

    signal closed()

    function begin() {
        fields.forceActiveFocus();
    }

    visible: form.isOpen
    Keys.onEscapePressed: {
        panel.form.close();
        panel.closed();
    }

    Shortcut {
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        enabled: panel.visible && panel.form.isNew
        onActivated: panel.form.keepNew()
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.plaster
        border.width: Theme.hairline
        border.color: Theme.pencil

        MouseArea { anchors.fill: parent }
    }

    Heading {
        id: heading
        objectName: "formTitle"
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.gap(4) }
        text: panel.form.title
        font.pixelSize: Theme.largeSize
        maximumLineCount: 2
        elide: Text.ElideRight
    }

    SheetView {
        id: fields
        objectName: "form"
        anchors {
            left: parent.left
            right: parent.right
            top: heading.bottom
            bottom: lower.top
            leftMargin: Theme.gap(4)
            rightMargin: Theme.gap(4)
            topMargin: Theme.gap(3)
        }
        focus: true
        sheet: panel.form
        listName: "formRows"
        cellName: "formCell"
        editorName: "formEditor"
        typesInto: true
    }

    Column {
        id: lower
        anchors {
            left: parent.left
            right: parent.right
            bottom: parent.bottom
            margins: Theme.gap(4)
        }
        spacing: Theme.gap(2)

        Words {
            objectName: "formHint"
            width: parent.width
            text: panel.form.details.join(" ")
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
            height: Math.max(implicitHeight, Theme.gap(9))
        }

        Loader {
            width: parent.width
            sourceComponent: panel.beside
        }

        Row {
            width: parent.width
            spacing: Theme.gap(4)

            ActionButton {
                objectName: "formKeep"
                visible: panel.form.isNew
                filled: true
                reach: Theme.gap(10)
                text: qsTr("Keep")
                onClicked: panel.form.keepNew()
            }

            Words {
                visible: panel.form.isNew
                anchors.verticalCenter: parent.verticalCenter
                text: "Ctrl+Enter"
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }

            QuietLink {
                objectName: "formClose"
                anchors.verticalCenter: parent.verticalCenter
                width: implicitWidth
                text: panel.form.isNew ? qsTr("Leave it") : qsTr("Close")
                hint: "Esc"
                onClicked: {
                    panel.form.close();
                    panel.closed();
                }
            }
        }
    }
}
