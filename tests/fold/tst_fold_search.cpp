// Guards: the search finds exactly what trying every sequence finds, cost and feasibility; and a plan that is
// folded again by the checker's own code makes the profile. LAPWRIGHT_LONG=1 takes 10 000 profiles on every
// machine, half an hour, for which QtTest needs QTEST_FUNCTION_TIMEOUT=7200000.
#include "fold/steps.h"
#include "fold_cases.h"

#include "fold/blank.h"
#include "fold/check.h"
#include "fold/search.h"
#include "fold/two_goes.h"

#include <QtTest>

#include <algorithm>
#include <bit>
#include <limits>
#include <map>
#include <memory>
#include <set>

using namespace foldcases;
using fold::Action;
using fold::FoldPlan;
using fold::FoldStep;
using fold::Placement;

namespace {

constexpr std::int64_t impossible = std::numeric_limits<std::int64_t>::max();

std::size_t scaledCount(std::size_t usual, std::size_t longRun)
{
    return qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? longRun : usual;
}

/// A bend bent partly first, and the blank as it stands then.
struct InTwoGoes {
    InTwoGoes(const fold::Blank& blank, const fold::Machine& machine, const fold::Settings& settings,
              std::size_t bend, const fold::FoldLine& partly)
        : line(bend), bent(blank)
    {
        bent.lines[bend] = partly;
        checker = std::make_unique<fold::StepChecker>(bent, machine, 0, settings);
    }
    std::size_t line;
    fold::Blank bent;
    std::unique_ptr<fold::StepChecker> checker;
};

/// Every sequence, end and face, with the time added up from the settings directly. A sequence is given up
/// only when it has taken longer than the best whole one, even if every bend left took no more than its fold;
/// or, with a bend in two goes, when what it has made was found to lead nowhere before.
class EverySequence {
public:
    EverySequence(fold::StepChecker& steps, const fold::Machine& machine, const fold::Settings& settings,
                  double kilograms, Length length)
        : steps_(steps), machine_(machine), settings_(settings),
          lift_(std::llround(kilograms * static_cast<double>(settings.times.perKilogram) +
                             inMetres(length) * static_cast<double>(settings.times.perMetre)))
    {
    }
    /// `twoGoes` none: every bend in one go.
    std::int64_t least(InTwoGoes* twoGoes)
    {
        twoGoes_ = twoGoes;
        best_ = impossible;
        hopeless_.clear();
        follow(0, Stage::Before, {}, 0);
        return best_;
    }

private:
    enum class Stage { Before, Between, After };
    struct At {
        Placement placement;
        Length setting;
        double angle = 0.0;
    };
    struct Move {
        fold::StepChecker& checker;
        fold::Made others;
        std::size_t line;
        Placement placement;
    };

    /// Whether any way led to a whole piece.
    bool follow(fold::Made made, Stage stage, const std::optional<At>& at, std::int64_t soFar)
    {
        const auto left = static_cast<std::int64_t>(steps_.lineCount()) - std::popcount(made);
        if (best_ != impossible && soFar + left * settings_.times.fold >= best_)
            return true;
        if (left == 0 && (twoGoes_ == nullptr || stage == Stage::After)) {
            best_ = soFar;
            return true;
        }
        const std::pair<fold::Made, Stage> here{made, stage};
        if (twoGoes_ != nullptr && hopeless_.count(here) != 0)
            return false;
        bool whole = false;
        for (std::size_t line = 0; line < steps_.lineCount(); ++line)
            for (const fold::End end : {fold::End::Start, fold::End::End})
                for (const trim::Side up : {trim::Side::Left, trim::Side::Right})
                    whole = tryMove(made, stage, line, {end, up}, at, soFar) || whole;
        if (!whole && twoGoes_ != nullptr)
            hopeless_.insert(here);
        return whole;
    }

    bool tryMove(fold::Made made, Stage stage, std::size_t line, Placement placement,
                 const std::optional<At>& at, std::int64_t soFar)
    {
        const fold::Made bit = fold::Made{1} << line;
        const bool special = twoGoes_ != nullptr && line == twoGoes_->line;
        if ((made & bit) != 0U) {
            if (!special || stage != Stage::Between || steps_.obstacle(made & ~bit, line, placement) ||
                steps_.layingInBent(made & ~bit, line, placement, twoGoes_->bent.lines[line]))
                return false;
            return make({steps_, made & ~bit, line, placement}, made, Stage::After, at, soFar);
        }
        fold::StepChecker& checker = special || stage == Stage::Between ? *twoGoes_->checker : steps_;
        if (checker.obstacle(made, line, placement))
            return false;
        return make({checker, made, line, placement}, made | bit, special ? Stage::Between : stage, at,
                    soFar);
    }

