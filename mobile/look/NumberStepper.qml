import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

// A count, one more or one less; up and down keys do the same. It shows the `value` it is given and says what a person
// wants instead: whoever owns the value changes it.
T.Control {
    id: stepper

    property string name: ""
    property int value: 0
    property int from: 0
    property int to: 9999
    property int by: 1

    signal changedByPerson(int value)

    function step(steps) {
        const next = Math.max(from, Math.min(to, value + steps * by));
        if (next === value)
            return;
        changedByPerson(next);
    }

    /// A field that is being typed in is left first: the count may change what it shows.
    function tap(steps) {
        forceActiveFocus(Qt.MouseFocusReason);
        step(steps);
    }

    implicitWidth: row.implicitWidth
    implicitHeight: Theme.target
    activeFocusOnTab: true

    Accessible.role: Accessible.SpinBox
    Accessible.name: name
    Accessible.onIncreaseAction: step(1)
    Accessible.onDecreaseAction: step(-1)

    Keys.onUpPressed: step(1)
    Keys.onDownPressed: step(-1)

    RowLayout {
        id: row

        anchors.fill: parent
        spacing: 0

        ActionButton {
            text: "\u2212"
            enabled: stepper.value > stepper.from
            autoRepeat: true
            square: true
            leftPadding: 0
            rightPadding: 0
            focusPolicy: Qt.NoFocus
            font.pixelSize: Theme.headingText
            Accessible.name: qsTr("One less")
            Layout.fillHeight: true
            Layout.preferredWidth: Theme.target
            onClicked: stepper.tap(-1)
        }

        Rectangle {
            color: Theme.well
            border.color: Theme.edge
            border.width: Theme.outline
            Layout.fillHeight: true
            Layout.fillWidth: true
            Layout.minimumWidth: Math.max(Theme.target, count.implicitWidth + 2 * Theme.gap)

            Words {
                id: count

                anchors.centerIn: parent
                text: stepper.value
                level: Words.Heading
            }
        }

        ActionButton {
            text: "+"
            enabled: stepper.value < stepper.to
            autoRepeat: true
            square: true
            leftPadding: 0
            rightPadding: 0
            focusPolicy: Qt.NoFocus
            font.pixelSize: Theme.headingText
            Accessible.name: qsTr("One more")
            Layout.fillHeight: true
            Layout.preferredWidth: Theme.target
            onClicked: stepper.tap(1)
        }
    }

    FocusRing {
        visible: stepper.visualFocus
    }
}
