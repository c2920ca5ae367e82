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

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.space
        spacing: Theme.space * 0.75

        RowLayout {
            spacing: Theme.space
            Layout.fillWidth: true

            ColumnLayout {
                spacing: 0
                Layout.fillWidth: true

                Words {
                    text: frame.title
                    level: Words.Title
                    maximumLineCount: 1
                    Layout.fillWidth: true
                    Accessible.role: Accessible.Heading
                }

                Words {
                    visible: text !== ""
                    text: frame.detail
                    muted: true
                    maximumLineCount: 1
                    Layout.fillWidth: true
                }
            }

            SearchField {
                id: search

                visible: frame.searched !== null
                hint: qsTr("Mark, house or customer")
                Layout.preferredWidth: 260
                onTextChanged: frame.applySearch()
            }

            RowLayout {
                id: acts

                spacing: Theme.gap
                layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            }
        }

        RowLayout {
            id: body

            spacing: Theme.space
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
    }
}
