import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// One photo, small, to be taken in hand.
T.Button {
    id: photo

    required property int index
    required property url url
    required property bool missing
    required property string words
    property bool current: false

    implicitWidth: height * 1.25
    implicitHeight: Theme.touchTarget
    text: words
    focusPolicy: Qt.StrongFocus
    Accessible.name: missing ? qsTr("%1, not on this tablet").arg(words) : words
    Accessible.selected: current

    background: Rectangle {
        color: photo.down ? Theme.quietPressed : Theme.quiet
        border.color: photo.current ? Theme.accent : Theme.edge
        border.width: photo.current ? 4 : Theme.outline

        FocusRing {
            visible: photo.visualFocus
        }
    }

    contentItem: Item {
        Image {
            anchors.fill: parent
            anchors.margins: Theme.tight
            visible: !photo.missing
            source: photo.missing ? "" : photo.url
            sourceSize.width: 240
            sourceSize.height: 240
            fillMode: Image.PreserveAspectFit
            asynchronous: true
        }

        Icon {
            anchors.centerIn: parent
            visible: photo.missing
            width: Theme.iconSize
            height: Theme.iconSize
            name: "photo"
            colour: Theme.inkMuted
        }
    }
}
