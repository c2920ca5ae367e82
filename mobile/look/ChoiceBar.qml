import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

// One of a few: all in sight, the chosen one marked by ground, rule and weight. Arrow keys move along it.
// It shows the `currentIndex` it is given and says which a person chose: whoever owns the choice changes it.
T.Control {
    id: bar

    property list<string> choices
    property int currentIndex: 0
    property string name: ""

    signal chosen(int index)

    function choose(index) {
        if (index < 0 || index >= choices.length || index === currentIndex)
            return;
        chosen(index);
    }

    /// A field that is being typed in is left first: what is chosen here may change what it shows.
    function tap(index) {
        forceActiveFocus(Qt.MouseFocusReason);
        choose(index);
    }

    implicitWidth: row.implicitWidth
    implicitHeight: Theme.target
    activeFocusOnTab: true

    Accessible.role: Accessible.PageTabList
    Accessible.name: name

    Keys.onLeftPressed: choose(currentIndex - 1)
    Keys.onRightPressed: choose(currentIndex + 1)

    RowLayout {
        id: row

        anchors.fill: parent
        spacing: 0

        Repeater {
            model: bar.choices.length

            T.Button {
                id: choice

                required property int index
                readonly property bool current: index === bar.currentIndex

                text: bar.choices[index]
                implicitWidth: Math.max(label.implicitWidth + 2 * Theme.space, Theme.target)
                focusPolicy: Qt.NoFocus
                Layout.fillWidth: true
                Layout.fillHeight: true
                Accessible.role: Accessible.PageTab
                Accessible.name: text
                Accessible.selected: current
                onClicked: bar.tap(index)

                background: Rectangle {
                    color: choice.current ? Theme.selected : choice.down ? Theme.quietPressed : Theme.panel
                    border.color: Theme.edge
                    border.width: Theme.outline

                    CurrentMark {
                        visible: choice.current
                    }
                }

                contentItem: Text {
                    id: label

                    text: choice.text
                    color: choice.current ? Theme.onSelected : Theme.ink
                    elide: Text.ElideRight
                    font.bold: choice.current
                    font.family: Theme.family
                    font.pixelSize: Theme.bodyText
                    horizontalAlignment: Text.AlignHCenter
                    verticalAlignment: Text.AlignVCenter
                    textFormat: Text.PlainText
                }
            }
        }
    }

    FocusRing {
        visible: bar.visualFocus
    }
}
