import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel

// What is to be said of a load list's signature, and what a person can do about it.
Rectangle {
    id: bar

    required property DeliveryCheck delivery

    visible: delivery.trustWords !== ""
    implicitHeight: visible ? column.implicitHeight + 2 * Theme.gap : 0
    color: Theme.panel

    Accessible.role: Accessible.AlertMessage
    Accessible.name: delivery.trustWords

    Rectangle {
        anchors.left: parent.left
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        width: 8
        color: bar.delivery.questioned ? Theme.blocks : Theme.warns
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

        Words {
            text: bar.delivery.trustWords
            Layout.fillWidth: true
        }

        Flow {
            spacing: Theme.gap
            Layout.fillWidth: true

            ActionButton {
                objectName: "trustShop"
                visible: bar.delivery.signerKnown
                text: qsTr("Same code: trust this shop")
                sign: "done"
                onClicked: bar.delivery.trustSigner()
            }

            ActionButton {
                objectName: "acceptList"
                text: bar.delivery.questioned ? qsTr("Count it all the same") : qsTr("Not now")
                onClicked: bar.delivery.acceptList()
            }
        }
    }
}
