// A page that is a list under a head. It stays at its top while the head finds its height.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Phone

ListView {
    id: list

    property bool touched: false
    readonly property real headHeight: list.headerItem ? list.headerItem.height : 0

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    onMovementStarted: list.touched = true
    onHeadHeightChanged: if (!list.touched)
                             list.positionViewAtBeginning()
    onCountChanged: if (!list.touched)
                        Qt.callLater(list.positionViewAtBeginning)
}
