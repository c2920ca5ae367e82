import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property ScheduleDesk desk: shop.schedule

    title: qsTr("Schedule")
    detail: qsTr("Drag a task to where it must stay: the rest is planned around it")
    searched: desk.tasks

    actions: [
        DutyButton {
            enabled: !screen.shop.planner.running && screen.desk.currentTask !== "" && !screen.desk.currentOver
            whyNot: screen.shop.whyNotPlan
            text: screen.desk.currentPinned ? qsTr("Let go") : qsTr("Pin here")
            sign: "hold"
            onAct: screen.desk.togglePin()
        },
        DutyButton {
            enabled: !screen.shop.planner.running
            whyNot: screen.shop.whyNotPlan
            text: qsTr("Schedule from now")
            sign: "schedule"
            kind: ActionButton.Primary
            onAct: screen.desk.scheduleAnew()
        }
    ]

    ColumnLayout {
        spacing: Theme.gap
        Layout.preferredWidth: 350
        Layout.maximumWidth: 420
        Layout.fillHeight: true

        RowsList {
            name: qsTr("Days")
            model: screen.desk.days
            current: screen.desk.currentDay
            focus: true
            emptySign: "schedule"
            emptyTitle: qsTr("Nothing is scheduled")
            emptyText: qsTr("Plan the cuts in Batches, or schedule from now.")
            onChosen: id => screen.desk.currentDay = id
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 200
        }

        RowsList {
            name: qsTr("Tasks of the day")
            model: screen.desk.tasks
            current: screen.desk.currentTask
            emptyTitle: qsTr("No task")
            onChosen: id => screen.desk.currentTask = id
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 300
        }

        SectionHeader {
            visible: screen.desk.late.count > 0
            text: qsTr("Late, and why")
            detail: screen.shop.counted(screen.desk.late.count, "task")
            Layout.fillWidth: true
        }

        RowsList {
            visible: screen.desk.late.count > 0
            name: qsTr("Late tasks")
            model: screen.desk.late
            current: screen.desk.currentTask
            onChosen: id => screen.desk.showLate(id)
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 180
        }
    }

    ColumnLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true

        PlanningStrip {
            planner: screen.shop.planner
            Layout.fillWidth: true
        }

        GanttView {
            desk: screen.desk
            open: screen.shop.mayPlan && !screen.shop.planner.running
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        FoldedWords {
            visible: text !== ""
            name: qsTr("What the schedule comes to")
            text: screen.desk.summary
            lines: screen.height < 700 ? 2 : 4
            most: screen.height * 0.4
            Layout.fillWidth: true
        }
    }
}
