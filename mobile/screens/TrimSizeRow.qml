import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// A measure or a leg of the trim: what it is, longer or shorter by a tap, or typed.
Item {
    id: row

    required property int index
    required property string label
    required property string value
    required property string limits
    required property bool byHand
    required property bool missing
    property bool changeable: true

    signal stepped(int steps)
    signal typed(string text)

    implicitHeight: Theme.touchTarget + Theme.gap

    RowLayout {
        anchors.fill: parent
        anchors.bottomMargin: Theme.gap
        spacing: Theme.gap
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true

            Words {
                text: row.label
                font.bold: row.missing || row.byHand
                color: row.missing ? Theme.blocks : Theme.ink
                maximumLineCount: 2
                Layout.fillWidth: true
            }

            Words {
                text: row.missing ? qsTr("measure it: %1").arg(row.limits) : row.byHand ? qsTr("set by you, %1").arg(row.limits) : row.limits
                level: Words.Small
                muted: true
                maximumLineCount: 1
                Layout.fillWidth: true
            }
        }

        ActionButton {
            text: "\u2212"
            enabled: row.changeable
            autoRepeat: true
            implicitWidth: Theme.touchTarget
            Accessible.name: qsTr("%1 shorter").arg(row.label)
            onClicked: row.stepped(-1)
        }

        LabelledField {
            text: row.value
            readOnly: !row.changeable
            keepsLine: false
            inputItem.horizontalAlignment: Text.AlignHCenter
            inputItem.Accessible.name: row.label
            Layout.fillWidth: false
            Layout.preferredWidth: 130
            Layout.maximumWidth: 130
            onAccepted: row.typed(text)
            onLeftField: if (text !== row.value) row.typed(text)
        }

        ActionButton {
            text: "+"
            enabled: row.changeable
            autoRepeat: true
            implicitWidth: Theme.touchTarget
            Accessible.name: qsTr("%1 longer").arg(row.label)
            onClicked: row.stepped(1)
        }
    }
}
