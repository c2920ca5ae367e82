import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel

// Trim for every kind of run: choose it once for all of them, see it as it will be folded.
Item {
    id: screen

    required property FieldApp app
    property bool portrait: false
    property bool showsWhy: false
    readonly property TrimModel trim: app.trim

    /// As large as on the plan: screen pixels in a millimetre of the drawing's page.
    readonly property real pixelsPerMillimetre: 5.4 * Theme.textFactor

    function fitPage() {
        trim.setPage(section.width / pixelsPerMillimetre, section.height / pixelsPerMillimetre);
    }

    Component.onCompleted: trim.refresh()

    Connections {
        target: screen.app.editor

        function onJobChanged() {
            screen.trim.refresh();
        }
    }

    EmptyState {
        anchors.fill: parent
        visible: kinds.count === 0
        sign: "trim"
        title: qsTr("No runs yet")
        text: qsTr("Measure the house first; then every kind of run gets its trim here.")
    }

    GridLayout {
        anchors.fill: parent
        visible: kinds.count > 0
        columns: screen.portrait ? 1 : 2
        columnSpacing: 0
        rowSpacing: 0
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        ColumnLayout {
            spacing: Theme.gap
            Layout.margins: Theme.space * 0.75
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: screen.portrait ? screen.width : screen.width * 0.4
            Layout.maximumWidth: screen.portrait ? screen.width : screen.width * 0.4
            Layout.maximumHeight: screen.portrait ? screen.height * 0.46 : screen.height

            ListView {
                id: kinds

                orientation: ListView.Horizontal
                model: screen.trim.kinds
                spacing: Theme.tight
                clip: true
                boundsBehavior: Flickable.StopAtBounds
                implicitHeight: Theme.touchTarget + Theme.gap
                Layout.fillWidth: true
                Accessible.role: Accessible.PageTabList
                Accessible.name: qsTr("Kinds of run")

                delegate: FieldChip {
                    required property string key
                    required property string words
                    required property string detail
                    required property bool chosen

                    height: ListView.view.height
                    label: detail
                    value: words
                    current: chosen
                    onClicked: {
                        kinds.forceActiveFocus(); // a size that is being typed is told first
                        screen.trim.kind = key;
                    }
                }
            }

            ListView {
                orientation: ListView.Horizontal
                model: screen.trim.runs
                spacing: Theme.tight
                clip: true
                boundsBehavior: Flickable.StopAtBounds
                implicitHeight: Theme.touchTarget
                visible: count > 2
                Layout.fillWidth: true
                Accessible.role: Accessible.PageTabList
                Accessible.name: qsTr("For which runs")

                delegate: ActionButton {
                    required property string key
                    required property string words
                    required property bool chosen

                    text: words
                    sign: chosen ? "done" : ""
                    height: ListView.view.height
                    onClicked: screen.trim.run = key
                }
            }

            ListView {
                id: trims

                model: screen.trim.trims
                clip: true
                boundsBehavior: Flickable.StopAtBounds
                Layout.fillWidth: true
                Layout.fillHeight: true
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Trims that suit")
                T.ScrollBar.vertical: ScrollMark {}

                delegate: ListRow {
                    required property string key
                    required property string words
                    required property string detail
                    required property bool chosen

                    width: ListView.view.width
                    implicitHeight: Theme.touchTarget + Theme.gap
                    title: words
                    trailing: detail
                    sign: chosen ? "done" : "trim"
                    signColour: chosen ? Theme.done : Theme.inkMuted
                    current: screen.trim.trim === key
                    onClicked: {
                        trims.forceActiveFocus();
                        screen.trim.trim = key;
                    }
                }
            }

            ActionButton {
                visible: screen.trim.bare > 0
                text: qsTr("Usual trim on %n runs that have none", "", screen.trim.bare)
                sign: "trim"
                Layout.fillWidth: true
                onClicked: screen.trim.suggestAll()
            }
        }

        Rectangle {
            color: Theme.panel
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: screen.width * 0.6

            SideEdge {
                portrait: screen.portrait
            }

            ColumnLayout {
                anchors.fill: parent
                anchors.margins: Theme.space * 0.75
                spacing: Theme.gap
                visible: !screen.showsWhy

                RowLayout {
                    spacing: Theme.gap
                    layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
                    Layout.fillWidth: true

                    ColumnLayout {
                        spacing: 0
                        Layout.fillWidth: true

                        Words {
                            text: screen.trim.trimName
                            level: Words.Heading
                            maximumLineCount: 1
                            Layout.fillWidth: true
                        }

                        Words {
                            text: screen.trim.girth !== "" ? qsTr("girth %1").arg(screen.trim.girth) : ""
                            level: Words.Small
                            muted: true
                            Layout.fillWidth: true
                        }
                    }

                    ActionButton {
                        text: qsTr("Why")
                        sign: "informs"
                        enabled: screen.trim.why !== ""
                        onClicked: screen.showsWhy = true
                    }

                    ActionButton {
                        text: screen.trim.chosen ? qsTr("Take off") : qsTr("Choose")
                        sign: screen.trim.chosen ? "remove" : "done"
                        kind: screen.trim.chosen ? ActionButton.Quiet : ActionButton.Primary
                        onClicked: screen.trim.toggle()
                    }
                }

                PictureView {
                    id: section

                    picture: screen.trim.section
                    onWidthChanged: screen.fitPage()
                    onHeightChanged: screen.fitPage()
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.minimumHeight: 140

                    Words {
                        anchors.centerIn: parent
                        width: parent.width - 2 * Theme.wide
                        visible: screen.trim.section.empty
                        horizontalAlignment: Text.AlignHCenter
                        muted: true
                        text: screen.trim.problem !== "" ? screen.trim.problem : qsTr("No section yet")
                    }
                }

                FindingRow {
                    visible: screen.trim.problem !== "" && !screen.trim.section.empty
                    weight: FindingRow.Warns
                    text: screen.trim.problem
                    Layout.fillWidth: true
                }

                ListView {
                    model: screen.trim.sizes
                    clip: true
                    boundsBehavior: Flickable.StopAtBounds
                    Layout.fillWidth: true
                    Layout.preferredHeight: Math.min(contentHeight, screen.height * (screen.portrait ? 0.22 : 0.4))
                    Accessible.role: Accessible.List
                    Accessible.name: qsTr("Measures and legs")
                    T.ScrollBar.vertical: ScrollMark {}

                    delegate: TrimSizeRow {
                        width: ListView.view.width - Theme.space
                        changeable: screen.trim.chosen
                        onStepped: steps => screen.trim.stepSize(index, steps)
                        onTyped: text => screen.trim.setSize(index, text)
                    }
                }
            }

            WhySheet {
                anchors.fill: parent
                anchors.margins: Theme.space * 0.75
                visible: screen.showsWhy
                title: qsTr("Why %1 is as it is").arg(screen.trim.trimName)
                reasons: screen.trim.why
                onClosed: screen.showsWhy = false
            }
        }
    }
}
