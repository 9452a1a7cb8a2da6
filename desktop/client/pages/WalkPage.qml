// Walk: the notes at the left, what they come to at the right, each row tied to its sentence.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Dialogs
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)
    readonly property real half: (width - 2 * side - Theme.gap(8)) / 2

    // What is kept is then in hand, so that Ctrl+Z takes that back and no letter of the notes.
    function keep() {
        if (walk.canKeep)
            draft.forceActiveFocus();
        walk.keep();
    }

    Shortcut { sequence: "Ctrl+O"; onActivated: chooser.open() }
    Shortcut { sequence: "Ctrl+Return"; onActivated: page.keep() }

    WalkDesk {
        id: walk
        onMoved: {
            if (notes.activeFocus)
                return;
            notes.select(walk.from, walk.to);
            notes.show();
        }
    }

    Heading {
        id: title
        objectName: "walkTitle"
        x: page.side
        y: Theme.gap(6)
        text: qsTr("Walk")
    }

    Row {
        anchors { right: parent.right; rightMargin: page.side; verticalCenter: title.verticalCenter }
        spacing: Theme.gap(6)

        QuietLink {
            objectName: "openNotes"
            text: qsTr("A file of notes\u2026")
            hint: "Ctrl+O"
            onClicked: chooser.open()
        }

        QuietLink {
            objectName: "wipeNotes"
            visible: walk.notes !== ""
            text: qsTr("Wipe the notes")
            onClicked: {
                notes.text = "";
                notes.forceActiveFocus();
            }
        }

        QuietLink {
            objectName: "keepDraft"
            visible: walk.canKeep
            text: qsTr("Keep what is not dropped")
            hint: "Ctrl+Enter"
            onClicked: page.keep()
        }
    }

    // The notes.
    Item {
        id: saidPart
        anchors {
            left: parent.left
            leftMargin: page.side
            top: title.bottom
            topMargin: Theme.gap(3)
            bottom: parent.bottom
            bottomMargin: Theme.gap(4)
        }
        width: page.half

        Words {
            id: leftHead
            text: qsTr("What was said, in English")
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        Rectangle {
            anchors {
                fill: parent
                topMargin: leftHead.height + Theme.gap(1)
                bottomMargin: ownPart.visible ? ownPart.height + Theme.gap(3) : 0
            }
            color: "transparent"
            border.width: notes.activeFocus ? Theme.stroke : Theme.hairline
            border.color: notes.activeFocus ? Theme.slate : Theme.rule

            Flickable {
                id: paper
                anchors { fill: parent; margins: Theme.gap(3) }
                contentWidth: width
                contentHeight: notes.implicitHeight
                boundsBehavior: Flickable.StopAtBounds
                clip: true

                TextEdit {
                    id: notes
                    objectName: "walkNotes"
                    width: paper.width
                    height: Math.max(implicitHeight, paper.height)
                    focus: true
                    activeFocusOnTab: true
                    text: walk.notes
                    color: Theme.ink
                    selectionColor: Theme.slate
                    selectedTextColor: Theme.paper
                    selectByMouse: true
                    persistentSelection: true
                    textFormat: TextEdit.PlainText
                    wrapMode: TextEdit.Wrap
                    font.family: Theme.words
                    font.pixelSize: Theme.bodySize
                    Accessible.name: leftHead.text
                    onTextChanged: walk.notes = text
                    onCursorRectangleChanged: if (activeFocus) show()
                    onCursorPositionChanged: if (activeFocus) walk.goToText(cursorPosition)
                    Keys.onTabPressed: draft.forceActiveFocus(Qt.TabFocusReason)
                    Keys.onBacktabPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)

                    // Where the text has nothing to take back, the book may.
                    Keys.onPressed: event => {
                        if (event.matches(StandardKey.Undo) && !notes.canUndo) {
                            Desk.undo();
                            event.accepted = true;
                        } else if (event.matches(StandardKey.Redo) && !notes.canRedo) {
                            Desk.redo();
                            event.accepted = true;
                        }
                    }

                    // Brings what is selected, else the cursor, into view.
                    function show() {
                        const at = positionToRectangle(activeFocus ? cursorPosition : selectionStart);
                        const end = positionToRectangle(activeFocus ? cursorPosition : selectionEnd);
                        if (at.y < paper.contentY)
                            paper.contentY = Math.max(0, at.y - Theme.gap(4));
                        else if (end.y + end.height > paper.contentY + paper.height)
                            paper.contentY = end.y + end.height - paper.height + Theme.gap(2);
                    }
                }
            }

            Words {
                anchors { fill: parent; margins: Theme.gap(3) }
                visible: notes.text === ""
                text: qsTr("Type or paste what you said on the walk, room by room: \u201cKitchen. Replace the "
                           + "cabinets, about twelve feet. The floor stays. Outside: the porch steps are "
                           + "rotten.\u201d Or open a file of it. Nothing comes into the job before you keep it.")
                color: Theme.pencil
            }
        }
    }

    // The draft.
    Item {
        anchors {
            right: parent.right
            rightMargin: page.side
            top: saidPart.top
            bottom: saidPart.bottom
        }
        width: page.half

        Words {
            id: rightHead
            objectName: "walkSum"
            text: walk.refused !== "" ? walk.refused
                  : walk.isReading ? qsTr("Reading\u2026")
                  : walk.count === 0 ? (walk.notes === "" ? "" : qsTr("No work was read from that."))
                  : walk.sumText
            color: Theme.pencil
            width: parent.width
            font.pixelSize: Theme.smallSize
        }

        ListView {
            id: draft
            objectName: "draft"
            anchors { fill: parent; topMargin: rightHead.height + Theme.gap(1) }
            clip: true
            model: walk
            currentIndex: -1
            activeFocusOnTab: true
            boundsBehavior: Flickable.StopAtBounds
            cacheBuffer: 400
            onActiveFocusChanged: if (activeFocus) {
                notes.select(walk.from, walk.to);
                notes.show();
            }

            Connections {
                target: walk

                function onMoved() {
                    draft.positionViewAtIndex(walk.place, ListView.Contain);
                }
            }

            Keys.onPressed: event => {
                event.accepted = true;
                if (event.key === Qt.Key_Down)
                    walk.move(1);
                else if (event.key === Qt.Key_Up)
                    walk.move(-1);
                else if (event.key === Qt.Key_Delete || event.key === Qt.Key_Space)
                    walk.flip();
                else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
                         && event.modifiers === Qt.NoModifier && walk.parts().length > 0)
                    fix.begin();
                else if (event.key === Qt.Key_Backtab)
                    notes.forceActiveFocus(Qt.BacktabFocusReason);
                else
                    event.accepted = false;
            }

            delegate: WalkDelegate {
                width: draft.width
                isHere: walk.place === index
                isFocused: draft.activeFocus
                onPointed: walk.place = index
                onPressed: {
                    draft.forceActiveFocus();
                    walk.place = index;
                }
                onFlipped: {
                    walk.place = index;
                    walk.flip();
                }
            }
        }

        WalkFix {
            id: fix
            objectName: "walkFix"
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
            walk: walk
            onDone: draft.forceActiveFocus()
        }
    }

    // The owner's own words: what corrections taught.
    Item {
        id: ownPart
        visible: walk.ownWords.length > 0
        anchors { left: saidPart.left; right: saidPart.right; bottom: saidPart.bottom }
        height: ownHead.height + Theme.gap(1) + Math.min(4, walk.ownWords.length) * own.line

        Words {
            id: ownHead
            text: qsTr("Your own words; Delete forgets one")
            color: Theme.pencil
            font.pixelSize: Theme.smallSize
        }

        ListView {
            id: own
            objectName: "ownWords"
            readonly property real line: Theme.gap(6)
            anchors { fill: parent; topMargin: ownHead.height + Theme.gap(1) }
            clip: true
            model: walk.ownWords
            activeFocusOnTab: true
            boundsBehavior: Flickable.StopAtBounds
            Keys.onDeletePressed: forgetAt(own.currentIndex)

            // The next word is then in hand; after the last one the draft is.
            function forgetAt(at) {
                walk.forget(at);
                if (count === 0)
                    draft.forceActiveFocus();
                else
                    currentIndex = Math.min(at, count - 1);
            }

            delegate: Item {
                id: ownLine
                required property string modelData
                required property int index

                width: own.width
                height: own.line
                Accessible.role: Accessible.ListItem
                Accessible.name: ownLine.modelData

                Rectangle {
                    anchors.fill: parent
                    visible: own.activeFocus && own.currentIndex === ownLine.index
                    color: Theme.plaster
                }

                Words {
                    objectName: "ownWord"
                    anchors {
                        left: parent.left
                        leftMargin: Theme.gap(2)
                        right: forget.left
                        verticalCenter: parent.verticalCenter
                    }
                    text: ownLine.modelData
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                }

                QuietLink {
                    id: forget
                    anchors { right: parent.right; verticalCenter: parent.verticalCenter }
                    focusPolicy: Qt.NoFocus
                    text: qsTr("Forget")
                    onClicked: own.forgetAt(ownLine.index)
                }
            }
        }
    }

    FileDialog {
        id: chooser
        title: qsTr("A file of notes")
        nameFilters: [qsTr("Text (*.txt *.md)"), qsTr("All files (*)")]
        onAccepted: {
            walk.open(selectedFile);
            notes.text = walk.notes;
        }
    }
}
