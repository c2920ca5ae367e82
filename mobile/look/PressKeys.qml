import QtQuick

// The keys that press what has the focus, for its Keys.forwardTo: Space, as it does by itself, and Enter. One that is
// held down presses once.
Item {
    id: keys

    signal pressed

    Keys.onPressed: event => event.accepted = event.isAutoRepeat && event.key === Qt.Key_Space
    Keys.onReleased: event => event.accepted = event.isAutoRepeat && event.key === Qt.Key_Space
    Keys.onReturnPressed: event => {
        if (!event.isAutoRepeat)
            keys.pressed();
    }
    Keys.onEnterPressed: event => {
        if (!event.isAutoRepeat)
            keys.pressed();
    }
}
