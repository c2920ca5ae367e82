import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel
import "parts.js" as Parts

// The order: what it comes to, every piece, and the way to the shop.
Item {
    id: screen

    required property FieldApp app
    property bool portrait: false
    property bool writing: false
    property string whyMark: ""
    readonly property OrderModel order: app.order

    signal wanted(string place)

    Component.onCompleted: order.refresh()

    Connections {
        target: screen.app.editor

        function onJobChanged() {
            screen.order.refresh();
        }
    }

    GridLayout {
        anchors.fill: parent
        visible: !screen.writing
        columns: screen.portrait ? 1 : 2
        columnSpacing: 0
        rowSpacing: 0
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        ColumnLayout {
            spacing: Theme.gap
            Layout.margins: Theme.space * 0.75
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: screen.whyMark === ""

            ListView {
                id: profiles

                orientation: ListView.Horizontal
                model: screen.order.profiles
                spacing: Theme.gap
                clip: true
                boundsBehavior: Flickable.StopAtBounds
                visible: count > 0
                Layout.fillWidth: true
                Layout.preferredHeight: Math.min(230, screen.height * 0.3)
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Profiles")

                delegate: Rectangle {
                    id: profile

                    required property string profileId
                    required property string trimName
                    required property string girth
                    required property string lap
                    required property int pieces
                    required property var picture

                    width: 240
                    height: profiles.height
                    color: Theme.panel
                    border.color: Theme.rule
                    border.width: 1
                    Accessible.role: Accessible.ListItem
                    Accessible.name: qsTr("%1, %2, girth %3, %n pieces", "", pieces).arg(profileId).arg(trimName).arg(girth)

                    ColumnLayout {
                        anchors.fill: parent
                        anchors.margins: Theme.tight
                        spacing: 0

                        PictureView {
                            picture: profile.picture
                            interactive: false
                            Layout.fillWidth: true
                            Layout.fillHeight: true
                        }

                        Words {
                            text: qsTr("%1  %2").arg(profile.profileId).arg(profile.trimName)
                            font.bold: true
                            maximumLineCount: 1
                            Layout.fillWidth: true
                            Layout.leftMargin: Theme.tight
                        }

                        Words {
                            text: profile.lap !== "" ? qsTr("girth %1, lap %2").arg(profile.girth).arg(profile.lap) : qsTr("girth %1").arg(profile.girth)
                            level: Words.Small
                            muted: true
                            maximumLineCount: 1
                            Layout.fillWidth: true
                            Layout.leftMargin: Theme.tight
                        }
                    }
                }
            }

            ListView {
                id: list

                clip: true
                model: screen.order.pieces
                currentIndex: -1
                boundsBehavior: Flickable.StopAtBounds
                visible: count > 0
                Layout.fillWidth: true
                Layout.fillHeight: true
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Pieces")
                T.ScrollBar.vertical: ScrollMark {}

                section.property: "trimName"
                section.delegate: SectionHeader {
                    required property string section

                    width: ListView.view.width
                    text: section
                }

                delegate: ListRow {
                    required property string marks
                    required property string profile
                    required property string length
                    required property int pieces
                    required property string mass
                    required property string hand

                    width: ListView.view.width
                    title: marks
                    detail: Parts.joined([profile, hand])
                    trailing: qsTr("%1 × %2").arg(pieces).arg(length)
                    trailingDetail: mass
                    onClicked: screen.whyMark = marks.split(" ")[0]
                }
            }

            EmptyState {
                visible: list.count === 0
                sign: "trim"
                title: qsTr("No pieces yet")
                text: qsTr("Runs with a length and a trim become pieces here.")
                actionText: qsTr("Choose trim")
                Layout.fillWidth: true
                Layout.fillHeight: true
                onActed: screen.wanted("trim")
            }
        }

        WhySheet {
            visible: screen.whyMark !== ""
            title: qsTr("Why %1 is as it is").arg(screen.whyMark)
            reasons: screen.whyMark !== "" ? screen.order.why(screen.whyMark) : ""
            Layout.margins: Theme.space * 0.75
            Layout.fillWidth: true
            Layout.fillHeight: true
            onClosed: screen.whyMark = ""
        }

        Rectangle {
            color: Theme.panel
            Layout.fillWidth: screen.portrait
            Layout.fillHeight: !screen.portrait
            Layout.preferredWidth: screen.portrait ? screen.width : Math.min(440, screen.width * 0.42)
            Layout.preferredHeight: screen.portrait ? Math.min(side.contentHeight + 2 * Theme.space, screen.height * 0.5) : screen.height

            SideEdge {
                portrait: screen.portrait
            }

            Flickable {
                id: side

                anchors.fill: parent
                anchors.margins: Theme.space
                contentHeight: column.implicitHeight
                clip: true
                boundsBehavior: Flickable.StopAtBounds
                T.ScrollBar.vertical: ScrollMark {}

                ColumnLayout {
                    id: column

                    width: side.width - Theme.gap
                    spacing: Theme.gap

                    Words {
                        text: qsTr("%n pieces", "", screen.order.count)
                        level: Words.Title
                        Layout.fillWidth: true
                    }

                    Words {
                        text: screen.order.sent ? qsTr("%1, revision %2, sent").arg(screen.order.mass).arg(screen.order.revision) : qsTr("%1, revision %2, not sent yet").arg(screen.order.mass).arg(screen.order.revision)
                        muted: true
                        Layout.fillWidth: true
                    }

                    FindingRow {
                        visible: screen.order.blocking > 0
                        weight: FindingRow.Blocks
                        text: qsTr("%n findings block this order", "", screen.order.blocking)
                        Layout.fillWidth: true
                    }

                    ActionButton {
                        visible: screen.order.blocking > 0 || screen.order.openWarnings > 0
                        text: screen.order.blocking > 0 ? qsTr("See what blocks") : qsTr("%n to look at first", "", screen.order.openWarnings)
                        sign: screen.order.blocking > 0 ? "blocks" : "warns"
                        Layout.fillWidth: true
                        onClicked: screen.wanted("check")
                    }

                    ActionButton {
                        text: screen.order.sent ? qsTr("Write the file again") : qsTr("Send the order")
                        sign: "send"
                        kind: ActionButton.Primary
                        enabled: screen.order.blocking === 0 && screen.order.count > 0
                        implicitHeight: Theme.keypadKey
                        Layout.fillWidth: true
                        onClicked: screen.writing = true
                    }

                    Words {
                        visible: screen.order.writtenTo !== ""
                        text: qsTr("Written: %1").arg(screen.order.writtenTo)
                        level: Words.Small
                        wrapMode: Text.WrapAnywhere
                        Layout.fillWidth: true
                    }

                    SectionHeader {
                        visible: changes.count > 0
                        text: qsTr("Changed since it was sent")
                        Layout.fillWidth: true
                    }

                    Repeater {
                        id: changes

                        model: screen.order.changes

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
                        currentIndex: screen.order.policy
                        Layout.fillWidth: true
                        onActivated: index => screen.order.policy = index
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
                            value: screen.order.spares
                            to: 99
                            onChangedByPerson: value => screen.order.spares = value
                        }
                    }

                    SectionHeader {
                        visible: extras.count > 0
                        text: qsTr("What goes along")
                        Layout.fillWidth: true
                    }

                    Repeater {
                        id: extras

                        model: screen.order.accessories

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
        }
    }

    FileBrowser {
        anchors.fill: parent
        visible: screen.writing
        title: qsTr("Where the order goes")
        folder: screen.app.settings.folder
        forFolder: true
        fileName: screen.order.fileName
        onClosed: screen.writing = false
        onChosen: path => {
            screen.writing = false;
            screen.order.send(path);
        }
    }
}
