import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property Preferences preferences: shop.preferences

    title: qsTr("Settings")
    detail: qsTr("Of this station; kept as you choose")

    Flickable {
        contentHeight: column.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        T.ScrollBar.vertical: ScrollMark {}
        Layout.fillWidth: true
        Layout.fillHeight: true

        ColumnLayout {
            id: column

            width: Math.min(parent.width - Theme.space, 760)
            spacing: Theme.gap

            SectionHeader {
                text: qsTr("Who and where")
                Layout.fillWidth: true
            }

            RowLayout {
                spacing: Theme.space
                Layout.fillWidth: true

                LabelledField {
                    label: qsTr("Station")
                    text: screen.preferences.station
                    keepsLine: false
                    Layout.fillWidth: true
                    onLeftField: screen.preferences.station = text
                    onAccepted: screen.preferences.station = text
                }

                LabelledField {
                    label: qsTr("Your name")
                    text: screen.preferences.person
                    keepsLine: false
                    Layout.fillWidth: true
                    onLeftField: screen.preferences.person = text
                    onAccepted: screen.preferences.person = text
                }
            }

            ChoiceBar {
                name: qsTr("What you may do")
                choices: [qsTr("Look"), qsTr("Make and load"), qsTr("Plan everything")]
                currentIndex: screen.preferences.duty
                Layout.fillWidth: true
                onChosen: index => screen.preferences.duty = index
            }

            SectionHeader {
                text: qsTr("Screen")
                Layout.fillWidth: true
                Layout.topMargin: Theme.space
            }

            ChoiceBar {
                name: qsTr("Theme")
                choices: [qsTr("Light"), qsTr("Dark"), qsTr("Sunlight"), qsTr("Shop floor")]
                currentIndex: screen.preferences.scheme
                Layout.fillWidth: true
                onChosen: index => screen.preferences.scheme = index
            }

            RowLayout {
                spacing: Theme.space
                Layout.fillWidth: true

                Words {
                    text: qsTr("Size of text, percent")
                    Layout.fillWidth: true
                }

                NumberStepper {
                    name: qsTr("Size of text, percent")
                    value: screen.preferences.textPercent
                    from: 80
                    to: 200
                    by: 10
                    onChangedByPerson: value => screen.preferences.textPercent = value
                }
            }

            SwitchRow {
                text: qsTr("Touch screen")
                detail: qsTr("Tall controls for fingers and gloves")
                checked: screen.preferences.touch
                Layout.fillWidth: true
                onToggled: screen.preferences.touch = checked
            }

            SwitchRow {
                text: qsTr("Left-handed")
                detail: qsTr("Actions and panels on the other side")
                checked: screen.preferences.leftHanded
                Layout.fillWidth: true
                onToggled: screen.preferences.leftHanded = checked
            }

            SwitchRow {
                text: qsTr("Millimetres")
                detail: qsTr("Instead of feet, inches and fractions")
                checked: screen.preferences.millimetres
                Layout.fillWidth: true
                onToggled: screen.preferences.millimetres = checked
            }

            SectionHeader {
                text: qsTr("Work")
                Layout.fillWidth: true
                Layout.topMargin: Theme.space
            }

            LabelledField {
                label: qsTr("Folder to watch for orders")
                placeholder: qsTr("None")
                text: screen.preferences.watchedFolder
                reading: screen.shop.mayPlan ? qsTr("Order files put there are taken in by themselves.") : qsTr("Nothing is taken in from there: that is for who may plan.")
                Layout.fillWidth: true
                onLeftField: screen.preferences.watchedFolder = text
                onAccepted: screen.preferences.watchedFolder = text
            }

            RowLayout {
                spacing: Theme.space
                Layout.fillWidth: true

                Words {
                    text: qsTr("Seconds to look for a better cut plan, for each metal")
                    Layout.fillWidth: true
                }

                NumberStepper {
                    name: qsTr("Seconds to look for a better cut plan")
                    value: screen.preferences.planSeconds
                    to: 600
                    by: 5
                    onChangedByPerson: value => screen.preferences.planSeconds = value
                }
            }

            Words {
                text: qsTr("Database: %1").arg(screen.shop.databasePath)
                level: Words.Small
                muted: true
                Layout.fillWidth: true
                Layout.topMargin: Theme.space
            }
        }
    }
}
