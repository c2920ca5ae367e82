import QtQuick
import QtQuick.Dialogs

// A dialog for a folder, only made when it is asked for.
Loader {
    id: picker

    property string title: ""

    signal picked(url folder)

    function open() {
        active = true;
        (item as FolderDialog).open();
    }

    active: false
    visible: false

    sourceComponent: FolderDialog {
        title: picker.title
        onAccepted: picker.picked(selectedFolder)
    }
}
