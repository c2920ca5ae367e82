import QtQuick
import QtQuick.Layouts
import QtQuick.Window
import Lapwright.Look
import Lapwright.Shop
import Lapwright.ShopModel

Window {
    id: window

    required property Shop shop
    property int place: 0
    readonly property var places: [
        {name: qsTr("Arrivals"), sign: "arrivals", count: shop.waiting, source: "ArrivalsScreen.qml", desk: shop.arrivals},
        {name: qsTr("Batches"), sign: "batches", source: "BatchesScreen.qml", desk: shop.batches},
        {name: qsTr("Cutting"), sign: "cutting", source: "CuttingScreen.qml", desk: shop.cutting},
        {name: qsTr("Folding"), sign: "folding", source: "FoldingScreen.qml", desk: shop.folding},
        {name: qsTr("Schedule"), sign: "schedule", source: "ScheduleScreen.qml", desk: shop.schedule},
        {name: qsTr("Loads"), sign: "loads", source: "LoadsScreen.qml", desk: shop.loads},
        {name: qsTr("Receipts"), sign: "receipts", count: shop.remakes, source: "ReceiptsScreen.qml", desk: shop.loads},
        {name: qsTr("Stock"), sign: "stock", source: "StockScreen.qml", desk: shop.stock},
        {name: qsTr("Reference"), sign: "rules", source: "ReferenceScreen.qml", desk: shop.reference},
        {name: qsTr("Settings"), sign: "settings", source: "SettingsScreen.qml", desk: shop.code}
    ]
    readonly property bool portrait: height > width
    /// The window has shown. Only then does the first screen come into it: a person sees at once that it starts.
    readonly property bool ready: firstFrame.shown
    /// Where somebody went before that.
    property int wanted: 0

    function go(index) {
        if (index < 0 || index >= places.length)
            return;
        if (!ready) {
            wanted = index;
            return;
        }
        const before = places[place].desk;
        const next = places[index].desk;
        if (before && before !== next)
            before.active = false;
        if (next)
            next.active = true;
        place = index;
        screen.setSource(places[index].source, {shop: window.shop});
    }

    onReadyChanged: go(wanted)
    title: qsTr("%1: %2").arg(shop.name).arg(places[place].name)
    width: 1366
    height: 768
    minimumWidth: 720
    minimumHeight: 560
    color: Theme.ground
    visible: true

    FirstFrame {
        id: firstFrame
    }

    Binding {
        target: Theme
        property: "scheme"
        value: window.shop.preferences.scheme
    }
    Binding {
        target: Theme
        property: "textFactor"
        value: window.shop.preferences.textPercent / 100
    }
    Binding {
        target: Theme
        property: "touch"
        value: window.shop.preferences.touch
    }
    Binding {
        target: Theme
        property: "leftHanded"
        value: window.shop.preferences.leftHanded
    }

    Repeater {
        model: window.places.length

        Item {
            id: shortcut

            required property int index

            Shortcut {
                sequence: "Ctrl+" + (shortcut.index + 1) % 10
                onActivated: window.go(shortcut.index)
            }
        }
    }

    Shortcut {
        sequence: "Ctrl+F"
        onActivated: {
            const frame = screen.item as ScreenFrame;
            if (frame)
                frame.focusSearch();
        }
    }

    DropArea {
        anchors.fill: parent
        onDropped: drop => {
            if (!drop.hasUrls)
                return;
            window.go(0);
            window.shop.arrivals.takeFiles(drop.urls);
        }
    }

    GridLayout {
        anchors.fill: parent
        columns: window.portrait ? 1 : 2
        columnSpacing: 0
        rowSpacing: 0
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

        NavigationRail {
            portrait: window.portrait
            entries: window.places
            currentIndex: window.place
            onChosen: index => window.go(index)
            Layout.row: window.portrait ? 1 : 0
            Layout.column: 0
            Layout.fillHeight: !window.portrait
            Layout.fillWidth: window.portrait
            Layout.preferredWidth: implicitWidth
            Layout.preferredHeight: implicitHeight
        }

        ColumnLayout {
            spacing: 0
            Layout.row: 0
            Layout.column: window.portrait ? 0 : 1
            Layout.fillWidth: true
            Layout.fillHeight: true

            Loader {
                id: screen

                focus: true
                Layout.fillWidth: true
                Layout.fillHeight: true

                onLoaded: forceActiveFocus()
            }

            MessageBar {
                text: window.shop.lost
                trouble: true
                closable: false
                Layout.fillWidth: true
                Layout.margins: Theme.gap
            }

            MessageBar {
                text: window.shop.message
                trouble: window.shop.trouble
                Layout.fillWidth: true
                Layout.margins: Theme.gap
                onClosed: window.shop.closeMessage()
            }
        }
    }
}
