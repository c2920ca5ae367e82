// Guards: plans for published instances and for invented batches are no worse than the best known, and no
// bound passes a value that is known to be reached. Runs where LAPWRIGHT_CUTTING_DATA names a folder with the
// instances: atp (Alvarez-Valdes, Parajón, Tamarit 2002), silva (Silva, Alvelos, Valério de Carvalho 2010),
// cintra (Cintra, Miyazawa, Wakabayashi, Xavier 2008), trim-batches, and the tables of references beside
// them.
#include "cutting/checker.h"
#include "cutting/solve.h"

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QtTest>

#include <fstream>
#include <map>

using namespace lapwright;
using namespace lapwright::cutting;

namespace {

QString folder()
{
    return qEnvironmentVariable("LAPWRIGHT_CUTTING_DATA");
}

QList<QStringList> table(const QString& path, QChar separator)
{
    QList<QStringList> rows;
    QFile file(path);
    if (file.open(QIODevice::ReadOnly))
        for (const QString& line : QString::fromUtf8(file.readAll()).split('\n', Qt::SkipEmptyParts))
            rows.push_back(line.trimmed().split(separator));
    return rows;
}

struct Item {
    std::int64_t width, height, count;
};
struct Bin {
    std::int64_t width, height;
    std::optional<std::int64_t> cost;
};
struct Case {
    std::vector<Bin> bins;
    std::vector<Item> items;
};

Case readTables(const QString& stem)
{
    Case result;
    const auto bins = table(stem + "_bins.csv", ','), items = table(stem + "_items.csv", ',');
    for (qsizetype row = 1; row < bins.size(); ++row)
        result.bins.push_back(
            {bins[row][1].toLongLong(), bins[row][2].toLongLong(),
             bins[row].size() > 3 ? std::optional(std::int64_t{bins[row][3].toLongLong()}) : std::nullopt});
    for (qsizetype row = 1; row < items.size(); ++row)
        result.items.push_back(
            {items[row][1].toLongLong(), items[row][2].toLongLong(), items[row].last().toLongLong()});
    return result;
}

Case readObject(const QString& path)
{
    Case result;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return result;
    const QJsonObject object = QJsonDocument::fromJson(file.readAll()).object();
    for (const QJsonValue entry : object["Objects"].toArray())
        result.bins.push_back({entry["Length"].toInteger(), entry["Height"].toInteger(), std::nullopt});
    for (const QJsonValue entry : object["Items"].toArray())
        result.items.push_back(
            {entry["Length"].toInteger(), entry["Height"].toInteger(), entry["Demand"].toInteger()});
    return result;
}

/// The first cut horizontal: strips lie along the width, their girth is the height. Vertical: the other way
/// about.
std::optional<Problem> problemOf(const Case& data, bool horizontal, PatternClass patterns)
{
    ProblemBuilder builder;
    ShopRules rules;
    rules.patterns = patterns;
    builder.rules(rules);
    const auto put = [horizontal](std::int64_t width, std::int64_t height) {
        const Length across = Length::millimetres(horizontal ? height : width);
        return std::pair(across, Length::millimetres(horizontal ? width : height));
    };
    for (std::size_t index = 0; index < data.bins.size(); ++index) {
        const auto [width, length] = put(data.bins[index].width, data.bins[index].height);
        builder.stock({std::to_string(index), StockKind::Sheet, width, length, std::nullopt,
                       data.bins[index].cost, std::nullopt});
    }
    for (std::size_t index = 0; index < data.items.size(); ++index) {
        const auto [girth, length] = put(data.items[index].width, data.items[index].height);
        builder.blank({std::to_string(index), girth, length, data.items[index].count, false, 0, 0});
    }
    auto built = builder.build();
    return built.ok() ? std::optional<Problem>(*built) : std::nullopt;
}

Settings searching()
{
    Settings settings;
    settings.workLimit = 4'000;
    settings.fewerSetups = false;
    return settings;
}

} // namespace

class CuttingReferenceTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void twoStage_data();
    void twoStage();
    void severalSheets_data();
    void severalSheets();
    void trimBatches_data();
    void trimBatches();
};

void CuttingReferenceTest::initTestCase()
{
    if (folder().isEmpty() || !QDir(folder()).exists("two_stage_reference.tsv"))
        QSKIP("LAPWRIGHT_CUTTING_DATA names no folder with the instances");
}

void CuttingReferenceTest::twoStage_data()
{
    QTest::addColumn<QString>("name");
    QTest::addColumn<bool>("horizontal");
    QTest::addColumn<bool>("exact");
    QTest::addColumn<qlonglong>("best");
    QTest::addColumn<qlonglong>("bound");
    const auto rows = table(folder() + "/two_stage_reference.tsv", '\t');
    for (qsizetype row = 1; row < rows.size(); ++row)
        for (const bool exact : {false, true}) {
            const QStringList& line = rows[row];
            QTest::addRow("%s %s %s", qPrintable(line[0]), qPrintable(line[1]), exact ? "exact" : "non-exact")
                << line[0] << (line[1] == "H") << exact << line[exact ? 6 : 2].toLongLong()
                << line[exact ? 7 : 3].toLongLong();
        }
}

