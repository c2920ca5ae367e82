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

    actions: DutyButton {
        enabled: !screen.shop.planner.running
        whyNot: screen.shop.whyNotPlan
        text: qsTr("Plan the cuts")
        sign: "cutting"
        kind: ActionButton.Primary
        onAct: screen.desk.plan()
    }

    ColumnLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 560

        PlanningStrip {
            planner: screen.shop.planner
            Layout.fillWidth: true
        }

        RowsList {
            name: qsTr("Batches")
            model: screen.desk.batches
            current: screen.desk.current
            focus: true
            emptySign: "batches"
            emptyTitle: screen.desk.reading ? qsTr("Reading what is to be cut") : qsTr("Everything is cut")
            emptyText: screen.desk.reading ? "" : qsTr("Pieces of new orders and remakes gather here.")
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
            current: screen.desk.currentPiece
            emptyTitle: qsTr("No pieces")
            onChosen: id => screen.desk.currentPiece = id
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        RowLayout {
            visible: screen.desk.currentPiece !== ""
            spacing: Theme.gap
            Layout.fillWidth: true

            DutyButton {
                enabled: !screen.desk.orderHeld
                text: screen.desk.pieceHeld ? qsTr("Let the piece in") : qsTr("Hold the piece")
                sign: screen.desk.pieceHeld ? "undo" : "hold"
                whyNot: screen.shop.whyNotPlan
                Layout.fillWidth: true
                onAct: screen.desk.holdPiece(!screen.desk.pieceHeld)
            }

            DutyButton {
                text: screen.desk.orderHeld ? qsTr("Let the order in") : qsTr("Hold the order")
                sign: screen.desk.orderHeld ? "undo" : "hold"
                whyNot: screen.shop.whyNotPlan
                Layout.fillWidth: true
                onAct: screen.desk.holdOrder(!screen.desk.orderHeld)
            }
        }
    }
}
