// Guards: the search finds exactly what trying every sequence finds, cost and feasibility; a plan that is
// folded again by the checker's own code makes the profile; and no swept section of a plan enters a part of
// the machine, judged by Boost.Geometry at fine angles.
#include "fold_cases.h"

#include "fold/blank.h"
#include "fold/check.h"
#include "fold/picture.h"
#include "fold/search.h"

#include <QtTest>

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <limits>

using namespace foldcases;
using fold::FoldPlan;
using fold::FoldStep;
using fold::Placement;

namespace {

using BoostPoint = boost::geometry::model::d2::point_xy<double>;
using BoostLine = boost::geometry::model::linestring<BoostPoint>;
using BoostPolygon = boost::geometry::model::polygon<BoostPoint>;

constexpr std::int64_t impossible = std::numeric_limits<std::int64_t>::max();

std::size_t scaledCount(std::size_t usual, std::size_t longRun)
{
    return qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? longRun : usual;
}

/// Every sequence, end and face, with the time added up from the settings directly.
class EverySequence {
public:
    EverySequence(fold::StepChecker& steps, const fold::Machine& machine, const fold::Settings& settings,
                  double kilograms, Length length)
        : steps_(steps), machine_(machine), settings_(settings),
          lift_(std::llround(kilograms * static_cast<double>(settings.times.perKilogram) +
                             inMetres(length) * static_cast<double>(settings.times.perMetre)))
    {
    }
    std::int64_t least(fold::Made made = 0, std::optional<Placement> at = {}, Length setting = {},
                       double angle = -1.0)
    {
        if (made + 1 == fold::Made{1} << steps_.lineCount())
            return 0;
        std::int64_t best = impossible;
        for (std::size_t line = 0; line < steps_.lineCount(); ++line) {
            if ((made >> line & 1U) != 0U)
                continue;
            for (const fold::End end : {fold::End::Start, fold::End::End})
                for (const trim::Side up : {trim::Side::Left, trim::Side::Right}) {
                    const Placement next{end, up};
                    if (steps_.obstacle(made, line, next))
                        continue;
                    const fold::FoldLine& fold = steps_.blank().lines[line];
                    const Length exact = steps_.gaugeDistance(made, line, next);
                    const Length set = roundToNearest(exact, machine_->displayStep);
                    const fold::HandlingTimes& t = settings_.times;
                    std::int64_t time = t.fold;
                    if (steps_.lift(made, line, next) > settings_.slidesOver)
                        time += t.layInOver + lift_;
                    if (!at || set != setting)
                        time += t.gaugeChange;
                    if (!at || std::abs(angle - fold.angleToSet) > 1e-6)
                        time += t.angleChange;
                    if (at && at->endToGauge != end && at->up != up)
                        time += t.turnOverAndSpin + lift_;
                    else if (at && at->endToGauge != end)
                        time += t.spin + lift_;
                    else if (at && at->up != up)
                        time += t.turnOver + lift_;
                    Length left = set;
                    if (fold.hem) {
                        time += t.gaugeChange + t.flatten;
                        left = roundToNearest(exact + settings_.flattenInset, machine_->displayStep);
                    }
                    const std::int64_t rest =
                        least(made | fold::Made{1} << line, next, left, fold.angleToSet);
                    if (rest != impossible)
                        best = std::min(best, time + rest);
                }
        }
        return best;
    }

private:
    fold::StepChecker& steps_;
    const fold::Machine& machine_;
    const fold::Settings& settings_;
    std::int64_t lift_;
};

BoostPolygon boostPolygon(const fold::Outline& outline)
{
    BoostPolygon polygon;
    for (const fold::Point& point : outline)
        polygon.outer().emplace_back(inMillimetres(point.x), inMillimetres(point.y));
    boost::geometry::correct(polygon);
    return polygon;
}

/// Length of the section inside the part, without what is within `lying` of y = 0: there the sheet lies on
/// it.
double lengthInside(const fold::SheetPicture& sheet, const BoostPolygon& part)
{
    BoostLine line;
    for (const fold::Point& point : sheet.middle)
        line.emplace_back(inMillimetres(point.x), inMillimetres(point.y));
    std::vector<BoostLine> inside;
    boost::geometry::intersection(line, part, inside);
    double sum = 0.0;
    for (const BoostLine& piece : inside)
        for (std::size_t i = 0; i + 1 < piece.size(); ++i) {
            const bool atNose = std::hypot(piece[i].x(), piece[i].y()) < 4.0;
            if (std::abs(piece[i].y()) > 1e-3 && !atNose)
                sum += boost::geometry::distance(piece[i], piece[i + 1]);
        }
    return sum;
}

} // namespace

