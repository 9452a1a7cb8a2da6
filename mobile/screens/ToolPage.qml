// A page of a belt tool: a head, what is to be said, and at the bottom the button that keeps it.
import QtQuick
import Ledgerboard.Look

Item {
    id: page

    property string place: ""
    property string title: ""
    property string under: ""
    property string keepText: ""
    property bool canKeep: true
    default property alias content: column.data
    readonly property real inner: width - 2 * Theme.edge

    signal done()
    signal keepAsked()

    Flickable {
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: foot.top }
        contentHeight: body.height + Theme.gap(6)
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: body
            x: Theme.edge
            width: page.inner
            spacing: Theme.gap(4)

            PageHead {
                width: parent.width
                canGoBack: true
                where: page.place
                title: page.title
                under: page.under
                onBack: page.done()
            }

            Column {
                id: column
                width: parent.width
                spacing: Theme.gap(4)
            }
        }
    }

    Item {
        id: foot
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: page.keepText === "" ? 0 : keep.height + Theme.gap(6)

        ActionButton {
            id: keep
            objectName: "keepTool"
            visible: page.keepText !== ""
            anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
            anchors.leftMargin: Theme.edge
            anchors.rightMargin: Theme.edge
            text: page.keepText
            filled: true
            enabled: page.canKeep
            onClicked: page.keepAsked()
        }
    }
}
