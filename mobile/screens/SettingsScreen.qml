import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel
import "parts.js" as Parts

// What a person sets once for this tablet, and the safekeeping of everything on it.
Item {
    id: screen

    required property FieldApp app
    property string browsing: ""
    property string told: ""
    readonly property Settings settings: app.settings

    FileBrowser {
        anchors.fill: parent
        z: 1
        visible: screen.browsing !== ""
        title: screen.browsing === "write" ? qsTr("Where the backup goes") : qsTr("Which backup to restore")
        folder: screen.settings.folder
        endings: [".db"]
        forFolder: screen.browsing === "write"
        fileName: qsTr("the backup")
        onClosed: screen.browsing = ""
        onChosen: path => {
            const writes = screen.browsing === "write";
            screen.browsing = "";
            if (writes) {
                const written = screen.app.backUp(path);
                screen.told = written !== "" ? qsTr("Backed up: %1").arg(written) : "";
            } else {
                const before = screen.app.restore(path);
                screen.told = before !== "" ? qsTr("Restored. What was here before: %1").arg(before) : "";
            }
        }
    }

    Flickable {
        anchors.fill: parent
        contentHeight: column.implicitHeight + 2 * Theme.space
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        T.ScrollBar.vertical: ScrollMark {}

        ColumnLayout {
            id: column

            x: Theme.space
            y: Theme.space
            width: Math.min(screen.width - 2 * Theme.space, 760)
            spacing: Theme.gap

            SectionHeader {
                text: qsTr("Who measures")
                Layout.fillWidth: true
            }

            LabelledField {
                label: qsTr("Name, as it stands in orders and receipts")
                text: screen.settings.person
                keepsLine: false
                Layout.fillWidth: true
                onLeftField: screen.settings.person = text
                onAccepted: screen.settings.person = text
            }

            LabelledField {
                label: qsTr("This tablet's code, to read to the shop once")
                text: screen.settings.pairingCode
                readOnly: true
                keepsLine: false
                Layout.fillWidth: true
            }

            Repeater {
                model: screen.settings.trustedShops

                RowLayout {
                    id: shop

                    required property string modelData

                    spacing: Theme.gap
                    Layout.fillWidth: true

                    Words {
                        text: qsTr("Load lists of the shop %1 are trusted.").arg(shop.modelData)
                        Layout.fillWidth: true
                    }

                    ActionButton {
                        text: qsTr("Trust no longer")
                        onClicked: screen.settings.refuseShop(shop.modelData)
                    }
                }
            }

            SectionHeader {
                text: qsTr("Units")
                Layout.fillWidth: true
            }

            ChoiceBar {
                name: qsTr("Units")
                choices: [qsTr("Feet and inches"), qsTr("Millimetres")]
                currentIndex: screen.settings.metric ? 1 : 0
                Layout.fillWidth: true
                onChosen: index => screen.settings.metric = index === 1
            }

            ChoiceBar {
                visible: !screen.settings.metric
                name: qsTr("Smallest fraction shown")
                choices: ["1/8", "1/16", "1/32", "1/64"]
                currentIndex: Parts.place([8, 16, 32, 64], screen.settings.fraction)
                Layout.fillWidth: true
                onChosen: index => screen.settings.fraction = [8, 16, 32, 64][index]
            }

            SectionHeader {
                text: qsTr("Language")
                Layout.fillWidth: true
            }

            Picker {
                name: qsTr("Language")
                model: screen.settings.languageNames
                currentIndex: Parts.place(screen.settings.languages, screen.settings.language)
                Layout.fillWidth: true
                onActivated: index => screen.settings.language = screen.settings.languages[index]
            }

            SectionHeader {
                text: qsTr("How it looks")
                Layout.fillWidth: true
            }

            ChoiceBar {
                name: qsTr("Light")
                choices: [qsTr("Sunlight"), qsTr("Light"), qsTr("Dark")]
                currentIndex: Parts.place(["sunlight", "light", "dark"], screen.settings.theme)
                Layout.fillWidth: true
                onChosen: index => screen.settings.theme = ["sunlight", "light", "dark"][index]
            }

            ChoiceBar {
                name: qsTr("Size of text")
                choices: [qsTr("Small"), qsTr("Usual"), qsTr("Large"), qsTr("Very large")]
                currentIndex: Parts.place([0.9, 1.0, 1.2, 1.4], screen.settings.textScale)
                Layout.fillWidth: true
                onChosen: index => screen.settings.textScale = [0.9, 1.0, 1.2, 1.4][index]
            }

            ChoiceBar {
                name: qsTr("Hand that holds the stylus")
                choices: [qsTr("Right-handed"), qsTr("Left-handed")]
                currentIndex: screen.settings.leftHanded ? 1 : 0
                Layout.fillWidth: true
                onChosen: index => screen.settings.leftHanded = index === 1
            }

            SectionHeader {
                text: qsTr("Safekeeping")
                detail: qsTr("everything on this tablet in one file")
                Layout.fillWidth: true
            }

            RowLayout {
                spacing: Theme.gap
                Layout.fillWidth: true

                ActionButton {
                    text: qsTr("Back up")
                    sign: "stock"
                    Layout.fillWidth: true
                    onClicked: screen.browsing = "write"
                }

                ActionButton {
                    text: qsTr("Restore a backup")
                    sign: "undo"
                    Layout.fillWidth: true
                    onClicked: screen.browsing = "read"
                }
            }

            Words {
                visible: screen.told !== ""
                text: screen.told
                wrapMode: Text.WrapAnywhere
                Layout.fillWidth: true
            }

            AboutPart {
                Layout.fillWidth: true
            }
        }
    }
}
