import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// Names what follows; a copper rule ends it as a hem ends a sheet. Children stand at its right.
Item {
    id: header

    property string text: ""
    property string detail: ""
    default property alias actions: row.data

    implicitWidth: 240
    implicitHeight: Math.max(Theme.headingText * 1.8, row.implicitHeight) + 6

    Accessible.role: Accessible.Heading
    Accessible.name: text

    RowLayout {
        id: row

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: line.top
        spacing: Theme.gap

        Words {
            text: header.text
            level: Words.Heading
            maximumLineCount: 1
            Layout.fillWidth: header.detail === ""
            Layout.maximumWidth: header.width
        }

        Words {
            visible: text !== ""
            text: header.detail
            muted: true
            Layout.alignment: Qt.AlignVCenter
            Layout.fillWidth: true
        }
    }

    Rectangle {
        id: line

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: 1
        color: Theme.rule
    }

    Rectangle {
        anchors.left: parent.left
        anchors.bottom: parent.bottom
        width: 48
        height: 3
        color: Theme.accent
    }
}
