import QtQuick
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.ShopModel

// The fields of a document, part by part as it has them.
ListView {
    id: list

    required property DraftForm form

    objectName: "fields"
    model: form
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    spacing: Theme.gap
    cacheBuffer: 400
    T.ScrollBar.vertical: ScrollMark {}

    Accessible.role: Accessible.List
    Accessible.name: qsTr("Fields")

    delegate: DraftField {
        width: ListView.view.width - Theme.space
        enabled: !list.form.stale
        onFilled: entered => list.form.fill(index, entered)
        onAdded: list.form.add(index)
        onTakenOut: list.form.takeOut(index)
    }
}
