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

    FilePicker {
        id: copy

        title: qsTr("Where to copy everything to")
        saves: true
        ending: "db"
        onPicked: files => screen.shop.backUp(files[0])
    }

    FilePicker {
        id: kept

        title: qsTr("The copy to restore")
        ending: "db"
        onPicked: files => screen.shop.restore(files[0])
    }

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

            Words {
                text: qsTr("What may be done at this station")
                level: Words.Small
                muted: true
                Layout.fillWidth: true
            }

            ChoiceBar {
                name: qsTr("What may be done at this station")
                choices: [qsTr("Look"), qsTr("Make and load"), qsTr("Plan everything")]
                currentIndex: screen.preferences.duty
                Layout.fillWidth: true
                onChosen: index => screen.preferences.duty = index
            }

            Words {
                text: qsTr("Language")
                level: Words.Small
                muted: true
                Layout.fillWidth: true
            }

            Picker {
                name: qsTr("Language")
                model: screen.preferences.languageNames
                currentIndex: screen.preferences.languageIndex
                Layout.fillWidth: true
                onActivated: index => screen.preferences.languageIndex = index
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

            SectionHeader {
                text: qsTr("This shop's code")
                Layout.fillWidth: true
                Layout.topMargin: Theme.space
            }

            RowLayout {
                spacing: Theme.space
                Layout.fillWidth: true

                ColumnLayout {
                    spacing: Theme.gap
                    Layout.fillWidth: true

                    Words {
                        text: screen.shop.code.code
                        level: Words.Display
                        Layout.fillWidth: true
                    }

                    Words {
                        text: qsTr("Who counts a load compares this once with the code on the tablet; from then on the tablet questions load lists that this shop did not sign.")
                        level: Words.Small
                        muted: true
                        Layout.fillWidth: true
                    }
                }

                PictureCanvas {
                    picture: screen.shop.code.picture
                    Accessible.role: Accessible.Graphic
                    Accessible.name: picture.title
                    Layout.preferredWidth: 180
                    Layout.preferredHeight: Layout.preferredWidth
                    Layout.alignment: Qt.AlignTop
                }
            }

            SectionHeader {
                text: qsTr("Paper")
                Layout.fillWidth: true
                Layout.topMargin: Theme.space
            }

            ChoiceBar {
                name: qsTr("Labels")
                choices: [qsTr("Sheets of labels"), qsTr("Roll 100 × 50 mm"), qsTr("Roll 4 × 2 in")]
                currentIndex: screen.preferences.labelStock
                Layout.fillWidth: true
                onChosen: index => screen.preferences.labelStock = index
            }

            SwitchRow {
                text: qsTr("Angles between the legs")
                detail: qsTr("On quality sheets, instead of how far a bend turns from flat")
                checked: screen.preferences.includedAngles
                Layout.fillWidth: true
                onToggled: screen.preferences.includedAngles = checked
            }

            SwitchRow {
                text: qsTr("Cost on confirmations")
                detail: qsTr("At the shop's rates, which stand under Reference")
                checked: screen.preferences.costOnConfirmations
                Layout.fillWidth: true
                onToggled: screen.preferences.costOnConfirmations = checked
            }

            SectionHeader {
                text: qsTr("Backup")
                Layout.fillWidth: true
                Layout.topMargin: Theme.space
            }

            RowLayout {
                spacing: Theme.gap
                Layout.fillWidth: true

                ActionButton {
                    text: qsTr("Copy everything to a file")
                    sign: "send"
                    onClicked: copy.open()
                }

                DutyButton {
                    text: qsTr("Restore from a copy")
                    sign: "undo"
                    kind: ActionButton.Danger
                    whyNot: screen.shop.whyNotPlan
                    onAct: kept.open()
                }
            }

            Words {
                text: qsTr("Restoring puts the copy in place of everything, at every station; what stood here before is written beside the copy first.")
                level: Words.Small
                muted: true
                Layout.fillWidth: true
            }

            Words {
                text: qsTr("Database: %1").arg(screen.shop.databasePath)
                level: Words.Small
                muted: true
                Layout.fillWidth: true
                Layout.topMargin: Theme.space
            }

            AboutPart {
                Layout.fillWidth: true
                Layout.topMargin: Theme.space
            }
        }
    }
}
