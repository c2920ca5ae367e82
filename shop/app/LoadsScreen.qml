import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property Loads desk: shop.loads

    title: qsTr("Loads")
    detail: desk.ready.count > 0 ? qsTr("Folded and waiting for a truck: %1").arg(shop.counted(desk.ready.count, "mark")) : qsTr("Nothing waits for a truck")
    searched: desk.bundles

    actions: [
        ActionButton {
            visible: screen.desk.current !== ""
            text: qsTr("Papers")
            sign: "orders"
            onClicked: papers.open()
        },
        ActionButton {
            visible: screen.desk.current !== ""
            text: qsTr("Write the load list")
            sign: "send"
            onClicked: saver.open()
        }
    ]

    FolderPicker {
        id: papers

        title: qsTr("Where to write load list, check sheet and labels")
        onPicked: folder => screen.shop.papers.printLoad(screen.desk.current, folder)
    }

    FolderPicker {
        id: label

        title: qsTr("Where to write the label")
        onPicked: folder => screen.shop.papers.printBundle(screen.desk.current, bundles.current, folder)
    }

    FilePicker {
        id: saver

        title: qsTr("Where to write the load list")
        saves: true
        onPicked: files => screen.desk.saveLoad(files[0])
    }

    ColumnLayout {
        spacing: Theme.gap
        Layout.fillHeight: true
        Layout.preferredWidth: screen.width < 900 ? 220 : 310
        Layout.maximumWidth: 360

        SectionHeader {
            text: qsTr("Ready")
            detail: screen.shop.counted(screen.desk.ready.count, "mark")
            Layout.fillWidth: true
        }

        RowsList {
            name: qsTr("Ready to load")
            model: screen.desk.ready
            emptySign: "folding"
            emptyTitle: qsTr("Nothing folded waits")
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        LabelledField {
            id: truck

            objectName: "truck"
            label: qsTr("Truck")
            placeholder: qsTr("Name or plate")
            keepsLine: false
            Layout.fillWidth: true
        }

        DutyButton {
            enabled: screen.desk.ready.count > 0
            whyNot: screen.shop.whyNotMake
            text: qsTr("Bundle and load")
            sign: "loads"
            kind: ActionButton.Primary
            Layout.fillWidth: true
            onAct: screen.desk.makeLoad(truck.text)
        }
    }

    RowsList {
        name: qsTr("Loads")
        model: screen.desk.loads
        current: screen.desk.current
        focus: true
        emptySign: "loads"
        emptyTitle: qsTr("No load yet")
        onChosen: id => screen.desk.current = id
        Layout.preferredWidth: screen.width < 900 ? 200 : 240
        Layout.maximumWidth: 280
        Layout.fillHeight: true
    }

    ColumnLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true

        SectionHeader {
            text: qsTr("Bundles")
            detail: screen.desk.summary
            Layout.fillWidth: true
        }

        RowsList {
            id: bundles

            readonly property string load: screen.desk.current

            onLoadChanged: current = ""
            name: qsTr("Bundles of the load")
            model: screen.desk.bundles
            onChosen: id => current = id
            emptySign: "loads"
            emptyTitle: qsTr("Choose a load")
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        ActionButton {
            objectName: "bundleLabel"
            visible: bundles.current !== ""
            text: qsTr("Print the label of this bundle")
            sign: "orders"
            Layout.alignment: Qt.AlignRight
            onClicked: label.open()
        }
    }
}
