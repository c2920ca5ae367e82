import QtQuick
import QtQuick.Dialogs
import Lapwright.Shop

// The dialog of a FolderPicker; it opens when it is made and asks once.
FolderDialog {
    required property FolderPicker asker

    title: asker.title
    onAccepted: asker.answer(selectedFolder)
    onRejected: asker.close()
    Component.onCompleted: open()
}
