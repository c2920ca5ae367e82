import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

DraftScreen {
    id: screen

    readonly property StockDesk desk: shop.stock

    draft: desk.draft
    list: desk.items
    title: qsTr("Stock")
    detail: draft.open ? qsTr("One item of the stock") : qsTr("%1 on the racks").arg(shop.counted(desk.items.total, "item"))
    searchHint: qsTr("Label, metal or colour")

    actions: [
        ActionButton {
            visible: !screen.draft.open
            text: qsTr("Write to a file")
            sign: "send"
            onClicked: saver.open()
        },
        DutyButton {
            visible: !screen.draft.open
            whyNot: screen.shop.whyNotPlan
            text: qsTr("Read from a file")
            sign: "open"
            onAct: picker.open()
        },
        DutyButton {
            visible: !screen.draft.open
            whyNot: screen.shop.whyNotPlan
            text: qsTr("New item")
            sign: "add"
            onAct: screen.desk.addItem()
        }
    ]

    FilePicker {
        id: picker

        title: qsTr("Stock document")
        onPicked: files => screen.desk.importStock(files[0])
    }

    FilePicker {
        id: saver

        title: qsTr("Where to write the stock")
        saves: true
        onPicked: files => screen.desk.exportStock(files[0])
    }

    FolderPicker {
        id: label

        title: qsTr("Where to write the label")
        onPicked: folder => screen.shop.papers.printRemnant(screen.desk.current, folder)
    }

    RowsList {
        visible: !screen.draft.open
        name: qsTr("Stock")
        model: screen.list
        current: screen.desk.current
        focus: true
        emptySign: "stock"
        emptyTitle: qsTr("No stock yet")
        emptyText: qsTr("Put the first item on the racks, or read a stock document from a file.")
        onChosen: id => screen.desk.current = id
        Layout.fillWidth: true
        Layout.fillHeight: true
    }

    SidePanel {
        open: !screen.draft.open && screen.desk.current !== ""
        title: screen.desk.title
        extent: 320
        Layout.fillHeight: true
        onClosed: screen.desk.current = ""

        Words {
            visible: screen.desk.count >= 0
            text: qsTr("Sheets counted on the rack")
            muted: true
            Layout.fillWidth: true
        }

        NumberStepper {
            visible: screen.desk.count >= 0
            enabled: screen.shop.mayPlan
            name: qsTr("Sheets counted on the rack")
            value: screen.desk.count
            to: 100000
            Layout.fillWidth: true
            onChangedByPerson: value => screen.desk.setCount(value)
        }

        LabelledField {
            id: left

            property string coil: ""
            readonly property string shownItem: screen.desk.current
            readonly property string shownLength: screen.desk.lengthLeft
            readonly property bool changed: text !== screen.desk.lengthLeft

            // What is typed stays until it is counted or another item is looked at.
            function showLength() {
                if (changed && coil === screen.desk.current && inputItem.activeFocus)
                    return;
                coil = screen.desk.current;
                text = screen.desk.lengthLeft;
                error = "";
            }

            function count() {
                error = screen.desk.setLengthLeft(text);
                if (error === "")
                    text = screen.desk.lengthLeft;
            }

            visible: screen.desk.lengthLeft !== ""
            enabled: screen.shop.mayPlan
            label: qsTr("Length left on the coil")
            keepsLine: false
            Layout.fillWidth: true
            onEdited: error = ""
            onAccepted: count()
            Component.onCompleted: showLength()
            onShownItemChanged: showLength()
            onShownLengthChanged: showLength()
        }

        ActionButton {
            visible: left.visible && left.changed
            text: qsTr("So much is left")
            sign: "done"
            Layout.fillWidth: true
            onClicked: left.count()
        }

        Words {
            visible: text !== ""
            text: screen.desk.reserved === "" ? "" : qsTr("%1 by plans that wait to be cut").arg(screen.desk.reserved)
            Layout.fillWidth: true
        }

        DutyButton {
            whyNot: screen.shop.whyNotPlan
            text: qsTr("Change")
            sign: "edit"
            Layout.fillWidth: true
            onAct: screen.desk.changeItem()
        }

        ActionButton {
            visible: screen.desk.isRemnant
            text: qsTr("Print its label")
            sign: "orders"
            Layout.fillWidth: true
            onClicked: label.open()
        }

        DutyButton {
            visible: screen.desk.isRemnant
            whyNot: screen.shop.whyNotPlan
            text: qsTr("It is not there any more")
            sign: "scrap"
            kind: ActionButton.Danger
            Layout.fillWidth: true
            onAct: screen.desk.removeRemnant()
        }

        DutyButton {
            visible: !screen.desk.isRemnant
            whyNot: screen.shop.whyNotPlan || screen.desk.whyNotTakeOff
            text: qsTr("Take off the racks")
            sign: "scrap"
            kind: ActionButton.Danger
            Layout.fillWidth: true
            onAct: screen.desk.takeOff()
        }

        Item {
            Layout.fillHeight: true
        }
    }
}
