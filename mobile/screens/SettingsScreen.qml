import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.Model

// What a person sets once for this tablet.
Flickable {
    id: screen

    required property FieldApp app
    readonly property Settings settings: app.settings

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
            currentIndex: [8, 16, 32, 64].indexOf(screen.settings.fraction)
            Layout.fillWidth: true
            onChosen: index => screen.settings.fraction = [8, 16, 32, 64][index]
        }

        SectionHeader {
            text: qsTr("How it looks")
            Layout.fillWidth: true
        }

        ChoiceBar {
            name: qsTr("Light")
            choices: [qsTr("Sunlight"), qsTr("Light"), qsTr("Dark")]
            currentIndex: Math.max(0, ["sunlight", "light", "dark"].indexOf(screen.settings.theme))
            Layout.fillWidth: true
            onChosen: index => screen.settings.theme = ["sunlight", "light", "dark"][index]
        }

        ChoiceBar {
            name: qsTr("Size of text")
            choices: [qsTr("Small"), qsTr("Usual"), qsTr("Large"), qsTr("Very large")]
            currentIndex: Math.max(0, [0.9, 1.0, 1.2, 1.4].indexOf(screen.settings.textScale))
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
    }
}
