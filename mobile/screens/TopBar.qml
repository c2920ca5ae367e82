import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel
import "parts.js" as Parts

// What is open, and the way back: undo and redo of the job in hand.
Rectangle {
    id: bar

    required property FieldApp app
    required property string place
    readonly property bool ofJob: Parts.has(["form", "house", "trim", "check", "order"], place) && app.editor.open

    signal wanted(string place)

    implicitHeight: Theme.touchTarget + Theme.gap
    color: Theme.panel

    Rectangle {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: 1
        color: Theme.rule
    }

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.space
        anchors.rightMargin: Theme.gap
        spacing: Theme.tight
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true

            Words {
                text: {
                    switch (bar.place) {
                    case "jobs":
                        return qsTr("Jobs on this tablet");
                    case "delivery":
                        return qsTr("Delivery");
                    case "settings":
                        return qsTr("Settings");
                    }
                    return bar.app.editor.open ? (bar.app.editor.name !== "" ? bar.app.editor.name : qsTr("Job without a name")) : "";
                }
                level: Words.Heading
                maximumLineCount: 1
                Layout.fillWidth: true
            }

            Words {
                visible: bar.ofJob && text !== ""
                text: bar.app.editor.undoWords !== "" ? qsTr("Kept: %1").arg(bar.app.editor.undoWords) : qsTr("Everything is kept as you enter it")
                level: Words.Small
                muted: true
                maximumLineCount: 1
                Layout.fillWidth: true
            }
        }

        IconButton {
            visible: bar.ofJob
            sign: "undo"
            text: bar.app.editor.undoWords !== "" ? qsTr("Undo: %1").arg(bar.app.editor.undoWords) : qsTr("Undo")
            enabled: bar.app.editor.undoWords !== ""
            onClicked: bar.app.editor.undo()
        }

        IconButton {
            visible: bar.ofJob
            sign: "redo"
            text: bar.app.editor.redoWords !== "" ? qsTr("Redo: %1").arg(bar.app.editor.redoWords) : qsTr("Redo")
            enabled: bar.app.editor.redoWords !== ""
            onClicked: bar.app.editor.redo()
        }

        IconButton {
            visible: bar.ofJob
            sign: "edit"
            text: qsTr("Customer, material and limits of the job")
            checked: bar.place === "form"
            onClicked: bar.wanted(bar.place === "form" ? "house" : "form")
        }

        IconButton {
            sign: "settings"
            text: qsTr("Settings")
            checked: bar.place === "settings"
            onClicked: bar.wanted(bar.place === "settings" ? "jobs" : "settings")
        }
    }

    Shortcut {
        sequences: ["Ctrl+Z"]
        enabled: bar.ofJob
        onActivated: bar.app.editor.undo()
    }

    Shortcut {
        sequences: ["Ctrl+Y", "Ctrl+Shift+Z"]
        enabled: bar.ofJob
        onActivated: bar.app.editor.redo()
    }
}
