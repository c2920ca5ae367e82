import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property Loads desk: shop.loads

    title: qsTr("Receipts")
    detail: qsTr("What the crew leads found, and what is made again")
    searched: desk.remakes

    actions: [
        DutyButton {
            enabled: screen.desk.remakes.total > 0
            whyNot: screen.shop.whyNotPlan
            text: qsTr("Order all again")
            sign: "redo"
            kind: screen.desk.remakes.total > 0 ? ActionButton.Primary : ActionButton.Quiet
            onAct: screen.desk.remakeAll()
        },
        DutyButton {
            whyNot: screen.shop.whyNotMake
            text: qsTr("Take a receipt in")
            sign: "open"
            onAct: picker.open()
        }
    ]

    FilePicker {
        id: picker

        title: qsTr("Receipt to take in")
        onPicked: files => screen.desk.takeReceipt(files[0])
    }

    RowsList {
        name: qsTr("Short, damaged or wrong")
        model: screen.desk.remakes
        focus: true
        emptySign: "receipts"
        emptyTitle: qsTr("Nothing has to be made again")
        emptyText: qsTr("What came short, damaged or wrong stands here until it is ordered again.")
        Layout.fillWidth: true
        Layout.fillHeight: true
    }
}
