import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property ReferenceShelf desk: shop.reference

    title: qsTr("Machines, trim, rules")
    detail: qsTr("What the program works with")
    searched: [desk.machines, desk.trims, desk.rules][kind.currentIndex]

    actions: ChoiceBar {
        id: kind

        name: qsTr("What to look up")
        choices: [qsTr("Machines"), qsTr("Trim"), qsTr("Rules")]
        onChosen: index => currentIndex = index
        Layout.preferredWidth: 330
    }

    StackLayout {
        currentIndex: kind.currentIndex
        Layout.fillWidth: true
        Layout.fillHeight: true

        RowLayout {
            spacing: Theme.space

            RowsList {
                name: qsTr("Machines")
                model: screen.desk.machines
                current: screen.desk.currentMachine
                onChosen: id => screen.desk.currentMachine = id
                Layout.preferredWidth: 360
                Layout.maximumWidth: 420
                Layout.fillHeight: true
            }

            PictureView {
                picture: screen.desk.machine
                Layout.fillWidth: true
                Layout.fillHeight: true
            }
        }

        RowLayout {
            spacing: Theme.space

            RowsList {
                name: qsTr("Trim")
                model: screen.desk.trims
                current: screen.desk.currentTrim
                onChosen: id => screen.desk.currentTrim = id
                Layout.preferredWidth: 360
                Layout.maximumWidth: 420
                Layout.fillHeight: true
            }

            ColumnLayout {
                spacing: Theme.gap
                Layout.fillWidth: true
                Layout.fillHeight: true

                PictureView {
                    picture: screen.desk.trim
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                }

                Words {
                    text: qsTr("An example: 6 in 12, square corners, measures without a usual value a quarter up their range.")
                    level: Words.Small
                    muted: true
                    Layout.fillWidth: true
                }

                Words {
                    text: screen.desk.trimNote
                    Layout.fillWidth: true
                }
            }
        }

        FindingsList {
            name: qsTr("Rules")
            model: screen.desk.rules
        }
    }
}
