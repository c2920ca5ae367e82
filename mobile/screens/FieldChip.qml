import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// One thing that a run needs: its name, what is typed, and a tap to change it.
T.Button {
    id: chip

    property string label: ""
    property string value: ""
    property string reading: ""
    property bool current: false

    implicitWidth: Math.max(Theme.touchTarget * 1.5, column.implicitWidth + 1.5 * Theme.space)
    implicitHeight: Theme.touchTarget
    text: label
    focusPolicy: Qt.NoFocus

    Accessible.role: Accessible.PageTab
    Accessible.name: qsTr("%1: %2").arg(label).arg(value !== "" ? value : qsTr("not given"))
    Accessible.selected: current

    background: Plate {
        notch: Theme.notch
        colour: chip.current ? Theme.selected : chip.down ? Theme.quietPressed : Theme.quiet
        edge: Theme.edge
        edgeWidth: chip.current ? 0 : Theme.outline
    }

    contentItem: Item {
        Column {
            id: column

            anchors.centerIn: parent

            Words {
                text: chip.label
                level: Words.Small
                color: chip.current ? Theme.onSelected : Theme.inkMuted
                maximumLineCount: 1
            }

            Words {
                text: chip.reading !== "" ? chip.reading : chip.value !== "" ? chip.value : "\u2013"
                font.bold: true
                color: chip.current ? Theme.onSelected : Theme.ink
                maximumLineCount: 1
            }
        }
    }
}
