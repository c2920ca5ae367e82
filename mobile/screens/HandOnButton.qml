import Lapwright.Look
import Lapwright.FieldModel

// What the system can do with a file that was written; not there where it can do nothing.
ActionButton {
    required property FieldApp app
    required property string path

    visible: path !== "" && (app.shares || app.showsFolders)
    text: app.shares ? qsTr("Share the file") : qsTr("Show the folder")
    sign: app.shares ? "send" : "open"
    onClicked: app.handOn(path)
}
