import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property StockDesk desk: shop.stock

    title: qsTr("Stock")
    detail: qsTr("%1 on the racks").arg(shop.counted(desk.items.total, "item"))
    searched: desk.items
    searchHint: qsTr("Label, metal or colour")

    actions: [
        ActionButton {
            text: qsTr("Write to a file")
            sign: "send"
            onClicked: saver.open()
        },
        DutyButton {
            whyNot: screen.shop.whyNotPlan
            text: qsTr("Read from a file")
            sign: "open"
            onAct: picker.open()
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
        name: qsTr("Stock")
        model: screen.desk.items
        current: screen.desk.current
        focus: true
        emptySign: "stock"
        emptyTitle: qsTr("No stock yet")
        emptyText: qsTr("Read a stock document from a file.")
        onChosen: id => screen.desk.current = id
        Layout.fillWidth: true
        Layout.fillHeight: true
    }

    SidePanel {
        open: screen.desk.current !== "" && (screen.desk.count >= 0 || screen.desk.isRemnant)
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

        Words {
            visible: text !== ""
            text: screen.desk.reserved === "" ? "" : qsTr("%1 by plans that wait to be cut").arg(screen.desk.reserved)
            Layout.fillWidth: true
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

        Item {
            Layout.fillHeight: true
        }
    }
}
