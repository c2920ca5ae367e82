import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Lapwright.Look
import Lapwright.FieldModel

// What the next chain is: one tap begins it. The chain in hand can be named or taken out here too.
Flickable {
    id: sheet

    required property JobEditor editor

    signal started
    signal closed

    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    T.ScrollBar.vertical: ScrollMark {}

    ColumnLayout {
        id: column

        width: sheet.width - Theme.space
        spacing: Theme.gap

        SectionHeader {
            text: sheet.editor.closed ? qsTr("Start another chain") : qsTr("Start a chain")
            detail: sheet.editor.closed ? qsTr("or tap a run to change it") : ""
            Layout.fillWidth: true
        }

        GridLayout {
            columns: Math.max(1, Math.floor(column.width / 205))
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            Layout.fillWidth: true
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Kinds of chain")

            Repeater {
                model: sheet.editor.chainKinds

                T.Button {
                    id: kind

                    required property string key
                    required property string words
                    required property string detail

                    implicitHeight: Theme.touchTarget + Theme.space
                    text: words
                    focusPolicy: Qt.StrongFocus
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Accessible.name: detail !== "" ? qsTr("%1, %2").arg(words).arg(detail) : words
                    onClicked: if (sheet.editor.startChain(key)) sheet.started()

                    background: Plate {
                        notch: Theme.notch
                        colour: kind.down ? Theme.quietPressed : Theme.quiet
                        edge: Theme.edge
                        edgeWidth: Theme.outline

                        FocusRing {
                            visible: kind.visualFocus
                        }
                    }

                    contentItem: Item {
                        Column {
                            anchors.verticalCenter: parent.verticalCenter
                            anchors.left: parent.left
                            anchors.right: parent.right
                            anchors.margins: Theme.space

                            Words {
                                width: parent.width
                                text: kind.words
                                font.bold: true
                                maximumLineCount: 1
                            }

                            Words {
                                width: parent.width
                                visible: text !== ""
                                text: kind.detail
                                level: Words.Small
                                muted: true
                                maximumLineCount: 2
                            }
                        }
                    }
                }
            }
        }

        SwitchRow {
            visible: sheet.editor.chain >= 0
            text: qsTr("It goes round a chimney or the like")
            checked: sheet.editor.obstacle
            Layout.fillWidth: true
            onToggled: sheet.editor.setObstacle(checked, obstacleWidth.text, cricket.checked)
        }

        RowLayout {
            visible: sheet.editor.obstacle
            spacing: Theme.gap
            Layout.fillWidth: true

            LabelledField {
                id: obstacleWidth

                label: qsTr("Its width along the ridge")
                placeholder: qsTr("as its headwall")
                text: sheet.editor.obstacleWidth
                keepsLine: false
                Layout.fillWidth: true
                onLeftField: if (sheet.editor.obstacle) sheet.editor.setObstacle(true, text, cricket.checked)
                onAccepted: sheet.editor.setObstacle(true, text, cricket.checked)
            }

            SwitchRow {
                id: cricket

                text: qsTr("Cricket above it")
                checked: sheet.editor.cricket
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignBottom
                onToggled: sheet.editor.setObstacle(true, obstacleWidth.text, checked)
            }
        }

        RowLayout {
            visible: sheet.editor.chain >= 0
            spacing: Theme.gap
            Layout.fillWidth: true

            LabelledField {
                label: qsTr("Name of the chain in hand")
                text: sheet.editor.chainName
                keepsLine: false
                Layout.fillWidth: true
                onLeftField: sheet.editor.renameChain(text)
                onAccepted: sheet.editor.renameChain(text)
            }

            ActionButton {
                text: qsTr("Remove it")
                sign: "remove"
                Layout.alignment: Qt.AlignBottom
                onClicked: {
                    sheet.editor.removeChain();
                    sheet.closed();
                }
            }
        }
    }
}
