#include "model/settings.h"

#include "model/guarded.h"
#include "model/words.h"
#include "speech/language.h"
#include "store/settings.h"
#include "store/shops.h"
#include "store/signing_key.h"

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

QString codeOf(const store::KnownShop& shop)
{
    const auto key = documents::readPublicKey(shop.key);
    return key.ok() ? shown(documents::pairingCode(*key)) : QString();
}

} // namespace

Settings::Settings(const Tablet& tablet, QObject* parent) : QObject(parent), tablet_(tablet)
{
    reload();
}

void Settings::reload()
{
    values_ = {};
    pairingCode_.clear();
    values_.folder = usualFolder();
    read(tablet_, "metric", values_.metric);
    read(tablet_, "fraction", values_.fraction);
    read(tablet_, "left_handed", values_.leftHanded);
    read(tablet_, "theme", values_.theme);
    read(tablet_, "text_scale", values_.textScale);
    read(tablet_, "person", values_.person);
    read(tablet_, "language", values_.language);
    read(tablet_, "folder", values_.folder);
    emit changed();
    emit styleChanged();
    emit languageChanged();
}

Style Settings::style() const
{
    Style style;
    style.unit = values_.metric ? LengthUnit::Millimetres : LengthUnit::FeetInches;
    style.inchDenominator = values_.fraction;
    return style;
}

template <class T>
bool Settings::keep(const char* key, T& field, const T& value)
{
    if (field == value)
        return false;
    const bool kept =
        guarded(*this, [&] { store::setSetting(tablet_.database(), key, QVariant(value).toString()); });
    if (kept) {
        field = value;
        emit changed();
    }
    return kept;
}

void Settings::setMetric(bool metric)
{
    if (keep("metric", values_.metric, metric))
        emit styleChanged();
}

void Settings::setFraction(int fraction)
{
    const bool known = fraction == 8 || fraction == 16 || fraction == 32 || fraction == 64;
    if (keep("fraction", values_.fraction, known ? fraction : 16))
        emit styleChanged();
}

void Settings::setLeftHanded(bool left)
{
    keep("left_handed", values_.leftHanded, left);
}

void Settings::setTheme(const QString& theme)
{
    const bool known = theme == "sunlight" || theme == "light" || theme == "dark";
    keep("theme", values_.theme, known ? theme : QString("sunlight"));
}

void Settings::setTextScale(double scale)
{
    keep("text_scale", values_.textScale, std::clamp(scale, 0.9, 1.4));
}

QString Settings::pairingCode()
{
    if (pairingCode_.isEmpty())
        pairingCode_ = guarded(*this, [&] {
            return shown(documents::pairingCode(store::signingKey(tablet_.database()).publicKey()));
        });
    return pairingCode_;
}

QStringList Settings::trustedShops()
{
    return guarded(*this, [&] {
        QStringList codes;
        for (const store::KnownShop& shop : store::knownShops(tablet_.database()))
            if (shop.refusedAt.empty())
                codes << codeOf(shop);
        return codes;
    });
}

bool Settings::refuseShop(const QString& code)
{
    const bool done = guarded(*this, [&] {
        for (const store::KnownShop& shop : store::knownShops(tablet_.database()))
            if (codeOf(shop) == code)
                store::refuseShop(tablet_.database(), shop.key, tablet_.now());
    });
    emit changed();
    return done;
}

bool Settings::trustShop(const std::string& key)
{
    const bool done = guarded(*this, [&] { store::trustShop(tablet_.database(), key, tablet_.now()); });
    emit changed();
    return done;
}

void Settings::setPerson(const QString& person)
{
    keep("person", values_.person, person);
}

void Settings::setLanguage(const QString& language)
{
    if (keep("language", values_.language, language))
        emit languageChanged();
}

QStringList Settings::languages() const
{
    return QStringList{QString()} + lapwright::languages();
}

QStringList Settings::languageNames() const
{
    QStringList names;
    for (const QString& code : languages())
        names << (code.isEmpty() ? tr("As the tablet") : capital(ownNameOf(code)));
    return names;
}

void Settings::setFolder(const QString& folder)
{
    keep("folder", values_.folder, folder);
}

} // namespace lapwright::field
