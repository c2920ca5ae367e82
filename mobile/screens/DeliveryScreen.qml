import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel
import "parts.js" as Parts

// At the truck: what should have come, counted in mark by mark; where each piece goes.
Item {
    id: screen

    required property FieldApp app
    property bool portrait: false
    property string browsing: ""
    property bool scanning: false
    readonly property string shownLoad: delivery.load
    /// Where the receipt of the load that is shown was written last.
    property string receipt: ""
    readonly property DeliveryCheck delivery: app.delivery
    readonly property real pixelsPerMillimetre: 5.4 * Theme.textFactor
    /// On a small tablet what counts the piece in hand takes the room of what takes files.
    readonly property bool counting: delivery.inHand && height < (portrait ? 1000 : 640)
    /// Upright: what the piece in hand needs.
    readonly property real panelHeight: counting ? Math.min(height * 0.64, 530) : Math.max(height * 0.46, delivery.inHand ? 630 : 0)

    function find(row: int) {
        if (row < 0)
            return;
        list.positionViewAtIndex(row, ListView.Contain);
        delivery.take(row);
    }

    onShownLoadChanged: receipt = ""
    Component.onCompleted: delivery.refresh()

    EmptyState {
        anchors.fill: parent
        visible: screen.browsing === "" && screen.delivery.load === ""
        sign: "arrivals"
        title: qsTr("No load list yet")
        text: qsTr("Open the load list that came with the truck; then count the bundles in.")
        actionText: qsTr("Open a load list")
        onActed: screen.browsing = "open"
    }

    GridLayout {
        anchors.fill: parent
        visible: screen.browsing === "" && !screen.scanning && screen.delivery.load !== ""
        columns: screen.portrait ? 1 : 2
        columnSpacing: 0
        rowSpacing: 0
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        ColumnLayout {
            spacing: Theme.gap
            Layout.margins: Theme.space * 0.75
            Layout.fillWidth: true
            Layout.fillHeight: true

            LoadTrustBar {
                delivery: screen.delivery
                Layout.fillWidth: true
            }

            RowLayout {
                spacing: Theme.wide
                Layout.fillWidth: true

                Repeater {
                    model: [
                        {figure: screen.delivery.missing, words: qsTr("still missing"), tone: screen.delivery.missing > 0 ? Theme.warns : Theme.done},
                        {figure: screen.delivery.received, words: qsTr("received"), tone: Theme.ink},
                        {figure: screen.delivery.faulty, words: qsTr("short, damaged, wrong"), tone: screen.delivery.faulty > 0 ? Theme.blocks : Theme.ink}
                    ]

                    ColumnLayout {
                        id: figure

                        required property var modelData

                        spacing: 0
                        Accessible.role: Accessible.StaticText
                        Accessible.name: qsTr("%1 %2").arg(modelData.figure).arg(modelData.words)

                        Words {
                            text: figure.modelData.figure
                            level: Words.Title
                            color: figure.modelData.tone
                        }

                        Words {
                            text: figure.modelData.words
                            level: Words.Small
                            muted: true
                        }
                    }
                }

                Item {
                    Layout.fillWidth: true
                }
            }

            RowLayout {
                spacing: Theme.gap
                layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
                Layout.fillWidth: true

                SearchField {
                    id: code

                    hint: qsTr("Mark or bundle, typed or scanned")
                    Layout.fillWidth: true
                    onAccepted: {
                        screen.find(screen.delivery.rowOf(text));
                        selectAll();
                    }
                }

                IconButton {
                    visible: camera.there
                    sign: "camera"
                    text: qsTr("Scan a label with the camera")
                    onClicked: screen.scanning = true
                }

                IconButton {
                    sign: "photo"
                    text: qsTr("Read a label from a photo")
                    onClicked: screen.browsing = "label"
                }

                ActionButton {
                    text: screen.delivery.onlyMissing ? qsTr("All") : qsTr("Missing")
                    sign: "filter"
                    Accessible.name: screen.delivery.onlyMissing ? qsTr("Show all pieces") : qsTr("Show only what is missing")
                    onClicked: screen.delivery.onlyMissing = !screen.delivery.onlyMissing
                }
            }

            ListView {
                id: list

                clip: true
                model: screen.delivery
                currentIndex: -1
                boundsBehavior: Flickable.StopAtBounds
                Layout.fillWidth: true
                Layout.fillHeight: true
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Pieces on the load")
                T.ScrollBar.vertical: ScrollMark {}

                section.property: "bundle"
                section.delegate: SectionHeader {
                    id: bundle

                    required property string section

                    width: ListView.view.width - Theme.space
                    text: qsTr("Bundle %1").arg(section)

                    ActionButton {
                        text: qsTr("All came")
                        sign: "done"
                        Accessible.name: qsTr("All of bundle %1 came").arg(bundle.section)
                        onClicked: screen.delivery.countBundle(bundle.section)
                    }
                }

                delegate: ListRow {
                    required property int index
                    required property string mark
                    required property string job
                    required property string length
                    required property int expected
                    required property int received
                    required property int missing
                    required property int damaged
                    required property int wrong
                    required property int uncounted
                    required property string note
                    required property bool heavy
                    required property bool inHand

                    width: ListView.view.width
                    title: mark
                    detail: Parts.joined([length, job, heavy ? qsTr("two people") : "", note])
                    trailing: uncounted === 0 ? qsTr("%1 of %2").arg(received).arg(expected) : qsTr("%1 of %2 left").arg(uncounted).arg(expected)
                    trailingDetail: Parts.joined([missing > 0 ? qsTr("%1 short").arg(missing) : "", damaged > 0 ? qsTr("%1 damaged").arg(damaged) : "", wrong > 0 ? qsTr("%1 wrong").arg(wrong) : ""])
                    sign: uncounted > 0 ? "stock" : missing + damaged + wrong > 0 ? "warns" : "done"
                    signColour: uncounted > 0 ? Theme.inkMuted : missing + damaged + wrong > 0 ? Theme.blocks : Theme.done
                    current: inHand
                    onClicked: screen.delivery.take(index)
                }
            }
        }

        Rectangle {
            color: Theme.panel
            Layout.fillWidth: screen.portrait
            Layout.fillHeight: !screen.portrait
            Layout.preferredWidth: screen.portrait ? screen.width : Math.min(480, screen.width * 0.44)
            Layout.preferredHeight: screen.portrait ? screen.panelHeight : screen.height

            SideEdge {
                portrait: screen.portrait
            }

            ColumnLayout {
                anchors.fill: parent
                anchors.margins: Theme.space
                spacing: Theme.gap

                CountSheet {
                    delivery: screen.delivery
                    Layout.fillWidth: true
                    onDone: screen.delivery.take(-1)
                }

                PictureView {
                    id: plan

                    picture: screen.delivery.plan.picture
                    visible: screen.delivery.inHand
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.minimumHeight: 100
                    onWidthChanged: screen.delivery.plan.setPage(width / screen.pixelsPerMillimetre, height / screen.pixelsPerMillimetre)
                    onHeightChanged: screen.delivery.plan.setPage(width / screen.pixelsPerMillimetre, height / screen.pixelsPerMillimetre)

                    Words {
                        anchors.centerIn: parent
                        width: parent.width - 2 * Theme.space
                        visible: screen.delivery.plan.picture.empty
                        text: qsTr("Take the order of this job in to see where the piece goes.")
                        horizontalAlignment: Text.AlignHCenter
                        muted: true
                    }
                }

                Words {
                    visible: !screen.delivery.inHand && screen.receipt !== ""
                    text: qsTr("Written: %1").arg(screen.receipt)
                    level: Words.Small
                    wrapMode: Text.WrapAnywhere
                    Layout.fillWidth: true
                }

                HandOnButton {
                    app: screen.app
                    path: screen.delivery.inHand ? "" : screen.receipt
                    Layout.fillWidth: true
                }

                Item {
                    visible: !screen.delivery.inHand
                    Layout.fillHeight: true
                }

                Picker {
                    visible: count > 1 && !screen.counting
                    name: qsTr("Load")
                    model: screen.delivery.loads
                    textRole: "words"
                    valueRole: "key"
                    displayText: screen.delivery.truck !== "" ? screen.delivery.truck : qsTr("Load")
                    Layout.fillWidth: true
                    onActivated: screen.delivery.load = currentValue
                }

                RowLayout {
                    visible: !screen.counting
                    spacing: Theme.gap
                    layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
                    Layout.fillWidth: true

                    ActionButton {
                        text: qsTr("Take in")
                        sign: "open"
                        Accessible.name: qsTr("Take in a load list, or another tablet's receipt")
                        onClicked: screen.browsing = "open"
                    }

                    ActionButton {
                        text: qsTr("Write the receipt")
                        sign: "receipts"
                        kind: ActionButton.Primary
                        Layout.fillWidth: true
                        onClicked: screen.browsing = "write"
                    }
                }
            }
        }
    }

    CameraSheet {
        id: camera

        anchors.fill: parent
        visible: screen.scanning
        title: qsTr("Label of a piece or bundle")
        viewfinder: screen.app.viewfinder
        offered: screen.delivery.load !== ""
        reads: true
        onClosed: screen.scanning = false
        onSeen: picture => {
            const row = screen.delivery.rowSeen(picture);
            if (row < 0)
                return;
            screen.scanning = false;
            screen.find(row);
        }
    }

    FileBrowser {
        anchors.fill: parent
        visible: screen.browsing !== ""
        title: {
            switch (screen.browsing) {
            case "write":
                return qsTr("Where the receipt goes");
            case "label":
                return qsTr("Which photo of a label");
            }
            return qsTr("Load list, order or another tablet's receipt");
        }
        folder: screen.app.settings.folder
        endings: screen.browsing === "open" ? [".json", ".zip"] : screen.browsing === "label" ? [".jpg", ".jpeg", ".png"] : []
        forFolder: screen.browsing === "write"
        fileName: qsTr("the receipt")
        onClosed: screen.browsing = ""
        onChosen: path => {
            const what = screen.browsing;
            screen.browsing = "";
            if (what === "write")
                screen.receipt = screen.delivery.writeReceipt(path);
            else if (what === "label")
                screen.find(screen.delivery.rowOnPicture(path));
            else
                screen.app.openFile(path);
        }
    }
}
