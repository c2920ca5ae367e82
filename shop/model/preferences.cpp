#include "preferences.h"

#include <algorithm>

namespace lapwright::model {

Preferences::Preferences(const QString& path, QObject* parent)
    : QObject(parent), settings_(path, QSettings::IniFormat)
{
}

void Preferences::setTicked(const QString& sheet, bool ticked)
{
    QStringList list = ticks();
    list.removeAll(sheet);
    if (ticked)
        list.append(sheet);
    settings_.setValue("ticks", list);
    settings_.sync();
}

void Preferences::forget(const QStringList& sheets)
{
    QStringList list = ticks();
    for (const QString& sheet : sheets)
        list.removeAll(sheet);
    settings_.setValue("ticks", list);
    settings_.sync();
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
