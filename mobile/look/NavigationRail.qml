import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

// The places of the program: a rail at the side, a bar at the foot in portrait. `entries` are objects with name
// and sign; an entry may carry a `count` of what waits there.
FocusScope {
    id: rail

    property bool portrait: false
    property var entries: []
    property int currentIndex: 0
    property bool compact: false

    signal chosen(int index)

    function choose(index) {
        if (index >= 0 && index < entries.length)
            chosen(index);
    }

    implicitWidth: portrait ? 480 : compact ? 72 : Theme.touch ? 124 : 168
    implicitHeight: portrait ? Theme.touchTarget + 12 : 480
    activeFocusOnTab: true

    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    Keys.onUpPressed: choose(currentIndex - 1)
    Keys.onDownPressed: choose(currentIndex + 1)
    Keys.onLeftPressed: choose(currentIndex - 1)
    Keys.onRightPressed: choose(currentIndex + 1)

    Rectangle {
        anchors.fill: parent
        color: Theme.rail
    }

    GridLayout {
        anchors.fill: parent
        anchors.topMargin: rail.portrait ? 0 : Theme.space
        columns: rail.portrait ? Math.max(1, rail.entries.length) : 1
        columnSpacing: 0
        rowSpacing: 2

        Repeater {
            model: rail.entries.length

            T.Button {
                id: place

                required property int index
                readonly property var entry: rail.entries[index]
                readonly property bool current: index === rail.currentIndex
                readonly property bool stacked: rail.portrait || rail.compact || Theme.touch
                readonly property color inkColour: current ? Theme.onRailSelected : Theme.onRail

                implicitHeight: stacked ? Theme.touchTarget + 8 : Theme.target + 4
                focusPolicy: Qt.NoFocus
                text: entry.name
                Layout.fillWidth: true
                Layout.fillHeight: rail.portrait
                Accessible.role: Accessible.PageTab
                Accessible.name: entry.count ? qsTr("%1, %2 waiting").arg(text).arg(entry.count) : text
                Accessible.selected: current
                onClicked: rail.choose(index)

                background: Rectangle {
                    color: place.current ? Theme.railSelected : place.down || place.hovered ? Qt.lighter(Theme.rail, 1.6) : "transparent"

                    Rectangle {
                        visible: place.current
                        x: !rail.portrait && Theme.leftHanded ? parent.width - width : 0
                        width: rail.portrait ? parent.width : 5
                        height: rail.portrait ? 5 : parent.height
                        color: Theme.accent
                    }

                    FocusRing {
                        anchors.margins: 2
                        visible: rail.activeFocus && place.current
                    }
                }

                contentItem: GridLayout {
                    columns: place.stacked ? 1 : 3
                    rowSpacing: 2
                    columnSpacing: Theme.gap

                    Icon {
                        name: place.entry.sign
                        colour: place.inkColour
                        Layout.leftMargin: place.stacked ? 0 : Theme.space
                        Layout.alignment: place.stacked ? Qt.AlignHCenter : Qt.AlignVCenter
                        Layout.preferredWidth: Theme.iconSize
                        Layout.preferredHeight: Theme.iconSize
                    }

                    Words {
                        visible: !rail.compact
                        text: place.text
                        color: place.inkColour
                        level: place.stacked ? Words.Small : Words.Body
                        maximumLineCount: 1
                        font.bold: place.current
                        horizontalAlignment: place.stacked ? Text.AlignHCenter : Text.AlignLeft
                        Layout.fillWidth: true
                    }
                }

                Rectangle {
                    visible: (place.entry.count ?? 0) > 0
                    x: place.stacked ? place.width / 2 + Theme.iconSize * 0.6 : place.width - width - Theme.gap
                    y: place.stacked ? Theme.gap : (place.height - height) / 2
                    width: Math.max(count.implicitWidth + 10, height)
                    height: count.implicitHeight + 4
                    color: Theme.accent

                    Text {
                        id: count

                        anchors.centerIn: parent
                        text: place.entry.count ?? ""
                        color: Theme.panel
                        font.bold: true
                        font.family: Theme.family
                        font.pixelSize: Theme.smallText
                    }
                }
            }
        }

        Item {
            visible: !rail.portrait
            Layout.fillHeight: true
        }
    }
}
