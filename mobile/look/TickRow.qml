import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// A box to tick off: done or not yet.
T.CheckBox {
    id: control

    property string detail: ""

    implicitWidth: 320
    implicitHeight: Math.max(Theme.target, texts.implicitHeight + Theme.gap)
    leftPadding: box.width + Theme.space
    focusPolicy: Qt.StrongFocus

    Accessible.role: Accessible.CheckBox
    Accessible.name: text
    Accessible.description: detail
    Accessible.checked: checked

    Keys.forwardTo: PressKeys {
        onPressed: {
            control.toggle();
            control.toggled();
        }
    }

    background: Rectangle {
        color: control.down ? Theme.quiet : "transparent"

        FocusRing {
            visible: control.visualFocus
        }
    }

    indicator: Rectangle {
        id: box

        x: Theme.tight
        y: (control.height - height) / 2
        width: Theme.iconSize * 1.2
        height: width
        color: control.checked ? Theme.action : Theme.well
        border.color: control.checked ? Theme.action : Theme.edge
        border.width: 2

        Icon {
            anchors.fill: parent
            anchors.margins: 2
            visible: control.checked
            name: "done"
            colour: Theme.onAction
        }
    }

    contentItem: Item {
        implicitHeight: texts.implicitHeight

        Column {
            id: texts

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter

            Words {
                width: parent.width
                text: control.text
            }

            Words {
                width: parent.width
                visible: text !== ""
                text: control.detail
                level: Words.Small
                muted: true
            }
        }
    }
}
