import QtQuick
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.ShopModel

// The lines of a RowsModel. Up and down move along it, the chosen line stays chosen when the list changes.
FocusScope {
    id: rows

    required property RowsModel model
    property string name: ""
    property string current: ""
    property string emptyTitle: qsTr("Nothing here")
    property string emptyText: ""
    property string emptySign: "trim"
    readonly property real contentHeight: list.contentHeight

    signal chosen(string id)

    function choose(index) {
        const id = model.idAt(index);
        if (id !== "")
            chosen(id);
    }

    implicitWidth: 320
    implicitHeight: 200

    Rectangle {
        anchors.fill: parent
        color: Theme.panel
        border.color: Theme.rule
        border.width: 1
    }

    ListView {
        id: list

        anchors.fill: parent
        anchors.margins: 1
        clip: true
        focus: true
        activeFocusOnTab: true
        model: rows.model
        currentIndex: -1
        boundsBehavior: Flickable.StopAtBounds
        reuseItems: true
        T.ScrollBar.vertical: ScrollMark {}

        Accessible.role: Accessible.List
        Accessible.name: rows.name

        Keys.onUpPressed: rows.choose(Math.max(0, rows.model.indexOf(rows.current) - 1))
        Keys.onDownPressed: rows.choose(Math.min(rows.model.count - 1, rows.model.indexOf(rows.current) + 1))

        delegate: ListRow {
            required property string rowId

            width: ListView.view.width
            highlighted: rowId !== "" && rowId === rows.current
            // The view takes its first line for the current one when a search sets the lines anew.
            current: highlighted
            onClicked: {
                list.forceActiveFocus();
                rows.chosen(rowId);
            }
            onHighlightedChanged: {
                if (highlighted && list.activeFocus)
                    list.positionViewAtIndex(rows.model.indexOf(rowId), ListView.Contain);
            }
            required title
            required detail
            required trailing
            required trailingDetail
            required sign
            required swatch
        }
    }

    EmptyState {
        anchors.fill: parent
        visible: rows.model.count === 0
        sign: rows.emptySign
        title: rows.model.total > 0 ? qsTr("Nothing matches the search") : rows.emptyTitle
        text: rows.model.total > 0 ? "" : rows.emptyText
    }

    FocusRing {
        visible: list.activeFocus
    }
}
