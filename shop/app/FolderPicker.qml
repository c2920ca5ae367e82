import QtQuick

// Asks for a folder. The dialog, and the module it comes from, are only loaded when it is asked for.
Loader {
    id: picker

    property string title: ""

    signal picked(url folder)

    function open() {
        setSource("FolderAsker.qml", {asker: picker});
    }

    function answer(folder) {
        picked(folder);
        close();
    }

    function close() {
        source = "";
    }

    visible: false
}