class FoldSearchTest : public QObject {
    Q_OBJECT
private slots:
    void equalsEverySequence()
    {
        std::mt19937 random(20'250'101);
        const std::size_t count = scaledCount(40, 10'000);
        const int most = count > 100 ? 6 : 4;
        std::size_t planned = 0, refused = 0, unfoldable = 0;
        const metal::Metal metal = steel();
        for (std::size_t i = 0; i < count; ++i) {
            const trim::Profile profile = randomProfile(random, i % 50 == 49 ? most + 1 : most);
            const fold::Machine folder = machine(machineIds()[i % machineIds().size()]);
            const auto flat = trim::flatPattern(profile, metal, metal.sheets[0]);
            if (!flat) {
                ++unfoldable;
                continue;
            }
            fold::Settings settings;
            settings.beamFace = 0;
            settings.findSuggestions = false;
            const Length length = Length::feet(4);
            const auto outcome =
                fold::planFold(profile, *flat, metal, metal.sheets[0], folder, length, settings);
            QVERIFY(outcome.ok());
            const auto blank = fold::makeBlank(profile, *flat, metal, metal.sheets[0], folder, settings);
            fold::StepChecker steps(*blank, folder, 0, settings);
            const double kilograms =
                inMetres(flat->girth) * inMetres(length) * metal.sheets[0].kilogramsPerSquareMetre;
            const std::int64_t least = EverySequence(steps, folder, settings, kilograms, length).least();
            const FoldPlan* plan = std::get_if<FoldPlan>(&*outcome);
            QCOMPARE(plan != nullptr, least != impossible);
            if (plan != nullptr)
                QCOMPARE(plan->milliseconds, least);
            plan != nullptr ? ++planned : ++refused;
        }
        qInfo("%zu profiles: %zu planned, %zu refused, %zu with no flat left in a leg", count, planned,
              refused, unfoldable);
        QVERIFY(planned > count / 10 && refused > count / 20);
    }

    void plansMakeTheProfileAndClearTheMachine()
    {
        std::mt19937 random(7);
        const std::size_t count = scaledCount(10, 2'000);
        std::size_t plans = 0, sections = 0;
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
            const auto pictures =
                fold::FoldPictures::make(profile, *flat, metal, metal.sheets[0], folder, *plan, settings);
            QVERIFY(pictures.ok());
            const BoostPolygon bed = boostPolygon(folder->bed), clamp = boostPolygon(folder->clamp);
            for (std::int64_t at = 0; at <= pictures->milliseconds(); at += 50) {
                const fold::Frame frame = pictures->frame(at);
                const FoldStep& step = plan->steps[frame.step];
                if (frame.clampLift > Length() || step.action == fold::Action::Flatten)
                    continue;
                ++sections;
                const double inside = lengthInside(frame.sheet, bed) + lengthInside(frame.sheet, clamp);
                QVERIFY2(inside < 1e-6,
                         qPrintable(
                             QString("profile %1 step %2: %3 mm inside").arg(i).arg(frame.step).arg(inside)));
            }
            const BoostPolygon beam = boostPolygon(pictures->step(0).machine.beam);
            QVERIFY(boost::geometry::is_valid(beam));
        }
        qInfo(
            "%zu plans folded again: largest leg error %.5f mm, as set on the display %.3f mm, angle %.6f°; "
            "%zu swept sections clear of bed and clamp",
            plans, inMillimetres(worstLeg), inMillimetres(worstAsSet), worstAngle.inDegrees(), sections);
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
    }
};

QTEST_APPLESS_MAIN(FoldSearchTest)
#include "tst_fold_search.moc"
