import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel
import "parts.js" as Parts

// The run in hand, or the next one: its length on the keypad, and what else it needs a tap away. What is set stays
// for the next run.
FocusScope {
    id: panel

    required property JobEditor editor
    property bool portrait: false
    property string field: "length"
    /// Somebody wanted to keep a run that is not ready: say what is missing.
    property bool asked: false
    readonly property int shownRun: editor.run
    /// On a 7 inch tablet everything but the keys is smaller.
    readonly property bool compact: height < (portrait ? 640 : 600)
    readonly property RunEntry entry: editor.entry
    readonly property bool editing: editor.run >= 0
    property MeasureEntry measure: measureOf(field)

    signal photosWanted

    function measureOf(name: string): MeasureEntry {
        switch (name) {
        case "slope":
            return entry.slope;
        case "otherSlope":
            return entry.otherSlope;
        case "levelRun":
            return entry.levelRun;
        case "planCorner":
            return entry.planCorner;
        case "exposure":
            return entry.exposure;
        case "angle":
            return entry.angle;
        case "sideBefore":
            return entry.sideBefore;
        case "sideAfter":
            return entry.sideAfter;
        case "diagonal":
            return entry.diagonal;
        }
        return entry.length;
    }

    function keep() {
        asked = !entry.ready;
        if (!asked && editor.keepRun())
            field = "length";
    }

    Keys.enabled: visible
    onVisibleChanged: if (visible) forceActiveFocus()
    // What was tapped to get here takes no more keys: Return keeps the run, and does not press it again.
    onFieldChanged: if (visible) keys.forceActiveFocus()
    onShownRunChanged: {
        field = "length";
        asked = false;
    }
    Accessible.role: Accessible.Pane
    Accessible.name: editing ? qsTr("Run in hand") : qsTr("New run")
    Keys.onReturnPressed: keep()
    Keys.onEnterPressed: keep()
    Keys.onEscapePressed: editor.run = -1
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Backspace)
            measure.back();
        else if (event.text !== "" && event.text >= " " && !(event.modifiers & Qt.ControlModifier))
            measure.type(event.text);
        else
            return;
        event.accepted = true;
    }

    /// Has the focus where nothing in the panel was given it: what is typed goes on to the panel.
    Item {
        id: keys

        focus: true
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap

        RowLayout {
            spacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            visible: panel.editing && !panel.compact || panel.editor.closed && !panel.editing
            Layout.fillWidth: true

            Words {
                text: panel.editing ? qsTr("Run %1").arg(panel.editor.runId) : qsTr("The chain is closed")
                level: Words.Heading
                maximumLineCount: 1
                Layout.fillWidth: true
            }

            ActionButton {
                visible: panel.editing
                text: qsTr("Remove")
                sign: "remove"
                onClicked: panel.editor.removeRun()
            }

            IconButton {
                visible: panel.editing
                sign: "close"
                text: qsTr("Leave the run as it was")
                onClicked: panel.editor.run = -1
            }
        }

        EmptyState {
            visible: panel.editor.closed && !panel.editing
            sign: panel.editor.closure === JobEditor.Off ? "blocks" : panel.editor.closure === JobEditor.Closes ? "done" : "warns"
            title: panel.editor.closure === JobEditor.Off ? qsTr("It does not come back to its start") : qsTr("This chain is done")
            text: panel.editor.closure === JobEditor.Off ? qsTr("Measure again what stands under the plan, or tap a run to change it.")
                : qsTr("Tap a run in the plan to change it, or start another chain with the plus sign.")
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        RowLayout {
            visible: panel.editing || !panel.editor.closed
            spacing: Theme.tight
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            Layout.fillWidth: true

            RunChips {
                editor: panel.editor
                field: panel.field
                Layout.fillWidth: true
                onChosen: to => panel.field = to
                onPhotosWanted: panel.photosWanted()
            }

            IconButton {
                visible: panel.editing && panel.compact
                sign: "scrap"
                text: qsTr("Remove the run")
                onClicked: panel.editor.removeRun()
            }

            IconButton {
                visible: panel.editing && panel.compact
                sign: "close"
                text: qsTr("Leave the run as it was")
                onClicked: panel.editor.run = -1
            }
        }

        KindChoice {
            visible: panel.field === "kind" && (panel.editing || !panel.editor.closed)
            entry: panel.entry
            Layout.fillWidth: true
            Layout.fillHeight: true
            onChosen: panel.field = "length"
        }

        CornerChoice {
            visible: panel.field === "corner"
            entry: panel.entry
            Layout.fillWidth: true
            Layout.fillHeight: true
            onChosen: next => panel.field = next
        }

        EndChoice {
            visible: panel.field === "ends" && panel.editing
            entry: panel.entry
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        RowLayout {
            visible: Parts.has(["sideBefore", "sideAfter", "diagonal"], panel.field)
            spacing: Theme.tight
            Layout.fillWidth: true

            FieldChip {
                label: qsTr("Side before")
                value: panel.entry.sideBefore.text
                current: panel.field === "sideBefore"
                Layout.fillWidth: true
                onClicked: panel.field = "sideBefore"
            }

            FieldChip {
                label: qsTr("Side after")
                value: panel.entry.sideAfter.text
                current: panel.field === "sideAfter"
                Layout.fillWidth: true
                onClicked: panel.field = "sideAfter"
            }

            FieldChip {
                label: qsTr("Diagonal")
                value: panel.entry.diagonal.text
                current: panel.field === "diagonal"
                Layout.fillWidth: true
                onClicked: panel.field = "diagonal"
            }
        }

        MeasurePad {
            visible: !Parts.has(["kind", "corner", "ends"], panel.field) && (panel.editing || !panel.editor.closed)
            entry: panel.measure
            compact: panel.compact
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        Words {
            visible: panel.asked && text !== ""
            text: panel.entry.problem
            color: Theme.blocks
            font.bold: true
            Layout.fillWidth: true
        }

        RowLayout {
            visible: panel.editing && measures.count > 1 && panel.field === "length"
            spacing: Theme.tight
            Layout.fillWidth: true

            Words {
                text: qsTr("%1 apart").arg(panel.editor.spread)
                level: Words.Small
            }

            Repeater {
                id: measures

                model: panel.editor.measures

                ActionButton {
                    required property int index
                    required property string words
                    required property bool chosen

                    text: words
                    sign: chosen ? "done" : ""
                    Accessible.name: chosen ? qsTr("%1 counts").arg(words) : qsTr("Let %1 count").arg(words)
                    onClicked: panel.editor.countMeasure(index)
                }
            }

            Item {
                Layout.fillWidth: true
            }

            IconButton {
                sign: "remove"
                text: qsTr("Forget the measure that counts")
                onClicked: panel.editor.removeMeasure(panel.editor.counting)
            }
        }

        RowLayout {
            visible: panel.editing || !panel.editor.closed
            spacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            Layout.fillWidth: true

            ActionButton {
                visible: panel.editor.canClose && !panel.editing
                text: qsTr("Close the chain")
                sign: "flip"
                onClicked: panel.editor.closeChain()
            }

            ActionButton {
                visible: panel.editing
                text: qsTr("Measured again")
                sign: "measure"
                enabled: panel.entry.length.exact
                onClicked: panel.editor.repeatMeasure()
            }

            ActionButton {
                text: panel.editing ? qsTr("Keep") : qsTr("Add run %1").arg(panel.editor.newRunId)
                sign: panel.editing ? "done" : "add"
                kind: panel.entry.ready ? ActionButton.Primary : ActionButton.Quiet
                implicitHeight: panel.compact ? Theme.touchTarget : Theme.keypadKey
                Accessible.description: panel.entry.problem
                Layout.fillWidth: true
                onClicked: panel.keep()
            }
        }
    }
}
