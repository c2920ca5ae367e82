import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// What the camera sees, large, and the button that takes it. Like a file's choice it takes the place of what is behind
// it and gives it back as it was.
Rectangle {
    id: sheet

    property string title: ""
    /// FieldApp.viewfinder
    property url viewfinder
    /// Somebody may want the camera now: only then is it asked for.
    property bool offered: false
    /// It looks by itself, again and again, for something to read.
    property bool reads: false
    property bool looking: false
    /// Of the longer side of what is taken, pixels.
    readonly property int mostGrain: 1600
    readonly property Viewfinder finder: camera.item as Viewfinder
    readonly property bool there: finder ? finder.there : false

    /// A QImage.
    signal seen(var picture)
    signal closed

    function look() {
        if (looking || !finder || !finder.seeing)
            return;
        // No photo is kept larger, and a code is read as well.
        const part = Math.min(1, mostGrain / Math.max(finder.grain.width, finder.grain.height, 1));
        looking = finder.picture.grabToImage(result => {
            sheet.looking = false;
            if (sheet.visible)
                sheet.seen(result.image);
        }, Qt.size(finder.grain.width * part, finder.grain.height * part));
    }

    color: Theme.ground
    Accessible.role: Accessible.Pane
    Accessible.name: title

    Timer {
        interval: 350
        repeat: true
        running: sheet.visible && sheet.reads
        onTriggered: sheet.look()
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.space
        spacing: Theme.gap

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                text: sheet.title
                level: Words.Heading
                Layout.fillWidth: true
            }

            IconButton {
                sign: "close"
                text: qsTr("Close the camera")
                onClicked: sheet.closed()
            }
        }

        Rectangle {
            color: Theme.well
            border.color: Theme.edge
            border.width: Theme.outline
            Layout.fillWidth: true
            Layout.fillHeight: true

            Loader {
                id: camera

                anchors.fill: parent
                anchors.margins: Theme.tight
                active: sheet.offered
                source: sheet.viewfinder
            }

            Binding {
                target: sheet.finder
                property: "running"
                value: sheet.visible
                when: sheet.finder !== null
            }

            Words {
                anchors.centerIn: parent
                width: parent.width - 2 * Theme.space
                visible: sheet.finder ? sheet.finder.problem !== "" || !sheet.finder.seeing : true
                text: sheet.finder && sheet.finder.problem !== "" ? qsTr("The camera does not answer: %1").arg(sheet.finder.problem) : qsTr("The camera is starting")
                horizontalAlignment: Text.AlignHCenter
                muted: true
            }
        }

        Words {
            visible: sheet.reads
            text: qsTr("Hold the label's code in view until it is read.")
            horizontalAlignment: Text.AlignHCenter
            muted: true
            Layout.fillWidth: true
        }

        ActionButton {
            visible: !sheet.reads
            text: qsTr("Take the photo")
            sign: "camera"
            kind: ActionButton.Primary
            enabled: sheet.finder ? sheet.finder.seeing && !sheet.looking : false
            implicitHeight: Theme.keypadKey
            Layout.fillWidth: true
            onClicked: sheet.look()
        }
    }
}