    bool make(const Move& move, fold::Made made, Stage stage, const std::optional<At>& at, std::int64_t soFar)
    {
        const fold::FoldLine& fold = move.checker.blank().lines[move.line];
        const fold::HandlingTimes& t = settings_.times;
        const Placement next = move.placement;
        const Length exact = move.checker.gaugeDistance(move.others, move.line, next);
        const Length set = roundToNearest(exact, machine_->displayStep);
        std::int64_t time = t.fold;
        const fold::Handling handling = move.checker.handling(move.others, move.line, next);
        if (handling.in == fold::WayIn::Endways)
            time += t.slideEndways + lift_;
        if (handling.out == fold::WayOut::Endways)
            time += t.slideEndways + lift_;
        else if (handling.lift > settings_.slidesOver)
            time += t.layInOver + lift_;
        if (!at || set != at->setting)
            time += t.gaugeChange;
        if (!at || std::abs(at->angle - fold.angleToSet) > 1e-6)
            time += t.angleChange;
        const bool spun = at && at->placement.endToGauge != next.endToGauge;
        const bool turned = at && at->placement.up != next.up;
        if (spun || turned)
            time += (spun && turned ? t.turnOverAndSpin : spun ? t.spin : t.turnOver) + lift_;
        Length leaving = set;
        if (fold.hem) {
            time += t.gaugeChange + t.flatten;
            leaving = roundToNearest(exact + settings_.flattenInset, machine_->displayStep);
        }
        return follow(made, stage, At{next, leaving, fold.angleToSet}, soFar + time);
    }

    fold::StepChecker& steps_;
    const fold::Machine& machine_;
    const fold::Settings& settings_;
    std::int64_t lift_;
    InTwoGoes* twoGoes_ = nullptr;
    std::int64_t best_ = impossible;
    std::set<std::pair<fold::Made, Stage>> hopeless_;
};

/// The least of every sequence; with a bend in two goes only where there is none without.
std::int64_t leastOfAll(const fold::Blank& blank, const fold::Machine& folder, const fold::Settings& settings,
                        double kilograms, Length length)
{
    fold::StepChecker steps(blank, folder, 0, settings);
    EverySequence every(steps, folder, settings, kilograms, length);
    std::int64_t least = every.least(nullptr);
    if (least != impossible)
        return least;
    const metal::Metal metal = steel();
    for (std::size_t line = 0; line < blank.lines.size(); ++line)
        for (const fold::FoldLine& partly :
             firstGoesOf(blank.lines[line], metal, metal.sheets[0], folder, settings)) {
            InTwoGoes twoGoes(blank, folder, settings, line, partly);
            least = std::min(least, every.least(&twoGoes));
        }
    return least;
}

bool inTwoGoes(const FoldPlan& plan)
{
    return std::any_of(plan.steps.begin(), plan.steps.end(),
                       [](const FoldStep& step) { return step.action == fold::Action::FinishFold; });
}

bool endways(const FoldPlan& plan)
{
    return std::any_of(plan.steps.begin(), plan.steps.end(),
                       [](const FoldStep& step) { return step.handling.out == fold::WayOut::Endways; });
}

/// The most bends that any sequence makes, each in one go.
int mostBends(fold::StepChecker& steps, fold::Made made, std::set<fold::Made>& seen)
{
    int most = std::popcount(made);
    for (std::size_t line = 0; line < steps.lineCount(); ++line)
        for (const fold::End end : {fold::End::Start, fold::End::End})
            for (const trim::Side up : {trim::Side::Left, trim::Side::Right})
                if ((made >> line & 1U) == 0U && !steps.obstacle(made, line, {end, up}) &&
                    seen.insert(made | fold::Made{1} << line).second)
                    most = std::max(most, mostBends(steps, made | fold::Made{1} << line, seen));
    return most;
}

/// The search against every sequence: the outcome, or what differs.
std::string compare(const trim::Profile& profile, const fold::Machine& folder)
{
    const metal::Metal metal = steel();
    const auto flat = trim::flatPattern(profile, metal, metal.sheets[0]);
    if (!flat)
        return "no flat left in a leg";
    fold::Settings settings;
    settings.beamFace = 0;
    settings.findSuggestions = false;
    const Length length = Length::feet(4);
    const auto outcome = fold::planFold(profile, *flat, metal, metal.sheets[0], folder, length, settings);
    auto blank = fold::makeBlank(profile, *flat, metal, metal.sheets[0], folder, settings);
    if (!outcome || !blank)
        return "DIFFERENT: error";
    const double kilograms =
        inMetres(flat->girth) * inMetres(length) * metal.sheets[0].kilogramsPerSquareMetre;
    blank->slidesEndways = folder->slidesEndways && length <= *folder->slidesEndways;
    const std::int64_t least = leastOfAll(*blank, folder, settings, kilograms, length);
    const auto* plan = std::get_if<FoldPlan>(&*outcome);
    if ((plan != nullptr) != (least != impossible) || (plan != nullptr && plan->milliseconds != least))
        return "DIFFERENT: " + tell(outcome) + " against " + std::to_string(least);
    if (plan != nullptr && !plan->feasibility.all())
        return "DIFFERENT: flags of " + tell(outcome);
    const bool inOneGo = plan != nullptr && !inTwoGoes(*plan);
    if (inOneGo != fold::canBeFolded(profile, *flat, metal, metal.sheets[0], folder, length, settings))
        return "DIFFERENT: canBeFolded of " + tell(outcome);
    if (plan == nullptr && !std::get<fold::Refusal>(*outcome).made.empty()) {
        fold::StepChecker steps(*blank, folder, 0, settings);
        std::set<fold::Made> seen;
        if (static_cast<int>(std::get<fold::Refusal>(*outcome).made.size()) != mostBends(steps, 0, seen))
            return "DIFFERENT: another sequence gets further than " + tell(outcome);
    }
    if (plan != nullptr)
        return std::string("planned") + (inTwoGoes(*plan) ? ", one bend in two goes" : "") +
               (endways(*plan) ? ", endways" : "");
    return std::string("refused: ") + fold::nameOf(std::get<fold::Refusal>(*outcome).obstacle);
}

} // namespace

