import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel

// The photos of a run or of a finding: one more, another in its place, one less. It takes the place of what is behind
// it and gives it back as it was.
Rectangle {
    id: sheet

    required property FieldApp app
    /// The photo seen large.
    property int inHand: -1
    /// "add" or "retake" while a file is chosen.
    property string choosing: ""
    /// The same while the camera is looked through.
    property string aiming: ""
    readonly property bool hasCamera: camera.there
    readonly property PhotoList photos: app.photos
    readonly property PhotoThumb thumb: list.currentItem as PhotoThumb

    signal closed

    function chosen(path: string) {
        const taken = choosing === "retake" ? photos.retake(inHand, path) : photos.add(path);
        if (taken && choosing === "add")
            inHand = photos.count - 1;
        choosing = "";
    }

    function seen(picture: var) {
        const taken = aiming === "retake" ? photos.retakeSeen(inHand, picture) : photos.addSeen(picture);
        if (taken && aiming === "add")
            inHand = photos.count - 1;
        aiming = "";
    }

    color: Theme.ground
    onVisibleChanged: {
        inHand = photos.count > 0 ? 0 : -1;
        choosing = "";
        aiming = "";
    }

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Photos of %1").arg(photos.of)

    Connections {
        target: sheet.photos

        function onShownChanged() {
            sheet.inHand = Math.min(sheet.inHand, sheet.photos.count - 1);
        }
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.space
        spacing: Theme.gap

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                text: qsTr("Photos of %1").arg(sheet.photos.of)
                level: Words.Heading
                maximumLineCount: 2
                elide: Text.ElideRight
                Layout.fillWidth: true
            }

            IconButton {
                sign: "close"
                text: qsTr("Close the photos")
                onClicked: sheet.closed()
            }
        }

        EmptyState {
            visible: sheet.photos.count === 0
            sign: "photo"
            title: qsTr("No photos of it yet")
            text: sheet.hasCamera ? qsTr("A photo travels with the order: the shop sees what you saw.")
                : qsTr("A photo travels with the order: the shop sees what you saw. Take it with the tablet's camera; then choose its file here.")
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        Rectangle {
            visible: sheet.photos.count > 0
            color: Theme.well
            border.color: Theme.edge
            border.width: Theme.outline
            Layout.fillWidth: true
            Layout.fillHeight: true

            Image {
                id: large

                anchors.fill: parent
                anchors.margins: Theme.tight
                source: sheet.thumb ? sheet.thumb.url : ""
                sourceSize.width: 1600
                sourceSize.height: 1600
                fillMode: Image.PreserveAspectFit
                asynchronous: true
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("Photo %1 of %2").arg(sheet.inHand + 1).arg(sheet.photos.count)
            }

            Words {
                anchors.centerIn: parent
                visible: sheet.thumb ? sheet.thumb.missing : false
                text: qsTr("This photo is not on this tablet.")
                muted: true
            }
        }

        ListView {
            id: list

            orientation: ListView.Horizontal
            model: sheet.photos
            currentIndex: sheet.inHand
            spacing: Theme.gap
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            visible: count > 0
            Layout.fillWidth: true
            Layout.preferredHeight: Theme.touchTarget * 1.4
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Photos")

            delegate: PhotoThumb {
                height: ListView.view.height
                current: ListView.isCurrentItem
                onClicked: sheet.inHand = index
            }
        }

        RowLayout {
            spacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            Layout.fillWidth: true

            ActionButton {
                visible: sheet.inHand >= 0
                text: qsTr("Remove")
                sign: "remove"
                Accessible.name: qsTr("Remove the photo")
                onClicked: sheet.photos.remove(sheet.inHand)
            }

            ActionButton {
                visible: sheet.inHand >= 0
                text: qsTr("Another in its place")
                sign: "flip"
                Layout.fillWidth: true
                onClicked: sheet.hasCamera ? sheet.aiming = "retake" : sheet.choosing = "retake"
            }

            ActionButton {
                text: sheet.hasCamera ? qsTr("From a file") : qsTr("Add a photo")
                sign: sheet.hasCamera ? "open" : "add"
                kind: sheet.hasCamera ? ActionButton.Quiet : ActionButton.Primary
                Layout.fillWidth: true
                onClicked: sheet.choosing = "add"
            }

            ActionButton {
                visible: sheet.hasCamera
                text: qsTr("Take a photo")
                sign: "camera"
                kind: ActionButton.Primary
                Layout.fillWidth: true
                onClicked: sheet.aiming = "add"
            }
        }
    }

    CameraSheet {
        id: camera

        anchors.fill: parent
        visible: sheet.aiming !== ""
        title: qsTr("Photo of %1").arg(sheet.photos.of)
        viewfinder: sheet.app.viewfinder
        offered: sheet.visible
        onClosed: sheet.aiming = ""
        onSeen: picture => sheet.seen(picture)
    }

    FileBrowser {
        anchors.fill: parent
        visible: sheet.choosing !== ""
        title: qsTr("Which photo")
        folder: sheet.app.settings.folder
        endings: [".jpg", ".jpeg", ".png"]
        onClosed: sheet.choosing = ""
        onChosen: path => sheet.chosen(path)
    }
}
