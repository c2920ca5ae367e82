import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// A button for those who may do it. For anybody else it stands there pale, and says why to who presses it or
// rests on it.
ActionButton {
    id: button

    /// Empty: this person may.
    property string whyNot: ""
    property bool asked: false

    signal act

    opacity: whyNot === "" ? 1 : 0.5
    hoverEnabled: true
    onClicked: whyNot === "" ? act() : asked = true
    onHoveredChanged: asked = asked && hovered

    Accessible.description: whyNot

    T.ToolTip {
        x: Math.min(0, button.width - width)
        y: button.height + 4
        visible: button.whyNot !== "" && (button.hovered || button.asked)
        delay: button.asked ? 0 : 500
        timeout: 6000
        padding: Theme.gap
        implicitWidth: 320
        implicitHeight: implicitContentHeight + 2 * padding
        contentItem: Words {
            text: button.whyNot
            color: Theme.onRail
        }
        background: Plate {
            colour: Theme.rail
        }
    }
}
