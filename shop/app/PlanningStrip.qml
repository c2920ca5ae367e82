import QtQuick
import Lapwright.Look
import Lapwright.ShopModel

// The plan that is being made at this station, and the way to stop it.
ProgressStrip {
    id: strip

    required property PlanWorker planner

    visible: planner.running
    text: qsTr("Planning")
    detail: planner.progress
    onCancelled: planner.stop()
}
