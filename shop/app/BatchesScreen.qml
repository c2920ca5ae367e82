import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property Batches desk: shop.batches

    title: qsTr("Batches")
    detail: qsTr("What is to be cut, by metal, gauge and colour")
    searched: desk.pieces

    actions: ActionButton {
        enabled: screen.shop.mayPlan && !screen.desk.planning
        text: qsTr("Plan the cuts")
        sign: "cutting"
        kind: ActionButton.Primary
        onClicked: screen.desk.plan()
    }

    ColumnLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 560

        ProgressStrip {
            visible: screen.desk.planning
            text: qsTr("Planning")
            detail: screen.desk.progress
            onCancelled: screen.desk.stopPlanning()
            Layout.fillWidth: true
        }

        RowsList {
            name: qsTr("Batches")
            model: screen.desk.batches
            current: screen.desk.current
            focus: true
            emptySign: "batches"
            emptyTitle: qsTr("Everything is cut")
            emptyText: qsTr("Pieces of new orders and remakes gather here.")
            onChosen: id => screen.desk.current = id
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        SectionHeader {
            visible: screen.desk.findings.count > 0
            text: qsTr("Cannot be made as it is")
            Layout.fillWidth: true
        }

        FindingsList {
            visible: count > 0
            model: screen.desk.findings
            Layout.fillWidth: true
            Layout.preferredHeight: Math.min(contentHeight, 240)
        }
    }

    ColumnLayout {
        spacing: Theme.gap
        Layout.fillHeight: true
        Layout.preferredWidth: 420
        Layout.maximumWidth: 520

        SectionHeader {
            text: qsTr("Pieces of the batch")
            detail: screen.shop.counted(screen.desk.pieces.count, "mark")
            Layout.fillWidth: true
        }

        RowsList {
            name: qsTr("Pieces of the batch")
            model: screen.desk.pieces
            emptyTitle: qsTr("No pieces")
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
    }
}
