import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// On or off, said in words beside the mark.
T.Switch {
    id: control

    property string detail: ""

    implicitWidth: 320
    implicitHeight: Math.max(Theme.target, texts.implicitHeight + Theme.gap)
    focusPolicy: Qt.StrongFocus
    rightPadding: mark.width + Theme.space

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
        id: mark

        x: control.width - width
        y: (control.height - height) / 2
        width: Theme.iconSize * 2.4
        height: Theme.iconSize * 1.2
        color: control.checked ? Theme.action : Theme.well
        border.color: control.checked ? Theme.action : Theme.edge
        border.width: Theme.outline

        Plate {
            x: control.checked ? mark.width - width - 3 : 3
            y: 3
            width: mark.height - 6
            height: mark.height - 6
            notch: width / 4
            colour: control.checked ? Theme.onAction : Theme.edge
        }

        Icon {
            visible: control.checked
            x: 5
            anchors.verticalCenter: parent.verticalCenter
            width: mark.height * 0.7
            height: width
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
