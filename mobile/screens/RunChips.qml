import QtQuick
import Lapwright.Look
import Lapwright.FieldModel
import "parts.js" as Parts

// What the run in hand needs, each a tap away.
Flickable {
    id: strip

    required property JobEditor editor
    /// Which of them is being changed.
    required property string field
    readonly property RunEntry entry: editor.entry
    readonly property bool editing: editor.run >= 0

    signal chosen(string field)
    signal photosWanted

    implicitHeight: chips.implicitHeight
    contentWidth: chips.implicitWidth
    flickableDirection: Flickable.HorizontalFlick
    boundsBehavior: Flickable.StopAtBounds
    clip: true

    Row {
        id: chips

        spacing: Theme.tight

        FieldChip {
            label: qsTr("Length")
            value: strip.entry.length.text
            reading: strip.entry.length.reading
            current: strip.field === "length"
            onClicked: strip.chosen("length")
        }

        FieldChip {
            visible: strip.entry.asksForLevelRun
            label: qsTr("Level run")
            value: strip.entry.levelRun.text
            reading: strip.entry.levelRun.reading
            current: strip.field === "levelRun"
            onClicked: strip.chosen("levelRun")
        }

        FieldChip {
            label: qsTr("Kind")
            value: strip.entry.kindWords
            current: strip.field === "kind"
            onClicked: strip.chosen("kind")
        }

        FieldChip {
            visible: strip.entry.asksForSlope
            label: qsTr("Slope")
            value: strip.entry.slope.text
            reading: strip.entry.slope.reading
            current: strip.field === "slope"
            onClicked: strip.chosen("slope")
        }

        FieldChip {
            visible: strip.entry.asksForOtherSlope
            label: qsTr("Other slope")
            value: strip.entry.otherSlope.text
            reading: strip.entry.otherSlope.reading
            current: strip.field === "otherSlope"
            onClicked: strip.chosen("otherSlope")
        }

        FieldChip {
            visible: strip.entry.asksForPlanCorner
            label: qsTr("Plan corner")
            value: strip.entry.planCorner.empty ? qsTr("square") : strip.entry.planCorner.text
            current: strip.field === "planCorner"
            onClicked: strip.chosen("planCorner")
        }

        FieldChip {
            visible: strip.entry.asksForExposure
            label: qsTr("Exposure")
            value: strip.entry.exposure.text
            reading: strip.entry.exposure.reading
            current: strip.field === "exposure"
            onClicked: strip.chosen("exposure")
        }

        FieldChip {
            visible: strip.entry.hasCorner
            label: qsTr("Corner before it")
            value: strip.entry.cornerWords
            current: Parts.has(["corner", "angle", "sideBefore", "sideAfter", "diagonal"], strip.field)
            onClicked: strip.chosen("corner")
        }

        FieldChip {
            visible: strip.editing
            label: qsTr("Photos")
            value: strip.editor.photos > 0 ? String(strip.editor.photos) : qsTr("none")
            onClicked: strip.photosWanted()
        }

        FieldChip {
            visible: strip.editing
            label: qsTr("Ends, note")
            value: strip.entry.note !== "" ? strip.entry.note : qsTr("ends")
            current: strip.field === "ends"
            onClicked: strip.chosen("ends")
        }
    }
}
