import QtQuick
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.ShopModel

// Findings of a RowsModel, each by its weight.
ListView {
    id: list

    property string name: qsTr("Findings")

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    activeFocusOnTab: true
    T.ScrollBar.vertical: ScrollMark {}

    Accessible.role: Accessible.List
    Accessible.name: name

    delegate: FindingRow {
        required property string title
        required property string detail
        required property string trailing
        required property string trailingDetail

        width: ListView.view.width
        required weight
        required help
        text: title
        place: detail
        clause: trailing === "" ? "" : trailing + (trailingDetail === "" ? "" : ", " + trailingDetail)
    }
}
