import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property Arrivals desk: shop.arrivals

    title: qsTr("Arrivals")
    detail: desk.waiting > 0 ? qsTr("Waiting for a person: %1").arg(desk.waiting) : qsTr("Drop order files anywhere on this window")
    searched: desk.orders

    actions: [
        ActionButton {
            visible: !screen.desk.preview.empty && !screen.desk.currentWaits
            text: qsTr("Papers")
            sign: "orders"
            onClicked: papers.open()
        },
        DutyButton {
            visible: !screen.desk.preview.empty && !screen.desk.currentWaits
            whyNot: screen.shop.whyNotPlan
            text: screen.desk.currentHeld ? qsTr("Let it in") : qsTr("Hold")
            sign: screen.desk.currentHeld ? "undo" : "hold"
            onAct: screen.desk.holdCurrent(!screen.desk.currentHeld)
        },
        ActionButton {
            visible: !screen.desk.preview.empty
            text: qsTr("Ask back")
            sign: "send"
            onClicked: screen.desk.copy(screen.desk.question())
        },
        DutyButton {
            visible: screen.desk.currentWaits
            whyNot: screen.shop.whyNotPlan
            text: qsTr("Do not take it")
            sign: "close"
            onAct: screen.desk.dismissCurrent()
        },
        DutyButton {
            visible: screen.desk.currentWaits
            whyNot: screen.shop.whyNotPlan
            text: qsTr("Accept all the same")
            sign: "done"
            kind: ActionButton.Danger
            onAct: screen.desk.acceptCurrent()
        },
        DutyButton {
            whyNot: screen.shop.whyNotPlan
            text: qsTr("Take orders in")
            sign: "open"
            kind: ActionButton.Primary
            onAct: picker.open()
        }
    ]

    FolderPicker {
        id: papers

        title: qsTr("Where to write confirmation, quality sheet and labels")
        onPicked: folder => screen.shop.papers.printOrder(screen.desk.current, folder)
    }

    FolderPicker {
        id: label

        title: qsTr("Where to write the label")
        onPicked: folder => screen.shop.papers.printMark(screen.desk.current, marks.current, folder)
    }

    FilePicker {
        id: picker

        title: qsTr("Orders to take in")
        several: true
        onPicked: files => screen.desk.takeFiles(files)
    }

    RowsList {
        name: qsTr("Orders")
        model: screen.desk.orders
        current: screen.desk.current
        focus: true
        emptySign: "arrivals"
        emptyTitle: qsTr("No order yet")
        emptyText: qsTr("Drop an order file on this window, or set a folder to watch in Settings.")
        onChosen: id => screen.desk.current = id
        Layout.preferredWidth: Theme.touch ? 380 : 330
        Layout.maximumWidth: 420
        Layout.fillHeight: true
    }

    ColumnLayout {
        id: detail

        readonly property OrderPreview preview: screen.desk.preview
        readonly property string waiting: screen.desk.currentWaits ? screen.desk.current : ""

        // Of what waits the reasons are read first; among the others the sheet stays that a person chose.
        onWaitingChanged: sheet.currentIndex = waiting === "" ? 0 : 3

        visible: !preview.empty
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true

        SectionHeader {
            text: detail.preview.title
            detail: detail.preview.subtitle
            Layout.fillWidth: true
        }

        ChoiceBar {
            id: sheet

            objectName: "sheets"
            name: qsTr("What to look at")
            choices: [qsTr("Plan"), qsTr("Profiles (%1)").arg(detail.preview.profiles.count), qsTr("Pieces (%1)").arg(detail.preview.pieces.count),
                qsTr("Findings (%1)").arg(detail.preview.findings.count)]
            Layout.fillWidth: true
            onChosen: index => currentIndex = index
        }

        StackLayout {
            currentIndex: sheet.currentIndex
            Layout.fillWidth: true
            Layout.fillHeight: true

            PictureView {
                picture: detail.preview.plan
            }

            RowLayout {
                spacing: Theme.gap

                RowsList {
                    name: qsTr("Profiles")
                    model: detail.preview.profiles
                    current: detail.preview.currentProfile
                    onChosen: id => detail.preview.currentProfile = id
                    Layout.preferredWidth: 320
                    Layout.maximumWidth: 400
                    Layout.fillHeight: true
                }

                PictureView {
                    picture: detail.preview.profile
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                }
            }

            ColumnLayout {
                spacing: Theme.gap

                RowsList {
                    id: marks

                    readonly property string order: screen.desk.current

                    onOrderChanged: current = ""
                    name: qsTr("Pieces")
                    model: detail.preview.pieces
                    onChosen: id => current = id
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                }

                ActionButton {
                    objectName: "markLabel"
                    visible: !screen.desk.currentWaits && marks.current !== ""
                    text: qsTr("Print the label of %1").arg(marks.current)
                    sign: "orders"
                    Layout.alignment: Qt.AlignRight
                    onClicked: label.open()
                }
            }

            FindingsList {
                model: detail.preview.findings
            }
        }
    }

    EmptyState {
        visible: detail.preview.empty
        sign: "orders"
        title: qsTr("Choose an order")
        Layout.fillWidth: true
        Layout.fillHeight: true
    }
}