class FoldSearchTest : public QObject {
    Q_OBJECT
private slots:
    void equalsEverySequence()
    {
        // 10 000 profiles when asked for, as many as the sanitizers take in a few seconds else.
        std::mt19937 random(20'250'101);
        const std::size_t count = scaledCount(300, 10'000);
        std::map<std::string, std::size_t> outcomes;
        std::vector<fold::Machine> folders{thinClamp()};
        for (const std::string& id : machineIds())
            folders.push_back(machine(id));
        for (std::size_t i = 0; i < count; ++i) {
            const int most = i % 25 == 24 ? 7 : count > 1'000 ? 6 : 4;
            const trim::Profile profile = i % 4 == 1 ? evenProfile(random, 1 + static_cast<int>(i / 4) % most)
                                          : i % 4 == 3 ? ribbed(random, 1 + static_cast<int>(i / 4) % 5)
                                                       : randomProfile(random, most);
            for (const fold::Machine& folder : folders)
                ++outcomes[folder->id + " " + compare(profile, folder)];
        }
        std::size_t planned = 0, refused = 0;
        for (const auto& [what, times] : outcomes) {
            qInfo("%6zu %s", times, what.c_str());
            QVERIFY2(what.find("DIFFERENT") == std::string::npos, what.c_str());
            planned += what.find("planned") != std::string::npos ? times : 0;
            refused += what.find("refused") != std::string::npos ? times : 0;
        }
        QVERIFY(planned > count / 2 && refused > count / 2);
    }

    void plansMakeTheProfileAndClearTheMachine()
    {
        std::mt19937 random(7);
        const std::size_t count = scaledCount(10, 2'000);
        std::size_t plans = 0;
        Length worstLeg, worstAsSet;
        Angle worstAngle;
        const metal::Metal metal = steel();
        for (std::size_t i = 0; i < count; ++i) {
            const trim::Profile profile = randomProfile(random, 6);
            const fold::Machine folder = machine(machineIds()[i % machineIds().size()]);
            const auto flat = trim::flatPattern(profile, metal, metal.sheets[0]);
            if (!flat)
                continue;
            fold::Settings settings;
            settings.findSuggestions = false;
            const auto outcome =
                fold::planFold(profile, *flat, metal, metal.sheets[0], folder, Length::feet(4), settings);
            const FoldPlan* plan = std::get_if<FoldPlan>(&*outcome);
            if (plan == nullptr)
                continue;
            ++plans;
            const auto check = fold::checkPlan(profile, *flat, metal, metal.sheets[0], folder, *plan,
                                               Length::feet(4), settings);
            QVERIFY2(check->problems.empty() && check->feasibility.all(),
                     check->problems.empty() ? "flags" : check->problems.front().c_str());
            QVERIFY(check->largestLegError <= fold::legTolerance);
            QVERIFY(check->largestAngleError <= fold::angleTolerance);
            worstLeg = std::max(worstLeg, check->largestLegError);
            worstAsSet = std::max(worstAsSet, check->largestLegErrorAsSet);
            worstAngle = std::max(worstAngle, check->largestAngleError);
        }
        qInfo("%zu plans folded again: largest leg error %.5f mm, as set on the display %.3f mm, angle %.6f°",
              plans, inMillimetres(worstLeg), inMillimetres(worstAsSet), worstAngle.inDegrees());
        QVERIFY(plans > 2);
    }

    void aWrongPlanIsCaught()
    {
        const metal::Metal metal = steel();
        const trim::Profile z = profile({{60, 90}, {80, -90}, {60, 0}});
        const auto flat = trim::flatPattern(z, metal, metal.sheets[0]);
        const fold::Machine folder = machine("long-folder-up");
        const auto outcome = fold::planFold(z, *flat, metal, metal.sheets[0], folder, Length::feet(4), {});
        const FoldPlan good = std::get<FoldPlan>(*outcome);
        const auto problems = [&](const FoldPlan& plan) {
            return fold::checkPlan(z, *flat, metal, metal.sheets[0], folder, plan, Length::feet(4), {})
                ->problems.size();
        };
        QCOMPARE(problems(good), std::size_t(0));
        FoldPlan wrong = good;
        wrong.steps[0].gaugeDistance += Length::thousandths(2);
        QVERIFY(problems(wrong) > 0);
        wrong = good;
        wrong.steps[1].foldAngle += Angle::degrees(0.02);
        QVERIFY(problems(wrong) > 0);
        wrong = good;
        wrong.steps[0].faceUp = trim::opposite(wrong.steps[0].faceUp);
        QVERIFY(problems(wrong) > 0);
        wrong = good;
        wrong.steps.pop_back();
        QVERIFY(problems(wrong) > 0);
        fold::MachineDescription shallow = folder.description();
        shallow.throat = Length::millimetres(20);
        QVERIFY(!fold::checkPlan(z, *flat, metal, metal.sheets[0], fold::Machine::make(shallow).value(), good,
                                 Length::feet(4), {})
                     ->problems.empty());
        shallow = folder.description();
        shallow.leastLeg = Length::millimetres(90);
        QVERIFY(!fold::checkPlan(z, *flat, metal, metal.sheets[0], fold::Machine::make(shallow).value(), good,
                                 Length::feet(4), {})
                     ->problems.empty());
    }
    void aHemPressedElsewhereIsCaught()
    {
        const metal::Metal metal = steel();
        const trim::Profile edge = profile({{60, 90}, {40, 0}}, std::nullopt, closedHem(trim::Side::Right));
        const auto flat = trim::flatPattern(edge, metal, metal.sheets[0]);
        const fold::Machine folder = machine("long-folder-up-down");
        const auto outcome = fold::planFold(edge, *flat, metal, metal.sheets[0], folder, Length::feet(4), {});
        const FoldPlan good = std::get<FoldPlan>(*outcome);
        const auto problems = [&](const FoldPlan& plan) {
            return fold::checkPlan(edge, *flat, metal, metal.sheets[0], folder, plan, Length::feet(4), {})
                ->problems;
        };
        QVERIFY2(problems(good).empty(), problems(good).empty() ? "" : problems(good).front().c_str());
        for (std::size_t step = 0; step < good.steps.size(); ++step) {
            if (good.steps[step].action != Action::Flatten)
                continue;
            FoldPlan wrong = good;
            wrong.steps[step].gaugeDistance += Length::millimetres(40);
            wrong.steps[step].gaugeSetting += Length::millimetres(40);
            QVERIFY(!problems(wrong).empty());
            wrong = good;
            wrong.steps[step].endToGauge = fold::otherEnd(wrong.steps[step].endToGauge);
            QVERIFY(!problems(wrong).empty());
            return;
        }
        QFAIL("no hem is pressed");
    }
};

QTEST_APPLESS_MAIN(FoldSearchTest)
#include "tst_fold_search.moc"
