import QtQuick
import Lapwright.Look

// The line between a panel at the side (at the foot in portrait) and what it stands beside.
Rectangle {
    property bool portrait: false

    x: !portrait && Theme.leftHanded ? parent.width - width : 0
    width: portrait ? parent.width : Theme.outline
    height: portrait ? Theme.outline : parent.height
    color: Theme.edge
}
