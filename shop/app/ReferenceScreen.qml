import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

DraftScreen {
    id: screen

    readonly property ReferenceShelf desk: shop.reference

    draft: desk.draft
    list: [desk.machines, desk.trims, desk.ruleSets, desk.floor, desk.rates][desk.kind]
    title: qsTr("Reference")
    detail: draft.open ? qsTr("Changing %1").arg(draft.title) : qsTr("Machines, trim, rules, the floor and its hours, and what the shop asks")
    searchHint: qsTr("Name")

    actions: [
        ChoiceBar {
            visible: !screen.draft.open
            name: qsTr("What to look up")
            choices: [qsTr("Machines"), qsTr("Trim"), qsTr("Rules"), qsTr("Floor"), qsTr("Rates")]
            currentIndex: screen.desk.kind
            onChosen: index => screen.desk.kind = index
        },
        ActionButton {
            visible: !screen.draft.open && screen.desk.current !== ""
            text: qsTr("Export")
            sign: "send"
            onClicked: saver.open()
        },
        DutyButton {
            visible: !screen.draft.open
            whyNot: screen.shop.whyNotPlan
            text: qsTr("Import")
            sign: "open"
            onAct: picker.open()
        },
        DutyButton {
            visible: !screen.draft.open && (screen.desk.current !== "" || screen.desk.kind === ReferenceShelf.Rates)
            whyNot: screen.shop.whyNotPlan
            text: screen.desk.current === "" ? qsTr("Give the rates") : qsTr("Change")
            sign: "edit"
            onAct: screen.desk.edit()
        }
    ]

    FilePicker {
        id: picker

        title: qsTr("Document to import")
        onPicked: files => screen.desk.importFile(files[0])
    }

    FilePicker {
        id: saver

        title: qsTr("Where to write it")
        saves: true
        onPicked: files => screen.desk.exportFile(files[0])
    }

    RowsList {
        visible: !screen.draft.open
        name: screen.title
        model: screen.list
        current: screen.desk.current
        focus: true
        emptySign: "rules"
        emptyTitle: screen.desk.kind === ReferenceShelf.Rates ? qsTr("No rates yet") : qsTr("Nothing here")
        emptyText: screen.desk.kind === ReferenceShelf.Rates ? qsTr("Confirmations say no cost until the shop says what it asks.") : ""
        onChosen: id => screen.desk.current = id
        Layout.preferredWidth: 360
        Layout.maximumWidth: 420
        Layout.fillHeight: true
    }

    ColumnLayout {
        visible: !screen.draft.open
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true

        PictureView {
            visible: !picture.empty
            picture: screen.desk.picture
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        FindingsList {
            visible: screen.desk.kind === ReferenceShelf.Rules
            name: qsTr("Clauses")
            model: screen.desk.rules
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        Words {
            visible: screen.desk.kind === ReferenceShelf.Trim
            text: qsTr("An example: 6 in 12, square corners, measures without a usual value a quarter up their range.")
            level: Words.Small
            muted: true
            Layout.fillWidth: true
        }

        Words {
            visible: text !== ""
            text: screen.desk.note
            Layout.fillWidth: true
        }

        Item {
            visible: screen.desk.kind === ReferenceShelf.Floor || screen.desk.kind === ReferenceShelf.Rates
            Layout.fillHeight: true
        }
    }
}
