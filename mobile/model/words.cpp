#include "model/words.h"

#include "drawing/text.h"
#include "speech/spoken.h"
#include "storage/finding_help.h"

namespace lapwright::field {

QString shown(const std::string& text)
{
    return QString::fromStdString(drawing::harmlessLines(text));
}

QString exact(const std::string& text)
{
    return QString::fromStdString(text);
}

std::string kept(const QString& text)
{
    return text.toStdString();
}

std::string kept(const QString& text, qsizetype most)
{
    return kept(text.trimmed().left(most));
}

QString capital(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString said(const Phrase& phrase, const Style& style)
{
    if (phrase.text.empty())
        return {};
    return capital(shown(say(spoken(phrase), style)));
}

QString named(const std::string& text)
{
    return capital(shown(spoken(text)));
}

QString kindWords(site::RunKind kind)
{
    return named(site::wordsFor(kind));
}

QString endWords(site::EndKind kind)
{
    return named(site::wordsFor(kind));
}

QString slopeWords(Slope slope)
{
    return shown(spoken(write(slope)));
}

QString helpWords(const std::string& findingCode)
{
    const auto help = storage::helpFor(findingCode);
    return help ? named(help->reason) + u' ' + named(help->remedy) : QString();
}

bool sameStyle(const Style& left, const Style& right)
{
    return left.unit == right.unit && left.inchDenominator == right.inchDenominator &&
           left.tenthsOfMillimetre == right.tenthsOfMillimetre;
}

} // namespace lapwright::field
