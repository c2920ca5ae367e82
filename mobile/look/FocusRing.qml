import QtQuick
import Lapwright.Look

// Says where the keyboard is: outside the control, so that it never hides what the control says.
Rectangle {
    anchors.fill: parent
    anchors.margins: -4
    border.color: Theme.focus
    border.width: 3
    color: "transparent"
    radius: 2
}
