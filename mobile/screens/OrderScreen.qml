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
    property string reasons: ""
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
                Layout.preferredHeight: Math.min(230, screen.height * (screen.portrait ? 0.2 : 0.3))
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Profiles")

                delegate: ProfileCard {
                    height: ListView.view.height
                    onClicked: {
                        screen.app.trim.goTo(run, template);
                        screen.wanted("trim");
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
                    required property int index
                    required property string marks
                    required property string firstMark
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
                    onClicked: {
                        screen.reasons = screen.order.why(index);
                        screen.whyMark = firstMark;
                    }
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
            reasons: screen.reasons
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
            Layout.preferredHeight: screen.portrait ? Math.min(side.contentHeight + 2 * Theme.space, screen.height * 0.44) : screen.height

            SideEdge {
                portrait: screen.portrait
            }

            OrderSide {
                id: side

                anchors.fill: parent
                anchors.margins: Theme.space
                app: screen.app
                onWanted: to => screen.wanted(to)
                onSendWanted: screen.writing = true
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
