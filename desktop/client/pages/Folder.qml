// The folder of a job with its dividers, or the list of jobs; what was kept at the foot; the keys.
import QtQuick
import Ledgerboard.Look
import Ledgerboard.Desk

FocusScope {
    id: folder

    readonly property bool inJob: Desk.state === Desk.Open && Desk.page !== "jobs"
    property string wantedFilter: ""

    function turnTo(key: string) {
        Desk.turnTo(key);
    }

    // A line of one page that leads to lines of the scope.
    function openScope(filter: string) {
        folder.wantedFilter = filter;
        Desk.turnTo("scope");
    }

    focus: true

    Binding { target: Theme; property: "mode"; value: Preferences.themeMode }
    Binding { target: Theme; property: "stillness"; value: Preferences.stillness }

    Shortcut { sequence: "F1"; context: Qt.ApplicationShortcut; onActivated: keys.open() }
    Shortcut { sequence: "Ctrl+Z"; onActivated: Desk.undo() }
    Shortcut { sequences: ["Ctrl+Shift+Z", "Ctrl+Y"]; onActivated: Desk.redo() }
    Shortcut { sequence: "Ctrl+0"; enabled: folder.inJob; onActivated: Desk.turnTo("jobs") }
    Shortcut { sequence: "Ctrl+L"; enabled: folder.inJob; onActivated: dividers.editDay() }

    Instantiator {
        model: Desk.dividers

        Shortcut {
            required property var modelData

            sequence: modelData.shortcut
            enabled: folder.inJob
            onActivated: folder.turnTo(modelData.key)
        }
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }

    Dividers {
        id: dividers
        objectName: "dividers"
        visible: folder.inJob
        width: Theme.gap(48)
        height: parent.height
        onTurned: key => folder.turnTo(key)
        onKeysAsked: keys.open()
    }

    Loader {
        id: page
        objectName: "page"
        focus: true
        anchors {
            left: folder.inJob ? dividers.right : parent.left
            right: parent.right
            top: parent.top
            bottom: parent.bottom
        }
        sourceComponent: Desk.state !== Desk.Open ? startPage
                         : Desk.page === "week" ? weekPage
                         : Desk.page === "walk" ? walkPage
                         : Desk.page === "contracts" ? contractsPage
                         : Desk.page === "spend" ? spendPage
                         : Desk.page === "draws" ? drawsPage
                         : Desk.page === "closing" ? closingPage
                         : Desk.page === "deal" ? dealPage
                         : Desk.page === "alternates" ? alternatesPage
                         : Desk.page === "punch" ? punchPage
                         : Desk.page === "prices" ? pricesPage
                         : Desk.page === "devices" ? devicesPage
                         : Desk.page === "schedule" ? schedulePage
                         : Desk.page === "scope" ? scopePage : jobsPage
        onLoaded: item.forceActiveFocus()
    }

    KeptNote {
        objectName: "keptNote"
        anchors {
            horizontalCenter: page.horizontalCenter
            bottom: parent.bottom
            bottomMargin: Theme.gap(6)
        }
        onClosed: if (page.item) page.item.forceActiveFocus()
    }

    KeysPanel {
        id: keys
        objectName: "keysPanel"
        anchors.fill: parent
        page: Desk.page
        onClosed: if (page.item) page.item.forceActiveFocus()
    }

    Component {
        id: startPage

        StartPage { objectName: "startPage" }
    }

    Component {
        id: jobsPage

        JobsPage { objectName: "jobsPage" }
    }

    Component {
        id: weekPage

        WeekPage {
            objectName: "weekPage"
            onPageAsked: key => folder.turnTo(key)
            onScopeAsked: filter => folder.openScope(filter)
        }
    }

    Component {
        id: contractsPage

        ContractsPage { objectName: "contractsPage" }
    }

    Component {
        id: spendPage

        SpendPage { objectName: "spendPage" }
    }

    Component {
        id: drawsPage

        DrawsPage { objectName: "drawsPage" }
    }

    Component {
        id: closingPage

        ClosingPage {
            objectName: "closingPage"
            onPageAsked: key => folder.turnTo(key)
            onScopeAsked: filter => folder.openScope(filter)
        }
    }

    Component {
        id: dealPage

        DealPage { objectName: "dealPage" }
    }

    Component {
        id: walkPage

        WalkPage { objectName: "walkPage" }
    }

    Component {
        id: alternatesPage

        AlternatesPage {
            objectName: "alternatesPage"
            onPageAsked: key => folder.turnTo(key)
        }
    }

    Component {
        id: devicesPage

        DevicesPage { objectName: "devicesPage" }
    }

    Component {
        id: pricesPage

        PricesPage { objectName: "pricesPage" }
    }

    Component {
        id: punchPage

        PunchPage { objectName: "punchPage" }
    }

    Component {
        id: schedulePage

        SchedulePage {
            objectName: "schedulePage"
            onPageAsked: key => folder.turnTo(key)
        }
    }

    Component {
        id: scopePage

        ScopePage {
            objectName: "scopePage"
            Component.onCompleted: {
                filterFor(folder.wantedFilter);
                folder.wantedFilter = "";
            }
        }
    }
}
