import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel
import "parts.js" as Parts

// All jobs on the tablet: find one, open it, put it away.
Item {
    id: screen

    required property FieldApp app
    property bool portrait: false
    property string inHand: ""
    property string inHandName: ""
    property bool importing: false

    signal wanted(string place)

    function open(id: string) {
        if (app.editor.openJob(id))
            wanted("house");
    }

    Component.onCompleted: app.jobs.refresh()

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.space
        spacing: Theme.gap
        visible: !screen.importing

        GridLayout {
            columns: screen.portrait ? 2 : 3
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            Layout.fillWidth: true

            SearchField {
                hint: qsTr("Name, customer or place")
                text: screen.app.jobs.words
                Layout.fillWidth: true
                Layout.columnSpan: screen.portrait ? 2 : 1
                onTextEdited: screen.app.jobs.words = text
            }

            ActionButton {
                text: qsTr("Take in a file")
                sign: "open"
                Layout.fillWidth: screen.portrait
                onClicked: screen.importing = true
            }

            ActionButton {
                text: qsTr("New job")
                sign: "add"
                kind: ActionButton.Primary
                Layout.fillWidth: screen.portrait
                onClicked: if (screen.app.editor.newJob("")) screen.wanted("form")
            }
        }

        Flickable {
            implicitHeight: states.implicitHeight
            contentWidth: states.width
            contentHeight: states.implicitHeight
            flickableDirection: Flickable.HorizontalFlick
            clip: true
            Layout.fillWidth: true

            ChoiceBar {
                id: states

                name: qsTr("Which jobs are shown")
                width: Math.max(implicitWidth, parent.parent.width)
                choices: [qsTr("Open"), qsTr("Measuring"), qsTr("Sent"), qsTr("Changed"), qsTr("Archived"), qsTr("Deleted")]
                currentIndex: screen.app.jobs.shown
                onChosen: index => {
                    screen.inHand = ""; // it may not be among what is shown next
                    screen.app.jobs.shown = index;
                }
            }
        }

        ListView {
            id: list

            clip: true
            model: screen.app.jobs
            currentIndex: -1
            reuseItems: true
            boundsBehavior: Flickable.StopAtBounds
            visible: count > 0
            Layout.fillWidth: true
            Layout.fillHeight: true
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Jobs")
            T.ScrollBar.vertical: ScrollMark {}

            delegate: ListRow {
                id: row

                required property string jobId
                required property string name
                required property string customer
                required property string address
                required property string wantedBy
                required property int runs
                required property int jobState
                required property string stateWords

                width: ListView.view.width
                implicitHeight: Theme.touchTarget + Theme.space
                title: name
                detail: Parts.joined([customer, address])
                trailing: stateWords
                trailingDetail: wantedBy !== "" ? qsTr("wanted %1").arg(wantedBy) : qsTr("%n runs", "", runs)
                sign: ["measure", "done", "edit"][jobState]
                current: screen.inHand === jobId
                onClicked: screen.app.jobs.shown < JobList.Archived ? screen.open(jobId) : row.choose()

                function choose() {
                    screen.inHand = screen.inHand === jobId ? "" : jobId;
                    screen.inHandName = name;
                }

                IconButton {
                    sign: "more"
                    text: qsTr("More about %1").arg(row.name)
                    onClicked: row.choose()
                }
            }
        }

        EmptyState {
            visible: list.count === 0
            sign: "house"
            title: screen.app.jobs.words !== "" ? qsTr("No job is called so") : qsTr("No jobs here")
            text: screen.app.jobs.words !== "" ? qsTr("Every word must stand in the name, the customer or the place.")
                : qsTr("Measure a house once and send it right. Start with the sample house: it takes two minutes and shows every step.")
            actionText: screen.app.jobs.words !== "" ? qsTr("Show all") : qsTr("Open the sample house")
            Layout.fillWidth: true
            Layout.fillHeight: true
            onActed: {
                if (screen.app.jobs.words !== "")
                    screen.app.jobs.words = "";
                else if (screen.app.openSample())
                    screen.wanted("house");
            }
        }

        Rectangle {
            visible: screen.inHand !== ""
            color: Theme.panel
            border.color: Theme.edge
            border.width: Theme.outline
            implicitHeight: acts.implicitHeight + 2 * Theme.gap
            Layout.fillWidth: true

            GridLayout {
                id: acts

                anchors.fill: parent
                anchors.margins: Theme.gap
                columns: screen.portrait ? 2 : 5
                columnSpacing: Theme.gap
                rowSpacing: Theme.gap

                Words {
                    text: screen.inHandName
                    font.bold: true
                    maximumLineCount: 1
                    Layout.fillWidth: true
                    Layout.columnSpan: screen.portrait ? 2 : 1
                }

                ActionButton {
                    text: qsTr("Duplicate")
                    sign: "orders"
                    Layout.fillWidth: screen.portrait
                    onClicked: {
                        screen.app.jobs.duplicate(screen.inHand);
                        screen.inHand = "";
                    }
                }

                ActionButton {
                    visible: screen.app.jobs.shown < JobList.Archived
                    text: qsTr("Archive")
                    sign: "stock"
                    Layout.fillWidth: screen.portrait
                    onClicked: {
                        screen.app.jobs.archive(screen.inHand);
                        screen.inHand = "";
                    }
                }

                ActionButton {
                    visible: screen.app.jobs.shown >= JobList.Archived
                    text: qsTr("Back to the open jobs")
                    sign: "back"
                    Layout.fillWidth: screen.portrait
                    onClicked: {
                        screen.app.jobs.reopen(screen.inHand);
                        screen.inHand = "";
                    }
                }

                ActionButton {
                    visible: screen.app.jobs.shown !== JobList.Deleted
                    text: qsTr("Delete")
                    sign: "remove"
                    Layout.fillWidth: screen.portrait
                    onClicked: {
                        screen.app.jobs.remove(screen.inHand);
                        screen.inHand = "";
                    }
                }

                ActionButton {
                    text: qsTr("Close")
                    sign: "close"
                    Layout.fillWidth: screen.portrait
                    onClicked: screen.inHand = ""
                }
            }
        }

        MessageBar {
            text: screen.app.jobs.undoWords
            undoable: true
            Layout.fillWidth: true
            onUndone: screen.app.jobs.undo()
            onClosed: screen.app.jobs.forgetUndo()
        }
    }

    FileBrowser {
        anchors.fill: parent
        visible: screen.importing
        title: qsTr("Take in a job, an order, a load list or a receipt")
        folder: screen.app.settings.folder
        endings: [".json", ".zip"]
        onClosed: screen.importing = false
        onChosen: path => {
            screen.importing = false;
            if (screen.app.openFile(path))
                screen.wanted(screen.app.openedDelivery ? "delivery" : "house");
        }
    }
}
