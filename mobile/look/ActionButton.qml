import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

// A button with words, and a sign if it has one. One Primary a screen: what comes next.
T.Button {
    id: button

    enum Kind {
        Primary,
        Quiet,
        Plain,
        Danger
    }

    property int kind: ActionButton.Quiet
    property string sign: ""
    /// Without the cut corner: part of a larger control.
    property bool square: false
    readonly property color inkColour: kind === ActionButton.Primary ? Theme.onAction
        : kind === ActionButton.Danger ? Theme.onDanger : kind === ActionButton.Plain ? Theme.action : Theme.ink

    implicitWidth: Math.max(implicitContentWidth + leftPadding + rightPadding, Theme.target * 1.5)
    implicitHeight: Theme.target
    leftPadding: Theme.space
    rightPadding: Theme.space
    // What scraps is never pressed again by the key that follows a click.
    focusPolicy: kind === ActionButton.Danger ? Qt.TabFocus : Qt.StrongFocus
    font.family: Theme.family
    font.pixelSize: Theme.bodyText
    font.bold: kind === ActionButton.Primary || kind === ActionButton.Danger

    Accessible.role: Accessible.Button
    Accessible.name: text

    Keys.forwardTo: PressKeys {
        onPressed: button.clicked()
    }

    background: Plate {
        opacity: button.enabled ? 1 : 0.45
        notch: button.square ? 0 : Theme.notch
        colour: {
            switch (button.kind) {
            case ActionButton.Primary:
                return button.down ? Theme.actionPressed : Theme.action;
            case ActionButton.Danger:
                return Theme.danger;
            case ActionButton.Plain:
                return button.down ? Theme.quietPressed : "transparent";
            default:
                return button.down ? Theme.quietPressed : Theme.quiet;
            }
        }
        edge: button.kind === ActionButton.Plain ? "transparent" : button.kind === ActionButton.Quiet ? Theme.edge : button.inkColour
        edgeWidth: button.kind === ActionButton.Quiet || button.down || button.hovered ? Theme.outline : 0

        FocusRing {
            visible: button.visualFocus
        }
    }

    contentItem: Item {
        implicitWidth: row.implicitWidth
        implicitHeight: row.implicitHeight
        opacity: button.enabled ? 1 : 0.55

        RowLayout {
            id: row

            anchors.centerIn: parent
            // A press is seen under a glove by the words moving down, not by colour alone.
            anchors.verticalCenterOffset: button.down ? 2 : 0
            width: Math.min(implicitWidth, parent.width)
            spacing: Theme.gap

            Icon {
                visible: button.sign !== ""
                name: button.sign
                colour: button.inkColour
                Layout.preferredWidth: Theme.iconSize
                Layout.preferredHeight: Theme.iconSize
            }

            Text {
                text: button.text
                color: button.inkColour
                elide: Text.ElideRight
                maximumLineCount: 2
                wrapMode: Text.Wrap
                font: button.font
                textFormat: Text.PlainText
                Layout.fillWidth: true
            }
        }
    }
}
