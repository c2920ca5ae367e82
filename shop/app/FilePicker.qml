import QtQuick
import QtQuick.Dialogs

// A file dialog that is only made when it is asked for.
Loader {
    id: picker

    property string title: ""
    property bool saves: false
    property bool several: false
    property string ending: "json"

    signal picked(var files)

    function open() {
        active = true;
        (item as FileDialog).open();
    }

    active: false
    visible: false

    sourceComponent: FileDialog {
        title: picker.title
        fileMode: picker.saves ? FileDialog.SaveFile : picker.several ? FileDialog.OpenFiles : FileDialog.OpenFile
        defaultSuffix: picker.ending
        // An order comes alone, or with its photos in one ZIP.
        nameFilters: [picker.ending === "json" && !picker.saves ? qsTr("Lapwright documents (*.json *.zip)") : qsTr("Lapwright (*.%1)").arg(picker.ending), qsTr("All files (*)")]
        onAccepted: picker.picked(picker.saves ? [selectedFile] : selectedFiles)
    }
}
