import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel
import "parts.js" as Parts

// The runs of the chain in the order of the walk; the last field begins a new one.
Rectangle {
    id: strip

    required property JobEditor editor
    property bool shown: true

    implicitHeight: list.count > 0 ? Theme.touchTarget + Theme.space + 2 * Theme.tight : 0
    visible: list.count > 0 && shown
    color: Theme.panel

    Rectangle {
        width: parent.width
        height: 1
        color: Theme.rule
    }

    ListView {
        id: list

        anchors.fill: parent
        anchors.margins: Theme.tight
        orientation: ListView.Horizontal
        model: strip.editor.runs
        spacing: Theme.tight
        clip: true
        reuseItems: true
        boundsBehavior: Flickable.StopAtBounds
        currentIndex: strip.editor.run
        onCountChanged: positionViewAtEnd()
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Runs")

        delegate: T.Button {
            id: run

            required property int index
            required property string runId
            required property string kind
            required property string lengthWords
            required property string corner
            required property string spread
            readonly property bool current: index === strip.editor.run

            width: Math.max(words.implicitWidth + 2 * Theme.space, Theme.touchTarget * 1.5)
            height: list.height
            text: runId
            focusPolicy: Qt.StrongFocus
            Accessible.role: Accessible.ListItem
            Accessible.name: Parts.joined([runId, kind, lengthWords, spread, corner !== "" ? qsTr("then a corner %1").arg(corner) : ""])
            Accessible.selected: current
            onClicked: strip.editor.run = current ? -1 : index

            background: Rectangle {
                color: run.current ? Theme.selected : run.down ? Theme.quietPressed : Theme.quiet

                Rectangle {
                    visible: run.current
                    anchors.left: parent.left
                    anchors.right: parent.right
                    anchors.bottom: parent.bottom
                    height: 4
                    color: Theme.accent
                }

                FocusRing {
                    visible: run.visualFocus
                }
            }

            contentItem: Item {
                Column {
                    id: words

                    anchors.centerIn: parent

                    Words {
                        text: qsTr("%1  %2").arg(run.runId).arg(run.lengthWords)
                        color: run.current ? Theme.onSelected : Theme.ink
                        font.bold: true
                        maximumLineCount: 1
                    }

                    Words {
                        text: run.spread !== "" ? run.spread : run.kind
                        level: Words.Small
                        color: run.current ? Theme.onSelected : Theme.inkMuted
                        maximumLineCount: 1
                    }
                }
            }
        }
    }
}
