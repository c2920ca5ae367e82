import QtQuick
import QtQuick.Layouts
import Lapwright.Look
import Lapwright.ShopModel

// The operator's view: what to set stands in figures that are read from two metres away.
ScreenFrame {
    id: screen

    readonly property FoldingDesk desk: shop.folding
    /// On a touch panel and in a narrow window the whole width belongs to the lot at the machine.
    property bool queueShown: !Theme.touch && roomy
    readonly property bool roomy: width > 1100

    title: desk.title === "" ? qsTr("Folding") : desk.title
    detail: Theme.spoken([desk.material, desk.machine], " · ")

    Keys.onPressed: event => {
        const goesBack = event.key === Qt.Key_Left || event.key === Qt.Key_PageUp;
        const goesOn = event.key === Qt.Key_Right || event.key === Qt.Key_PageDown || event.key === Qt.Key_Space;
        if (!goesBack && !goesOn && event.key !== Qt.Key_M && event.key !== Qt.Key_Q)
            return;
        event.accepted = true;
        // A key or pedal that is held down goes on going back; it counts no second piece.
        if (goesBack)
            screen.desk.back();
        else if (event.isAutoRepeat)
            return;
        else if (goesOn)
            screen.desk.next();
        else if (event.key === Qt.Key_M)
            screen.desk.move();
        else
            screen.queueShown = !screen.queueShown;
    }

    actions: [
        ActionButton {
            visible: screen.desk.stepCount > 0
            text: screen.desk.moving ? qsTr("Stand still") : qsTr("In motion")
            onClicked: screen.desk.move()
        },
        DutyButton {
            // What was folded last may be the last there was: then this is the place to take it back.
            visible: screen.desk.stepCount === 0 && screen.desk.mayFoldAgain
            whyNot: screen.shop.whyNotMake
            text: qsTr("Fold the last again")
            sign: "redo"
            onAct: screen.desk.foldAgain()
        },
        ActionButton {
            text: screen.queueShown ? qsTr("Hide the queue") : qsTr("Show the queue")
            sign: "menu"
            onClicked: screen.queueShown = !screen.queueShown
        },
        DutyButton {
            visible: screen.desk.current !== ""
            whyNot: screen.shop.whyNotMake
            text: qsTr("Whole lot folded")
            sign: "done"
            onAct: screen.desk.lotFolded()
        }
    ]

    RowsList {
        visible: screen.queueShown || screen.desk.current === ""
        name: qsTr("Lots to fold")
        model: screen.desk.lots
        current: screen.desk.current
        emptySign: "folding"
        emptyTitle: qsTr("Nothing waits to be folded")
        emptyText: qsTr("Pieces come here when they are cut.")
        onChosen: id => screen.desk.current = id
        Layout.preferredWidth: 290
        Layout.maximumWidth: 340
        Layout.fillHeight: true
    }

    EmptyState {
        visible: screen.desk.refusal !== ""
        sign: "blocks"
        title: qsTr("This cannot be folded here")
        text: screen.desk.refusal
        Layout.fillWidth: true
        Layout.fillHeight: true
    }

    ColumnLayout {
        visible: screen.desk.stepCount > 0
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true

        RowLayout {
            spacing: Theme.wide
            Layout.fillWidth: true

            Setting {
                label: qsTr("Gauge")
                value: screen.desk.gauge
                Layout.fillWidth: true
            }

            Setting {
                label: screen.desk.action
                value: screen.desk.angle
                Layout.fillWidth: true
            }

            ColumnLayout {
                spacing: Theme.tight
                Layout.minimumWidth: 230

                RowLayout {
                    spacing: Theme.gap

                    Icon {
                        name: screen.desk.handlingSign
                        colour: Theme.accent
                        Layout.preferredWidth: Theme.displayText
                        Layout.preferredHeight: Theme.displayText
                    }

                    Words {
                        text: screen.desk.handling
                        level: Words.Title
                        Layout.fillWidth: true
                    }
                }

                RowLayout {
                    spacing: Theme.gap

                    Swatch {
                        colour: screen.desk.swatch
                        name: screen.desk.colourSide
                        Layout.preferredWidth: Theme.displayText
                        Layout.preferredHeight: Theme.displayText
                    }

                    Words {
                        text: screen.desk.colourSide
                        level: Words.Title
                        Layout.fillWidth: true
                    }
                }
            }
        }

        PictureView {
            picture: screen.desk.picture
            Layout.fillWidth: true
            Layout.fillHeight: true
        }

        RowLayout {
            visible: screen.desk.cautions !== ""
            spacing: Theme.gap
            Layout.fillWidth: true

            Icon {
                name: "warns"
                colour: Theme.warns
                Layout.preferredWidth: Theme.iconSize * 1.4
                Layout.preferredHeight: Theme.iconSize * 1.4
            }

            Words {
                text: screen.desk.cautions
                level: Words.Heading
                color: Theme.warns
                Layout.fillWidth: true
            }
        }

        RowLayout {
            spacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            Layout.fillWidth: true

            Picker {
                name: qsTr("Mark being folded")
                model: screen.desk.marks
                textRole: "title"
                currentIndex: screen.desk.marks.indexOf(screen.desk.currentMark)
                implicitHeight: Theme.touchTarget
                Layout.preferredWidth: screen.roomy ? 130 : 110
                onActivated: index => screen.desk.currentMark = screen.desk.marks.idAt(index)
            }

            Words {
                text: screen.desk.counter
                level: Words.Title
                maximumLineCount: 1
                Layout.fillWidth: true
                Layout.minimumWidth: implicitWidth
            }

            DutyButton {
                enabled: screen.desk.mayFoldAgain
                whyNot: screen.desk.stepIndex > 0 ? "" : screen.shop.whyNotMake
                text: qsTr("Again")
                sign: "redo"
                implicitHeight: Theme.touchTarget
                Accessible.name: screen.desk.stepIndex > 0 ? qsTr("This piece again from its first step") : qsTr("The last piece again")
                onAct: screen.desk.foldAgain()
            }

            DutyButton {
                whyNot: screen.shop.whyNotMake
                text: qsTr("Spoilt")
                sign: "scrap"
                kind: ActionButton.Danger
                implicitHeight: Theme.touchTarget
                onAct: screen.desk.pieceSpoilt()
            }

            IconButton {
                enabled: screen.desk.stepIndex > 0
                text: qsTr("Step before")
                sign: "back"
                implicitWidth: Theme.touchTarget
                implicitHeight: Theme.touchTarget
                onClicked: screen.desk.back()
            }

            Words {
                text: screen.desk.position
                level: Words.Heading
                horizontalAlignment: Text.AlignHCenter
                Layout.minimumWidth: implicitWidth
            }

            DutyButton {
                readonly property bool last: screen.desk.stepIndex + 1 >= screen.desk.stepCount

                whyNot: last ? screen.shop.whyNotMake : ""
                text: last ? qsTr("Piece folded") : qsTr("Next")
                sign: last ? "done" : "forward"
                kind: ActionButton.Primary
                implicitHeight: Theme.touchTarget
                Layout.minimumWidth: screen.roomy ? 160 : 120
                onAct: screen.desk.next()
            }
        }
    }

    component Setting: ColumnLayout {
        id: figure

        property string label: ""
        property string value: ""

        spacing: 0

        Words {
            text: figure.label
            level: Words.Heading
            muted: true
            maximumLineCount: 1
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.smallText
            Layout.fillWidth: true
        }

        Words {
            text: figure.value
            level: Words.Figure
            maximumLineCount: 1
            font.pixelSize: Math.max(Theme.figureText, screen.height / 7)
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.titleText
            lineHeight: 0.9
            Layout.fillWidth: true
        }
    }
}
