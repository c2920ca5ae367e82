// Guards: a finding's code leads to its help, also that of a clause whose number and fact have dots of their
// own, of a clause that could not be checked, and of a shop's own rule about a fact nobody wrote about.

#include "rules/rule_set.h"
#include "storage/finding_help.h"

#include <QtTest>

using namespace lapwright;

class FindingHelp : public QObject {
    Q_OBJECT

private slots:
    void everyKindByItsCode()
    {
        const auto help = storage::helpFor("site.closure.length");
        QVERIFY(help.has_value());
        QVERIFY(help->reason.find("closed chain") != std::string::npos);
        QVERIFY(help->remedy.find("Measure again") != std::string::npos);
    }

    void clausesByWhatTheyDemand()
    {
        const auto lap = storage::helpFor("rules.irc-flashing.IRC-R905.2.8.5.lap");
        const auto flange = storage::helpFor("rules.cda-copper.CDA-A4050-gravel-stops.leg.flange");
        const auto dam = storage::helpFor("rules.cda-copper.CDA-A4050-gravel-stops.measure.dam_height");
        QVERIFY(lap && flange && dam);
        QVERIFY(lap->reason.find("lap") != std::string::npos);
        QVERIFY(flange->reason.find("flange") != std::string::npos);
        QVERIFY(dam->reason.find("dam") != std::string::npos);
    }

    void clausesNobodyCouldCheck()
    {
        const std::string code = "rules.irc-flashing.IRC-R905.2.8.5.lap";
        const auto unchecked = storage::helpFor(code + rules::uncheckedSuffix);
        QVERIFY(unchecked && unchecked->reason != storage::helpFor(code)->reason);
    }

    void aShopsOwnRules() { QVERIFY(storage::helpFor("rules.ours.1.paint_age").has_value()); }

    void noFindingNoHelp()
    {
        QVERIFY(!storage::helpFor("site.closure.moon").has_value());
        QVERIFY(!storage::helpFor("").has_value());
    }
};

QTEST_GUILESS_MAIN(FindingHelp)
#include "tst_finding_help.moc"
