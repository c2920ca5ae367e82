// Guards: many stations work at once, each a process of its own, while the server crashes and starts again,
// over a slow link that breaks again and again, while the line falls silent without breaking, or on one file:
// each goes on by itself; what each was told is done is what the log says, no more and no less; nothing is
// cut twice, no correction of the stock is lost, and the database is sound at the end. LAPWRIGHT_LONG=1 makes
// a longer day of it.
#include "acts/incoming.h"
#include "acts/loading.h"
#include "acts/making.h"
#include "acts/planning.h"
#include "acts/shop_stock.h"
#include "documents/cut.h"
#include "documents/shipped_orders.h"
#include "documents/shop.h"
#include "storage/databases.h"
#include "storage/health.h"
#include "storage/lists.h"
#include "storage/own_loopback.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"
#include "storage/slow_and_broken_link.h"

#include <QCoreApplication>

#include <cstdio>
#include <memory>

using namespace lapwright;
using schedule::PieceState;
using storage::Database;
using storage::WhenLost;
using storage::WhenMissing;

namespace {

const int houses = qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? 30 : 3;
constexpr int corrections = 5; ///< of its own rack, by each station

enum class Fault { None, Crashes, Breaks, FallsSilent };

bool hasOwnLoopback = false; ///< set before the tests begin

storage::Stamp at(const std::string& station)
{
    return {"2026-01-05T08:00:00Z", station, ""};
}

/// What a station was told is done.
struct Told {
    std::int64_t taken = 0;  ///< orders
    std::int64_t cut = 0;    ///< plans
    std::int64_t folded = 0; ///< pieces
    std::int64_t loaded = 0; ///< pieces

    [[nodiscard]] static Told readFrom(const QList<QByteArray>& words)
    {
        return {words[0].toLongLong(), words[1].toLongLong(), words[2].toLongLong(), words[3].toLongLong()};
    }
    Told& operator+=(const Told& other)
    {
        taken += other.taken;
        cut += other.cut;
        folded += other.folded;
        loaded += other.loaded;
        return *this;
    }
};

storage::IncomingOrder incomingOf(const std::string& text)
{
    const auto order = documents::readOrder(text).value();
    return acts::incoming(order, text, order.value);
}

std::string rackOf(const std::string& station)
{
    return "rack of " + station;
}

void takeIn(const Database& database, const QString& folder, const std::string& name, Told& told)
{
    const QDir orders(folder);
    for (const QString& file : orders.entryList({"*.json"}, QDir::Files, QDir::Name)) {
        const auto order = incomingOf(texts::read(orders.filePath(file)));
        if (storage::receiveOrder(database, order, at(name), false).outcome ==
            storage::Arrival::Outcome::Taken)
            ++told.taken;
    }
}

void makeAll(const Database& database, const std::string& name, Told& told)
{
    while (true) {
        const auto plans = storage::waitingPlans(database);
        for (const storage::StoredPlan& plan : plans) {
            const auto batch = acts::cutPlan(database, plan.id, at(name));
            if (batch.ok() && batch->errors.empty())
                ++told.cut;
        }
        const auto cut = storage::piecesIn(database, PieceState::Cut);
        for (const storage::PieceInState& piece : cut)
            if (acts::foldSome(database, {piece.order, piece.piece.mark}, 1, at(name)).ok())
                ++told.folded;
        if (plans.empty() && cut.empty())
            return;
    }
}

/// One station's day.
int work(const std::string& address, const QString& orders, const std::string& name)
{
    const Database database = Database::open(address, WhenMissing::Refuse, WhenLost::Wait).value();
    Told told;
    takeIn(database, orders, name, told);
    for (std::int64_t count = 1; count <= corrections; ++count)
        (void)acts::correctStock(database, {rackOf(name), count, std::nullopt, "counted"}, at(name)).value();
    makeAll(database, name, told);
    if (const auto load = acts::makeLoad(database, "truck of " + name, at(name)))
        told.loaded = schedule::totalsOf(*load).pieces;
    std::printf("%lld %lld %lld %lld\n", static_cast<long long>(told.taken), static_cast<long long>(told.cut),
                static_cast<long long>(told.folded), static_cast<long long>(told.loaded));
    return 0;
}

std::string stationName(int number)
{
    return "station " + std::to_string(number);
}

/// Sheets of every colour, and a rack for each station to count.
schedule::ShopStock stockFor(const site::Material& material, int stations)
{
    schedule::ShopStock stock;
    const auto add = [&](std::string key, const std::string& colour, std::int64_t count) {
        schedule::StockItem item{{material.metal, material.gauge, colour}, {}};
        item.stock.key = std::move(key);
        item.stock.kind = cutting::StockKind::Sheet;
        item.stock.width = Length::inches(48);
        item.stock.length = Length::inches(126);
        item.stock.count = count;
        stock.items.push_back(item);
    };
    for (int house = 0; house < houses; ++house)
        add("sheets " + std::to_string(house), "colour " + std::to_string(house), 50);
    for (int station = 0; station < stations; ++station)
        add(rackOf(stationName(station)), "uncut", 100);
    stock.machines = {"long-folder-up"};
    return stock;
}

} // namespace

