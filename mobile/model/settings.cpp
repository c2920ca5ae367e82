#include "model/settings.h"

#include "store/settings.h"

#include <QDir>
#include <QStandardPaths>
#include <QVariant>

#include <algorithm>

namespace lapwright::field {

namespace {

template <class T>
void read(const Tablet& tablet, const char* key, T& field)
{
    if (const auto value = store::setting(tablet.database(), key))
        field = QVariant(*value).value<T>();
}

QString usualFolder()
{
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return documents.isEmpty() ? QDir::homePath() : documents;
}

} // namespace

Settings::Settings(const Tablet& tablet, QObject* parent)
    : QObject(parent), tablet_(tablet), folder_(usualFolder())
{
    read(tablet, "metric", metric_);
    read(tablet, "fraction", fraction_);
    read(tablet, "left_handed", leftHanded_);
    read(tablet, "theme", theme_);
    read(tablet, "text_scale", textScale_);
    read(tablet, "person", person_);
    read(tablet, "language", language_);
    read(tablet, "guide_seen", guideSeen_);
    read(tablet, "folder", folder_);
}

Style Settings::style() const
{
    Style style;
    style.unit = metric_ ? LengthUnit::Millimetres : LengthUnit::FeetInches;
    style.inchDenominator = fraction_;
    return style;
}

template <class T>
void Settings::keep(const char* key, T& field, const T& value)
{
    if (field == value)
        return;
    try {
        store::setSetting(tablet_.database(), key, QVariant(value).toString());
    } catch (const store::StoreFailure& failure) {
        emit failed(QString::fromUtf8(failure.what()));
        return;
    }
    field = value;
    emit changed();
}

void Settings::setMetric(bool metric)
{
    keep("metric", metric_, metric);
}

void Settings::setFraction(int fraction)
{
    const bool known = fraction == 8 || fraction == 16 || fraction == 32 || fraction == 64;
    keep("fraction", fraction_, known ? fraction : 16);
}

void Settings::setLeftHanded(bool left)
{
    keep("left_handed", leftHanded_, left);
}

void Settings::setTheme(const QString& theme)
{
    const bool known = theme == "sunlight" || theme == "light" || theme == "dark";
    keep("theme", theme_, known ? theme : QString("sunlight"));
}

void Settings::setTextScale(double scale)
{
    keep("text_scale", textScale_, std::clamp(scale, 0.9, 1.4));
}

void Settings::setPerson(const QString& person)
{
    keep("person", person_, person);
}

void Settings::setLanguage(const QString& language)
{
    keep("language", language_, language);
}

void Settings::setGuideSeen(bool seen)
{
    keep("guide_seen", guideSeen_, seen);
}

void Settings::setFolder(const QString& folder)
{
    keep("folder", folder_, folder);
}

} // namespace lapwright::field
