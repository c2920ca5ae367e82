import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

// A key of the keypad, large enough for a glove.
T.Button {
    id: key

    property bool strong: false
    property string spoken: text

    implicitWidth: 64
    implicitHeight: Theme.keypadKey
    focusPolicy: Qt.NoFocus
    autoRepeat: false
    Layout.fillWidth: true
    Layout.fillHeight: true
    Layout.preferredWidth: 1
    Layout.minimumHeight: 48
    Layout.maximumHeight: 120

    Accessible.role: Accessible.Button
    Accessible.name: spoken

    background: Plate {
        notch: Theme.notch
        colour: key.down ? Theme.selected : key.strong ? Theme.panel : Theme.quiet
        edge: Theme.edge
        edgeWidth: Theme.outline
    }

    contentItem: Text {
        anchors.verticalCenterOffset: key.down ? 2 : 0
        text: key.text
        color: key.down ? Theme.onSelected : Theme.ink
        font.family: Theme.family
        font.bold: key.strong
        font.pixelSize: key.strong ? Theme.titleText : Theme.headingText
        fontSizeMode: Text.Fit
        minimumPixelSize: Theme.smallText
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        textFormat: Text.PlainText
    }
}
