import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel

// The house, chain by chain: the plan as it grows, and the run in hand beside it. A keyboard types into the run
// wherever it was tapped last.
FocusScope {
    id: screen

    required property FieldApp app
    property bool portrait: false
    property bool starting: false
    property bool showsPhotos: false
    /// The chain in hand is done: what is left is to start another.
    readonly property bool done: editor.closed && editor.closure === JobEditor.Closes && editor.run < 0
    readonly property bool choosing: starting || done || editor.chain < 0
    /// A run is in hand on a small tablet upright: the plan and its bars make room for the keys.
    readonly property bool tight: portrait && height < 1000 && editor.run >= 0
    /// Upright: what the keys need, so long as the plan keeps its least height.
    readonly property real panelHeight: choosing ? height * 0.55 : tight ? height - 232
        : Math.max(height * 0.6, Math.min(500, height - 280))
    readonly property JobEditor editor: app.editor
    /// Screen pixels in a millimetre of the plan's page: text there is as large as on other screens.
    readonly property real pixelsPerMillimetre: 5.4 * Theme.textFactor

    focus: true
    Keys.forwardTo: [panel]

    function fitPage() {
        editor.plan.setPage(plan.width / pixelsPerMillimetre, plan.height / pixelsPerMillimetre);
    }

    GridLayout {
        anchors.fill: parent
        columns: screen.portrait ? 1 : 2
        rowSpacing: 0
        columnSpacing: 0
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            Layout.fillHeight: true

            ChainBar {
                editor: screen.editor
                starting: screen.starting
                Layout.fillWidth: true
                onStartWanted: screen.starting = !screen.starting
            }

            PictureView {
                id: plan

                picture: screen.editor.plan.picture
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.minimumHeight: screen.tight ? 80 : 120
                onWidthChanged: screen.fitPage()
                onHeightChanged: screen.fitPage()
                onTapped: at => {
                    const run = screen.editor.plan.runAt(at, zoom);
                    if (run >= 0)
                        screen.editor.run = run;
                }

                EmptyState {
                    anchors.fill: parent
                    visible: screen.editor.plan.picture.empty && !screen.choosing
                    sign: "measure"
                    title: qsTr("Walk with the building on your left")
                    text: qsTr("Type the first run on the keypad. The plan grows as you go.")
                }
            }

            ClosureBar {
                editor: screen.editor
                brief: screen.editor.run >= 0 && (screen.portrait || low)
                low: screen.height < 700
                Layout.fillWidth: true
            }

            RunStrip {
                editor: screen.editor
                shown: !screen.tight
                Layout.fillWidth: true
            }
        }

        Rectangle {
            color: Theme.panel
            Layout.fillWidth: screen.portrait
            Layout.fillHeight: true
            Layout.preferredWidth: screen.portrait ? screen.width : Math.min(560, screen.width * 0.52)
            Layout.minimumHeight: screen.tight ? screen.panelHeight : 0
            Layout.maximumHeight: screen.portrait ? screen.panelHeight : screen.height
            Layout.preferredHeight: screen.portrait ? screen.panelHeight : screen.height

            SideEdge {
                portrait: screen.portrait
            }

            RunPanel {
                id: panel

                anchors.fill: parent
                anchors.margins: Theme.space * 0.75
                visible: !screen.choosing
                editor: screen.editor
                portrait: screen.portrait
                onPhotosWanted: {
                    screen.app.photos.showRun(screen.editor.runKey);
                    screen.showsPhotos = true;
                }
            }

            ChainStart {
                anchors.fill: parent
                anchors.margins: Theme.space * 0.75
                visible: screen.choosing
                editor: screen.editor
                onStarted: screen.starting = false
                onClosed: screen.starting = false
            }
        }
    }

    PhotoSheet {
        anchors.fill: parent
        visible: screen.showsPhotos
        app: screen.app
        onClosed: {
            screen.showsPhotos = false;
            panel.forceActiveFocus();
        }
    }
}
