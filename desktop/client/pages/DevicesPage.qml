// Devices: the peer on this computer, a way in for another device, who has what and met when; what
// two devices say of one thing, and what was set aside.
import QtQuick
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)
    readonly property real half: (width - 2 * side - Theme.gap(12)) / 2
    property int guest: 0
    readonly property bool isOpen: view.inviteCode !== ""  // a way in
    property bool sure: false  // that the device in hand is to be shut out

    function toList() {
        page.sure = false;
        list.forceActiveFocus();
    }

    function shutOut() {
        if (page.sure) {
            page.sure = false;
            view.shutOut();
        } else {
            page.sure = true;
        }
    }

    function turnPeer() {
        if (view.isRunning)
            view.stop();
        else if (!view.start(address.text, port.text))
            port.area.forceActiveFocus();
    }

    Shortcut { sequence: "Ctrl+S"; onActivated: page.turnPeer() }
    Shortcut { sequence: "Ctrl+M"; onActivated: view.meet() }
    Shortcut { sequence: "Ctrl+N"; enabled: view.hasPeer; onActivated: view.invite(page.guest, name.text) }

    DevicesView { id: view }

    Flickable {
        anchors.fill: parent
        contentHeight: Math.max(left_.implicitHeight, right_.implicitHeight) + Theme.gap(30)
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Heading {
            id: title
            objectName: "devicesTitle"
            x: page.side
            y: Theme.gap(6)
            text: qsTr("Devices")
        }

        Words {
            objectName: "devicesBusy"
            anchors { left: title.right; leftMargin: Theme.gap(5); baseline: title.baseline }
            text: view.busyText
            color: Theme.pencil
        }

        Column {
            id: left_
            x: page.side
            y: Theme.gap(18)
            width: page.half
            spacing: Theme.gap(2)

            Heading {
                text: qsTr("The peer")
                font.pixelSize: Theme.bodySize
            }

            Words {
                objectName: "devicesPeer"
                width: parent.width
                text: view.peerText
            }

            Words {
                objectName: "devicesRun"
                width: parent.width
                text: view.runText
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }

            Row {
                visible: view.canStart && !view.isRunning
                width: parent.width
                spacing: Theme.gap(6)

                Entry {
                    id: address
                    width: Theme.gap(60)
                    label: qsTr("It listens at this address")
                    areaName: "peerAddress"
                    text: view.listenAddress
                    area.onAccepted: page.turnPeer()
                }

                Entry {
                    id: port
                    width: Theme.gap(30)
                    label: qsTr("Port")
                    areaName: "peerPort"
                    text: view.listenPort
                    area.onAccepted: page.turnPeer()
                }
            }

            Row {
                spacing: Theme.gap(6)

                QuietLink {
                    objectName: "peerLink"
                    visible: view.canStart || view.isRunning
                    text: view.isRunning ? qsTr("Stop the peer here") : qsTr("Start the peer here")
                    hint: "Ctrl+S"
                    onClicked: page.turnPeer()
                }

                QuietLink {
                    objectName: "meetLink"
                    visible: view.hasPeer
                    text: qsTr("Meet it now")
                    hint: "Ctrl+M"
                    onClicked: view.meet()
                }
            }

            Heading {
                topPadding: Theme.gap(4)
                text: qsTr("Who has what")
                font.pixelSize: Theme.bodySize
            }

            FocusScope {
                id: list
                objectName: "deviceList"
                width: parent.width
                implicitHeight: rows.implicitHeight
                height: implicitHeight
                focus: true
                activeFocusOnTab: true
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Devices")
                Keys.onPressed: event => {
                    if (event.key === Qt.Key_Down || event.key === Qt.Key_Up) {
                        page.sure = false;
                        view.place = view.place + (event.key === Qt.Key_Down ? 1 : -1);
                    } else if (event.key === Qt.Key_Delete) {
                        page.shutOut();
                    } else if (event.key === Qt.Key_Escape) {
                        page.sure = false;
                        view.forgetInvitation();
                    } else {
                        return;
                    }
                    event.accepted = true;
                }

                Column {
                    id: rows
                    width: parent.width

                    Repeater {
                        model: view.devices

                        Item {
                            id: row

                            required property var modelData
                            required property int index
                            readonly property bool isHere: index === view.place

                            objectName: "deviceRow"
                            width: rows.width
                            height: Theme.gap(12)

                            Hairline { width: parent.width }

                            Rectangle {
                                anchors.fill: parent
                                anchors.topMargin: 1
                                visible: row.isHere && list.activeFocus
                                color: Theme.plaster

                                Rectangle { width: Theme.gap(1); height: parent.height; color: Theme.slate }
                            }

                            Words {
                                objectName: "deviceName"
                                x: Theme.gap(2)
                                y: Theme.gap(1)
                                width: parent.width - Theme.gap(50)
                                text: row.modelData.name + (row.modelData.isThis ? qsTr(" (this one)") : "")
                                font.bold: row.modelData.isThis
                                wrapMode: Text.NoWrap
                                elide: Text.ElideRight
                            }

                            Words {
                                x: Theme.gap(2)
                                y: Theme.gap(6)
                                width: parent.width - Theme.gap(50)
                                text: [row.modelData.person, row.modelData.role]
                                      .filter(part => part !== "").join(", ")
                                color: Theme.pencil
                                font.pixelSize: Theme.smallSize
                                wrapMode: Text.NoWrap
                                elide: Text.ElideRight
                            }

                            Words {
                                objectName: "deviceHeard"
                                anchors { right: parent.right; rightMargin: Theme.gap(2) }
                                y: Theme.gap(1)
                                text: row.modelData.heard
                                font.pixelSize: Theme.smallSize
                                wrapMode: Text.NoWrap
                            }

                            TapHandler {
                                onTapped: {
                                    page.toList();
                                    view.place = row.index;
                                }
                            }
                        }
                    }

                    Hairline { width: parent.width }
                }
            }

            QuietLink {
                objectName: "shutOutLink"
                visible: view.devices.length > 1
                text: page.sure ? qsTr("Yes, shut it out: its copy is wiped when it next calls")
                                : qsTr("Shut the device in hand out")
                hint: qsTr("Del")
                onClicked: page.shutOut()
            }

            Words {
                objectName: "devicesWhy"
                width: parent.width
                visible: text !== ""
                text: view.devicesWhy
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }

            Heading {
                topPadding: Theme.gap(4)
                text: qsTr("Two values for one thing")
                font.pixelSize: Theme.bodySize
            }

            Words {
                objectName: "noClash"
                width: parent.width
                visible: view.clashes.length === 0
                text: qsTr("No two devices changed one thing apart from each other.")
                color: Theme.pencil
            }

            Repeater {
                model: view.clashes

                Column {
                    id: clash

                    required property var modelData
                    required property int index

                    width: left_.width
                    spacing: Theme.gap(1)

                    Hairline { width: parent.width }

                    Words {
                        objectName: "clashWhat"
                        width: parent.width
                        text: clash.modelData.what
                        font.bold: true
                    }

                    Repeater {
                        model: clash.modelData.values

                        RowLayout {
                            id: value

                            required property string modelData
                            required property int index

                            width: clash.width
                            spacing: Theme.gap(4)

                            Words {
                                objectName: "clashValue"
                                text: value.modelData
                                Layout.fillWidth: true
                            }

                            Words {
                                text: clash.modelData.whens[value.index]
                                      + (value.index === 0 ? qsTr("; it stands meanwhile") : "")
                                color: Theme.pencil
                                font.pixelSize: Theme.smallSize
                                wrapMode: Text.NoWrap
                            }

                            QuietLink {
                                objectName: "settleLink"
                                text: qsTr("This is right")
                                onClicked: view.settle(clash.index, value.index)
                            }
                        }
                    }
                }
            }
        }

        Column {
            id: right_
            x: page.width - page.side - page.half
            y: left_.y
            width: page.half
            spacing: Theme.gap(2)

            Heading {
                text: qsTr("A way in")
                font.pixelSize: Theme.bodySize
            }

            Words {
                width: parent.width
                visible: !view.hasPeer
                text: qsTr("Other devices come in through a peer: start one first.")
                color: Theme.pencil
            }

            Words {
                width: parent.width
                visible: view.hasPeer
                text: qsTr("An owner sees everything. A crew lead sees that crew\u2019s work, and no money. "
                           + "A viewer sees progress, draws and the photos meant for the lender.")
                color: Theme.pencil
                font.pixelSize: Theme.smallSize
            }

            Repeater {
                model: view.hasPeer && !page.isOpen ? view.guests : []

                PressArea {
                    id: guest

                    required property string modelData
                    required property int index

                    objectName: "guest"
                    width: right_.width
                    reach: Theme.gap(7)
                    text: modelData
                    onClicked: page.guest = index

                    contentItem: Words {
                        text: (page.guest === guest.index ? "\u2022 " : "   ") + guest.text
                        color: page.guest === guest.index ? Theme.ink : Theme.slate
                        font.bold: page.guest === guest.index
                        wrapMode: Text.NoWrap
                        elide: Text.ElideRight
                    }
                }
            }

            Entry {
                id: name
                width: parent.width
                visible: view.hasPeer && !page.isOpen && page.guest > 0
                label: qsTr("Who it is, where the book does not know it")
                areaName: "guestName"
                area.Keys.onReturnPressed: view.invite(page.guest, name.text)
            }

            QuietLink {
                objectName: "inviteLink"
                visible: view.hasPeer && !page.isOpen
                text: qsTr("Open a way in")
                hint: "Ctrl+N"
                onClicked: view.invite(page.guest, name.text)
            }

            Words {
                objectName: "inviteText"
                width: parent.width
                visible: text !== ""
                text: view.inviteText
            }

            Image {
                objectName: "inviteQr"
                visible: view.invitePicture !== ""
                source: view.invitePicture
                width: Math.min(parent.width, Theme.gap(64))
                height: width
                smooth: false
                fillMode: Image.PreserveAspectFit
                horizontalAlignment: Image.AlignLeft
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("The way in as a picture for a phone")
            }

            Words {
                objectName: "inviteTyped"
                width: parent.width
                visible: view.inviteCode !== ""
                text: qsTr("Typed: address %1, code %2").arg(view.inviteAddress).arg(view.inviteCode)
            }

            QuietLink {
                objectName: "putAway"
                visible: page.isOpen
                text: qsTr("Put it away")
                hint: "Esc"
                onClicked: {
                    view.forgetInvitation();
                    page.toList();
                }
            }

            Heading {
                topPadding: Theme.gap(4)
                text: qsTr("Set aside")
                font.pixelSize: Theme.bodySize
            }

            Words {
                objectName: "noAside"
                width: parent.width
                visible: view.asides.length === 0
                text: qsTr("Nothing was set aside: every device wrote only what it may.")
                color: Theme.pencil
            }

            Repeater {
                model: view.asides

                Column {
                    id: aside

                    required property var modelData

                    width: right_.width
                    spacing: Theme.gap(1)

                    Hairline { width: parent.width }

                    Words {
                        objectName: "asideWhat"
                        width: parent.width
                        text: aside.modelData.what + ": " + aside.modelData.value
                    }

                    Words {
                        width: parent.width
                        text: aside.modelData.when + ". " + aside.modelData.why
                        color: Theme.pencil
                        font.pixelSize: Theme.smallSize
                    }
                }
            }
        }
    }
}
