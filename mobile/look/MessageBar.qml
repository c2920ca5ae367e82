import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// Says what was done, and takes it back while it stands there. It goes when it is closed or the next thing is
// said, never by a clock: gloves are slow.
Plate {
    id: bar

    property string text: ""
    property string undoText: qsTr("Undo")
    property bool undoable: false
    property bool trouble: false
    /// False where it stands as long as what it says holds.
    property bool closable: true

    signal undone
    signal closed

    visible: text !== ""
    implicitWidth: 480
    implicitHeight: visible ? Math.max(Theme.target, words.implicitHeight + 2 * Theme.gap) : 0
    colour: trouble ? Theme.danger : Theme.rail
    notch: Theme.notch

    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.space
        anchors.rightMargin: Theme.notch + Theme.gap
        spacing: Theme.gap
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        Icon {
            name: bar.trouble ? "blocks" : "done"
            colour: words.color
            Layout.preferredWidth: Theme.iconSize
            Layout.preferredHeight: Theme.iconSize
        }

        Words {
            id: words

            text: bar.text
            color: bar.trouble ? Theme.onDanger : Theme.onRail
            Layout.fillWidth: true
        }

        ActionButton {
            objectName: "undo"
            visible: bar.undoable
            text: bar.undoText
            sign: "undo"
            onClicked: bar.undone()
        }

        IconButton {
            objectName: "close"
            visible: bar.closable
            sign: "close"
            text: qsTr("Close the message")
            inkColour: words.color
            onClicked: bar.closed()
        }
    }
}
