import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

// A list of what a person can change, and in its place what they change, to be kept or left as it was.
ScreenFrame {
    id: frame

    required property Draft draft
    required property RowsModel list

    searched: draft.open ? null : list

    // What a screen does with its list comes after these.
    actions: [
        ActionButton {
            visible: frame.draft.open
            text: qsTr("Leave as it was")
            sign: "undo"
            onClicked: frame.draft.leave()
        },
        ActionButton {
            visible: frame.draft.open
            enabled: frame.draft.trouble === ""
            text: qsTr("Keep it")
            sign: "done"
            kind: ActionButton.Primary
            onClicked: frame.draft.keep()
        }
    ]

    Loader {
        visible: frame.draft.open
        active: frame.draft.open
        Layout.fillWidth: true
        Layout.fillHeight: true

        sourceComponent: DraftEditor {
            draft: frame.draft
        }
    }
}
