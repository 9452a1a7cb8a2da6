// Alternates: the open decisions, their options side by side, the best set and why; a choice made
// here lands in scope and plan.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: page

    readonly property int side: Theme.gap(9)
    property string optionsOf: ""  // the alternate whose options are being entered
    property int asking: -1  // the alternate whose reason is being typed

    signal pageAsked(string key)

    function toList() {
        page.asking = -1;
        list.forceActiveFocus();
    }

    function decide() {
        if (view.alternates.length > 0)
            page.asking = view.alternate;
    }

    function show(item: Item) {
        const top = item.mapToItem(paper.contentItem, 0, 0).y;
        if (top < paper.contentY)
            paper.contentY = Math.max(0, top - Theme.gap(6));
        else if (top + item.height > paper.contentY + paper.height)
            paper.contentY = Math.max(0, Math.min(top - Theme.gap(6),
                                                  top + item.height - paper.height + Theme.gap(6)));
    }

    function askFirstChange() {
        const at = view.decided.findIndex(row => row.wantsChange);
        if (at >= 0)
            view.askChange(at);
    }

    function add() {
        page.asking = -1;
        form.beginAlternate();
        panel.begin();
    }

    function addOption() {
        if (view.alternateId === "")
            return;
        page.asking = -1;
        page.optionsOf = view.alternateId;
        form.beginOption(page.optionsOf, view.question);
        panel.begin();
    }

    // All of the option in hand, or of the alternate itself.
    function whole(kind: string) {
        const id = kind === "option" ? view.optionId : view.alternateId;
        if (id === "")
            return;
        page.asking = -1;
        form.begin(kind, id);
        if (form.isOpen)
            panel.begin();
    }

    Shortcut { sequence: "Ctrl+E"; onActivated: page.askFirstChange() }
    Shortcut { sequence: "Ctrl+N"; enabled: !form.isNew; onActivated: page.add() }
    Shortcut { sequence: "Ctrl+Shift+N"; enabled: !form.isNew; onActivated: page.addOption() }
    Shortcut { sequence: "Ctrl+I"; enabled: !form.isNew; onActivated: page.whole("option") }
    Shortcut { sequence: "Ctrl+Shift+I"; enabled: !form.isNew; onActivated: page.whole("alternate") }
    Shortcut { sequence: "Ctrl+Del"; enabled: !form.isOpen && page.asking < 0; onActivated: form.dropOption(view.optionId) }
    Shortcut { sequence: "Ctrl+Shift+Del"; enabled: !form.isOpen && page.asking < 0; onActivated: form.dropAlternate(view.alternateId) }

    AlternatesView { id: view }

    AlternateForm {
        id: form
        // A question is followed by its options, one after the other, until Esc.
        onKept: id => {
            view.show(id);
            if (form.isAlternate()) {
                page.optionsOf = id;
            }
            form.beginOption(page.optionsOf, form.question());
            panel.begin();
        }
    }

    Connections {
        target: view

        function onMoved() {
            const item = open.itemAt(view.alternate);
            if (item !== null)
                page.show(item);
        }
    }

    Words {
        objectName: "alternatesTrouble"
        x: page.side
        y: Theme.gap(10)
        width: parent.width - 2 * page.side
        visible: !view.isReady
        text: view.trouble !== "" ? view.trouble : qsTr("Weighing the options\u2026")
        color: Theme.pencil
    }

    Flickable {
        id: paper
        anchors.fill: parent
        visible: view.isReady
        contentHeight: head.height + Math.max(list.implicitHeight, sum.implicitHeight) + Theme.gap(30)
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Item {
            id: head
            x: page.side
            y: Theme.gap(6)
            width: page.width - 2 * page.side
            height: Theme.gap(14)

            Heading {
                id: title
                objectName: "alternatesTitle"
                text: qsTr("Alternates")
            }

            Words {
                objectName: "alternatesCount"
                anchors { left: title.right; leftMargin: Theme.gap(5); baseline: title.baseline }
                visible: view.hasAny
                text: view.countText
                color: Theme.pencil
            }

            Row {
                anchors.right: parent.right
                spacing: Theme.gap(6)

                QuietLink {
                    objectName: "addAlternate"
                    text: qsTr("New alternate")
                    hint: "Ctrl+N"
                    onClicked: page.add()
                }

                QuietLink {
                    objectName: "carryLink"
                    visible: view.alternates.length > 0
                    text: qsTr("Carry meanwhile")
                    hint: "C"
                    onClicked: view.carry()
                }

                QuietLink {
                    objectName: "chooseLink"
                    visible: view.alternates.length > 0
                    text: qsTr("Decide for it")
                    hint: "Enter"
                    onClicked: page.decide()
                }
            }
        }

        Item {
            id: list
            objectName: "alternates"
            x: page.side
            y: head.y + head.height
            width: (page.width - 2 * page.side) * 0.58 - Theme.gap(6)
            implicitHeight: stack.implicitHeight
            height: implicitHeight
            focus: true
            activeFocusOnTab: true
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Alternates")

            Keys.onPressed: event => {
                if (page.asking >= 0)
                    return;
                if (event.key === Qt.Key_Down)
                    view.move(1, 0);
                else if (event.key === Qt.Key_Up)
                    view.move(-1, 0);
                else if (event.key === Qt.Key_Right)
                    view.move(0, 1);
                else if (event.key === Qt.Key_Left)
                    view.move(0, -1);
                else if (event.key === Qt.Key_PageDown)
                    paper.contentY = Math.max(0, Math.min(paper.contentHeight - paper.height,
                                                          paper.contentY + paper.height * 0.8));
                else if (event.key === Qt.Key_PageUp)
                    paper.contentY = Math.max(0, paper.contentY - paper.height * 0.8);
                else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
                    page.decide();
                else if (event.key === Qt.Key_C && event.modifiers === Qt.NoModifier)
                    view.carry();
                else if (event.key === Qt.Key_T && event.modifiers === Qt.NoModifier)
                    sum.turn(!sum.asTable);
                else
                    return;
                event.accepted = true;
            }

            Column {
                id: stack
                width: parent.width
                spacing: Theme.gap(2)

                Column {
                    width: parent.width
                    spacing: Theme.gap(3)
                    visible: !view.hasAny

                    Words {
                        objectName: "alternatesEmpty"
                        width: parent.width
                        text: qsTr("There are no alternates. One is an open decision with two or "
                                   + "more options; one of them may be to leave things as they "
                                   + "are. They come from the walk: \u201ceither refinish the floor "
                                   + "or lay new for about 2,400\u201d.")
                        color: Theme.pencil
                    }

                    QuietLink {
                        objectName: "alternatesToWalk"
                        text: qsTr("To the walk")
                        hint: "Ctrl+2"
                        onClicked: page.pageAsked("walk")
                    }
                }

                Words {
                    objectName: "allDecided"
                    width: parent.width
                    visible: view.hasAny && view.alternates.length === 0
                    text: qsTr("Every alternate is decided.")
                }

                Repeater {
                    id: open
                    model: view.alternates

                    AlternateDelegate {
                        width: stack.width
                        figureNames: view.figureNames
                        isHere: view.alternate === index
                        option: view.alternate === index ? view.option : -1
                        isAsking: page.asking === index
                        onPressed: option => {
                            page.toList();
                            view.take(index, option);
                        }
                        onChosen: why => {
                            if (view.choose(why))
                                page.toList();
                        }
                        onGone: page.toList()
                        onOptionAsked: page.addOption()
                        onWholeAsked: kind => page.whole(kind)
                        onDropAsked: kind => kind === "option" ? form.dropOption(view.optionId)
                                                               : form.dropAlternate(view.alternateId)
                    }
                }

                Heading {
                    visible: view.decided.length > 0
                    topPadding: Theme.gap(2)
                    text: qsTr("Decided")
                    font.pixelSize: Theme.bodySize
                }

                Repeater {
                    model: view.decided

                    Column {
                        id: decided

                        required property var modelData
                        required property int index

                        width: stack.width
                        spacing: Theme.gap(1)

                        Hairline { width: parent.width }

                        Words {
                            objectName: "decidedText"
                            width: parent.width
                            text: decided.modelData.name + ": " + decided.modelData.chosen
                        }

                        Words {
                            objectName: "decidedWhy"
                            width: parent.width
                            visible: text !== ""
                            text: decided.modelData.why
                            color: Theme.pencil
                            font.pixelSize: Theme.smallSize
                        }

                        Words {
                            objectName: "decidedChange"
                            width: parent.width
                            visible: text !== ""
                            text: decided.modelData.change
                            font.pixelSize: Theme.smallSize
                        }

                        QuietLink {
                            objectName: "askChange"
                            visible: decided.modelData.wantsChange
                            text: qsTr("Ask for the change order")
                            hint: "Ctrl+E"
                            onClicked: view.askChange(decided.index)
                        }
                    }
                }
            }
        }

        AlternatesSum {
            id: sum
            objectName: "alternatesSum"
            x: list.x + list.width + Theme.gap(10)
            y: list.y
            width: page.width - page.side - x
            visible: view.alternates.length > 0
            view: view
            onGone: page.toList()
        }
    }

    RecordPanel {
        id: panel
        objectName: "panel"
        anchors {
            right: parent.right
            rightMargin: page.side
            top: parent.top
            topMargin: Theme.gap(20)
            bottom: parent.bottom
            bottomMargin: Theme.gap(4)
        }
        width: Math.min(parent.width - 2 * page.side, Theme.gap(112))
        form: form
        onClosed: page.toList()
    }
}
