#include "preferences.h"

#include "speech/language.h"
#include "speech/spoken.h"

#include <algorithm>

namespace lapwright::model {

namespace {

/// Codes of the languages there are to choose from, first the empty one.
QStringList choices()
{
    return QStringList{QString()} + languages();
}

} // namespace

Preferences::Preferences(const QString& path, QObject* parent)
    : QObject(parent), settings_(path, QSettings::IniFormat)
{
}

Style Preferences::style() const
{
    Style style;
    style.unit = millimetres() ? LengthUnit::Millimetres : LengthUnit::FeetInches;
    style.translation = spoken;
    return style;
}

void Preferences::setLanguage(const QString& language)
{
    if (language == this->language())
        return;
    settings_.setValue("language", language);
    settings_.sync();
    emit languageChanged(); // before what is shown is read anew
    emit changed();
}

QStringList Preferences::languageNames() const
{
    QStringList names;
    for (const QString& code : choices())
        names << (code.isEmpty() ? tr("As the computer") : ownNameOf(code));
    return names;
}

int Preferences::languageIndex() const
{
    return std::max(0, static_cast<int>(choices().indexOf(language())));
}

void Preferences::setLanguageIndex(int index)
{
    setLanguage(choices().value(index));
}

QString Preferences::text(const char* key, const QString& otherwise) const
{
    return settings_.value(key, otherwise).toString();
}

int Preferences::number(const char* key, int otherwise, int least, int most) const
{
    return std::clamp(settings_.value(key, otherwise).toInt(), least, most);
}

void Preferences::keep(const char* key, const QVariant& value)
{
    if (settings_.value(key) == value)
        return;
    settings_.setValue(key, value);
    settings_.sync();
    emit changed();
}

} // namespace lapwright::model
