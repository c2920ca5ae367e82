import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.FieldModel

// The keypad: digits under the thumb, feet and inches as keys, every sixteenth in two taps at most.
ColumnLayout {
    id: pad

    required property MeasureEntry entry
    property bool compact: false
    readonly property bool isLength: entry.what === MeasureEntry.Length
    readonly property bool isSlope: entry.what === MeasureEntry.Slope
    readonly property bool fractions: isLength && !entry.metric

    spacing: Theme.gap

    Rectangle {
        color: Theme.well
        border.color: pad.entry.problem !== "" ? Theme.warns : Theme.edge
        border.width: Theme.outline
        implicitHeight: shown.implicitHeight + reading.implicitHeight + Theme.gap
        Layout.fillWidth: true

        Accessible.role: Accessible.StaticText
        Accessible.name: pad.entry.empty ? qsTr("Nothing typed yet") : qsTr("Typed: %1. %2").arg(pad.entry.text).arg(reading.text)

        Words {
            id: shown

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: parent.top
            anchors.leftMargin: Theme.space
            anchors.rightMargin: Theme.space
            text: pad.entry.empty ? (pad.isLength ? qsTr("Length") : pad.isSlope ? qsTr("Rise in 12") : qsTr("Angle")) : pad.entry.text
            level: pad.compact ? Words.Title : Words.Display
            muted: pad.entry.empty
            font.bold: !pad.entry.empty
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.bodyText
            maximumLineCount: 1
            horizontalAlignment: Theme.leftHanded ? Text.AlignLeft : Text.AlignRight
        }

        Words {
            id: reading

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: shown.bottom
            anchors.leftMargin: Theme.space
            anchors.rightMargin: Theme.space
            text: pad.entry.problem !== "" ? pad.entry.problem : pad.entry.exact ? qsTr("= %1").arg(pad.entry.reading) : " "
            level: Words.Small
            color: pad.entry.problem !== "" ? Theme.warns : Theme.inkMuted
            maximumLineCount: 1
            horizontalAlignment: Theme.leftHanded ? Text.AlignLeft : Text.AlignRight
        }
    }

    RowLayout {
        spacing: Theme.gap
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
        Layout.fillWidth: true
        Layout.fillHeight: true

        GridLayout {
            columns: 3
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 3

            Repeater {
                model: ["7", "8", "9", "4", "5", "6", "1", "2", "3"]

                PadKey {
                    required property string modelData

                    text: modelData
                    strong: true
                    onClicked: pad.entry.press(modelData)
                }
            }

            PadKey {
                text: "."
                spoken: qsTr("Decimal point")
                onClicked: pad.entry.press(".")
            }

            PadKey {
                text: "0"
                strong: true
                onClicked: pad.entry.press("0")
            }

            PadKey {
                text: "\u232b"
                spoken: qsTr("Back")
                autoRepeat: true
                onClicked: pad.entry.back()
            }
        }

        ColumnLayout {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 1

            PadKey {
                visible: pad.isLength && !pad.entry.metric
                text: qsTr("ft")
                spoken: qsTr("Feet")
                strong: true
                onClicked: pad.entry.feet()
            }

            PadKey {
                visible: pad.isLength && !pad.entry.metric
                text: qsTr("in")
                spoken: qsTr("Inches")
                strong: true
                onClicked: pad.entry.inches()
            }

            PadKey {
                visible: pad.isSlope
                text: "/12"
                spoken: qsTr("In twelve")
                onClicked: pad.entry.type("/12")
            }

            PadKey {
                visible: !pad.isLength
                text: "\u00b0"
                spoken: qsTr("Degrees")
                onClicked: pad.entry.type("\u00b0")
            }

            PadKey {
                visible: pad.isSlope
                text: "%"
                spoken: qsTr("Per cent")
                onClicked: pad.entry.type("%")
            }

            PadKey {
                visible: pad.isLength
                text: pad.entry.metric ? qsTr("ft in") : qsTr("mm")
                spoken: pad.entry.metric ? qsTr("Measure in feet and inches") : qsTr("Measure in millimetres")
                onClicked: {
                    pad.entry.clear();
                    pad.entry.metric = !pad.entry.metric;
                }
            }

            PadKey {
                text: qsTr("C")
                spoken: qsTr("Clear")
                onClicked: pad.entry.clear()
            }
        }

        GridLayout {
            visible: pad.fractions
            columns: 2
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            flow: GridLayout.TopToBottom
            rows: 4
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 2

            Repeater {
                model: [2, 4, 6, 8, 10, 12, 14]

                PadKey {
                    required property int modelData

                    text: ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"][modelData / 2]
                    spoken: qsTr("%1 inch").arg(text)
                    onClicked: pad.entry.sixteenths(modelData)
                }
            }

            PadKey {
                text: "+1/16"
                spoken: qsTr("One sixteenth more")
                onClicked: pad.entry.oneSixteenthMore()
            }
        }

        GridLayout {
            visible: pad.isSlope
            columns: 2
            rows: 4
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            flow: GridLayout.TopToBottom
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 2

            Repeater {
                model: ["3", "4", "5", "6", "8", "9", "10", "12"]

                PadKey {
                    required property string modelData

                    text: qsTr("%1:12").arg(modelData)
                    spoken: qsTr("%1 in 12").arg(modelData)
                    onClicked: {
                        pad.entry.clear();
                        pad.entry.type(modelData + "/12");
                    }
                }
            }
        }
    }
}
