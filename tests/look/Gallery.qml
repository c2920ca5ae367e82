import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

Rectangle {
    id: gallery

    property picture shown

    width: 1366
    height: 1120
    color: Theme.ground

    RowLayout {
        anchors.fill: parent
        spacing: 0
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        NavigationRail {
            entries: [{name: "Arrivals", sign: "arrivals", count: 3}, {name: "Batches", sign: "batches"}, {name: "Cutting", sign: "cutting"},
                {name: "Folding", sign: "folding"}, {name: "Schedule", sign: "schedule"}, {name: "Loads", sign: "loads"},
                {name: "Receipts", sign: "receipts"}, {name: "Stock", sign: "stock"}, {name: "Settings", sign: "settings"}]
            currentIndex: 2
            Layout.fillHeight: true
        }

        ColumnLayout {
            spacing: Theme.space
            Layout.margins: Theme.space
            Layout.preferredWidth: 560
            Layout.fillWidth: true
            Layout.fillHeight: true

            SectionHeader {
                text: "Buttons"
                detail: "one primary a screen"
                Layout.fillWidth: true

                IconButton {
                    sign: "more"
                    text: "More"
                }
            }

            RowLayout {
                spacing: Theme.gap

                ActionButton {
                    id: focused

                    text: "Accept order"
                    sign: "done"
                    kind: ActionButton.Primary
                }
                ActionButton {
                    text: "Hold"
                    sign: "hold"
                }
                ActionButton {
                    text: "Scrap"
                    sign: "scrap"
                    kind: ActionButton.Danger
                }
                ActionButton {
                    text: "Why?"
                    kind: ActionButton.Plain
                }
                ActionButton {
                    text: "Not now"
                    enabled: false
                }
            }

            ChoiceBar {
                name: "Units"
                choices: ["Feet and inches", "Millimetres", "Both"]
                currentIndex: 1
                Layout.fillWidth: true
            }

            RowLayout {
                spacing: Theme.space

                LabelledField {
                    label: "Length of E3"
                    text: "12' 6 3/8"
                    reading: "12' 6-3/8\" (3820 mm)"
                    Layout.fillWidth: true
                    Layout.alignment: Qt.AlignTop
                }
                LabelledField {
                    label: "Fascia height"
                    text: "1 1/4 7"
                    error: "Two readings: 1-1/4\" and 7\", or 1' 1/47\". Which?"
                    unit: "in"
                    Layout.fillWidth: true
                }
            }

            SearchField {
                hint: "Mark, house or customer"
                Layout.fillWidth: true
            }

            RowLayout {
                spacing: Theme.space

                NumberStepper {
                    name: "Pieces"
                    value: 8
                    Layout.fillWidth: true
                }
                Picker {
                    name: "Machine"
                    model: ["Long folder 4 m", "Up-and-down folder"]
                    Layout.fillWidth: true
                }
            }

            SwitchRow {
                text: "Left-handed"
                detail: "Keypad and actions on the left"
                checked: true
                Layout.fillWidth: true
            }
            TickRow {
                text: "Strip 4: 8 3/16\" × 3 pieces"
                detail: "Larkfield, E1.1 to E1.3"
                checked: true
                Layout.fillWidth: true
            }
            ProgressStrip {
                text: "Planning 34 sheets"
                detail: "proven least 33, 12 s"
                progress: 0.62
                Layout.fillWidth: true
            }
            MessageBar {
                text: "Corner 4 removed"
                undoable: true
                Layout.fillWidth: true
            }
            Item {
                Layout.fillHeight: true
            }
        }

        ColumnLayout {
            spacing: Theme.gap
            Layout.margins: Theme.space
            Layout.preferredWidth: 460
            Layout.fillHeight: true

            SectionHeader {
                text: "Orders"
                detail: "3 of 41"
                Layout.fillWidth: true
            }

            Column {
                Layout.fillWidth: true

                ListRow {
                    width: parent.width
                    title: "Larkfield, house"
                    detail: "H. Aldous, revision 2"
                    trailing: "Thu 3 Dec"
                    trailingDetail: "41 pieces"
                    sign: "orders"
                }
                ListRow {
                    width: parent.width
                    title: "Hollin barn"
                    detail: "Galvanised steel, 26 ga, slate blue"
                    trailing: "Fri 4 Dec"
                    swatch: "#4a6a80"
                    highlighted: true
                }
                FindingRow {
                    width: parent.width
                    weight: FindingRow.Blocks
                    place: "E3"
                    text: "The rake drip edge is missing at the upper end."
                    clause: "IRC R905.2.8.5, 2018"
                }
                FindingRow {
                    width: parent.width
                    weight: FindingRow.Warns
                    place: "Chain Eave"
                    text: "Does not close by 2-1/4\"; run E4 at 15' 9-3/4\" would explain it."
                }
                FindingRow {
                    width: parent.width
                    weight: FindingRow.Informs
                    text: "The local code and a licensed professional decide."
                }
            }

            PictureView {
                picture: gallery.shown
                Layout.fillWidth: true
                Layout.preferredHeight: 300
            }

            EmptyState {
                sign: "receipts"
                title: "Nothing has come back"
                text: "Receipts from the trucks appear here."
                actionText: "Read a file"
                Layout.fillWidth: true
                Layout.fillHeight: true
            }
        }
    }

    Component.onCompleted: focused.forceActiveFocus(Qt.TabFocusReason)
}
