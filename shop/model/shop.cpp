#include "shop.h"

#include "acts/catalogue.h"
#include "acts/holding.h"
#include "acts/shop_stock.h"
#include "acts/words.h"
#include "storage/backup.h"
#include "storage/catalogue.h"
#include "storage/lists.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"
#include "text.h"

#include <QDateTime>

#include <chrono>
#include <exception>
#include <utility>

namespace lapwright::model {

namespace {

constexpr drawing::Colour unknownColour{176, 180, 184};

} // namespace

Result<std::unique_ptr<Shop>> Shop::open(const QString& databasePath, const QString& preferencesPath,
                                         const std::vector<std::string>& libraryFolders,
                                         std::future<Result<pieces::Catalogue>> catalogue)
{
    auto database = storage::Database::open(databasePath.toStdString());
    if (!database.ok())
        return database.errors();
    auto read = catalogue.get();
    if (!read.ok())
        return read.errors();
    return std::unique_ptr<Shop>(
        new Shop(*std::move(database), *std::move(read), databasePath, preferencesPath, libraryFolders));
}

Result<std::unique_ptr<Shop>> Shop::open(const QString& databasePath, const QString& preferencesPath,
                                         const std::vector<std::string>& libraryFolders)
{
    return open(databasePath, preferencesPath, libraryFolders, storage::loadCatalogueBeside(libraryFolders));
}

Shop::Shop(storage::Database database, pieces::Catalogue catalogue, QString databasePath,
           const QString& preferencesPath, std::vector<std::string> libraryFolders)
    : database_(std::move(database)), catalogue_(std::move(catalogue)),
      databasePath_(std::move(databasePath)), libraryFolders_(std::move(libraryFolders)),
      watch_(new DatabaseWatch(database_, databasePath_.toStdString(), this)),
      preferences_(new Preferences(preferencesPath, this)), planner_(new PlanWorker(this)),
      papers_(new Papers(*this)), arrivals_(new Arrivals(*this)), batches_(new Batches(*this)),
      cutting_(new CuttingDesk(*this)), folding_(new FoldingDesk(*this)), schedule_(new ScheduleDesk(*this)),
      loads_(new Loads(*this)), stock_(new StockDesk(*this)), reference_(new ReferenceShelf(*this)),
      code_(new ShopCode(*this))
{
    connect(preferences_, &Preferences::changed, this, &Shop::dutyChanged);
    connect(preferences_, &Preferences::changed, this, &Shop::noteChange);
    connect(watch_, &DatabaseWatch::written, this, &Shop::noteChange);
    connect(watch_, &DatabaseWatch::lostChanged, this, &Shop::lostChanged);
    attempt([this] {
        watch_->catchUp();
        readShop();
        countQueues();
    });
}

Shop::~Shop() = default;

QString Shop::name() const
{
    return name_.isEmpty() ? tr("The shop") : name_;
}

QString Shop::whyNotPlan() const
{
    return mayPlan() ? QString() : tr("This is for who plans. What you may do here is chosen in Settings.");
}

QString Shop::whyNotMake() const
{
    return mayMake() ? QString()
                     : tr("This is for who makes or plans. What you may do here is chosen in Settings.");
}

bool Shop::letsPlan()
{
    if (!mayPlan())
        tellTrouble(whyNotPlan());
    return mayPlan();
}

bool Shop::letsMake()
{
    if (!mayMake())
        tellTrouble(whyNotMake());
    return mayMake();
}

QString Shop::lost() const
{
    return watch_->lost().isEmpty()
               ? QString()
               : tr("The database does not answer (%1). Nothing is lost that was done, and what is typed stays; "
                    "it is tried again by itself.")
                     .arg(watch_->lost());
}

void Shop::closeMessage()
{
    tell({});
}

void Shop::backUp(const QUrl& file)
{
    attempt([&] {
        const auto done = storage::backUp(database_, file.toLocalFile().toStdString());
        if (!done.ok())
            return tellTrouble(done.errors());
        tell(tr("Everything is copied to %1").arg(file.toLocalFile()));
    });
}

void Shop::restore(const QUrl& file)
{
    if (!letsPlan())
        return;
    if (planner_->running())
        return tellTrouble(tr("Planning runs: stop it first"));
    const QString path = file.toLocalFile();
    const QString before =
        path + QDateTime::currentDateTime().toString(QStringLiteral(".'before-'yyyyMMdd-HHmmss"));
    act([&] {
        if (const auto kept = storage::backUp(database_, before.toStdString()); !kept.ok())
            return tellTrouble(kept.errors());
        if (const auto done = storage::restore(database_, path.toStdString()); !done.ok())
            return tellTrouble(done.errors());
        tell(tr("Everything is as in %1. What stood here before is kept in %2").arg(path, before));
    });
}

QString Shop::counted(qint64 count, const QString& what) const
{
    return said(lapwright::counted(count, what.toStdString()));
}

QString Shop::describe(const site::Material& material) const
{
    const auto metal = catalogue_.metals.find(material.metal);
    site::Material named = material;
    if (metal != catalogue_.metals.end())
        named.metal = spoken(metal->second.name);
    named.gauge = spokenWhole(material.gauge);
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
    tellTrouble(shown(errors));
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
        tellTrouble(said(failure.what()));
        watch_->look();
        return false;
    }
}

