import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

// One line of a list: what it is, what more to know, and on the right what it amounts to.
T.ItemDelegate {
    id: row

    property string title: ""
    property string detail: ""
    property string trailing: ""
    property string trailingDetail: ""
    property string sign: ""
    property color signColour: Theme.inkMuted
    /// The real colour of the metal; invalid where there is none.
    property color swatch: "transparent"
    property bool current: highlighted || ListView.isCurrentItem
    default property alias extra: extras.data

    implicitWidth: ListView.view ? ListView.view.width : 320
    implicitHeight: Math.max(Theme.target, texts.implicitHeight + 2 * Theme.gap)
    leftPadding: Theme.space
    rightPadding: Theme.space
    focusPolicy: Qt.NoFocus

    Accessible.role: Accessible.ListItem
    Accessible.name: Theme.spoken([title, detail, trailing, trailingDetail], ", ")
    Accessible.selected: current
    Accessible.onPressAction: row.clicked()

    background: Rectangle {
        color: row.current ? Theme.selected : row.down ? Theme.quietPressed : row.hovered ? Theme.quiet : Theme.panel

        Rectangle {
            visible: row.current
            anchors.left: parent.left
            anchors.top: parent.top
            anchors.bottom: parent.bottom
            width: 5
            color: Theme.accent
        }

        Rectangle {
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            height: 1
            color: Theme.rule
        }
    }

    contentItem: RowLayout {
        spacing: Theme.space * 0.75

        Icon {
            visible: row.sign !== ""
            name: row.sign
            colour: row.current ? Theme.onSelected : row.signColour
            Layout.preferredWidth: Theme.iconSize
            Layout.preferredHeight: Theme.iconSize
        }

        Swatch {
            visible: row.swatch.a > 0
            colour: row.swatch
            Layout.preferredWidth: Theme.iconSize * 1.2
            Layout.preferredHeight: Theme.iconSize * 1.2
        }

        ColumnLayout {
            id: texts

            spacing: 1
            Layout.fillWidth: true

            Words {
                text: row.title
                maximumLineCount: 5
                font.bold: true
                color: row.current ? Theme.onSelected : Theme.ink
                Layout.fillWidth: true
            }

            Words {
                visible: text !== ""
                text: row.detail
                level: Words.Small
                maximumLineCount: 4
                color: row.current ? Theme.onSelected : Theme.inkMuted
                Layout.fillWidth: true
            }
        }

        ColumnLayout {
            visible: row.trailing !== "" || row.trailingDetail !== ""
            spacing: 1
            Layout.fillWidth: false
            Layout.maximumWidth: row.width * 0.45

            Words {
                text: row.trailing
                maximumLineCount: 2
                color: row.current ? Theme.onSelected : Theme.ink
                horizontalAlignment: Text.AlignRight
                Layout.fillWidth: true
            }

            Words {
                visible: text !== ""
                text: row.trailingDetail
                level: Words.Small
                maximumLineCount: 2
                color: row.current ? Theme.onSelected : Theme.inkMuted
                horizontalAlignment: Text.AlignRight
                Layout.fillWidth: true
            }
        }

        Row {
            id: extras

            visible: children.length > 0
            spacing: Theme.gap
        }
    }
}
