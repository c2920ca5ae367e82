// Guards: what every screen relies on: sizes for gloves, names for screen readers, the keyboard, and that each
// control says what was done with it.
import QtQuick
import QtQuick.Layouts
import QtTest
import Lapwright.Look

Item {
    id: stage

    width: 900
    height: 700

    Component {
        id: button
        ActionButton {
            text: "Accept"
        }
    }
    Component {
        id: choices
        ChoiceBar {
            name: "Units"
            choices: ["One", "Two", "Three"]
            onChosen: index => currentIndex = index
        }
    }
    Component {
        id: field
        LabelledField {
            label: "Length"
        }
    }
    Component {
        id: stepper
        NumberStepper {
            name: "Pieces"
            value: 1
            from: 0
            to: 2
            onChangedByPerson: value => this.value = value
        }
    }
    Component {
        id: owned
        Column {
            property int kept: 0
            property alias stepper: ownedStepper
            property alias bar: ownedBar

            NumberStepper {
                id: ownedStepper
                value: parent.kept
            }
            ChoiceBar {
                id: ownedBar
                choices: ["One", "Two", "Three"]
                currentIndex: parent.kept
            }
        }
    }
    Component {
        id: besideField
        Column {
            property alias input: typedField.inputItem
            property alias stepper: besideStepper
            property alias bar: besideBar
            property list<string> told

            LabelledField {
                id: typedField
                onLeftField: parent.told.push("field")
            }
            NumberStepper {
                id: besideStepper
                onChangedByPerson: parent.told.push("stepper")
            }
            ChoiceBar {
                id: besideBar
                choices: ["One", "Two"]
                onChosen: parent.told.push("bar")
            }
        }
    }
    Component {
        id: rail
        NavigationRail {
            width: 200
            height: 600
            entries: [{name: "Arrivals", sign: "arrivals", count: 2}, {name: "Cutting", sign: "cutting"}]
            onChosen: index => currentIndex = index
        }
    }
    Component {
        id: message
        MessageBar {
            width: 600
        }
    }
    Component {
        id: finding
        FindingRow {
            width: 300
            text: "A piece is longer than the folder."
            place: "E1"
        }
    }
    Component {
        id: row
        ListRow {
            title: "Larkfield"
            detail: "H. Aldous"
        }
    }
    Component {
        id: panel
        SidePanel {
            title: "Differences"
            open: true
            height: 400

            property alias kept: inside.text

            LabelledField {
                id: inside

                label: "Note"
            }
        }
    }
    Component {
        id: search
        SearchField {}
    }
    Component {
        id: iconButton
        IconButton {
            text: "Accept"
            sign: "done"
        }
    }
    Component {
        id: switchRow
        SwitchRow {
            text: "Metric"
        }
    }
    Component {
        id: tickRow
        TickRow {
            text: "Done"
        }
    }
    SignalSpy {
        id: spy
    }

    TestCase {
        name: "Controls"
        when: windowShown

        function init() {
            failOnWarning(/./);
            Theme.touch = true;
            spy.target = null;
            spy.clear();
        }

        function watched(made, signal) {
            spy.target = made;
            spy.signalName = signal;
            return made;
        }

        function test_everyTargetIsLargeEnough() {
            for (const component of [button, choices, stepper, finding, row, search]) {
                const made = createTemporaryObject(component, stage);
                verify(made.height >= Theme.touchTarget, made.toString());
            }
            verify(createTemporaryObject(field, stage).inputItem.height >= Theme.touchTarget);
        }

        function test_namesForReaders() {
            compare(createTemporaryObject(button, stage).Accessible.name, "Accept");
            compare(createTemporaryObject(row, stage).Accessible.name, "Larkfield, H. Aldous");
            const shown = createTemporaryObject(finding, stage, {weight: FindingRow.Blocks});
            compare(shown.Accessible.name, "Must be put right. E1. A piece is longer than the folder.");
            const made = createTemporaryObject(field, stage, {error: "No length"});
            compare(made.inputItem.Accessible.name, "Length");
            compare(made.inputItem.Accessible.description, "No length");
        }

        function test_buttonByKeyAndByFinger() {
            const made = watched(createTemporaryObject(button, stage), "clicked");
            made.forceActiveFocus(Qt.TabFocusReason);
            verify(made.visualFocus);
            keyClick(Qt.Key_Return);
            keyClick(Qt.Key_Space);
            mouseClick(made);
            compare(spy.count, 3);
        }

        function test_aKeyThatIsHeldPressesOnce_data() {
            return [Qt.Key_Space, Qt.Key_Return, Qt.Key_Enter].map(key => ({tag: key.toString(16), key: key}));
        }

        // Seen: what is switched on or ticked went on and off as long as the key was held.
        function test_aKeyThatIsHeldPressesOnce(data) {
            for (const [component, signal] of [[button, "clicked"], [iconButton, "clicked"], [switchRow, "toggled"], [tickRow, "toggled"]]) {
                const made = watched(createTemporaryObject(component, stage), signal);
                spy.clear();
                made.forceActiveFocus(Qt.TabFocusReason);
                finger.hold(made.Window.window, data.key);
                compare(spy.count, 1, made.toString());
                compare(made.checked, signal === "toggled", made.toString());
            }
        }

        function test_choiceByKeyAndByFinger() {
            const made = watched(createTemporaryObject(choices, stage), "chosen");
            made.forceActiveFocus();
            keyClick(Qt.Key_Right);
            compare(made.currentIndex, 1);
            keyClick(Qt.Key_Left);
            keyClick(Qt.Key_Left);
            compare(made.currentIndex, 0);
            mouseClick(made, made.width - 10, 10);
            compare(made.currentIndex, 2);
            compare(spy.count, 3);
        }

        function test_stepperStopsAtItsLimits() {
            const made = watched(createTemporaryObject(stepper, stage), "changedByPerson");
            made.forceActiveFocus();
            keyClick(Qt.Key_Up);
            keyClick(Qt.Key_Up);
            compare(made.value, 2);
            compare(spy.count, 1);
            mouseClick(made, 10, 10);
            compare(made.value, 1);
        }

        // Seen: each wrote its own property, which broke its owner's binding: what was undone stayed on the screen.
        function test_whatIsShownIsTheOwners() {
            const made = createTemporaryObject(owned, stage);
            made.stepper.forceActiveFocus();
            keyClick(Qt.Key_Up);
            compare(made.stepper.value, 0);
            made.bar.forceActiveFocus();
            keyClick(Qt.Key_Right);
            compare(made.bar.currentIndex, 0);
            made.kept = 2;
            compare(made.stepper.value, 2);
            compare(made.bar.currentIndex, 2);
        }

        // Seen: neither took the focus, the field was not left, and what changed wrote over what was typed.
        function test_whatIsTypedIsToldBeforeWhatIsTapped() {
            const made = createTemporaryObject(besideField, stage);
            waitForRendering(made);
            made.input.forceActiveFocus();
            mouseClick(made.stepper, made.stepper.width - 10, 10);
            made.input.forceActiveFocus();
            mouseClick(made.bar, made.bar.width - 10, 10);
            compare(made.told, ["field", "stepper", "field", "bar"]);
            verify(!made.bar.visualFocus, "no ring for a finger");
            keyClick(Qt.Key_Tab, Qt.ShiftModifier);
            verify(made.stepper.visualFocus);
        }

        function test_railByKeyAndByFinger() {
            const made = watched(createTemporaryObject(rail, stage), "chosen");
            made.forceActiveFocus();
            keyClick(Qt.Key_Down);
            compare(made.currentIndex, 1);
            keyClick(Qt.Key_Down);
            compare(made.currentIndex, 1);
            compare(spy.count, 1);
        }

        function test_railBecomesABarAtTheFoot() {
            const made = createTemporaryObject(rail, stage, {portrait: true});
            verify(made.implicitHeight < 100);
            verify(made.implicitHeight >= Theme.touchTarget);
        }

        function test_messageTakesNoRoomUntilItSpeaks() {
            const made = watched(createTemporaryObject(message, stage), "undone");
            compare(made.implicitHeight, 0);
            made.text = "Corner removed";
            made.undoable = true;
            verify(made.implicitHeight >= Theme.touchTarget);
            const undo = findChild(made, "undo");
            waitForRendering(made);
            mouseClick(undo);
            compare(spy.count, 1);
        }

        function test_whatHoldsCannotBeClosed() {
            const made = createTemporaryObject(message, stage, {text: "No answer", trouble: true});
            verify(findChild(made, "close").visible);
            made.closable = false;
            verify(!findChild(made, "close").visible);
        }

        function test_aClosedPanelKeepsWhatWasTyped() {
            const made = watched(createTemporaryObject(panel, stage), "closed");
            made.kept = "two bent";
            made.open = false;
            compare(made.implicitWidth, 0);
            made.open = true;
            compare(made.kept, "two bent");
            made.forceActiveFocus();
            keyClick(Qt.Key_Escape);
            compare(spy.count, 1);
        }

        function test_escapeEmptiesTheSearch() {
            const made = createTemporaryObject(search, stage);
            made.forceActiveFocus();
            keyClick(Qt.Key_E);
            compare(made.text, "e");
            keyClick(Qt.Key_Escape);
            compare(made.text, "");
        }

        function test_deskControlsAreDenser() {
            Theme.touch = false;
            const made = createTemporaryObject(button, stage);
            verify(made.height < Theme.touchTarget);
            verify(made.height >= 32);
        }
    }
}
