#include "preferences.h"

#include "speech/language.h"
#include "speech/spoken.h"

#include <algorithm>

namespace lapwright::model {

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
    keep("language", language);
    emit languageChanged();
}

QStringList Preferences::languages() const
{
    return QStringList{QString()} + lapwright::languages();
}

QStringList Preferences::languageNames() const
{
    QStringList names;
    for (const QString& code : languages())
        names << (code.isEmpty() ? tr("As the computer") : ownNameOf(code));
    return names;
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
