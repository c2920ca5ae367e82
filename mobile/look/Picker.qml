import QtQuick
import QtQuick.Templates as T
import Lapwright.Look

// One of many: a field that opens its list.
T.ComboBox {
    id: picker

    property string name: ""

    implicitWidth: 220
    implicitHeight: Theme.target
    leftPadding: Theme.space * 0.75
    rightPadding: Theme.iconSize + Theme.space
    font.family: Theme.family
    font.pixelSize: Theme.bodyText

    Accessible.role: Accessible.ComboBox
    Accessible.name: name

    delegate: T.ItemDelegate {
        id: choice

        required property int index

        width: ListView.view ? ListView.view.width : picker.width
        implicitHeight: Theme.target
        leftPadding: Theme.space * 0.75
        highlighted: picker.highlightedIndex === index
        Accessible.name: picker.textAt(index)

        background: Rectangle {
            color: choice.highlighted ? Theme.selected : choice.down ? Theme.quietPressed : Theme.panel
        }

        contentItem: Words {
            text: picker.textAt(choice.index)
            maximumLineCount: 1
            verticalAlignment: Text.AlignVCenter
            color: choice.highlighted ? Theme.onSelected : Theme.ink
            font.bold: picker.currentIndex === choice.index
        }
    }

    indicator: Icon {
        x: picker.width - width - Theme.gap
        y: (picker.height - height) / 2
        width: Theme.iconSize
        height: Theme.iconSize
        name: "down"
        colour: Theme.inkMuted
    }

    contentItem: Words {
        text: picker.displayText
        maximumLineCount: 1
        verticalAlignment: Text.AlignVCenter
    }

    background: Plate {
        colour: picker.down ? Theme.quietPressed : Theme.well
        edge: Theme.edge
        edgeWidth: Theme.outline
        notch: Theme.notch

        FocusRing {
            visible: picker.visualFocus
        }
    }

    popup: T.Popup {
        y: picker.height
        width: picker.width
        height: Math.min(contentItem.implicitHeight + 2, Theme.target * 6)
        padding: 1

        contentItem: ListView {
            clip: true
            implicitHeight: contentHeight
            model: picker.delegateModel
            currentIndex: picker.highlightedIndex
            T.ScrollBar.vertical: ScrollMark {}
        }

        background: Rectangle {
            color: Theme.panel
            border.color: Theme.edge
            border.width: Theme.outline
        }
    }
}
