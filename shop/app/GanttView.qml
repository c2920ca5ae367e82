import QtQuick
import Lapwright.Look
import Lapwright.ShopModel

// The day of each machine. A task is taken up with a finger, the mouse or the keys and pinned where it is put down:
// left and right move it, up and down change the machine, Return pins it there, Esc leaves it where it was.
FocusScope {
    id: view

    required property ScheduleDesk desk
    /// A task may be moved.
    property bool open: true

    implicitWidth: 320
    implicitHeight: 240
    activeFocusOnTab: true

    Accessible.role: Accessible.Graphic
    Accessible.name: canvas.picture.title
    Accessible.description: canvas.picture.description

    Keys.enabled: open
    Keys.onLeftPressed: desk.nudge(-1)
    Keys.onRightPressed: desk.nudge(1)
    Keys.onUpPressed: desk.changeMachine(-1)
    Keys.onDownPressed: desk.changeMachine(1)
    Keys.onReturnPressed: desk.putDown()
    Keys.onEscapePressed: desk.leave()

    Rectangle {
        anchors.fill: parent
        color: "transparent"
        border.color: Theme.rule
        border.width: 1
    }

    PictureCanvas {
        id: canvas

        anchors.fill: parent
        anchors.margins: 1
        clip: true
        picture: view.desk.picture
        ground: Theme.scheme === Theme.Dark || Theme.scheme === Theme.ShopFloor ? PictureCanvas.Dark
            : Theme.scheme === Theme.Sunlight ? PictureCanvas.HighContrast : PictureCanvas.Paper
    }

    MouseArea {
        id: hand

        property point began

        anchors.fill: canvas
        preventStealing: true
        cursorShape: view.desk.moving !== "" ? Qt.ClosedHandCursor : Qt.ArrowCursor
        onPressed: mouse => {
            view.forceActiveFocus();
            began = Qt.point(mouse.x, mouse.y);
            view.desk.takeUp(canvas.toPage(began));
        }
        onPositionChanged: mouse => {
            // A tap with a glove is no move.
            if (view.open && (view.desk.moving !== "" || Math.hypot(mouse.x - began.x, mouse.y - began.y) > 12))
                view.desk.carry(canvas.toPage(Qt.point(mouse.x, mouse.y)));
        }
        onReleased: view.desk.putDown()
        onCanceled: view.desk.leave()
        onWheel: wheel => canvas.zoomAt(Qt.point(wheel.x, wheel.y), Math.pow(1.0015, wheel.angleDelta.y))
    }

    Plate {
        visible: view.desk.moving !== ""
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: Theme.gap
        height: where.implicitHeight + 2 * Theme.gap
        colour: Theme.rail

        Words {
            id: where

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.margins: Theme.space
            anchors.verticalCenter: parent.verticalCenter
            text: hand.pressed ? view.desk.moving : qsTr("%1 · Return pins it there, Esc leaves it").arg(view.desk.moving)
            color: Theme.onRail
            level: Words.Heading
        }
    }

    FocusRing {
        visible: view.activeFocus
    }
}
