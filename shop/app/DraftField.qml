import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

// One field of a document or the heading of one of its parts, set in by how deep it stands.
Item {
    id: field

    required property int index
    required property int kind
    required property string label
    required property string help
    required property string value
    required property string unit
    required property var choices
    required property var choiceWords
    required property string trouble
    required property int depth
    required property bool given
    required property bool needed

    readonly property bool heading: kind >= DraftForm.Part

    signal filled(string entered)
    signal added
    signal takenOut

    implicitHeight: loader.implicitHeight
    opacity: enabled ? 1 : 0.55

    Loader {
        id: loader

        anchors.left: parent.left
        anchors.leftMargin: field.depth * Theme.space
        anchors.right: parent.right
        sourceComponent: field.heading ? part : field.kind === DraftForm.YesNo ? yesNo : field.kind === DraftForm.Choice ? choice : line
    }

    Component {
        id: part

        SectionHeader {
            text: field.label
            detail: field.trouble !== "" ? field.trouble : field.help

            IconButton {
                visible: field.kind === DraftForm.Items || (field.kind === DraftForm.Part && !field.given)
                sign: "add"
                text: qsTr("Add to %1").arg(field.label)
                onClicked: field.added()
            }

            IconButton {
                visible: field.kind === DraftForm.Item || (field.kind === DraftForm.Part && field.given && !field.needed)
                sign: "close"
                text: qsTr("Take %1 out").arg(field.label)
                onClicked: field.takenOut()
            }
        }
    }

    Component {
        id: yesNo

        SwitchRow {
            text: field.label
            detail: field.trouble !== "" ? field.trouble : field.help
            checked: field.value === "true"
            onToggled: field.filled(checked ? "true" : "false")
        }
    }

    Component {
        id: choice

        ColumnLayout {
            spacing: Theme.tight

            Words {
                text: field.label
                level: Words.Small
                muted: true
                Layout.fillWidth: true
            }

            Picker {
                name: field.label
                model: field.choiceWords
                currentIndex: field.choices.indexOf(field.value)
                Layout.fillWidth: true
                onActivated: index => field.filled(field.choices[index])
            }

            Words {
                visible: text !== ""
                text: field.trouble !== "" ? field.trouble : field.help
                level: Words.Small
                color: field.trouble !== "" ? Theme.blocks : Theme.inkMuted
                Layout.fillWidth: true
            }
        }
    }

    Component {
        id: line

        LabelledField {
            id: entry

            // What is typed stays as it is typed while it is typed.
            function showValue() {
                if (inputItem.activeFocus)
                    return;
                text = field.value;
                inputItem.cursorPosition = 0; // of a long one the beginning is seen
            }

            label: field.label
            unit: field.unit
            placeholder: field.given || field.needed ? "" : qsTr("not given")
            error: field.trouble
            reading: field.help
            keepsLine: false
            onEdited: field.filled(text)
            onLeftField: showValue()
            Component.onCompleted: showValue()

            Connections {
                target: field

                function onValueChanged() {
                    entry.showValue();
                }
            }
        }
    }
}
