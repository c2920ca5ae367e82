import QtQuick
import Lapwright.Look

// Text in the sizes of the theme. Wraps; what has more lines than it may ends in an ellipsis.
Text {
    id: words

    enum Level {
        Small,
        Body,
        Heading,
        Title,
        Display,
        Figure
    }

    property int level: Words.Body
    property bool muted: false

    color: muted ? Theme.inkMuted : Theme.ink
    elide: maximumLineCount < 100 ? Text.ElideRight : Text.ElideNone
    font.bold: level === Words.Heading || level === Words.Title || level === Words.Figure
    font.family: Theme.family
    font.pixelSize: [Theme.smallText, Theme.bodyText, Theme.headingText, Theme.titleText, Theme.displayText,
        Theme.figureText][level]
    textFormat: Text.PlainText
    wrapMode: maximumLineCount === 1 ? Text.NoWrap : Text.Wrap

    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
