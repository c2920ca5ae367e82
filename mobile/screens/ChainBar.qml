import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel

// The chains of the house, the one in hand marked, and the way to another.
Rectangle {
    id: bar

    required property JobEditor editor
    property bool starting: false

    signal startWanted

    implicitHeight: Theme.touchTarget + 2 * Theme.tight
    color: Theme.panel

    RowLayout {
        anchors.fill: parent
        anchors.margins: Theme.tight
        spacing: Theme.tight
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        ListView {
            id: list

            orientation: ListView.Horizontal
            model: bar.editor.chains
            spacing: Theme.tight
            clip: true
            currentIndex: bar.editor.chain
            boundsBehavior: Flickable.StopAtBounds
            Layout.fillWidth: true
            Layout.fillHeight: true
            Accessible.role: Accessible.PageTabList
            Accessible.name: qsTr("Chains")

            delegate: T.Button {
                id: chain

                required property int index
                required property string words
                required property string detail
                required property bool chosen

                width: Math.max(names.implicitWidth + 2 * Theme.space, Theme.touchTarget * 1.6)
                height: list.height
                text: words
                focusPolicy: Qt.StrongFocus
                Accessible.role: Accessible.PageTab
                Accessible.name: qsTr("%1, %2").arg(words).arg(detail)
                Accessible.selected: chosen
                onClicked: bar.editor.chain = index

                background: Rectangle {
                    color: chain.chosen ? Theme.selected : chain.down ? Theme.quietPressed : Theme.quiet
                    border.color: Theme.edge
                    border.width: chain.chosen ? Theme.outline : 0

                    CurrentMark {
                        visible: chain.chosen
                    }

                    FocusRing {
                        visible: chain.visualFocus
                    }
                }

                contentItem: Item {
                    Column {
                        id: names

                        anchors.centerIn: parent

                        Words {
                            text: chain.words
                            color: chain.chosen ? Theme.onSelected : Theme.ink
                            font.bold: true
                            maximumLineCount: 1
                        }

                        Words {
                            text: chain.detail
                            level: Words.Small
                            color: chain.chosen ? Theme.onSelected : Theme.inkMuted
                            maximumLineCount: 1
                        }
                    }
                }
            }
        }

        IconButton {
            sign: bar.starting && bar.editor.chain >= 0 ? "close" : "add"
            text: bar.starting ? qsTr("Go on with the chain") : qsTr("Start another chain")
            enabled: bar.editor.chain >= 0
            onClicked: bar.startWanted()
        }
    }
}
