import QtQuick
import QtQuick.Layouts
import QtQuick.Window
import Lapwright.Look
import Lapwright.FieldModel

// The window: places at the side or at the foot, one of them in view.
Window {
    id: window

    required property FieldApp app
    readonly property bool portrait: height > width
    readonly property var places: ["jobs", "house", "trim", "check", "order", "delivery"]
    property string place: "jobs"
    /// The window has shown. Only then does the first screen come into it: a person sees at once that it starts.
    readonly property bool ready: firstFrame.shown

    function go(to: string) {
        // A field that is being typed in is left first, so that what was typed is kept.
        nowhere.forceActiveFocus();
        place = to;
        screen.forceActiveFocus();
    }

    width: 1280
    height: 800
    minimumWidth: 480
    minimumHeight: 480
    visible: true
    title: qsTr("Lapwright")
    color: Theme.ground

    FirstFrame {
        id: firstFrame
    }

    Binding {
        target: Theme
        property: "scheme"
        value: window.app.settings.theme === "dark" ? Theme.Dark : window.app.settings.theme === "light" ? Theme.Light : Theme.Sunlight
    }

    Binding {
        target: Theme
        property: "textFactor"
        value: window.app.settings.textScale
    }

    Binding {
        target: Theme
        property: "leftHanded"
        value: window.app.settings.leftHanded
    }

    Binding {
        target: Theme
        property: "touch"
        value: true
    }

    Item {
        id: nowhere
    }

    GridLayout {
        anchors.fill: parent
        columns: window.portrait ? 1 : 2
        rowSpacing: 0
        columnSpacing: 0
        layoutDirection: !window.portrait && !Theme.leftHanded ? Qt.LeftToRight : Qt.RightToLeft

        NavigationRail {
            portrait: window.portrait
            entries: [
                {name: qsTr("Jobs"), sign: "orders"},
                {name: qsTr("House"), sign: "house"},
                {name: qsTr("Trim"), sign: "trim", count: window.app.editor.open ? window.app.trim.bare : 0},
                {name: qsTr("Check"), sign: "done", count: window.app.editor.open ? window.app.check.blocking : 0},
                {name: qsTr("Order"), sign: "send"},
                {name: qsTr("Delivery"), sign: "arrivals", count: window.app.delivery.missing}
            ]
            currentIndex: Math.max(0, window.places.indexOf(window.place))
            Layout.row: window.portrait ? 1 : 0
            Layout.column: 0
            Layout.fillWidth: window.portrait
            Layout.fillHeight: !window.portrait
            onChosen: index => window.go(window.places[index])
        }

        ColumnLayout {
            spacing: 0
            Layout.row: 0
            Layout.column: window.portrait ? 0 : 1
            Layout.fillWidth: true
            Layout.fillHeight: true

            TopBar {
                app: window.app
                place: window.place
                Layout.fillWidth: true
                onWanted: to => window.go(to)
            }

            Loader {
                id: screen

                active: window.ready
                focus: true
                Layout.fillWidth: true
                Layout.fillHeight: true
                sourceComponent: {
                    switch (window.place) {
                    case "jobs":
                        return jobs;
                    case "form":
                        return window.app.editor.open ? form : jobs;
                    case "settings":
                        return settings;
                    case "delivery":
                        return delivery;
                    }
                    if (!window.app.editor.open)
                        return noJob;
                    switch (window.place) {
                    case "house":
                        return house;
                    case "trim":
                        return trim;
                    case "check":
                        return check;
                    default:
                        return order;
                    }
                }
            }

            GuideBar {
                objectName: "guide"
                app: window.app
                place: window.place
                Layout.fillWidth: true
                Layout.margins: Theme.tight
                onWanted: to => window.go(to)
            }

            MessageBar {
                trouble: true
                text: window.app.message
                Layout.fillWidth: true
                Layout.margins: Theme.gap
                onClosed: window.app.seen()
            }
        }
    }

    Component {
        id: jobs

        JobsScreen {
            app: window.app
            portrait: window.portrait
            onWanted: to => window.go(to)
        }
    }

    Component {
        id: form

        JobFormScreen {
            app: window.app
            portrait: window.portrait
            onWanted: to => window.go(to)
        }
    }

    Component {
        id: house

        HouseScreen {
            app: window.app
            portrait: window.portrait
        }
    }

    Component {
        id: trim

        TrimScreen {
            app: window.app
            portrait: window.portrait
        }
    }

    Component {
        id: check

        CheckScreen {
            app: window.app
            onWanted: to => window.go(to)
        }
    }

    Component {
        id: order

        OrderScreen {
            app: window.app
            portrait: window.portrait
            onWanted: to => window.go(to)
        }
    }

    Component {
        id: delivery

        DeliveryScreen {
            app: window.app
            portrait: window.portrait
        }
    }

    Component {
        id: settings

        SettingsScreen {
            app: window.app
        }
    }

    Component {
        id: noJob

        EmptyState {
            sign: "house"
            title: qsTr("No job is open")
            text: qsTr("Open a job or start one; then its house, trim, findings and order are here.")
            actionText: qsTr("Go to the jobs")
            onActed: window.go("jobs")
        }
    }
}
