import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel

// What happens at the two ends of the run, and a word about it.
Flickable {
    id: sheet

    required property RunEntry entry

    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    ColumnLayout {
        id: column

        width: sheet.width
        spacing: Theme.gap

        Words {
            text: qsTr("Left end, standing outside")
            level: Words.Small
            muted: true
        }

        Flow {
            spacing: Theme.gap
            Layout.fillWidth: true

            Repeater {
                model: sheet.entry.starts

                ActionButton {
                    required property string key
                    required property string words
                    required property bool chosen

                    text: words
                    sign: chosen ? "done" : ""
                    onClicked: sheet.entry.start = key
                }
            }
        }

        Words {
            text: qsTr("Right end")
            level: Words.Small
            muted: true
        }

        Flow {
            spacing: Theme.gap
            Layout.fillWidth: true

            Repeater {
                model: sheet.entry.ends

                ActionButton {
                    required property string key
                    required property string words
                    required property bool chosen

                    text: words
                    sign: chosen ? "done" : ""
                    onClicked: sheet.entry.end = key
                }
            }
        }

        LabelledField {
            label: qsTr("Note")
            text: sheet.entry.note
            keepsLine: false
            Layout.fillWidth: true
            onEdited: sheet.entry.note = text
        }
    }
}
