import QtQuick

// What a camera sees, whichever it is: CameraView has the tablet's own.
Item {
    /// It looks only while somebody looks at it.
    property bool running: false
    /// There is a camera.
    property bool there: false
    /// It sees something.
    property bool seeing: false
    /// Why it sees nothing, as the system says it.
    property string problem: ""
    /// The picture alone, without what is round it.
    property Item picture: this
    /// The camera's own size of it, in pixels.
    property size grain: Qt.size(width, height)
}
