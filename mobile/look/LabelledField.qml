import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

// Label above, what is typed, and under it either what is wrong with it or what the program read: one line whose
// room is kept, so that nothing jumps.
ColumnLayout {
    id: field

    property alias text: input.text
    property alias placeholder: hint.text
    property alias readOnly: input.readOnly
    property alias inputMethodHints: input.inputMethodHints
    property alias validator: input.validator
    property alias inputItem: input
    property string label: ""
    property string unit: ""
    property string error: ""
    property string reading: ""
    property bool keepsLine: true
    /// A screen keyboard of our own takes the place of the system's.
    property bool ownKeypad: false

    signal accepted
    signal edited
    signal leftField

    spacing: Theme.tight

    Words {
        visible: field.label !== ""
        text: field.label
        level: Words.Small
        muted: true
        Layout.fillWidth: true
    }

    T.TextField {
        id: input

        implicitHeight: Theme.target
        implicitWidth: 220
        leftPadding: Theme.space * 0.75
        rightPadding: unitText.visible ? unitText.width + Theme.space : Theme.space * 0.75
        verticalAlignment: TextInput.AlignVCenter
        color: Theme.ink
        selectionColor: Theme.action
        selectedTextColor: Theme.onAction
        selectByMouse: true
        font.family: Theme.family
        font.pixelSize: Theme.touch ? Theme.headingText : Theme.bodyText
        inputMethodHints: field.ownKeypad ? Qt.ImhNone | Qt.ImhNoPredictiveText : Qt.ImhNone
        Layout.fillWidth: true

        Accessible.role: Accessible.EditableText
        Accessible.name: field.label
        Accessible.description: field.error !== "" ? field.error : field.reading

        onAccepted: field.accepted()
        onTextEdited: field.edited()
        onActiveFocusChanged: if (!activeFocus) field.leftField()

        background: Rectangle {
            color: Theme.well
            border.color: field.error !== "" ? Theme.blocks : input.activeFocus ? Theme.focus : Theme.edge
            border.width: input.activeFocus || field.error !== "" ? 3 : Theme.outline
        }

        Words {
            id: hint

            anchors.left: parent.left
            anchors.leftMargin: input.leftPadding
            anchors.verticalCenter: parent.verticalCenter
            visible: input.text === "" && input.preeditText === ""
            muted: true
            font.pixelSize: input.font.pixelSize
        }

        Words {
            id: unitText

            anchors.right: parent.right
            anchors.rightMargin: Theme.space * 0.75
            anchors.verticalCenter: parent.verticalCenter
            visible: text !== ""
            text: field.unit
            muted: true
        }
    }

    RowLayout {
        visible: field.keepsLine || field.error !== "" || field.reading !== ""
        spacing: Theme.tight
        Layout.fillWidth: true
        Layout.minimumHeight: Theme.smallText * 1.5

        Icon {
            visible: field.error !== ""
            name: "blocks"
            colour: Theme.blocks
            Layout.preferredWidth: Theme.smallText * 1.3
            Layout.preferredHeight: Theme.smallText * 1.3
            Layout.alignment: Qt.AlignTop
        }

        Words {
            level: Words.Small
            color: field.error !== "" ? Theme.blocks : Theme.inkMuted
            text: field.error !== "" ? field.error : field.reading
            Layout.fillWidth: true
        }
    }
}
