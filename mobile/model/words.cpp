#include "model/words.h"

#include "measure/rounding.h"

#include <QCoreApplication>
#include <QLocale>

namespace lapwright::field {

namespace {

/// Phrases of the core are keys of translation; a key that has none stays as it is.
std::string translated(const std::string& text)
{
    return QCoreApplication::translate("core", text.c_str()).toStdString();
}

} // namespace

QString shown(const std::string& text)
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
    return capital(shown(say({translated(phrase.text), phrase.values}, style)));
}

QString kindWords(site::RunKind kind)
{
    return capital(shown(translated(site::wordsFor(kind))));
}

QString endWords(site::EndKind kind)
{
    return capital(shown(translated(site::wordsFor(kind))));
}

QString massWords(double kilograms, const Style& style)
{
    if (style.unit == LengthUnit::Millimetres)
        return QCoreApplication::translate("core", "%1 kg").arg(QLocale().toString(kilograms, 'f', 1));
    return QCoreApplication::translate("core", "%1 lb")
        .arg(QLocale().toString(kilograms / kilogramsPerPound, 'f', 0));
}

} // namespace lapwright::field
