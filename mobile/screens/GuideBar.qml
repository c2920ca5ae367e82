import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel
import "parts.js" as Parts

// The two-minute guide through the sample house: says what is here and what to try, and goes on when it was tried.
Plate {
    id: guide

    required property FieldApp app
    required property string place
    property int step: 0
    property bool running: false
    readonly property var steps: [
        {place: "house", text: qsTr("An L-shaped eave line, walked with the building on the left. Tap a run in the plan to see it."), done: app.editor.run >= 0},
        {place: "house", text: qsTr("The keypad has feet, inches and every eighth. Close the run with the cross; the bar under the plan says whether the chain closes."), done: app.editor.run < 0},
        {place: "trim", text: qsTr("Under Trim each kind of run gets its profile. The valley has none yet: choose the usual trim for it."), done: app.trim.bare === 0},
        {place: "check", text: qsTr("Check lists what cannot be right, and what to look at. A warning may stand, with your reason."), done: false},
        {place: "order", text: qsTr("The order: every piece with its mark. Tap one to see why it is as it is; then send it as one file."), done: false}
    ]

    signal wanted(string place)

    function go(to: int) {
        if (to >= steps.length) {
            running = false;
            return;
        }
        step = to;
        wanted(steps[to].place);
    }

    visible: running && Parts.has(["house", "trim", "check", "order"], place)
    implicitWidth: 480
    implicitHeight: Math.max(Theme.touchTarget, row.implicitHeight + 2 * Theme.gap)
    notch: Theme.notch
    colour: Theme.rail

    Accessible.role: Accessible.Note
    Accessible.name: qsTr("Guide, step %1 of %2: %3").arg(step + 1).arg(steps.length).arg(steps[step].text)

    Connections {
        target: guide.app

        function onSampleOpened() {
            guide.running = true;
            guide.go(0);
        }
    }

    RowLayout {
        id: row

        anchors.fill: parent
        anchors.leftMargin: Theme.space
        anchors.rightMargin: Theme.space
        spacing: Theme.space
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        Words {
            text: qsTr("%1 of %2").arg(guide.step + 1).arg(guide.steps.length)
            color: Theme.onRail
            font.bold: true
        }

        Words {
            text: guide.steps[guide.step].text
            color: Theme.onRail
            Layout.fillWidth: true
        }

        ActionButton {
            text: guide.step + 1 < guide.steps.length ? qsTr("Next") : qsTr("Done")
            sign: guide.steps[guide.step].done ? "done" : "forward"
            onClicked: guide.go(guide.step + 1)
        }

        IconButton {
            sign: "close"
            text: qsTr("Leave the guide")
            inkColour: Theme.onRail
            onClicked: guide.go(guide.steps.length)
        }
    }
}
