import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// Opens at the side (at the foot in portrait) beside what is there, never over it as a modal: what was typed in it
// stays when it closes. Place it in the layout of its page; `open` decides whether it takes room.
FocusScope {
    id: panel

    property bool open: false
    property string title: ""
    property bool portrait: false
    property real extent: 380
    default property alias content: body.data

    signal closed

    visible: open
    implicitWidth: open ? (portrait ? 320 : extent) : 0
    implicitHeight: open ? (portrait ? extent : 320) : 0

    Accessible.role: Accessible.Pane
    Accessible.name: title

    Keys.onEscapePressed: panel.closed()

    Rectangle {
        anchors.fill: parent
        color: Theme.panel
    }

    SideEdge {
        portrait: panel.portrait
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.space
        spacing: Theme.gap

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                text: panel.title
                level: Words.Heading
                Layout.fillWidth: true
            }

            IconButton {
                sign: "close"
                text: qsTr("Close %1").arg(panel.title)
                onClicked: panel.closed()
            }
        }

        ColumnLayout {
            id: body

            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
    }
}
