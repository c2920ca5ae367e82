#include "shop.h"

#include "acts/catalogue.h"
#include "acts/shop_stock.h"
#include "acts/words.h"
#include "storage/catalogue.h"
#include "text.h"

#include <QDateTime>

#include <exception>
#include <utility>

namespace lapwright::model {

namespace {

/// How often other stations' work on the same database is looked for, milliseconds.
constexpr int watchEvery = 700;

constexpr drawing::Colour unknownColour{176, 180, 184};

} // namespace

Result<std::unique_ptr<Shop>> Shop::open(const QString& databasePath, const QString& preferencesPath,
                                         const std::vector<std::string>& libraryFolders)
{
    auto database = storage::Database::open(databasePath.toStdString());
    if (!database.ok())
        return database.errors();
    auto catalogue = storage::loadCatalogue(libraryFolders);
    if (!catalogue.ok())
        return catalogue.errors();
    return std::unique_ptr<Shop>(
        new Shop(*std::move(database), *std::move(catalogue), databasePath, preferencesPath, libraryFolders));
}

Shop::Shop(storage::Database database, pieces::Catalogue catalogue, QString databasePath,
           const QString& preferencesPath, std::vector<std::string> libraryFolders)
    : database_(std::move(database)), catalogue_(std::move(catalogue)),
      databasePath_(std::move(databasePath)), libraryFolders_(std::move(libraryFolders)),
      preferences_(new Preferences(preferencesPath, this)), arrivals_(new Arrivals(*this)),
      batches_(new Batches(*this)), cutting_(new CuttingDesk(*this)), folding_(new FoldingDesk(*this)),
      schedule_(new ScheduleDesk(*this)), loads_(new Loads(*this)), stock_(new StockDesk(*this)),
      reference_(new ReferenceShelf(*this))
{
    connect(preferences_, &Preferences::changed, this, &Shop::dutyChanged);
    connect(preferences_, &Preferences::changed, this, &Shop::noteChange);
    connect(&watch_, &QTimer::timeout, this, &Shop::lookForChanges);
    attempt([this] {
        changesSeen_ = database_.dataVersion();
        readColours();
    });
    watch_.start(watchEvery);
}

Shop::~Shop() = default;

QString Shop::name() const
{
    return name_.isEmpty() ? tr("The shop") : name_;
}

void Shop::closeMessage()
{
    tell({});
}

QString Shop::counted(qint64 count, const QString& what) const
{
    return shown(lapwright::counted(count, what.toStdString()));
}

QString Shop::describe(const site::Material& material) const
{
    const auto metal = catalogue_.metals.find(material.metal);
    site::Material named = material;
    if (metal != catalogue_.metals.end())
        named.metal = metal->second.name;
    return shown(acts::describe(named));
}

schedule::Moment Shop::wallClock()
{
    const QDateTime now = QDateTime::currentDateTime();
    return schedule::momentOf({now.date().year(), now.date().month(), now.date().day()},
                              schedule::Duration::seconds(now.time().msecsSinceStartOfDay() / 1000));
}

storage::Stamp Shop::stamp() const
{
    return {QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString(),
            preferences_->station().toStdString(), preferences_->person().toStdString()};
}

drawing::Colour Shop::colourOf(const std::string& name) const
{
    const auto found = colours_.find(name);
    if (found == colours_.end())
        return unknownColour;
    const QColor colour(shown(found->second));
    return {static_cast<std::uint8_t>(colour.red()), static_cast<std::uint8_t>(colour.green()),
            static_cast<std::uint8_t>(colour.blue())};
}

QColor Shop::swatchOf(const std::string& name) const
{
    const drawing::Colour colour = colourOf(name);
    return QColor(colour.red, colour.green, colour.blue);
}

void Shop::tell(const QString& message)
{
    message_ = message;
    trouble_ = false;
    emit messageChanged();
}

void Shop::tellTrouble(const QString& message)
{
    message_ = message;
    trouble_ = true;
    emit messageChanged();
}

void Shop::tellTrouble(const std::vector<Error>& errors)
{
    QStringList lines;
    for (const Error& error : errors)
        lines.append(shown(error.sentence()));
    tellTrouble(lines.join(u'\n'));
}

bool Shop::act(const std::function<void()>& work)
{
    const bool done = attempt(work);
    noteChange();
    return done;
}

bool Shop::attempt(const std::function<void()>& work)
{
    try {
        work();
        return true;
    } catch (const std::exception& failure) {
        tellTrouble(QString::fromUtf8(failure.what()));
        return false;
    }
}

void Shop::noteChange()
{
    attempt([this] {
        changesSeen_ = database_.dataVersion();
        readColours();
    });
    const std::initializer_list<Desk*> desks = {arrivals_, batches_, cutting_, folding_,
                                                schedule_, loads_,   stock_,   reference_};
    for (Desk* desk : desks)
        desk->noteChange();
    emit dataChanged();
}

void Shop::readColours()
{
    const auto stock = acts::standingStock(database_);
    if (!stock.ok() || !stock->has_value())
        return;
    colours_ = (*stock)->value.colours;
    name_ = shown((*stock)->value.shop);
}

void Shop::lookForChanges()
{
    attempt([this] {
        if (database_.dataVersion() != changesSeen_)
            noteChange();
    });
}

} // namespace lapwright::model
