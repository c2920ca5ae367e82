import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// Finds as you type; Escape empties it. A scanner types into it like a person.
T.TextField {
    id: input

    property string hint: qsTr("Search")

    implicitWidth: 280
    implicitHeight: Theme.target
    leftPadding: Theme.iconSize + 2 * Theme.gap
    rightPadding: clear.visible ? clear.width : Theme.gap
    verticalAlignment: TextInput.AlignVCenter
    color: Theme.ink
    selectionColor: Theme.action
    selectedTextColor: Theme.onAction
    selectByMouse: true
    font.family: Theme.family
    font.pixelSize: Theme.bodyText

    Accessible.role: Accessible.EditableText
    Accessible.name: hint

    Keys.onEscapePressed: event => {
        event.accepted = input.text !== "";
        input.clear();
    }

    background: Rectangle {
        color: Theme.well
        border.color: input.activeFocus ? Theme.focus : Theme.edge
        border.width: input.activeFocus ? 3 : Theme.outline
    }

    Icon {
        anchors.left: parent.left
        anchors.leftMargin: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        width: Theme.iconSize
        height: Theme.iconSize
        name: "search"
        colour: Theme.inkMuted
    }

    Words {
        anchors.left: parent.left
        anchors.leftMargin: input.leftPadding
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        visible: input.text === "" && input.preeditText === ""
        fontSizeMode: Text.HorizontalFit
        maximumLineCount: 1
        minimumPixelSize: Theme.smallText * 0.7
        muted: true
        text: input.hint
    }

    IconButton {
        id: clear

        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        visible: input.text !== ""
        focusPolicy: Qt.NoFocus
        sign: "close"
        text: qsTr("Empty the search")
        onClicked: input.clear()
    }
}
