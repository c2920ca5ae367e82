import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel

// Whether a closed chain comes back to where it began, and if not, what to measure again.
Rectangle {
    id: bar

    required property JobEditor editor
    /// A run is in hand, and its keys need the room: only that something is wrong is said.
    property bool brief: false
    /// Little height: what can be measured again stands in one row that scrolls sideways.
    property bool low: false
    readonly property bool off: editor.closure === JobEditor.Off
    readonly property bool closes: editor.closure === JobEditor.Closes

    visible: editor.closed
    implicitHeight: visible ? column.implicitHeight + 2 * Theme.gap : 0
    color: Theme.panel

    Accessible.role: Accessible.AlertMessage
    Accessible.name: editor.closureWords

    Rectangle {
        anchors.left: parent.left
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        width: 8
        color: bar.off ? Theme.blocks : bar.closes ? Theme.done : Theme.warns
    }

    ColumnLayout {
        id: column

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.leftMargin: Theme.space
        anchors.rightMargin: Theme.gap
        anchors.topMargin: Theme.gap
        spacing: Theme.gap

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Icon {
                name: bar.off ? "blocks" : bar.closes ? "done" : "warns"
                colour: bar.off ? Theme.blocks : bar.closes ? Theme.done : Theme.warns
                Layout.preferredWidth: Theme.iconSize
                Layout.preferredHeight: Theme.iconSize
            }

            Words {
                text: bar.brief && bar.off ? qsTr("The chain does not close yet") : bar.editor.closureWords
                Layout.fillWidth: true
            }

            ActionButton {
                visible: !bar.brief && !bar.off
                text: qsTr("Open the chain")
                onClicked: bar.editor.openChain()
            }
        }

        Flickable {
            id: suspects

            visible: bar.off && !bar.brief
            implicitHeight: flow.height
            contentWidth: flow.implicitWidth
            flickableDirection: Flickable.HorizontalFlick
            boundsBehavior: Flickable.StopAtBounds
            clip: true
            Layout.fillWidth: true

            Flow {
                id: flow

                width: bar.low ? 4000 : suspects.width
                spacing: Theme.gap

                Repeater {
                    model: bar.editor.suspects

                    ActionButton {
                        required property string key
                        required property string words
                        required property string detail

                        text: qsTr("%1: %2").arg(words).arg(detail)
                        sign: "measure"
                        onClicked: bar.editor.run = Number(key)
                    }
                }

                ActionButton {
                    text: qsTr("Open the chain")
                    onClicked: bar.editor.openChain()
                }
            }
        }
    }
}
