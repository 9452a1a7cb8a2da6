// How far is it? Pull the blade, step it, or say finished.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ledgerboard.Look
import Ledgerboard.Phone

Item {
    id: page

    property alias itemId: desk.itemId

    signal done()
    signal foundAsked(string spaceId, string itemId, string place)

    property int stop: 0
    property bool pulled: false
    property var steps: []

    function finish(kept: bool) {
        if (kept)
            page.done();
    }

    MarkDesk {
        id: desk
        onItemIdChanged: {
            page.stop = desk.lastStop;
            page.steps = desk.stepsDone;
        }
    }

    Flickable {
        anchors.fill: parent
        contentWidth: width
        contentHeight: Math.max(height, content.implicitHeight)
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        ColumnLayout {
            id: content
            width: parent.width - 2 * Theme.edge
            x: Theme.edge
            height: parent.height
            spacing: Theme.gap(3)

            PageHead {
                canGoBack: true
                where: desk.place
                title: desk.title
                under: desk.facts
                onBack: page.done()
                Layout.fillWidth: true
            }

            Words {
                objectName: "before"
                visible: desk.before !== ""
                text: qsTr("Before you: %1").arg(desk.before)
                font.pixelSize: Theme.smallSize
                Layout.fillWidth: true
            }

            Words {
                objectName: "after"
                visible: desk.after !== ""
                text: qsTr("After you: %1").arg(desk.after)
                font.pixelSize: Theme.smallSize
                Layout.fillWidth: true
            }

            // What is touched lies where the thumb is.
            Item {
                Layout.fillHeight: true
            }

            CautionPanel {
                visible: desk.cautionAbout !== ""
                about: desk.cautionAbout
                says: desk.cautionText
                source: desk.cautionSource
                onAcknowledged: result => desk.acknowledge(result)
                Layout.fillWidth: true
            }

            TapeRule {
                id: rule
                objectName: "rule"
                visible: desk.cautionAbout === "" && !desk.isSteps && !desk.isFinishedOnly
                stops: desk.stops
                stop: page.stop
                last: desk.last
                plan: desk.plan
                lastText: desk.lastText
                planText: desk.planText
                spoken: qsTr("How far it is: %1").arg(desk.figureAt(page.stop))
                onPulled: stop => {
                    page.pulled = true;
                    page.stop = stop;
                }
                Layout.fillWidth: true
            }

            StepsPicker {
                objectName: "steps"
                visible: desk.cautionAbout === "" && desk.isSteps
                names: desk.steps
                done: page.steps
                onToggled: steps => {
                    page.pulled = true;
                    page.steps = steps;
                }
                Layout.fillWidth: true
            }

            MarkFigure {
                visible: rule.visible
                // isThere has both said anew when the item or the language changes.
                figure: desk.isThere ? desk.figureAt(page.stop) : ""
                count: desk.isThere ? desk.countAt(page.stop) : ""
                onLess: rule.moveTo(page.stop - 1)
                onMore: rule.moveTo(page.stop + 1)
                Layout.fillWidth: true
            }

            Choice {
                objectName: "ready"
                visible: desk.cautionAbout === "" && desk.canSayReady
                text: qsTr("Ready to be looked at")
                chosen: desk.isReady
                chosenWords: qsTr("yes")
                onClicked: desk.sayReady(!desk.isReady)
                Layout.fillWidth: true
            }

            TextLink {
                objectName: "problem"
                visible: desk.canSayReady
                text: qsTr("Found something, or something is in the way")
                glyph: "found"
                onClicked: page.foundAsked(desk.spaceId, desk.itemId, desk.place)
                Layout.fillWidth: true
            }

            ActionButton {
                objectName: "acceptWork"
                visible: desk.cautionAbout === "" && desk.canAccept
                text: qsTr("Looked at: accepted")
                onClicked: page.finish(desk.accept())
                Layout.fillWidth: true
            }

            LineField {
                id: note
                areaName: "markNote"
                visible: desk.cautionAbout === ""
                label: qsTr("A word, if something stands in the way")
                Layout.fillWidth: true
            }

            MarkButtons {
                visible: desk.cautionAbout === ""
                canKeep: page.pulled
                onlyFinished: desk.isFinishedOnly
                keepText: desk.isSteps ? qsTr("Keep the steps")
                        : desk.isFinishedOnly ? qsTr("Not begun")
                                              : qsTr("Keep %1").arg(desk.countAt(page.stop)
                                                                    || desk.figureAt(page.stop))
                onKept: page.finish(desk.isSteps ? desk.keepSteps(page.steps, note.text)
                                                 : desk.keepStop(desk.isFinishedOnly ? 0 : page.stop,
                                                                 note.text))
                onFinished: page.finish(desk.keepFinished(note.text))
                Layout.fillWidth: true
                Layout.bottomMargin: Theme.gap(6)
            }
        }
    }
}
