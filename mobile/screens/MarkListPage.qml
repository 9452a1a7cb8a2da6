// What of this space was worked on? Its unfinished items, each finished in one tap or opened.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    required property string spaceId
    required property string place

    signal itemChosen(string id)
    signal done()

    ItemList {
        id: itemRows
        onlyToDo: true
        spaceId: page.spaceId
    }

    MarkDesk { id: desk }

    function finish(id: string, caution: bool) {
        desk.itemId = id;
        // A hazard is read before work is said to be done.
        if (caution)
            page.itemChosen(id);
        else if (desk.keepFinished(""))
            page.done();
    }

    PageList {
        id: list
        objectName: "toMark"
        anchors.fill: parent
        model: itemRows

        header: Column {
            width: list.width
            leftPadding: Theme.edge
            rightPadding: Theme.edge
            bottomPadding: Theme.gap(3)

            PageHead {
                width: parent.width - 2 * Theme.edge
                canGoBack: true
                where: page.place
                title: itemRows.count > 0 ? qsTr("How far is it?") : qsTr("All of it is finished")
                onBack: page.done()
            }
        }

        delegate: Item {
            id: line

            required property itemRow row

            width: list.width
            height: item.implicitHeight

            ItemDelegate {
                id: item
                row: line.row
                anchors { left: parent.left; right: finish.left; top: parent.top; bottom: parent.bottom }
                onChosen: page.itemChosen(line.row.id)
            }

            Hairline {
                anchors { left: finish.left; right: parent.right; top: parent.top }
            }

            StepButton {
                id: finish
                objectName: "finish"
                anchors { right: parent.right; rightMargin: Theme.edge; verticalCenter: parent.verticalCenter }
                text: qsTr("Finished: %1").arg(line.row.spoken)
                glyph: line.row.caution === "" ? "check" : "warning"
                onClicked: page.finish(line.row.id, line.row.caution !== "")
            }
        }

        footer: Hairline {
            width: list.width
        }
    }
}
