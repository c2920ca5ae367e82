import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// What stands where nothing is yet: what will be here, and the act that brings it.
Item {
    id: empty

    property string sign: "trim"
    property string title: ""
    property string text: ""
    property string actionText: ""

    signal acted

    implicitWidth: 360
    implicitHeight: column.implicitHeight + 2 * Theme.wide

    ColumnLayout {
        id: column

        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.space, 460)
        spacing: Theme.space * 0.75

        Icon {
            name: empty.sign
            colour: Theme.inkMuted
            Layout.preferredWidth: Theme.iconSize * 2.4
            Layout.preferredHeight: Theme.iconSize * 2.4
            Layout.alignment: Qt.AlignHCenter
        }

        Words {
            text: empty.title
            level: Words.Heading
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
        }

        Words {
            visible: text !== ""
            text: empty.text
            muted: true
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
        }

        ActionButton {
            visible: empty.actionText !== ""
            text: empty.actionText
            kind: ActionButton.Primary
            Layout.alignment: Qt.AlignHCenter
            Layout.topMargin: Theme.gap
            onClicked: empty.acted()
        }
    }
}
