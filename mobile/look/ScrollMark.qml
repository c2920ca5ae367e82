import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// Where we are in what scrolls; wide enough to be dragged.
T.ScrollBar {
    id: bar

    implicitWidth: 12
    implicitHeight: 12
    minimumSize: 0.06
    padding: 2
    visible: policy !== T.ScrollBar.AlwaysOff && size < 1

    contentItem: Rectangle {
        implicitWidth: 8
        implicitHeight: 8
        color: bar.pressed ? Theme.action : Theme.edge
        opacity: bar.active ? 1 : 0.6
    }
}
