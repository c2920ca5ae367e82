import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

// Where a number came from: the measured inputs, the formula in words, the rule and its source.
ColumnLayout {
    id: sheet

    property string title: ""
    property string reasons: ""

    signal closed

    spacing: Theme.gap

    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true

        Words {
            text: sheet.title
            level: Words.Heading
            Layout.fillWidth: true
        }

        IconButton {
            sign: "close"
            text: qsTr("Close %1").arg(sheet.title)
            onClicked: sheet.closed()
        }
    }

    Flickable {
        contentHeight: text.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        Layout.fillWidth: true
        Layout.fillHeight: true
        T.ScrollBar.vertical: ScrollMark {}

        Words {
            id: text

            width: parent.width - Theme.space
            text: sheet.reasons
            lineHeight: 1.25
        }
    }
}
