import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel

// What the program has to say before anyone leaves the house.
Item {
    id: screen

    required property FieldApp app

    property bool showsPhotos: false

    signal wanted(string place)

    Component.onCompleted: app.check.refresh()

    Connections {
        target: screen.app.editor

        function onJobChanged() {
            screen.app.check.refresh();
        }
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.space
        spacing: Theme.gap

        SectionHeader {
            text: screen.app.check.blocking > 0 ? qsTr("%n must be put right", "", screen.app.check.blocking) : qsTr("Nothing blocks this order")
            detail: screen.app.check.openWarnings > 0 ? qsTr("%n to look at", "", screen.app.check.openWarnings) : ""
            Layout.fillWidth: true
        }

        ListView {
            id: list

            clip: true
            model: screen.app.check
            spacing: Theme.tight
            boundsBehavior: Flickable.StopAtBounds
            visible: count > 0
            Layout.fillWidth: true
            Layout.fillHeight: true
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Findings")
            T.ScrollBar.vertical: ScrollMark {}

            delegate: Rectangle {
                id: row

                required property int index
                required property int weight
                required property string place
                required property string statement
                required property string remedy
                required property string clause
                required property string reason
                required property bool hasPlace
                required property int photos
                required property string help

                width: ListView.view.width
                implicitHeight: column.implicitHeight
                color: Theme.panel

                GridLayout {
                    id: column

                    anchors.left: parent.left
                    anchors.right: parent.right
                    columns: screen.width > 760 ? 2 : 1
                    rowSpacing: 0
                    columnSpacing: 0
                    layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

                    FindingRow {
                        weight: row.weight
                        text: (row.remedy !== "" ? qsTr("%1. %2").arg(row.statement).arg(row.remedy) : row.statement) + (row.reason !== "" ? qsTr(". Your reason: %1").arg(row.reason) : "")
                        place: row.place
                        clause: row.clause
                        help: row.help
                        Layout.fillWidth: true
                        Layout.fillHeight: true
                    }

                    RowLayout {
                        spacing: Theme.gap
                        Layout.margins: Theme.tight
                        Layout.alignment: Theme.leftHanded ? Qt.AlignLeft : Qt.AlignRight

                        ActionButton {
                            text: row.photos > 0 ? qsTr("%n photos", "", row.photos) : qsTr("Photo")
                            sign: "photo"
                            Accessible.name: qsTr("Photos of %1").arg(row.place)
                            onClicked: {
                                screen.app.check.showPhotos(row.index, screen.app.photos);
                                screen.showsPhotos = true;
                            }
                        }

                        ActionButton {
                            visible: row.weight === CheckList.Warns
                            text: row.reason !== "" ? qsTr("Change the reason") : qsTr("Go on, with a reason")
                            sign: "edit"
                            onClicked: {
                                screen.app.check.take(row.index);
                                reasonSheet.begin();
                            }
                        }

                        ActionButton {
                            visible: row.hasPlace
                            text: qsTr("Show it")
                            sign: "plan"
                            onClicked: if (screen.app.check.goTo(row.index)) screen.wanted("house")
                        }
                    }
                }
            }
        }

        EmptyState {
            visible: list.count === 0
            sign: "done"
            title: qsTr("Nothing to say")
            text: qsTr("Every run has its length and trim, every closed chain comes back to its start, and the rules are met.")
            actionText: qsTr("Look at the order")
            Layout.fillWidth: true
            Layout.fillHeight: true
            onActed: screen.wanted("order")
        }

        ReasonSheet {
            id: reasonSheet

            visible: screen.app.check.inHand
            statement: screen.app.check.statementInHand
            reason: screen.app.check.reasonInHand
            Layout.fillWidth: true
            onGiven: text => screen.app.check.acknowledge(text)
            onClosed: screen.app.check.take(-1)
        }
    }

    PhotoSheet {
        anchors.fill: parent
        visible: screen.showsPhotos
        app: screen.app
        onClosed: screen.showsPhotos = false
    }
}
