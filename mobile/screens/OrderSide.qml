import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel

// What the order comes to, how runs are divided, and the way to the shop.
Flickable {
    id: side

    required property FieldApp app
    readonly property OrderModel order: app.order

    signal wanted(string place)
    signal sendWanted

    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    T.ScrollBar.vertical: ScrollMark {}

    ColumnLayout {
        id: column

        width: side.width - Theme.space
        spacing: Theme.gap

        Words {
            text: qsTr("%n pieces", "", side.order.count)
            level: Words.Title
            Layout.fillWidth: true
        }

        Words {
            text: side.order.sent ? qsTr("%1, revision %2, sent").arg(side.order.mass).arg(side.order.revision) : qsTr("%1, revision %2, not sent yet").arg(side.order.mass).arg(side.order.revision)
            muted: true
            Layout.fillWidth: true
        }

        FindingRow {
            visible: side.order.blocking > 0
            weight: FindingRow.Blocks
            text: qsTr("%n findings block this order", "", side.order.blocking)
            Layout.fillWidth: true
        }

        ActionButton {
            visible: side.order.blocking > 0 || side.order.openWarnings > 0
            text: side.order.blocking > 0 ? qsTr("See what blocks") : qsTr("%n to look at first", "", side.order.openWarnings)
            sign: side.order.blocking > 0 ? "blocks" : "warns"
            Layout.fillWidth: true
            onClicked: side.wanted("check")
        }

        ActionButton {
            text: side.order.sent ? qsTr("Write the file again") : qsTr("Send the order")
            sign: "send"
            kind: ActionButton.Primary
            enabled: side.order.blocking === 0 && side.order.count > 0
            implicitHeight: Theme.keypadKey
            Layout.fillWidth: true
            onClicked: side.sendWanted()
        }

        Words {
            visible: side.order.photos > 0
            text: qsTr("%n photos go along in one ZIP", "", side.order.photos)
            Layout.fillWidth: true
        }

        FindingRow {
            visible: side.order.photosMissing > 0
            weight: FindingRow.Warns
            text: qsTr("%n of them are no longer on this tablet", "", side.order.photosMissing)
            Layout.fillWidth: true
        }

        Words {
            visible: side.order.writtenTo !== ""
            text: qsTr("Written: %1").arg(side.order.writtenTo)
            level: Words.Small
            wrapMode: Text.WrapAnywhere
            Layout.fillWidth: true
        }

        HandOnButton {
            app: side.app
            path: side.order.writtenTo
            Layout.fillWidth: true
        }

        SectionHeader {
            visible: changes.count > 0
            text: qsTr("Changed since it was sent")
            Layout.fillWidth: true
        }

        Repeater {
            id: changes

            model: side.order.changes

            Words {
                required property string words
                required property string detail

                text: qsTr("%1: %2").arg(words).arg(detail)
                Layout.fillWidth: true
            }
        }

        SectionHeader {
            text: qsTr("Runs longer than a piece")
            Layout.fillWidth: true
        }

        Picker {
            name: qsTr("Runs longer than a piece")
            model: [qsTr("Full lengths, then the rest"), qsTr("Equal lengths"), qsTr("Stock lengths, cut on site")]
            currentIndex: side.order.policy
            Layout.fillWidth: true
            onActivated: index => side.order.policy = index
        }

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                text: qsTr("Spare pieces of each profile")
                Layout.fillWidth: true
            }

            NumberStepper {
                name: qsTr("Spare pieces of each profile")
                value: side.order.spares
                to: 99
                onChangedByPerson: value => side.order.spares = value
            }
        }

        SectionHeader {
            visible: extras.count > 0
            text: qsTr("What goes along")
            Layout.fillWidth: true
        }

        Repeater {
            id: extras

            model: side.order.accessories

            RowLayout {
                required property string words
                required property string detail

                spacing: Theme.gap
                Layout.fillWidth: true

                Words {
                    text: parent.words
                    Layout.fillWidth: true
                }

                Words {
                    text: parent.detail
                    font.bold: true
                }
            }
        }
    }
}
