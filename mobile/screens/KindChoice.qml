import QtQuick
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel

// What kind of edge the run is.
GridView {
    id: kinds

    required property RunEntry entry

    signal chosen

    readonly property int across: Math.max(1, Math.floor(width / 170))

    clip: true
    model: entry.kinds
    cellWidth: width / across
    cellHeight: Theme.touchTarget + Theme.gap
    boundsBehavior: Flickable.StopAtBounds
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Kinds of run")
    T.ScrollBar.vertical: ScrollMark {}

    delegate: ActionButton {
        required property string key
        required property string words
        required property bool chosen

        width: kinds.cellWidth - Theme.gap
        height: kinds.cellHeight - Theme.gap
        text: words
        sign: chosen ? "done" : ""
        onClicked: {
            kinds.entry.kind = key;
            kinds.chosen();
        }
    }
}
