import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// Why somebody goes on in spite of a warning; it travels with the order.
Rectangle {
    id: sheet

    property string statement: ""
    property string reason: ""

    signal given(string text)
    signal closed

    /// For the warning that was just taken in hand: what was typed for another stays with that one.
    function begin() {
        field.text = reason;
        field.inputItem.forceActiveFocus();
    }

    implicitHeight: column.implicitHeight + 2 * Theme.space
    color: Theme.panel
    border.color: Theme.edge
    border.width: Theme.outline
    Component.onCompleted: field.text = reason

    ColumnLayout {
        id: column

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.margins: Theme.space
        spacing: Theme.gap

        Words {
            text: sheet.statement
            muted: true
            maximumLineCount: 2
            elide: Text.ElideRight
            Layout.fillWidth: true
        }

        LabelledField {
            id: field

            label: qsTr("Why it is right all the same")
            placeholder: qsTr("The shop reads this beside the warning")
            keepsLine: false
            Layout.fillWidth: true
            onAccepted: sheet.given(text)
        }

        RowLayout {
            spacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.LeftToRight : Qt.RightToLeft
            Layout.fillWidth: true

            ActionButton {
                text: field.text.trim() !== "" ? qsTr("Go on") : qsTr("Take the reason back")
                sign: "done"
                kind: ActionButton.Primary
                onClicked: sheet.given(field.text)
            }

            ActionButton {
                text: qsTr("Not now")
                onClicked: sheet.closed()
            }

            Item {
                Layout.fillWidth: true
            }
        }
    }
}
