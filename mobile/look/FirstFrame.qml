import QtQuick

// Says when its window has shown its first frame: what takes long to make comes into it after that.
Item {
    id: first

    property bool shown: false

    visible: false

    Connections {
        target: first.Window.window
        enabled: !first.shown

        // Before the first frame; what the timer calls comes after it.
        function onAfterAnimating() {
            soon.start();
        }
    }

    Timer {
        id: soon

        interval: 0
        onTriggered: first.shown = true
    }
}
