import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

ScreenFrame {
    id: screen

    readonly property CuttingDesk desk: shop.cutting

    title: qsTr("Cutting")
    detail: desk.summary
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Right || event.key === Qt.Key_PageDown)
            screen.desk.step(1);
        else if (event.key === Qt.Key_Left || event.key === Qt.Key_PageUp)
            screen.desk.step(-1);
        else if (event.key === Qt.Key_Space || event.key === Qt.Key_Return) {
            // A key or pedal that is held down ticks no second sheet.
            if (!event.isAutoRepeat)
                screen.desk.tick();
        } else
            return;
        event.accepted = true;
    }

    FolderPicker {
        id: papers

        title: qsTr("Where to write the cut ticket and the remnants' labels")
        onPicked: folder => screen.shop.papers.printCut(screen.desk.current, folder)
    }

    FolderPicker {
        id: labels

        title: qsTr("Where to write the remnants' labels")
        onPicked: folder => screen.shop.papers.printRemnants(folder)
    }

    actions: [
        IconButton {
            visible: screen.desk.current !== ""
            sign: "orders"
            text: qsTr("Papers: cut ticket, labels of remnants")
            onClicked: papers.open()
        },
        IconButton {
            sign: "back"
            text: qsTr("Sheet before")
            onClicked: screen.desk.step(-1)
        },
        Words {
            text: screen.desk.position
            level: Words.Heading
            horizontalAlignment: Text.AlignHCenter
            Layout.minimumWidth: 80
        },
        IconButton {
            sign: "forward"
            text: qsTr("Next sheet")
            onClicked: screen.desk.step(1)
        },
        DutyButton {
            visible: screen.desk.currentStrip !== "" && !screen.desk.ticked
            enabled: !screen.shop.planner.running
            whyNot: screen.shop.whyNotMake
            text: qsTr("Strip spoilt")
            sign: "scrap"
            kind: ActionButton.Danger
            onAct: screen.desk.stripSpoilt()
        },
        DutyButton {
            visible: screen.desk.unfinished
            whyNot: screen.shop.whyNotMake
            text: qsTr("All of it is cut")
            sign: "redo"
            kind: ActionButton.Primary
            onAct: screen.desk.finish()
        },
        DutyButton {
            enabled: screen.desk.current !== ""
            whyNot: screen.shop.whyNotMake
            text: screen.desk.ticked ? qsTr("Not cut after all") : qsTr("This is cut")
            sign: screen.desk.ticked ? "undo" : "done"
            kind: screen.desk.ticked ? ActionButton.Quiet : ActionButton.Primary
            onAct: screen.desk.tick()
        }
    ]

    RowsList {
        name: qsTr("Sheets to cut")
        model: screen.desk.sheets
        current: screen.desk.current
        emptySign: "cutting"
        emptyTitle: qsTr("No sheet waits")
        emptyText: qsTr("Plan the cuts in Batches.")
        onChosen: id => screen.desk.current = id
        Layout.preferredWidth: 290
        Layout.maximumWidth: 360
        Layout.fillHeight: true
    }

    ColumnLayout {
        visible: screen.desk.toLabel.count > 0
        spacing: Theme.gap
        Layout.preferredWidth: 260
        Layout.maximumWidth: 320
        Layout.fillHeight: true

        SectionHeader {
            text: qsTr("Label these now")
            detail: screen.shop.counted(screen.desk.toLabel.count, "remnant")
            Layout.fillWidth: true
        }

        RowsList {
            name: qsTr("Remnants to label")
            model: screen.desk.toLabel
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        ActionButton {
            text: qsTr("Print their labels")
            sign: "orders"
            Layout.fillWidth: true
            onClicked: labels.open()
        }

        ActionButton {
            text: qsTr("They are labelled")
            sign: "done"
            kind: ActionButton.Primary
            Layout.fillWidth: true
            onClicked: screen.desk.labelled()
        }
    }

    ColumnLayout {
        visible: screen.desk.current !== ""
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true

        RowLayout {
            spacing: Theme.space
            Layout.fillWidth: true

            Swatch {
                colour: screen.desk.swatch
                name: screen.desk.material
                Layout.preferredWidth: Theme.displayText
                Layout.preferredHeight: Theme.displayText
            }

            ColumnLayout {
                spacing: 0
                Layout.fillWidth: true

                Words {
                    text: screen.desk.title
                    level: Words.Display
                    font.bold: true
                    maximumLineCount: 1
                    Layout.fillWidth: true
                }

                Words {
                    text: screen.desk.material
                    level: Words.Heading
                    maximumLineCount: 1
                    Layout.fillWidth: true
                }

                Words {
                    visible: text !== ""
                    text: screen.desk.tickedBy
                    muted: true
                    Layout.fillWidth: true
                }
            }
        }

        PlanningStrip {
            planner: screen.shop.planner
            Layout.fillWidth: true
        }

        PictureView {
            picture: screen.desk.map
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        Words {
            visible: text !== ""
            text: screen.desk.remnants
            level: Words.Heading
            color: Theme.accent
            Layout.fillWidth: true
        }

        RowsList {
            id: strips

            name: qsTr("Strips in cutting order")
            model: screen.desk.strips
            current: screen.desk.currentStrip
            onChosen: id => screen.desk.currentStrip = id
            Layout.fillWidth: true
            Layout.preferredHeight: Math.min(strips.contentHeight + 2, screen.height * 0.3)
        }
    }
}
