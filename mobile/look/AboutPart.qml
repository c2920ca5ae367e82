import QtQuick
import QtQuick.Layouts
import Lapwright.Look

// The end of the settings: which version this is, and whose work is in it.
ColumnLayout {
    id: about

    spacing: Theme.tight

    SectionHeader {
        text: qsTr("About")
        Layout.fillWidth: true
    }

    Words {
        text: qsTr("Lapwright %1. Free software under the MIT licence, without any warranty.").arg(About.version)
        Layout.fillWidth: true
    }

    Words {
        text: qsTr("Made with:")
        muted: true
        Layout.fillWidth: true
    }

    Repeater {
        model: About.libraries

        Words {
            required property var modelData

            text: qsTr("%1, for %2. Licence: %3").arg(modelData.name).arg(About.used(modelData.use)).arg(modelData.licence)
            level: Words.Small
            muted: true
            Layout.fillWidth: true
        }
    }
}
