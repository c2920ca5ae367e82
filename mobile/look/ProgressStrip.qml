import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// Work that runs: how far, what it has so far, and the way to stop it.
Item {
    id: strip

    property string text: ""
    property string detail: ""
    /// 0 to 1; below 0 while nobody can say.
    property real progress: -1
    property bool cancellable: true

    signal cancelled

    implicitWidth: 420
    implicitHeight: column.implicitHeight

    Accessible.role: Accessible.ProgressBar
    Accessible.name: text
    Accessible.description: detail

    ColumnLayout {
        id: column

        anchors.left: parent.left
        anchors.right: parent.right
        spacing: Theme.tight

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            ColumnLayout {
                spacing: 1
                Layout.fillWidth: true

                Words {
                    text: strip.text
                    font.bold: true
                    Layout.fillWidth: true
                }

                Words {
                    visible: text !== ""
                    text: strip.detail
                    level: Words.Small
                    muted: true
                    Layout.fillWidth: true
                }
            }

            ActionButton {
                visible: strip.cancellable
                text: qsTr("Stop")
                sign: "close"
                onClicked: strip.cancelled()
            }
        }

        Rectangle {
            id: track

            color: Theme.well
            border.color: Theme.edge
            border.width: Theme.outline
            clip: true
            Layout.fillWidth: true
            Layout.preferredHeight: 14

            Rectangle {
                id: fill

                height: parent.height
                width: strip.progress < 0 ? parent.width / 4 : parent.width * Math.min(1, strip.progress)
                color: Theme.action

                SequentialAnimation on x {
                    running: strip.progress < 0 && strip.visible
                    loops: Animation.Infinite
                    onStopped: fill.x = 0

                    NumberAnimation {
                        from: 0
                        to: track.width * 0.75
                        duration: 900
                        easing.type: Easing.InOutQuad
                    }

                    NumberAnimation {
                        from: track.width * 0.75
                        to: 0
                        duration: 900
                        easing.type: Easing.InOutQuad
                    }
                }
            }
        }
    }
}
