import QtQuick
import QtQuick.Dialogs
import Lapwright.Shop

// The dialog of a FilePicker; it opens when it is made and asks once.
FileDialog {
    required property FilePicker asker

    title: asker.title
    fileMode: asker.saves ? FileDialog.SaveFile : asker.several ? FileDialog.OpenFiles : FileDialog.OpenFile
    defaultSuffix: asker.ending
    // An order comes alone, or with its photos in one ZIP.
    nameFilters: [asker.ending === "json" && !asker.saves ? qsTr("Lapwright documents (*.json *.zip)") : qsTr("Lapwright (*.%1)").arg(asker.ending), qsTr("All files (*)")]
    onAccepted: asker.answer(asker.saves ? [selectedFile] : selectedFiles)
    onRejected: asker.close()
    Component.onCompleted: open()
}
