import QtQuick
import Lapwright.Look

// The real colour of painted metal, with a cut corner. Its name always stands beside it.
Plate {
    id: swatch

    property string name: ""

    implicitWidth: Theme.iconSize * 1.4
    implicitHeight: Theme.iconSize * 1.4
    edge: Theme.ink
    edgeWidth: Theme.outline
    notch: Math.min(width, height) / 4

    Accessible.role: Accessible.Graphic
    Accessible.name: name
}
