import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel

// How many of the mark in hand came, and how.
ColumnLayout {
    id: sheet

    required property DeliveryCheck delivery
    readonly property bool inHand: delivery.inHand
    property int many: 1

    signal done

    function count(found: int) {
        if (delivery.count(found, many, note.text))
            done();
    }

    spacing: Theme.gap

    Connections {
        target: sheet.delivery
        function onPlaceChanged() { // what was said of one piece is not said of the next
            sheet.many = 1;
            note.text = "";
        }
    }

    Item {
        readonly property real besideClose: close.visible ? close.width + Theme.gap : 0

        implicitHeight: Math.max(place.implicitHeight, close.visible ? close.height : 0)
        Layout.fillWidth: true

        Words {
            id: place

            x: Theme.leftHanded ? parent.besideClose : 0
            width: parent.width - parent.besideClose
            anchors.verticalCenter: parent.verticalCenter
            text: sheet.inHand ? sheet.delivery.placeWords : qsTr("Tap a mark, or scan its label")
            level: Words.Heading
        }

        IconButton {
            id: close

            x: Theme.leftHanded ? 0 : parent.width - width
            visible: sheet.inHand
            sign: "close"
            text: qsTr("Put the piece down uncounted")
            onClicked: sheet.done()
        }
    }

    ActionButton {
        visible: sheet.delivery.undoWords !== "" && !sheet.inHand
        text: qsTr("Undo: %1").arg(sheet.delivery.undoWords)
        sign: "undo"
        Layout.fillWidth: true
        onClicked: sheet.delivery.undo()
    }

    RowLayout {
        visible: sheet.inHand
        spacing: Theme.gap
        Layout.fillWidth: true

        Words {
            text: qsTr("How many")
            Layout.fillWidth: true
        }

        NumberStepper {
            name: qsTr("How many")
            value: sheet.many
            from: 1
            onChangedByPerson: value => sheet.many = value
        }
    }

    GridLayout {
        visible: sheet.inHand
        columns: 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        ActionButton {
            text: qsTr("Came")
            sign: "done"
            kind: ActionButton.Primary
            Layout.fillWidth: true
            onClicked: sheet.count(DeliveryCheck.Received)
        }

        ActionButton {
            text: qsTr("Short")
            sign: "short"
            Layout.fillWidth: true
            onClicked: sheet.count(DeliveryCheck.Short)
        }

        ActionButton {
            text: qsTr("Damaged")
            sign: "damaged"
            Layout.fillWidth: true
            onClicked: sheet.count(DeliveryCheck.Damaged)
        }

        ActionButton {
            text: qsTr("Wrong")
            sign: "wrong"
            Layout.fillWidth: true
            onClicked: sheet.count(DeliveryCheck.Wrong)
        }
    }

    LabelledField {
        id: note

        visible: sheet.inHand
        label: qsTr("Note for what is damaged or wrong")
        keepsLine: false
        Layout.fillWidth: true
    }
}
