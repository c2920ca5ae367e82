import QtQuick

// Asks for a file. The dialog, and the module it comes from, are only loaded when it is asked for.
Loader {
    id: picker

    property string title: ""
    property bool saves: false
    property bool several: false
    property string ending: "json"

    signal picked(var files)

    function open() {
        setSource("FileAsker.qml", {asker: picker});
    }

    function answer(files) {
        picked(files);
        close();
    }

    function close() {
        source = "";
    }

    visible: false
}
