import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.ShopModel

// A document of the reference data as a person changes it: its text, what it draws, and what is wrong with it.
RowLayout {
    id: editor

    required property LibraryDraft draft

    spacing: Theme.space

    ColumnLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 500

        SectionHeader {
            text: editor.draft.title
            detail: editor.draft.trouble === "" ? qsTr("It holds") : qsTr("It does not hold yet")
            Layout.fillWidth: true
        }

        Rectangle {
            color: Theme.well
            border.color: text.activeFocus ? Theme.focus : Theme.edge
            border.width: text.activeFocus ? 3 : Theme.outline
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
                    id: text

                    text: editor.draft.text
                    color: Theme.ink
                    selectionColor: Theme.action
                    selectedTextColor: Theme.onAction
                    selectByMouse: true
                    wrapMode: TextEdit.Wrap
                    textFormat: TextEdit.PlainText
                    font.family: "monospace"
                    font.pixelSize: Theme.smallText
                    onTextChanged: editor.draft.text = text

                    Accessible.role: Accessible.EditableText
                    Accessible.name: editor.draft.title
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
