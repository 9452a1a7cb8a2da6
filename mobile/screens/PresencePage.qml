// Who is here today? Each crew in one touch.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ToolPage {
    id: page

    property string spaceId: ""

    title: qsTr("Who is here today?")
    under: crews.count > 0 ? "" : qsTr("No crew is written down yet.")

    PresenceList { id: crews }

    Column {
        width: parent.width

        Repeater {
            model: crews

            Choice {
                required property presenceRow row

                objectName: "presentCrew"
                width: page.inner
                text: row.name
                chosen: row.here
                chosenWords: qsTr("here today")
                onClicked: crews.keepHere(row.id)
            }
        }
    }
}
