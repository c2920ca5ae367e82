import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// Words of which only the first lines are seen until they are unfolded; where they are more than has room then, they
// are scrolled. The button has its room even where it is not needed: what wraps must not ask whether it is.
Item {
    id: folded

    property string name: ""
    property string text: ""
    property int lines: 2
    /// The highest it may become.
    property real most: 300
    property bool open: false
    readonly property real foldedHeight: Math.ceil(size.height) * lines + 2
    readonly property bool whole: words.implicitHeight <= foldedHeight

    objectName: "folded"
    implicitHeight: Math.max(flick.height, button.visible ? button.height : 0)

    TextMetrics {
        id: size

        font: words.font
        text: "Ag"
    }

    Flickable {
        id: flick

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.rightMargin: Theme.target + Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        activeFocusOnTab: interactive
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        contentHeight: words.implicitHeight
        height: Math.min(words.implicitHeight, folded.open ? folded.most : folded.foldedHeight)
        interactive: contentHeight > height
        T.ScrollBar.vertical: ScrollMark {}

        Keys.onUpPressed: contentY = Math.max(0, contentY - size.height)
        Keys.onDownPressed: contentY = Math.max(0, Math.min(contentHeight - height, contentY + size.height))

        Words {
            id: words

            width: flick.width - Theme.gap
            text: folded.text
            level: Words.Small
        }

        FocusRing {
            visible: flick.activeFocus
        }
    }

    IconButton {
        id: button

        anchors.right: parent.right
        anchors.bottom: parent.bottom
        visible: !folded.whole
        sign: folded.open ? "down" : "up"
        text: (folded.open ? qsTr("Fold: %1") : qsTr("Unfold: %1")).arg(folded.name)
        onClicked: {
            folded.open = !folded.open;
            flick.contentY = 0;
        }
    }
}
