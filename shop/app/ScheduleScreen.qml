import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property ScheduleDesk desk: shop.schedule

    title: qsTr("Schedule")
    detail: qsTr("Each machine's day; pin what must stay, the rest is planned around it")
    searched: desk.tasks

    actions: [
        ActionButton {
            enabled: screen.shop.mayPlan && !screen.desk.working && screen.desk.currentTask !== ""
            text: screen.desk.currentPinned ? qsTr("Let go") : qsTr("Pin here")
            sign: "hold"
            onClicked: screen.desk.togglePin()
        },
        ActionButton {
            enabled: screen.shop.mayPlan && !screen.desk.working
            text: qsTr("Schedule from now")
            sign: "schedule"
            kind: ActionButton.Primary
            onClicked: screen.desk.scheduleAnew()
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
            Layout.preferredHeight: 360
        }
    }

    ColumnLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true

        ProgressStrip {
            visible: screen.desk.working
            text: qsTr("Scheduling")
            detail: screen.desk.progress
            onCancelled: screen.desk.stopScheduling()
            Layout.fillWidth: true
        }

        PictureView {
            picture: screen.desk.picture
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        Words {
            visible: text !== ""
            text: screen.desk.summary
            level: Words.Small
            maximumLineCount: 4
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
    }
}
