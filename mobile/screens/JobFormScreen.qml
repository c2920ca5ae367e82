import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel

// The head of a job. Each field is kept as it is left: there is nothing to save.
Flickable {
    id: screen

    required property FieldApp app
    property bool portrait: false
    readonly property JobForm form: app.form

    signal wanted(string place)

    contentHeight: grid.implicitHeight + 2 * Theme.space
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    T.ScrollBar.vertical: ScrollMark {}

    GridLayout {
        id: grid

        x: Theme.space
        y: Theme.space
        width: Math.min(screen.width - 2 * Theme.space, 1100)
        columns: screen.portrait ? 1 : 2
        columnSpacing: Theme.wide
        rowSpacing: Theme.gap

        SectionHeader {
            text: qsTr("Whose house")
            Layout.fillWidth: true
            Layout.columnSpan: grid.columns
        }

        LabelledField {
            label: qsTr("Name of the job")
            text: screen.form.name
            keepsLine: false
            Layout.fillWidth: true
            onLeftField: screen.form.name = text
            onAccepted: screen.form.name = text
        }

        LabelledField {
            label: qsTr("Customer")
            text: screen.form.customer
            keepsLine: false
            Layout.fillWidth: true
            onLeftField: screen.form.customer = text
            onAccepted: screen.form.customer = text
        }

        LabelledField {
            label: qsTr("Place")
            text: screen.form.address
            keepsLine: false
            Layout.fillWidth: true
            onLeftField: screen.form.address = text
            onAccepted: screen.form.address = text
        }

        LabelledField {
            label: qsTr("Wanted by")
            placeholder: qsTr("year-month-day")
            text: screen.form.wantedBy
            keepsLine: false
            inputMethodHints: Qt.ImhDate
            Layout.fillWidth: true
            onLeftField: screen.form.wantedBy = text
            onAccepted: screen.form.wantedBy = text
        }

        LabelledField {
            label: qsTr("Measured by")
            text: screen.form.measuredBy
            keepsLine: false
            Layout.fillWidth: true
            onLeftField: screen.form.measuredBy = text
            onAccepted: screen.form.measuredBy = text
        }

        SectionHeader {
            text: qsTr("Metal")
            detail: qsTr("a gauge has no thickness without its metal")
            Layout.fillWidth: true
            Layout.columnSpan: grid.columns
        }

        ColumnLayout {
            spacing: Theme.tight
            Layout.fillWidth: true

            Words {
                text: qsTr("Metal")
                level: Words.Small
                muted: true
            }

            Picker {
                name: qsTr("Metal")
                model: screen.form.metals
                currentIndex: screen.form.metal
                Layout.fillWidth: true
                onActivated: index => screen.form.metal = index
            }
        }

        ColumnLayout {
            spacing: Theme.tight
            Layout.fillWidth: true

            Words {
                text: qsTr("Gauge or thickness")
                level: Words.Small
                muted: true
            }

            Picker {
                name: qsTr("Gauge or thickness")
                model: screen.form.gauges
                currentIndex: screen.form.gauge
                Layout.fillWidth: true
                onActivated: index => screen.form.gauge = index
            }
        }

        ColumnLayout {
            spacing: Theme.tight
            Layout.fillWidth: true

            Words {
                text: qsTr("Colour")
                level: Words.Small
                muted: true
            }

            Picker {
                name: qsTr("Colour")
                model: screen.form.colours
                currentIndex: screen.form.colourIndex
                displayText: currentIndex < 0 ? qsTr("Choose") : currentText
                Layout.fillWidth: true
                onActivated: index => screen.form.colour = screen.form.colours[index]
            }
        }

        LabelledField {
            label: qsTr("or the name on the coil")
            text: screen.form.colour
            keepsLine: false
            Layout.fillWidth: true
            onLeftField: screen.form.colour = text
            onAccepted: screen.form.colour = text
        }

        SectionHeader {
            text: qsTr("What limits a piece")
            Layout.fillWidth: true
            Layout.columnSpan: grid.columns
        }

        LabelledField {
            label: qsTr("Longest piece the shop folds")
            text: screen.form.foldingLength
            keepsLine: false
            Layout.fillWidth: true
            onLeftField: screen.form.foldingLength = text
            onAccepted: screen.form.foldingLength = text
        }

        LabelledField {
            label: qsTr("Longest piece for the truck")
            placeholder: qsTr("no limit")
            text: screen.form.transportLength
            keepsLine: false
            Layout.fillWidth: true
            onLeftField: screen.form.transportLength = text
            onAccepted: screen.form.transportLength = text
        }

        LabelledField {
            label: qsTr("Stock length")
            placeholder: qsTr("none")
            text: screen.form.stockLength
            keepsLine: false
            Layout.fillWidth: true
            onLeftField: screen.form.stockLength = text
            onAccepted: screen.form.stockLength = text
        }

        LabelledField {
            label: qsTr("Shortest piece")
            text: screen.form.shortestPiece
            keepsLine: false
            Layout.fillWidth: true
            onLeftField: screen.form.shortestPiece = text
            onAccepted: screen.form.shortestPiece = text
        }

        LabelledField {
            label: qsTr("Wind pressure at the house, lb/sq ft")
            placeholder: qsTr("not known")
            text: screen.form.windPressure
            keepsLine: false
            inputMethodHints: Qt.ImhDigitsOnly
            Layout.fillWidth: true
            onLeftField: screen.form.windPressure = text
            onAccepted: screen.form.windPressure = text
        }

        SectionHeader {
            text: qsTr("Rules to hold to")
            detail: qsTr("the local code and a licensed professional decide")
            Layout.fillWidth: true
            Layout.columnSpan: grid.columns
        }

        Repeater {
            model: screen.form.ruleSets

            TickRow {
                required property string key
                required property string words
                required property bool chosen

                text: words
                checked: chosen
                Layout.fillWidth: true
                onToggled: screen.form.toggleRuleSet(key)
            }
        }

        ActionButton {
            text: qsTr("Measure the house")
            sign: "forward"
            kind: ActionButton.Primary
            Layout.topMargin: Theme.space
            Layout.bottomMargin: Theme.wide
            Layout.columnSpan: grid.columns
            Layout.alignment: Theme.leftHanded ? Qt.AlignLeft : Qt.AlignRight
            onClicked: screen.wanted("house")
        }
    }
}