void Shop::plan(PlanWork work, const std::function<void(const PlanDone&)>& done)
{
    if (planner_->running())
        return;
    work.schedule.from = wallClock();
    work.schedule.libraryFolders = libraryFolders_;
    planner_->start(databasePath_.toStdString(), std::move(work), stamp(),
                    [this, done](const PlanWorker::Outcome& outcome) {
                        noteChange();
                        if (outcome.ok())
                            done(*outcome);
                        else
                            tellTrouble(outcome.errors());
                    });
}

void Shop::planCuts(const std::function<void(const PlanDone&)>& done)
{
    acts::PlanRequest request;
    request.settings.timeLimit = std::chrono::seconds(preferences_->planSeconds());
    request.libraryFolders = libraryFolders_;
    PlanWork work;
    work.cuts = std::move(request);
    plan(std::move(work), done);
}

void Shop::holdOrder(const std::string& order, const QString& name, bool held)
{
    if (!letsPlan())
        return;
    act([&] {
        const auto done = acts::holdOrder(database_, order, held, stamp());
        if (!done.ok())
            return tellTrouble(done.errors());
        if (!*done)
            return tellTrouble(tr("%1 is not here any more").arg(name));
        tell((held ? tr("%1 is held: no plan cuts it until it is let in") : tr("%1 is let in; plan again"))
                 .arg(name));
    });
}

void Shop::rereadLibrary()
{
    auto catalogue = storage::loadCatalogue(libraryFolders_);
    if (!catalogue.ok())
        return tellTrouble(catalogue.errors());
    catalogue_ = *std::move(catalogue);
    ++libraryVersion_;
}

void Shop::noteChange()
{
    if (!watch_->lost().isEmpty())
        return; // everything is read again when the database is back
    attempt([this] {
        watch_->catchUp();
        readShop();
        countQueues();
    });
    const std::initializer_list<Desk*> desks = {arrivals_, batches_, cutting_,   folding_, schedule_,
                                                loads_,    stock_,   reference_, code_};
    for (Desk* desk : desks)
        desk->noteChange();
    emit dataChanged();
}

void Shop::readShop()
{
    auto document = storage::stockDocument(database_);
    if (document == stockDocument_)
        return; // every station's every act comes here, and few are about the stock
    stockDocument_ = std::move(document);
    const auto stock = acts::standingStock(database_);
    if (!stock.ok() || !stock->has_value())
        return;
    colours_ = (*stock)->value.colours;
    machines_ = (*stock)->value.machines;
    name_ = shown((*stock)->value.shop);
}

void Shop::countQueues()
{
    const auto waiting = static_cast<int>(storage::countWaiting(database_));
    const auto remakes = static_cast<int>(storage::countAwaitingRemake(database_));
    if (waiting == waiting_ && remakes == remakes_)
        return;
    waiting_ = waiting;
    remakes_ = remakes;
    emit queuesChanged();
}

} // namespace lapwright::model
