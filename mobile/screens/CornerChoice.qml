import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel

// How the run meets the one before it. Square corners are one tap; others are measured.
ColumnLayout {
    id: sheet

    required property RunEntry entry

    signal chosen(string next)

    function take(corner: int, next: string) {
        entry.corner = corner;
        chosen(next);
    }

    spacing: Theme.gap

    GridLayout {
        columns: 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        ActionButton {
            text: qsTr("Square, outside")
            sign: "corner"
            implicitHeight: Theme.keypadKey
            Layout.fillWidth: true
            onClicked: sheet.take(RunEntry.SquareOutside, "length")
        }

        ActionButton {
            text: qsTr("Square, inside")
            sign: "plan"
            implicitHeight: Theme.keypadKey
            Layout.fillWidth: true
            onClicked: sheet.take(RunEntry.SquareInside, "length")
        }

        ActionButton {
            text: qsTr("Straight on")
            sign: "forward"
            implicitHeight: Theme.keypadKey
            Layout.fillWidth: true
            onClicked: sheet.take(RunEntry.Straight, "length")
        }

        ActionButton {
            text: qsTr("Another angle")
            sign: "measure"
            implicitHeight: Theme.keypadKey
            Layout.fillWidth: true
            onClicked: sheet.take(RunEntry.Angle, "angle")
        }

        ActionButton {
            text: qsTr("Two sides and a diagonal")
            sign: "measure"
            implicitHeight: Theme.keypadKey
            Layout.fillWidth: true
            Layout.columnSpan: 2
            onClicked: sheet.take(RunEntry.Taped, "sideBefore")
        }
    }

    SwitchRow {
        visible: sheet.entry.corner === RunEntry.Taped
        text: qsTr("Inside corner")
        detail: qsTr("the building takes the rest of the full turn")
        checked: sheet.entry.tapedInside
        Layout.fillWidth: true
        onToggled: sheet.entry.tapedInside = checked
    }

    Words {
        text: qsTr("The angle is on the building's side: under 180° at an outside corner, over 180° at an inside one. With the tape: mark a length along each side from the corner, and measure between the marks.")
        muted: true
        level: Words.Small
        Layout.fillWidth: true
    }

    Item {
        Layout.fillHeight: true
    }
}
