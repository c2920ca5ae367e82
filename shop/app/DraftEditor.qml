import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.ShopModel

// A document as a person changes it: as fields or as its text, what it draws, and what is wrong with it.
RowLayout {
    id: editor

    required property Draft draft
    /// The text is for who knows it; everybody else fills fields in.
    property bool asText: false

    spacing: Theme.space

    ColumnLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 560

        RowLayout {
            spacing: Theme.space
            Layout.fillWidth: true

            SectionHeader {
                text: editor.draft.title
                detail: editor.draft.trouble === "" ? qsTr("It holds") : qsTr("It does not hold yet")
                Layout.fillWidth: true
            }

            ChoiceBar {
                name: qsTr("How to change it")
                choices: [qsTr("Fields"), qsTr("Text")]
                currentIndex: editor.asText ? 1 : 0
                onChosen: index => {
                    editor.draft.settle();
                    editor.asText = index === 1;
                }
            }
        }

        Words {
            visible: !editor.asText && editor.draft.form.stale
            text: qsTr("The text is no document yet. Mend it there; then its fields can be filled in again.")
            color: Theme.blocks
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }

        DraftFields {
            visible: !editor.asText
            form: editor.draft.form
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        Rectangle {
            visible: editor.asText
            color: Theme.well
            border.color: area.activeFocus ? Theme.focus : Theme.edge
            border.width: area.activeFocus ? 3 : Theme.outline
            Layout.fillWidth: true
            Layout.fillHeight: true

            Flickable {
                id: flick

                anchors.fill: parent
                anchors.margins: Theme.gap
                clip: true
                boundsBehavior: Flickable.StopAtBounds
                T.ScrollBar.vertical: ScrollMark {}

                T.TextArea.flickable: T.TextArea {
                    id: area

                    text: editor.draft.text
                    color: Theme.ink
                    selectionColor: Theme.action
                    selectedTextColor: Theme.onAction
                    selectByMouse: true
                    wrapMode: TextEdit.Wrap
                    textFormat: TextEdit.PlainText
                    font.family: "monospace"
                    font.pixelSize: Theme.smallText
                    onTextChanged: if (area.activeFocus) editor.draft.text = area.text

                    Accessible.role: Accessible.EditableText
                    Accessible.name: editor.draft.title

                    // What is filled in elsewhere is seen here too, although typing ended the binding.
                    Connections {
                        target: editor.draft

                        function onTextChanged() {
                            if (area.text !== editor.draft.text)
                                area.text = editor.draft.text;
                        }
                    }
                }
            }
        }

        Words {
            visible: text !== ""
            text: editor.draft.trouble
            color: Theme.blocks
            maximumLineCount: 4
            wrapMode: Text.Wrap
            elide: Text.ElideRight
            Layout.fillWidth: true
        }
    }

    PictureView {
        visible: !editor.draft.picture.empty
        picture: editor.draft.picture
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 420
    }
}
