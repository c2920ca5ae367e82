// Guards: every shipped trim is taken off on every kind of run it suits, in every shipped metal, with every
// shipped rule set; rules that ask for movement joints are heard.
#include "documents/catalogue.h"
#include "invented_jobs.h"
#include "measure/writing.h"
#include "pieces/checker.h"
#include "rules/facts.h"
#include "site/run_kind.h"
#include "source_directory.h"

#include <QDir>
#include <QtTest>

#include <algorithm>
#include <set>

using namespace invented;

namespace {

pieces::Catalogue shipped()
{
    lapwright::documents::CatalogueBuilder builder;
    for (const char* folder : {"metal-library", "trim-library", "rule-sets"}) {
        const QDir directory(QString::fromStdString(sourceDirectory() + "/shared-core/") + folder);
        for (const QString& name : directory.entryList({"*.json"})) {
            QFile file(directory.filePath(name));
            if (file.open(QIODevice::ReadOnly))
                builder.add(name.toStdString(), file.readAll().toStdString());
        }
    }
    const auto built = builder.build();
    if (!built)
        qFatal("%s", built.errors().front().sentence().c_str());
    return *built;
}

/// A run of the kind, 25 ft long, with all the trim asks for.
site::Run runFor(const trim::Template& trim, site::RunKind kind)
{
    site::Run made = run("R1", kind, Length::feet(25), trim.id);
    made.slope.reset();
    if (site::asksForSlope(kind))
        made.slope = Slope::twelfths(6);
    if (site::asksForOtherSlope(kind))
        made.otherSlope = Slope::twelfths(9);
    made.courseExposure = Length::inches(5);
    for (const trim::MeasureDeclaration& asked : trim.measures)
        if (!asked.byDefault)
            made.trims[0].measures[asked.name] = measured((asked.least + asked.most) / 2);
    return made;
}

/// A value of the type that no take-off gives.
rules::Fact impossible(rules::FactType type)
{
    switch (type) {
    case rules::FactType::Text:
        return std::string("nowhere");
    case rules::FactType::YesNo:
        return false;
    case rules::FactType::Count:
        return std::int64_t{-1};
    case rules::FactType::Length:
        return -Length::feet(1);
    case rules::FactType::Angle:
        return Angle::degrees(-1000.0);
    case rules::FactType::Slope:
        return Slope::twelfths(11'999);
    }
    return {};
}

/// One clause for each fact, numbered by its name, which is not met wherever the fact is given.
rules::RuleSet askingForAll()
{
    using Comparison = rules::Condition::Comparison;
    rules::RuleSet set;
    set.id = "all";
    for (const rules::FactName& fact : rules::factNames) {
        rules::Clause clause;
        clause.number = std::string(fact.name);
        const bool yesNo = fact.type == rules::FactType::YesNo;
        // Yes or no has no third value: both are asked for, and one is not met.
        for (const rules::Fact& value :
             yesNo ? std::vector<rules::Fact>{true, false} : std::vector<rules::Fact>{impossible(fact.type)})
            clause.demands.push_back({Comparison::Equal, clause.number, {value}});
        set.clauses.push_back(std::move(clause));
    }
    return set;
}

bool isUnchecked(const rules::Finding& finding)
{
    const std::string suffix = rules::uncheckedSuffix;
    return finding.code.size() >= suffix.size() &&
           finding.code.compare(finding.code.size() - suffix.size(), suffix.size(), suffix) == 0;
}

QString told(const pieces::Order& order)
{
    QString text;
    for (const rules::Finding& finding : order.findings)
        text += QString::fromStdString(finding.code + " at " + finding.place + ": " +
                                       lapwright::say(finding.statement, {}) + "\n");
    return text;
}

} // namespace

class ShippedData : public QObject {
    Q_OBJECT
private slots:
    void everyTrimIsTakenOff()
    {
        const pieces::Catalogue data = shipped();
        QVERIFY(data.trims.size() >= 20 && data.metals.size() >= 5 && data.ruleSets.size() >= 3);
        std::size_t orders = 0, findings = 0;
        for (const auto& [metalId, metal] : data.metals)
            for (const auto& [trimId, trim] : data.trims)
                for (const site::RunKind kind : trim.suits) {
                    site::Job job = jobOf({alone(runFor(trim, kind))});
                    job.material = {metalId, metal.sheets.front().gauge, "slate grey"};
                    for (const auto& [id, set] : data.ruleSets)
                        job.ruleSets.push_back(id);
                    const pieces::Order order = pieces::takeoff(job, data);
                    const std::string what =
                        trimId + " on " + site::wordsFor(kind) + " in " + metalId + ":\n";
                    QVERIFY2(!order.pieces.empty(), (what + told(order).toStdString()).c_str());
                    QVERIFY(pieces::checkPieces(order, data).empty());
                    for (const rules::Finding& finding : order.findings) {
                        const std::string said = lapwright::say(finding.statement, {});
                        QVERIFY2(said.find('{') == std::string::npos, said.c_str());
                        // What, and unless it only informs, what to do.
                        QVERIFY2(!said.empty() && (finding.weight == rules::Weight::Informs ||
                                                   !finding.remedy.text.empty()),
                                 finding.code.c_str());
                    }
                    findings += order.findings.size();
                    ++orders;
                }
        qInfo("%zu orders with %zu findings", orders, findings);
        QVERIFY(orders > 100);
    }
    void everyFactIsGivenByTheTakeOff()
    {
        // A clause about a fact that nothing fills could never be heard.
        const pieces::Catalogue data = shipped();
        std::set<std::string> given;
        for (const auto& [id, trim] : data.trims)
            for (const site::RunKind kind : trim.suits) {
                site::Chain chain = alone(runFor(trim, kind));
                chain.obstacle = site::Obstacle{measured(Length::inches(32)), true};
                site::Job job = jobOf({chain});
                job.velocityPressurePsf = 20;
                job.ruleSets = {"all"};
                pieces::Catalogue asking = data;
                asking.ruleSets["all"] = askingForAll();
                for (const rules::Finding& finding : pieces::takeoff(job, asking).findings)
                    if (finding.clause && !isUnchecked(finding))
                        given.insert(finding.clause->number);
            }
        for (const rules::FactName& fact : rules::factNames)
            QVERIFY2(given.count(std::string(fact.name)) > 0, fact.name.data());
    }
    void theLesserWingOfACapCounts()
    {
        // New Zealand code of practice (metalroofing.org.nz), cover C1: a ridge cap covers 130 mm each way.
        const pieces::Catalogue data = shipped();
        const auto tooNarrow = [&](const char* wing, int millimetres) {
            site::Run ridge = runFor(data.trims.at("ridge-cap"), site::RunKind::Ridge);
            ridge.trims[0].legs[wing] = Length::millimetres(millimetres);
            site::Job job = jobOf({alone(ridge)});
            job.material = {"galvanised-steel", "26 ga", ""};
            job.ruleSets = {"trade-manuals"};
            std::size_t found = 0;
            for (const rules::Finding& finding : pieces::takeoff(job, data).findings)
                found += finding.code.find("roof_width") != std::string::npos ? 1 : 0;
            return found;
        };
        for (const char* wing : {"first_wing", "second_wing"}) {
            QCOMPARE(tooNarrow(wing, 129), std::size_t{1});
            QCOMPARE(tooNarrow(wing, 130), std::size_t{0});
        }
    }
    void copperAndAluminiumGetMovementJoints()
    {
        // UFGS 07600 3.1.10 and 3.1.26: copper every 40 ft, so 100 ft have 2 joints; aluminium gravel stops
        // every 12 ft, so 31 ft have 3.
        const pieces::Catalogue data = shipped();
        const auto joints = [&](const char* metal, Length length) {
            site::Run edge = runFor(data.trims.at("gravel-edge"), site::RunKind::GravelEdge);
            edge.lengths = {measured(length)};
            site::Job job = jobOf({alone(edge)});
            job.material = {metal, data.metals.at(metal).sheets.front().gauge, ""};
            for (const auto& [id, set] : data.ruleSets)
                job.ruleSets.push_back(id);
            std::int64_t count = 0;
            for (const pieces::Accessory& accessory : pieces::takeoff(job, data).accessories)
                if (accessory.name == "movement joint")
                    count += accessory.count;
            return count;
        };
        QCOMPARE(joints("copper", Length::feet(100)), std::int64_t{2});
        QCOMPARE(joints("aluminium-3105", Length::feet(31)), std::int64_t{3});
        QCOMPARE(joints("galvanised-steel", Length::feet(100)), std::int64_t{0});
    }
};

QTEST_APPLESS_MAIN(ShippedData)
#include "tst_shipped_data.moc"
