// Guards: whatever an order claims otherwise than its runs say is shown (lengths, counts, girths, angles,
// hands, cuts, metal, accessories), and so is whatever a later revision changes, in words a person reads;
// equal orders differ in nothing, and neither do the last digits of two machines' arithmetic.
#include "documents/compare.h"
#include "measure/writing.h"
#include "shipped_orders.h"

#include <QtTest>

#include <functional>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

site::Run run(const char* id, site::RunKind kind, const char* trim, Length length)
{
    site::Run made;
    made.id = id;
    made.kind = kind;
    made.lengths = {{length, ""}};
    made.slope = Slope::twelfths(6);
    made.trims.emplace_back();
    made.trims.front().trim = trim;
    return made;
}

site::Job job()
{
    site::Job made;
    made.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e21";
    made.name = "Millrace Cottage";
    made.material = {"galvanised-steel", "24 ga", "Slate"};
    site::Chain eaves;
    eaves.id = "eaves";
    eaves.runs = {run("E1", site::RunKind::Eave, "eave-drip-edge", Length::feet(24)),
                  run("E2", site::RunKind::Eave, "eave-drip-edge", Length::feet(12))};
    eaves.runs[0].end = eaves.runs[1].start = site::EndKind::Mitre;
    eaves.corners = {site::SquareOutside()};
    site::Chain rake;
    rake.id = "rake";
    rake.runs = {run("R1", site::RunKind::Rake, "rake-drip-edge", Length::feet(9))};
    made.chains = {eaves, rake};
    return made;
}

const pieces::Catalogue& catalogue()
{
    static const pieces::Catalogue shipped = texts::shippedCatalogue();
    return shipped;
}

pieces::Order order(const site::Job& measured)
{
    return pieces::takeoff(measured, catalogue());
}

/// "place: sentence" of each finding.
std::vector<std::string> lines(const rules::Findings& findings)
{
    std::vector<std::string> all;
    for (const rules::Finding& finding : findings)
        all.push_back(finding.place + ": " + say(finding.statement, {}));
    return all;
}

using Falsify = void (*)(pieces::Order&);

} // namespace

Q_DECLARE_METATYPE(Falsify)

