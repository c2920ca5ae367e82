// Guards: every shipped trim in every shipped metal on every shipped machine is planned, and the plan holds
// when it is folded again; or it is refused with a reason a person can follow: the bend, the part in the way,
// by how much, and what was found to help.
#include "fold_cases.h"

#include "documents/machine.h"
#include "documents/metal.h"
#include "fold/check.h"
#include "source_directory.h"
#include "trim/trim_library.h"

#include <QtTest>

#include <algorithm>
#include <filesystem>
#include <numbers>

using namespace foldcases;
using fold::FoldPlan;
using fold::Obstacle;
using fold::Refusal;

namespace {

std::string textOf(const std::filesystem::path& path)
{
    std::ifstream file(path);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::vector<metal::Metal> metals()
{
    std::vector<metal::Metal> all;
    for (const auto& entry :
         std::filesystem::directory_iterator(sourceDirectory() + "/shared-core/metal-library"))
        if (entry.path().extension() == ".json")
            all.push_back(documents::readMetal(textOf(entry.path())).value().value);
    return all;
}

trim::Site siteFor(const trim::Template& trim, const metal::Metal& metal, const metal::Sheet& sheet)
{
    const double slope = Slope::twelfths(6).angle().inRadians();
    const bool change = trim.suits.front() == site::RunKind::SlopeChange;
    const bool hip = trim.suits.front() == site::RunKind::Hip;
    const bool inside = trim.suits.front() == site::RunKind::InsideCorner;
    const double other = change ? Slope::twelfths(9).angle().inRadians() : slope;
    const double crease = std::acos(std::cos(slope) * std::cos(slope)); // square in plan
    trim::Site site;
    site.angles[trim::AngleMeasure::Slope] = Angle::radians(slope);
    site.angles[trim::AngleMeasure::OtherSlope] = Angle::radians(other);
    site.angles[trim::AngleMeasure::CreaseTurn] = Angle::radians(hip ? -crease : crease);
    site.angles[trim::AngleMeasure::WallTurn] =
        Angle::radians((inside ? -1.0 : 1.0) * std::numbers::pi / 2.0);
    for (const trim::MeasureDeclaration& measure : trim.measures)
        if (!measure.byDefault)
            site.measures[measure.name] = measure.least + (measure.most - measure.least) / 4;
    site.thickness = sheet.thickness;
    site.insideRadius = trim::ownInsideRadius(metal, sheet);
    return site;
}

/// What is missing in a refusal for a person to follow it; empty if nothing.
std::string notToldBy(const Refusal& refusal)
{
    const std::string said = say(refusal.statement, {LengthUnit::Millimetres, 16, 1});
    std::string missing;
    if (said.find(refusal.obstacle == Obstacle::BendingLength || refusal.obstacle == Obstacle::Capacity
                      ? "machine"
                      : nameOf(refusal.obstacle)) == std::string::npos)
        missing += "does not name the part; ";
    const bool hasAmount = refusal.overBy || refusal.overByAngle;
    const bool needsNone =
        refusal.obstacle == Obstacle::Flattening || refusal.obstacle == Obstacle::FoldsOneWayOnly;
    if (!hasAmount && !needsNone)
        missing += "does not say by how much; ";
    return missing.empty() ? missing : missing + said;
}

bool longRun()
{
    return qEnvironmentVariableIsSet("LAPWRIGHT_LONG");
}

/// The thinnest, a middle and the thickest gauge; one of them unless all are asked for.
std::vector<metal::Sheet> gaugesOf(const metal::Metal& metal, std::size_t turn)
{
    std::vector<metal::Sheet> sheets = metal.sheets;
    std::sort(sheets.begin(), sheets.end(),
              [](const metal::Sheet& a, const metal::Sheet& b) { return a.thickness < b.thickness; });
    const std::vector<metal::Sheet> three{sheets.front(), sheets[sheets.size() / 2], sheets.back()};
    return longRun() ? three : std::vector<metal::Sheet>{three[turn % 3]};
}

/// Plans it on every machine, and counts what comes of it. What is wrong, or nothing.
std::string foldEverywhere(const std::string& what, const std::string& trim, const trim::Profile& profile,
                           const metal::Metal& metal, const metal::Sheet& sheet,
                           std::map<std::string, int>& outcomes)
{
    static int checked = 0;
    const auto flat = trim::flatPattern(profile, metal, sheet);
    if (!flat) {
        ++outcomes["no flat left in a leg: " + trim];
        return {};
    }
    fold::Settings settings;
    settings.findSuggestions = false;
    for (const std::string& id : machineIds()) {
        const fold::Machine folder = machine(id);
        const std::string where = what + ", " + id + ": ";
        const auto outcome = fold::planFold(profile, *flat, metal, sheet, folder, Length::feet(4), settings);
        if (!outcome)
            return where + tell(outcome);
        if (const auto* refusal = std::get_if<Refusal>(&*outcome)) {
            ++outcomes[id + " refused: " + trim + ", " + nameOf(refusal->obstacle)];
            if (const std::string missing = notToldBy(*refusal); !missing.empty())
                return where + missing;
            continue;
        }
        ++outcomes[id + " planned"];
        const auto& plan = std::get<FoldPlan>(*outcome);
        if (!plan.feasibility.all())
            return where + "flags";
        if (!longRun() && ++checked % 8 != 0)
            continue;
        const auto check =
            fold::checkPlan(profile, *flat, metal, sheet, folder, plan, Length::feet(4), settings);
        if (!check->problems.empty() || !check->feasibility.all())
            return where + (check->problems.empty() ? "flags" : check->problems.front()) + " " +
                   tell(outcome);
    }
    return {};
}

} // namespace

class FoldLibraryTest : public QObject {
    Q_OBJECT
private slots:
    void everyTrimMetalAndMachine()
    {
        std::map<std::string, int> outcomes;
        std::size_t turn =
            0; // in turn the thinnest, a middle and the thickest gauge; all of them when asked for
        for (const auto& [id, trim] : trim_library::trims())
            for (const metal::Metal& metal : metals())
                for (const metal::Sheet& sheet : gaugesOf(metal, turn++)) {
                    const trim::Resolution resolved = trim::resolve(trim, siteFor(trim, metal, sheet));
                    const std::string what = id + ", " + metal.id + " " + sheet.gauge;
                    if (!resolved.profile)
                        ++outcomes["no profile"];
                    if (!resolved.profile)
                        continue;
                    const std::string wrong =
                        foldEverywhere(what, id, *resolved.profile, metal, sheet, outcomes);
                    QVERIFY2(wrong.empty(), wrong.c_str());
                }
        for (const auto& [what, count] : outcomes)
            qInfo("%4d %s", count, what.c_str());
        QCOMPARE(outcomes["no profile"], 0);
        QVERIFY(outcomes["long-folder-up planned"] > 50);
    }

    void shippedMachinesReadAsTheTestsReadThem()
    {
        for (const std::string& id : machineIds()) {
            const auto document =
                documents::readMachine(textOf(sourceDirectory() + "/shared-core/machines/" + id + ".json"));
            QVERIFY2(document.ok(), id.c_str());
            fold::MachineDescription plain = describe(id);
            plain.note = document->value.note;
            QVERIFY(document->value == plain);
        }
    }
};

QTEST_APPLESS_MAIN(FoldLibraryTest)
#include "tst_fold_library.moc"
