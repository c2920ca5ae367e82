import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

// What every screen has: its name, a search where it lists things, its acts at the right, and its work below.
FocusScope {
    id: frame

    required property Shop shop
    property string title: ""
    property string detail: ""
    property RowsModel searched: null
    property string searchHint: qsTr("Mark, house or customer")
    /// The list that the search stands for now: a list that is left shows all its lines again.
    property RowsModel filtered: null
    property alias actions: acts.data
    default property alias content: body.data

    function applySearch() {
        if (filtered && filtered !== searched)
            filtered.search = "";
        filtered = searched;
        if (filtered)
            filtered.search = search.text;
    }

    function focusSearch() {
        if (search.visible)
            search.forceActiveFocus();
    }

    focus: true

    // The desk outlives its screen: what was searched for the last time is not what is searched for now.
    onSearchedChanged: applySearch()

    // Anchors, not one layout in another: what wraps here must not make two of them ask each other for ever.
    Item {
        id: head

        readonly property bool acting: acts.implicitWidth > 0
        /// Of the words as they are, not as they are laid out: that depends on this.
        readonly property real nameWidth: Math.max(nameSize.advanceWidth + 2, Math.min(noteSize.advanceWidth, 300))
        readonly property real searchWidth: search.visible ? 260 + Theme.space : 0
        /// The acts have a line of their own where the name would have no room beside them.
        readonly property bool stacked: acting && nameWidth + searchWidth + acts.implicitWidth + Theme.space > width

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.space
        implicitHeight: stacked ? names.height + Theme.gap + acts.height : Math.max(names.height, acts.height)

        TextMetrics {
            id: nameSize

            font: name.font
            text: frame.title
        }

        TextMetrics {
            id: noteSize

            font: note.font
            text: frame.detail
        }

        RowLayout {
            id: names

            width: head.stacked || !head.acting ? head.width : head.width - acts.width - Theme.space
            spacing: Theme.space

            Item {
                implicitHeight: name.height + (note.visible ? note.height : 0)
                Layout.fillWidth: true

                Words {
                    id: name

                    width: parent.width
                    text: frame.title
                    level: Words.Title
                    Accessible.role: Accessible.Heading
                }

                Words {
                    id: note

                    anchors.top: name.bottom
                    visible: text !== ""
                    width: parent.width
                    text: frame.detail
                    muted: true
                }
            }

            SearchField {
                id: search

                visible: frame.searched !== null
                hint: frame.searchHint
                Layout.preferredWidth: 260
                Layout.maximumWidth: 260
                onTextChanged: frame.applySearch()
            }
        }

        RowLayout {
            id: acts

            x: Theme.leftHanded && head.stacked ? 0 : head.width - width
            y: head.stacked ? names.height + Theme.gap : (head.height - height) / 2
            width: Math.min(implicitWidth, head.width)
            spacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
        }
    }

    RowLayout {
        id: body

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        anchors.margins: Theme.space
        anchors.topMargin: Theme.space * 0.75
        spacing: Theme.space
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
    }
}