class CompareTest : public QObject {
    Q_OBJECT
private slots:
    void equalOrdersDifferInNothing()
    {
        const pieces::Order one = order(job());
        QVERIFY(one.pieces.size() >= 5 && !rules::anyBlocks(one.findings));
        QVERIFY(compareDerived(one, one).empty());
        QVERIFY(compareRevisions(one, one).empty());
        OrderDocument document{one, {}};
        document.value.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e22";
        const pieces::Order fromFile = readOrder(writeOrder(document))->value;
        QVERIFY(compareDerived(fromFile, one).empty());
        QVERIFY(compareRevisions(fromFile, one).empty());
    }
    void aFalsifiedNumberIsShown_data()
    {
        QTest::addColumn<Falsify>("falsify");
        QTest::addColumn<QString>("code");
        QTest::addColumn<QString>("line");
        const auto row = [](const char* name, const char* code, const char* line, Falsify falsify) {
            QTest::newRow(name) << falsify << code << line;
        };
        row("length", "length", "mark E1.1: length of the blank: the order says",
            [](pieces::Order& one) { one.pieces[0].blankLength += Length::inches(1); });
        row("count", "count", "mark E1.2: count: the order says 2, the runs say 1",
            [](pieces::Order& one) { one.pieces[1].count = 2; });
        row("hand", "hand", "mark E1.1: hand: the order says left, the runs say none",
            [](pieces::Order& one) { one.pieces[0].hand = pieces::Hand::Left; });
        row("girth", "girth", "profile P1, Eave drip edge: girth: the order says 1\", the runs say",
            [](pieces::Order& one) { one.profiles[0].girth = Length::inches(1); });
        row("turn", "turn", "profile P1, Eave drip edge: turn of bend 1: the order says 12°, the runs say",
            [](pieces::Order& one) { one.profiles[0].profile.bends[0].turn = Angle::degrees(12.0); });
        row("radius", "radius", "profile P1, Eave drip edge: inside radius of bend 1: the order says 1\"",
            [](pieces::Order& one) { one.profiles[0].profile.bends[0].insideRadius = Length::inches(1); });
        row("leg", "leg", "profile P1, Eave drip edge: leg 2: the order says 9\", the runs say",
            [](pieces::Order& one) { one.profiles[0].profile.legs[1].length = Length::inches(9); });
        row("legs", "legs", "profile P1, Eave drip edge: number of legs: the order says 1, the runs say",
            [](pieces::Order& one) { one.profiles[0].profile.legs.resize(1); });
        row("face", "face", "profile P1, Eave drip edge: coloured face: the order says",
            [](pieces::Order& one) {
                one.profiles[0].profile.colourFace = trim::opposite(one.profiles[0].profile.colourFace);
            });
        row("hem", "hem",
            "profile P1, Eave drip edge: hem at the start: the order says open to the left, the runs say",
            [](pieces::Order& one) {
                one.profiles[0].profile.startHem =
                    trim::Hem{trim::HemKind::Open, Length::inches(1), trim::Side::Left, Length()};
            });
        row("gauge", "material",
            "profile P1, Eave drip edge: gauge: the order says 30 ga, the runs say 24 ga",
            [](pieces::Order& one) { one.profiles[0].material.gauge = "30 ga"; });
        row("thickness", "thickness", "profile P1, Eave drip edge: thickness: the order says",
            [](pieces::Order& one) { one.profiles[0].thickness += Length::micrometres(20); });
        row("cut", "cut", "mark E2.1: point 1 of the cut at the start: the order says",
            [](pieces::Order& one) {
                for (pieces::Piece& piece : one.pieces)
                    if (piece.mark == "E2.1")
                        piece.start.cut.at(0) += Length::inches(1);
            });
        row("accessory", "accessory",
            "run E1, eave-drip-edge: ", [](pieces::Order& one) { one.accessories.front().count += 1; });
        row("missing", "missing", "mark E1.1: follows from the runs and is not in the order; it is made",
            [](pieces::Order& one) { one.pieces.erase(one.pieces.begin()); });
        row("extra", "extra", "mark X1: is in the order and does not follow from the runs; it is not made",
            [](pieces::Order& one) {
                one.pieces.push_back(one.pieces.front());
                one.pieces.back().mark = "X1";
            });
    }
    void aFalsifiedNumberIsShown()
    {
        QFETCH(Falsify, falsify);
        QFETCH(QString, code);
        QFETCH(QString, line);
        const pieces::Order derived = order(job());
        pieces::Order claimed = derived;
        falsify(claimed);
        const rules::Findings findings = compareDerived(claimed, derived);
        const std::vector<std::string> told = lines(findings);
        QCOMPARE(told.size(), std::size_t{1});
        QVERIFY2(told.front().find(line.toStdString()) == 0, told.front().c_str());
        QCOMPARE(QString::fromStdString(findings.front().code), "documents.derived." + code);
        QCOMPARE(findings.front().weight, rules::Weight::Warns);
    }
    void theGuideForCuttingOnSiteIsCompared()
    {
        site::Job fromStock = job();
        fromStock.policy = site::PiecePolicy::StockLengths;
        const pieces::Order derived = order(fromStock);
        QVERIFY(derived.siteCuts.size() > 1);
        QVERIFY(compareDerived(derived, derived).empty());
        pieces::Order claimed = derived;
        claimed.siteCuts[0].length -= Length::inches(1);
        claimed.siteCuts.pop_back();
        const std::vector<std::string> told = lines(compareDerived(claimed, derived));
        QCOMPARE(told.size(), std::size_t{2});
        QVERIFY(told[0].find("mark " + derived.siteCuts[0].mark + ": length cut on site: the order says") ==
                0);
        QVERIFY(told[1].find("mark " + derived.siteCuts.back().mark + ": follows from the runs") == 0);
    }
    void theLastDigitIsNoDifference()
    {
        const pieces::Order derived = order(job());
        pieces::Order other = derived;
        other.pieces[0].blankLength += Length::nanometres(1);
        other.profiles[0].girth += Length::nanometres(1);
        other.profiles[0].profile.bends[0].turn += Angle::degrees(1e-10);
        QVERIFY(compareDerived(other, derived).empty());
        other.profiles[0].profile.bends[0].turn += Angle::degrees(0.001);
        QCOMPARE(compareDerived(other, derived).size(), std::size_t{1});
    }
    void aLongerRunShowsItselfAndItsPieces()
    {
        site::Job changed = job();
        changed.chains[0].runs[0].lengths[0].value = Length::feet(25);
        const rules::Findings findings = compareRevisions(order(job()), order(changed));
        const std::vector<std::string> told = lines(findings);
        QCOMPARE(told.front(), std::string("run E1: length was 24' 0\", is now 25' 0\""));
        QVERIFY(told.size() > 1);
        for (const rules::Finding& finding : findings) {
            QCOMPARE(finding.weight, rules::Weight::Informs);
            QVERIFY2(finding.place.find("E2") == std::string::npos, finding.place.c_str());
        }
    }
    void whatWasMeasuredOrWantedIsNamed()
    {
        site::Job changed = job();
        changed.material.colour = "Ivory";
        changed.wantedBy = "2026-06-01";
        changed.spares = 1;
        changed.limits.stockLength = Length::feet(10);
        changed.policy = site::PiecePolicy::EqualLengths;
        changed.chains[0].corners[0] = site::InteriorAngle{Angle::degrees(135.0), "135"};
        site::Run& second = changed.chains[0].runs[1];
        second.slope = Slope::twelfths(8);
        second.end = site::EndKind::Closed;
        second.note = "behind the gutter";
        changed.chains[0].runs[0].trims[0].measures["fascia_height"] = {Length::inches(7), "7\""};
        changed.chains[0].runs[0].trims[0].lap = Length::inches(4);
        changed.tolerance.closure = Length::inches(1);
        changed.chains[1].runs[0].id = "R2";
        const std::vector<std::string> told = lines(compareRevisions(order(job()), order(changed)));
        for (const char* line :
             {"job: colour was Slate, is now Ivory", "job: date wanted was none, is now 2026-06-01",
              "job: spare pieces per profile was 0, is now 1", "job: stock length was none, is now 10' 0\"",
              "job: how runs are divided was full_and_remainder, is now equal_lengths",
              "chain eaves, corner 1: interior angle was 90°, is now 135°",
              "run E2: slope was 6 in 12, is now 8 in 12", "run E2: end was free, is now closed",
              "run E2: note was none, is now behind the gutter",
              "run E1, eave-drip-edge: fascia_height was none, is now 7\"",
              "run E1, eave-drip-edge: lap was none, is now 4\"",
              "job: tolerance of a chain was 1/4\", is now 1\"", "run R2: is new",
              "run R1: is no longer there", "mark R2.1: is new", "mark R1.1: is no longer wanted"})
            QVERIFY2(std::find(told.begin(), told.end(), line) != told.end(), line);
    }
    void aMeasureTakenAgainIsTold()
    {
        site::Job changed = job();
        changed.chains[0].runs[0].lengths.push_back({Length::feet(24), "24'"});
        QCOMPARE(lines(compareRevisions(order(job()), order(changed))),
                 std::vector<std::string>{"run E1: its repeated measures or texts as entered changed"});
    }
};

QTEST_APPLESS_MAIN(CompareTest)
#include "tst_compare.moc"
