import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// A finding: its weight by shape, by word and by colour, in that order of importance.
Rectangle {
    id: finding

    enum Weight {
        Informs,
        Warns,
        Blocks
    }

    property int weight: FindingRow.Informs
    property string text: ""
    /// Where: a run, a piece, a member of a file.
    property string place: ""
    property string clause: ""
    /// Why it matters and what to do, for who asks.
    property string help: ""
    property bool helpShown: false
    readonly property string weightName: [qsTr("Note"), qsTr("Look at this"), qsTr("Must be put right")][weight]
    readonly property color tone: [Theme.informs, Theme.warns, Theme.blocks][weight]

    implicitWidth: 320
    implicitHeight: Math.max(Theme.target, row.implicitHeight + 2 * Theme.gap)
    color: Theme.panel

    Accessible.role: Accessible.ListItem
    Accessible.name: Theme.spoken([weightName, place, text, clause], ". ")

    Rectangle {
        anchors.left: parent.left
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        width: 3 + 3 * finding.weight
        color: finding.tone
    }

    Rectangle {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: 1
        color: Theme.rule
    }

    RowLayout {
        id: row

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.leftMargin: Theme.space
        anchors.rightMargin: Theme.space
        spacing: Theme.space * 0.75

        Icon {
            name: ["informs", "warns", "blocks"][finding.weight]
            colour: finding.tone
            Layout.preferredWidth: Theme.iconSize * 1.2
            Layout.preferredHeight: Theme.iconSize * 1.2
            Layout.alignment: Qt.AlignTop
        }

        ColumnLayout {
            spacing: 2
            Layout.fillWidth: true

            Words {
                text: finding.place === "" ? finding.weightName : qsTr("%1: %2").arg(finding.weightName).arg(finding.place)
                level: Words.Small
                font.bold: true
                color: finding.tone
                Layout.fillWidth: true
            }

            Words {
                text: finding.text
                Layout.fillWidth: true
            }

            Words {
                visible: text !== ""
                text: finding.clause
                level: Words.Small
                muted: true
                Layout.fillWidth: true
            }

            Words {
                visible: finding.helpShown
                text: finding.help
                Layout.fillWidth: true
                Layout.topMargin: Theme.tight
            }
        }

        IconButton {
            visible: finding.help !== ""
            sign: finding.helpShown ? "up" : "informs"
            checked: finding.helpShown
            text: qsTr("Why, and what to do")
            Layout.alignment: Qt.AlignTop
            onClicked: finding.helpShown = !finding.helpShown
        }
    }
}
