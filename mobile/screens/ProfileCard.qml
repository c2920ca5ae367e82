import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look

// One profile of the order: its picture, girth and lap; a tap changes it.
T.Button {
    id: profile

    required property string profileId
    required property string trimName
    required property string girth
    required property string lap
    required property int pieces
    required property string run
    required property string template
    required property var picture

    implicitWidth: 240
    padding: Theme.tight
    focusPolicy: Qt.StrongFocus
    text: profileId
    Accessible.role: Accessible.ListItem
    Accessible.name: qsTr("%1, %2, girth %3, %n pieces", "", pieces).arg(profileId).arg(trimName).arg(girth)
    Accessible.description: qsTr("Change its legs or lap")

    background: Rectangle {
        color: profile.down ? Theme.quietPressed : Theme.panel
        border.color: Theme.rule
        border.width: 1

        FocusRing {
            visible: profile.visualFocus
        }
    }

    contentItem: ColumnLayout {
        spacing: 0

        PictureView {
            enabled: false
            picture: profile.picture
            interactive: false
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        Words {
            text: qsTr("%1  %2").arg(profile.profileId).arg(profile.trimName)
            font.bold: true
            maximumLineCount: 1
            Layout.fillWidth: true
            Layout.leftMargin: Theme.tight
        }

        Words {
            text: profile.lap !== "" ? qsTr("girth %1, lap %2").arg(profile.girth).arg(profile.lap) : qsTr("girth %1").arg(profile.girth)
            level: Words.Small
            muted: true
            maximumLineCount: 1
            Layout.fillWidth: true
            Layout.leftMargin: Theme.tight
        }
    }
}
