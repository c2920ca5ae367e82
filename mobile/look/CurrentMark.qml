import QtQuick
import Lapwright.Look

// The rule under what is chosen.
Rectangle {
    anchors.left: parent.left
    anchors.right: parent.right
    anchors.bottom: parent.bottom
    height: 4
    color: Theme.accent
}
