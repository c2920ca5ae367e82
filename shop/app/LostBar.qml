import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// Says that the database does not answer, as long as it does not.
Plate {
    id: bar

    property string text: ""

    implicitWidth: 480
    implicitHeight: Math.max(Theme.target, words.implicitHeight + 2 * Theme.gap)
    colour: Theme.danger
    notch: Theme.notch

    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.space
        anchors.rightMargin: Theme.space
        spacing: Theme.gap

        Icon {
            name: "blocks"
            colour: Theme.onDanger
            Layout.preferredWidth: Theme.iconSize
            Layout.preferredHeight: Theme.iconSize
        }

        Words {
            id: words

            text: bar.text
            color: Theme.onDanger
            Layout.fillWidth: true
        }
    }
}
