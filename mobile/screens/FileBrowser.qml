import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel

// Chooses a file, or a folder to write into. It takes the place of what is behind it and gives it back as it was.
Rectangle {
    id: browser

    property string title: ""
    property string folder: ""
    property var endings: []
    /// A folder is wanted, to write `fileName` into.
    property bool forFolder: false
    property string fileName: ""

    signal chosen(string path)
    signal closed

    color: Theme.ground
    onVisibleChanged: if (visible) {
        files.path = folder;
        files.refresh();
    }

    Accessible.role: Accessible.Pane
    Accessible.name: title

    FolderList {
        id: files

        path: browser.folder
        endings: browser.endings
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.space
        spacing: Theme.gap

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                text: browser.title
                level: Words.Heading
                Layout.fillWidth: true
            }

            IconButton {
                sign: "close"
                text: qsTr("Back without choosing")
                onClicked: browser.closed()
            }
        }

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            ActionButton {
                text: qsTr("Up")
                sign: "up"
                enabled: files.canGoUp
                onClicked: files.up()
            }

            Words {
                text: files.path
                maximumLineCount: 1
                elide: Text.ElideLeft
                Layout.fillWidth: true
            }
        }

        ListView {
            id: list

            clip: true
            model: files
            boundsBehavior: Flickable.StopAtBounds
            Layout.fillWidth: true
            Layout.fillHeight: true
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Files")
            T.ScrollBar.vertical: ScrollMark {}

            delegate: ListRow {
                required property string name
                required property string path
                required property bool isFolder
                required property string detail

                width: ListView.view.width
                title: name
                trailingDetail: detail
                sign: isFolder ? "open" : "orders"
                onClicked: isFolder ? files.path = path : browser.chosen(path)
            }

            Words {
                anchors.centerIn: parent
                visible: list.count === 0
                text: browser.forFolder ? qsTr("No folders in here") : qsTr("Nothing in here that this program reads")
                muted: true
            }
        }

        ActionButton {
            visible: browser.forFolder
            text: qsTr("Write %1 here").arg(browser.fileName)
            sign: "done"
            kind: ActionButton.Primary
            enabled: files.writable
            Layout.fillWidth: true
            onClicked: browser.chosen(files.path)
        }
    }
}