void CuttingReferenceTest::twoStage()
{
    QFETCH(QString, name);
    QFETCH(bool, horizontal);
    QFETCH(bool, exact);
    QFETCH(qlonglong, best);
    QFETCH(qlonglong, bound);
    const bool tables = QFile::exists(folder() + "/atp/" + name + "_items.csv");
    const Case data =
        tables ? readTables(folder() + "/atp/" + name) : readObject(folder() + "/silva/" + name + ".json");
    const auto problem = problemOf(data, horizontal, exact ? PatternClass::Exact : PatternClass::NonExact);
    QVERIFY(problem.has_value());
    const Plan plan = solve(*problem, searching());
    qInfo("%s %s: %lld, bound %lld, known %lld, %lld, work %lld", qPrintable(name),
          exact ? "exact" : "non-exact", static_cast<long long>(plan.value),
          static_cast<long long>(plan.bound), best, bound, static_cast<long long>(plan.work));
    QVERIFY(plan.feasibility.all());
    QVERIFY(plan.bound <= best);
    QVERIFY(plan.value >= bound);
    QVERIFY(plan.value <= best);
    QVERIFY(plan.bound >= bound);
}

void CuttingReferenceTest::severalSheets_data()
{
    QTest::addColumn<QString>("name");
    QTest::addColumn<qlonglong>("best");
    QTest::addColumn<qlonglong>("bound");
    const auto rows = table(folder() + "/cintra/best_known_2nho.csv", ',');
    for (qsizetype row = 1; row < rows.size(); ++row)
        QTest::addRow("%s", qPrintable(rows[row][0]))
            << rows[row][0].section('/', -1) << rows[row][1].toLongLong() << rows[row][2].toLongLong();
}

/// Cost at most 1.0005 of the best known, bound at least 0.9999 of the best bound.
void CuttingReferenceTest::severalSheets()
{
    QFETCH(QString, name);
    QFETCH(qlonglong, best);
    QFETCH(qlonglong, bound);
    const auto problem = problemOf(readTables(folder() + "/cintra/" + name), true, PatternClass::NonExact);
    QVERIFY(problem.has_value());
    const Plan plan = solve(*problem, searching());
    qInfo("%s: %lld, bound %lld, known %lld, %lld", qPrintable(name), static_cast<long long>(plan.value),
          static_cast<long long>(plan.bound), best, bound);
    QVERIFY(plan.feasibility.all());
    QVERIFY(plan.bound <= best);
    QVERIFY(plan.value >= bound);
    QVERIFY(static_cast<double>(plan.value) <= 1.0005 * static_cast<double>(best));
    QVERIFY(static_cast<double>(plan.bound) >= 0.9999 * static_cast<double>(bound));
}

void CuttingReferenceTest::trimBatches_data()
{
    QTest::addColumn<QString>("name");
    QTest::addColumn<bool>("exact");
    QTest::addColumn<qlonglong>("best");
    QTest::addColumn<qlonglong>("bound");
    const auto rows = table(folder() + "/trim_reference.tsv", '\t');
    for (qsizetype row = 1; row < rows.size(); ++row)
        if (rows[row][0] != "trim_100000" && rows[row][0] != "trim_20000")
            QTest::addRow("%s %s", qPrintable(rows[row][0]), qPrintable(rows[row][1]))
                << rows[row][0] << (rows[row][1] == "2e") << rows[row][2].toLongLong()
                << rows[row][3].toLongLong();
}

void CuttingReferenceTest::trimBatches()
{
    QFETCH(QString, name);
    QFETCH(bool, exact);
    QFETCH(qlonglong, best);
    QFETCH(qlonglong, bound);
    std::ifstream in((folder() + "/trim-batches/" + name + ".in").toStdString());
    std::int64_t width = 0, length = 0, kinds = 0;
    QVERIFY(in >> width >> length >> kinds);
    Case data{{{length, width, std::nullopt}}, {}};
    for (std::int64_t kind = 0; kind < kinds; ++kind) {
        std::int64_t girth = 0, along = 0, count = 0;
        in >> girth >> along >> count;
        data.items.push_back({along, girth, count});
    }
    const auto problem = problemOf(data, true, exact ? PatternClass::Exact : PatternClass::NonExact);
    QVERIFY(problem.has_value());
    const Plan plan = solve(*problem, searching());
    QVERIFY(plan.feasibility.all());
    QCOMPARE(plan.value, best);
    QCOMPARE(plan.bound, bound);
}

QTEST_APPLESS_MAIN(CuttingReferenceTest)
#include "tst_cutting_reference.moc"
