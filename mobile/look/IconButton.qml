import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// A button that is only a sign. `text` is its name for screen readers and for the tool tip.
T.Button {
    id: button

    required property string sign
    property color inkColour: Theme.ink

    implicitWidth: Theme.target
    implicitHeight: Theme.target
    focusPolicy: Qt.StrongFocus

    Accessible.role: Accessible.Button
    Accessible.name: text

    Keys.forwardTo: PressKeys {
        onPressed: button.clicked()
    }

    background: Plate {
        notch: Theme.notch
        colour: button.down || button.checked ? Theme.quietPressed : button.hovered ? Theme.quiet : "transparent"
        edge: Theme.edge
        edgeWidth: button.hovered || button.down || button.checked ? Theme.outline : 0

        FocusRing {
            visible: button.visualFocus
        }
    }

    contentItem: Item {
        opacity: button.enabled ? 1 : 0.4

        Icon {
            anchors.centerIn: parent
            anchors.verticalCenterOffset: button.down ? 2 : 0
            width: Theme.iconSize
            height: Theme.iconSize
            name: button.sign
            colour: button.inkColour
        }
    }
}