Q_DECLARE_METATYPE(Fault)

class StationsUnderFaultsTest : public tests::OnBothDatabases {
    Q_OBJECT

private slots:
    void aDayOfManyStations_data()
    {
        QTest::addColumn<int>("stations");
        QTest::addColumn<Fault>("fault");
        QTest::newRow("one file") << 8 << Fault::None;
        QTest::newRow("the server crashes") << 16 << Fault::Crashes;
        // Writers wait for one another: over a slow link every station more makes the day longer for all.
        QTest::newRow("a slow link that breaks") << 4 << Fault::Breaks;
        QTest::newRow("the line falls silent") << 16 << Fault::FallsSilent;
    }
    void aDayOfManyStations()
    {
        QFETCH(int, stations);
        QFETCH(Fault, fault);
        if ((fault != Fault::None) != onServer())
            return;
        if (fault == Fault::FallsSilent && !hasOwnLoopback)
            QSKIP("this system lets nobody have a network of its own");
        const std::string address = freshAddress();
        const Database database = Database::open(address, WhenMissing::Make, WhenLost::Wait).value();
        makeReady(database, stations);
        const std::int64_t pieces = storage::shopCounts(database).of(PieceState::Ordered);
        const auto plans = static_cast<std::int64_t>(storage::waitingPlans(database).size());
        QCOMPARE(plans, std::int64_t{houses});
        const auto expected = stockOnceCut(database, stations);

        std::unique_ptr<tests::SlowAndBrokenLink> link;
        QString through = QString::fromStdString(address);
        constexpr int breaks = 40;
        if (fault == Fault::Breaks) {
            constexpr qint64 mostBytes = 60'000;
            link = std::make_unique<tests::SlowAndBrokenLink>(server().port(), std::chrono::milliseconds(1),
                                                              breaks, mostBytes);
            through.replace(QString::number(server().port()), QString::number(link->port()));
        }
        start(stations, through);
        int ended = 0;
        const auto foldedYet = [&database] { return storage::shopCounts(database).of(PieceState::Folded); };
        if (fault == Fault::Crashes)
            for (const std::int64_t enough : {pieces / 4, pieces / 2}) {
                QTRY_VERIFY_WITH_TIMEOUT(foldedYet() >= enough, 300'000);
                QVERIFY(server().restart());
                ++ended;
            }
        if (fault == Fault::FallsSilent) {
            QTRY_VERIFY_WITH_TIMEOUT(foldedYet() >= pieces / 4, 300'000);
            QVERIFY(letAllBeSilent());
        }
        Told told;
        for (const auto& process : processes_) {
            QTRY_COMPARE_WITH_TIMEOUT(process->state(), QProcess::NotRunning, 300'000);
            QCOMPARE(process->exitStatus(), QProcess::NormalExit);
            QCOMPARE(process->exitCode(), 0);
            told += Told::readFrom(process->readAllStandardOutput().trimmed().split(' '));
        }
        if (link) {
            QVERIFY(link->connections() > breaks);
            ended = link->connections() - stations; // each makes one, and another after each break
        }
        if (fault == Fault::FallsSilent)
            ended = connectionsMade(database) - stations;
        QVERIFY(ended >= 2 || !onServer());

        QCOMPARE(told.taken, std::int64_t{houses});
        QCOMPARE(told.cut, plans);
        QCOMPARE(told.folded, pieces);
        QCOMPARE(told.loaded, pieces);
        everyPieceIsLoadedOnce(database, pieces);
        QCOMPARE(countsOf(database), expected);
        qInfo("%d stations, %lld pieces, %d times cut off", stations, static_cast<long long>(pieces), ended);
    }

private:
    using Counts = std::map<std::string, std::int64_t>;

    static void everyPieceIsLoadedOnce(const Database& database, std::int64_t pieces)
    {
        const schedule::PieceCounts counts = storage::shopCounts(database);
        QCOMPARE(counts.of(PieceState::Loaded), pieces);
        QCOMPARE(counts.of(PieceState::Ordered), pieces); // of the orders that came meanwhile
        storage::Rows folded = database.query("SELECT SUM(count) FROM piece_events WHERE state = 'folded'");
        QVERIFY(folded.next());
        QCOMPARE(folded.number(0), pieces);
        const storage::Health health = storage::examine(database);
        for (const Error& error : health.damage)
            qWarning("%s", error.sentence().c_str());
        QVERIFY(health.sound());
    }

    /// Orders taken in and planned, as many more lying ready to be taken in, and stock.
    void makeReady(const Database& database, int stations)
    {
        const site::Job job = documents::readJob(texts::read(QString::fromStdString(sourceDirectory()) +
                                                             "/tests/command/cases/alder.job.json"))
                                  ->value;
        const pieces::Catalogue catalogue = texts::shippedCatalogue();
        QVERIFY(QDir(filePath("orders")).mkpath("."));
        for (int house = 0; house < houses; ++house) {
            site::Job one = job;
            one.material.colour = "colour " + std::to_string(house);
            one.address.clear();
            documents::OrderDocument order = texts::orderOf(one, catalogue);
            order.value.id.replace(0, 8, std::to_string(10'000'000 + house));
            (void)storage::receiveOrder(database, incomingOf(documents::writeOrder(order)), at("office"),
                                        false);
            order.value.id.replace(0, 8, std::to_string(20'000'000 + house));
            QFile later(filePath("orders/" + QString::number(house) + ".json"));
            QVERIFY(later.open(QIODevice::WriteOnly));
            later.write(QByteArray::fromStdString(documents::writeOrder(order)));
        }
        acts::PlanRequest request;
        request.stock = documents::Document<schedule::ShopStock>{stockFor(job.material, stations), {}};
        request.settings.workLimit = 100;
        const auto planned = acts::planAll(database, request, at("office"));
        QVERIFY2(planned.ok(), planned.ok() ? "" : planned.errors().front().sentence().c_str());
    }

    /// Sheets on each rack.
    [[nodiscard]] static Counts countsOf(const Database& database)
    {
        Counts counts;
        const auto stock = acts::standingStock(database).value();
        for (const schedule::StockItem& item : stock->value.items)
            if (item.stock.key.find("R") != 0)
                counts[item.stock.key] = item.stock.count.value_or(0);
        return counts;
    }
    /// The same once every plan is cut, and every station has counted its rack.
    [[nodiscard]] static Counts stockOnceCut(const Database& database, int stations)
    {
        Counts counts = countsOf(database);
        for (const storage::StoredPlan& stored : storage::waitingPlans(database)) {
            const documents::CutPlan plan = documents::readCutPlan(stored.document)->value;
            for (const cutting::Pattern& pattern : plan.plan.patterns)
                counts[plan.problem.stocks[pattern.stock].key] -= pattern.count;
        }
        for (int station = 0; station < stations; ++station)
            counts[rackOf(stationName(station))] = corrections;
        return counts;
    }

    void start(int stations, const QString& address)
    {
        processes_.clear();
        for (int station = 0; station < stations; ++station) {
            processes_.push_back(std::make_unique<QProcess>());
            processes_.back()->setProcessChannelMode(QProcess::ForwardedErrorChannel);
            processes_.back()->start(
                QCoreApplication::applicationFilePath(),
                {"--work", address, filePath("orders"), QString::fromStdString(stationName(station))});
        }
    }

    /// For longer than a connection waits for an answer.
    [[nodiscard]] static bool letAllBeSilent()
    {
        constexpr unsigned long silence = 40;
        if (!tests::letLoopbackSpeak(false))
            return false;
        QThread::sleep(silence);
        return tests::letLoopbackSpeak(true);
    }
    [[nodiscard]] static int connectionsMade(const Database& database)
    {
        storage::Rows rows =
            database.query("SELECT sessions FROM pg_stat_database WHERE datname = current_database()");
        return rows.next() ? static_cast<int>(rows.number(0)) : 0;
    }

    std::vector<std::unique_ptr<QProcess>> processes_;
};

int main(int argc, char** argv)
{
    if (argc < 2 || QByteArray(argv[1]) != "--work")
        hasOwnLoopback = tests::takeOwnLoopback();
    QCoreApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 5 && arguments[1] == "--work")
        return work(arguments[2].toStdString(), arguments[3], arguments[4].toStdString());
    StationsUnderFaultsTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_stations_under_faults.moc"
