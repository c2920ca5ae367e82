#include "preferences.h"

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
    return style;
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
