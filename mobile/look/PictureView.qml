import QtQuick
import Lapwright.Look

// A picture to look at closely: drag, pinch, wheel, + and -, double tap or 0 for the whole of it. Says where on
// the page, in millimetres, it was tapped.
FocusScope {
    id: view

    property alias picture: canvas.picture
    property alias zoom: canvas.zoom
    property bool interactive: true

    signal tapped(point at)

    function fit() {
        canvas.fit();
    }

    implicitWidth: 320
    implicitHeight: 240
    activeFocusOnTab: interactive

    Accessible.role: Accessible.Graphic
    Accessible.name: picture.title
    Accessible.description: picture.description

    Keys.onPressed: event => {
        const middle = Qt.point(canvas.width / 2, canvas.height / 2);
        if (event.key === Qt.Key_Plus || event.key === Qt.Key_Equal)
            canvas.zoomAt(middle, 1.25);
        else if (event.key === Qt.Key_Minus)
            canvas.zoomAt(middle, 0.8);
        else if (event.key === Qt.Key_0)
            canvas.fit();
        else
            return;
        event.accepted = true;
    }

    Rectangle {
        anchors.fill: parent
        color: "transparent"
        border.color: Theme.rule
        border.width: 1
    }

    PictureCanvas {
        id: canvas

        property point panned
        property real pinched: 1

        anchors.fill: parent
        anchors.margins: 1
        clip: true
        ground: Theme.scheme === Theme.Dark || Theme.scheme === Theme.ShopFloor ? PictureCanvas.Dark
            : Theme.scheme === Theme.Sunlight ? PictureCanvas.HighContrast : PictureCanvas.Paper

        WheelHandler {
            enabled: view.interactive
            target: null
            onWheel: event => canvas.zoomAt(Qt.point(event.x, event.y), Math.pow(1.0015, event.angleDelta.y))
        }

        DragHandler {
            enabled: view.interactive
            target: null
            dragThreshold: 6
            onActiveChanged: canvas.panned = Qt.point(0, 0)
            onTranslationChanged: {
                canvas.pan(Qt.point(translation.x - canvas.panned.x, translation.y - canvas.panned.y));
                canvas.panned = Qt.point(translation.x, translation.y);
            }
        }

        PinchHandler {
            enabled: view.interactive
            target: null
            onActiveChanged: canvas.pinched = 1
            onActiveScaleChanged: {
                canvas.zoomAt(centroid.position, activeScale / canvas.pinched);
                canvas.pinched = activeScale;
            }
        }

        TapHandler {
            onTapped: (point, button) => {
                view.forceActiveFocus();
                if (tapCount === 2 && view.interactive)
                    canvas.fit();
                else
                    view.tapped(canvas.toPage(point.position));
            }
        }
    }

    FocusRing {
        visible: view.activeFocus
    }
}
