// Guards: no step's section enters a part of the machine or another part of the sheet, while it is laid in,
// clamped and folded: the section traced by the checker's own code, the distances measured by
// Boost.Geometry at fine angles, against the machine's outlines as they stand in its file.
#include "fold_cases.h"

#include "fold/retrace.h"

#include <QtTest>

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <array>
#include <cmath>

using namespace foldcases;
using fold::Action;
using fold::FoldPlan;
using fold::FoldStep;

namespace {

namespace bg = boost::geometry;
using BoostPoint = bg::model::d2::point_xy<double>;
using BoostLine = bg::model::linestring<BoostPoint>;
using BoostPolygon = bg::model::polygon<BoostPoint>;

bool longRun()
{
    return qEnvironmentVariableIsSet("LAPWRIGHT_LONG");
}

/// The outline moved by (x, y).
BoostPolygon polygon(const fold::Outline& outline, double x, double y)
{
    BoostPolygon made;
    for (const fold::Point& point : outline)
        made.outer().emplace_back(inMillimetres(point.x) + x, inMillimetres(point.y) + y);
    bg::correct(made);
    return made;
}

/// The two parts of the sheet on either side of the bend, as far as they are not the bend itself.
struct Parts {
    BoostLine front;
    BoostLine flat; ///< of the front, next to the bend
    BoostLine rear;
    BoostLine all;
};

class Piece {
public:
    Piece(const trim::FlatPattern& flat, const metal::Sheet& sheet, const fold::Machine& machine,
          const FoldPlan& plan)
        : thickness_(inMillimetres(sheet.thickness)), machine_(machine), plan_(plan)
    {
        now_.girth = inMillimetres(flat.girth);
        for (const trim::BendLine& line : flat.lines) {
            const Angle turn = magnitude(line.turn);
            now_.positions.push_back(inMillimetres(line.position));
            now_.angles.push_back(0.0);
            now_.allowances.push_back(inMillimetres(
                2 * trim::outsideSetback(turn, line.insideRadius, sheet.thickness) - line.deduction));
            now_.radii.push_back(inMillimetres(line.insideRadius) + thickness_ / 2.0);
            radii_.push_back(now_.radii.back());
            wanted_.push_back(line.turn.inRadians());
        }
    }

    /// Goes through all steps; what is wrong, or nothing.
    QString faults()
    {
        for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
            const FoldStep& step = plan_.steps[i];
            if (step.action != Action::Flatten) {
                const QString fault = laidIn(step) + swept(step) + takenOut(step);
                if (!fault.isEmpty())
                    return QString("step %1: ").arg(i + 1) + fault;
            }
            if (step.action != Action::PreBend)
                bend(step, step.foldAngle);
        }
        return {};
    }
    [[nodiscard]] int sections() const { return sections_; }

private:
    /// Leaves the step's bend standing at `angle`; an unfinished bend is a wider arc of the same flat length.
    void bend(const FoldStep& step, Angle angle)
    {
        const double wanted = std::abs(wanted_[step.line]), part = angle.inRadians() / wanted;
        now_.angles[step.line] = std::copysign(angle.inRadians(), wanted_[step.line]);
        now_.radii[step.line] =
            part * radii_[step.line] + (1.0 - part) * now_.allowances[step.line] / angle.inRadians();
    }

    /// The bend lies round the clamp's nose: nothing is asked of what is nearer to it than this.
    [[nodiscard]] double atBend(const FoldStep& step) const
    {
        return now_.allowances[step.line] + 2.0 * now_.radii[step.line] + 3.0;
    }

    [[nodiscard]] Parts partsAt(const FoldStep& step, double degrees) const
    {
        fold::Standing standing = now_;
        const double angle = Angle::degrees(degrees).inRadians();
        standing.angles[step.line] = std::copysign(angle, wanted_[step.line]);
        if (angle > 1e-9) // an unfinished bend is a wider arc of the same flat length
            standing.radii[step.line] = std::max(radii_[step.line], standing.allowances[step.line] / angle);
        Parts parts;
        const double near = atBend(step), line = now_.positions[step.line];
        const bool forwards = step.endToGauge == fold::End::Start;
        BoostLine dense[4];
        const std::vector<fold::Trace> traces = retrace(standing, step.line, step.endToGauge, step.faceUp);
        const fold::Trace flatEnd = endOfFlat(traces, step);
        for (const fold::Trace& trace : traces) {
            const BoostPoint at(trace.at.real(), trace.at.imag());
            dense[2].push_back(at);
            if (std::abs(trace.fromStart - line) <= near)
                continue;
            const bool rear = (trace.fromStart < line) == forwards;
            const bool flat = !rear && (trace.fromStart < flatEnd.fromStart) == forwards;
            dense[rear ? 1 : flat ? 3 : 0].push_back(at);
        }
        bg::simplify(dense[0], parts.front, 1e-6);
        bg::simplify(dense[1], parts.rear, 1e-6);
        bg::simplify(dense[2], parts.all, 1e-6);
        bg::simplify(dense[3], parts.flat, 1e-6);
        return parts;
    }

    /// Where the flat in front that adjoins the bend goes over into the next bend made, or ends.
    [[nodiscard]] fold::Trace endOfFlat(const std::vector<fold::Trace>& traces, const FoldStep& step) const
    {
        const bool forwards = step.endToGauge == fold::End::Start;
        double end = forwards ? now_.girth : 0.0;
        for (std::size_t i = 0; i < now_.positions.size(); ++i) {
            const double edge = now_.positions[i] + (forwards ? -0.5 : 0.5) * now_.allowances[i];
            const bool beyond = forwards ? i > step.line && edge < end : i < step.line && edge > end;
            if (beyond && now_.angles[i] != 0.0)
                end = edge;
        }
        const auto at =
            std::min_element(traces.begin(), traces.end(), [end](const fold::Trace& a, const fold::Trace& b) {
                return std::abs(a.fromStart - end) < std::abs(b.fromStart - end);
            });
        return *at;
    }

    static double apart(const BoostLine& line, const BoostPolygon& part)
    {
        return line.size() < 2 ? 1e9 : bg::distance(line, part);
    }

    QString laidIn(const FoldStep& step)
    {
        const Parts flat = partsAt(step, 0.0);
        // The middle of the sheet is drawn on y = 0: the parts it lies on make room for half of it, and the
        // beam for a pressed hem.
        const double half = thickness_ / 2.0, opening = inMillimetres(machine_->clampOpening);
        const bool up = step.direction == fold::Direction::Up;
        const fold::Outline& beam =
            up ? machine_->beamFaces[plan_.beamFace].body : machine_->downFolding->beam.body;
        const BoostPolygon resting = polygon(beam, 0.0, (up ? -1.0 : 1.0) * (2.0 * thickness_ + 0.3));
        if (apart(flat.all, resting) < half - 0.1)
            return QString("%1 mm from the beam at rest").arg(apart(flat.all, resting));
        const Parts parts = partsAt(step, standsAt(step));
        const auto meets = [&](double out, double lift, double open) {
            ++sections_;
            const BoostPolygon bed = polygon(machine_->bed, -out, -lift - half);
            const BoostPolygon clamp = polygon(machine_->clamp, -out, open - lift + half);
            const BoostPolygon rest = polygon(beam, -out, -lift - 2.0 * thickness_ - 0.3);
            return std::min({apart(parts.all, bed), apart(parts.all, clamp),
                             up ? apart(parts.all, rest) : 1e9}) < half - 0.1;
        };
        const double lift = inMillimetres(step.handling.lift);
        if (step.handling.in == fold::WayIn::Endways && meets(0.0, 0.0, opening))
            return "does not stand in the open machine";
        const double way = step.handling.in == fold::WayIn::Endways ? 0.0 : now_.girth + 300.0;
        for (double out = 0.0; out < way; out += longRun() ? 3.0 : 15.0)
            if (meets(out, lift, opening))
                return QString("met %1 mm before it is in").arg(out);
        for (double high = 0.0; high < lift; high += 1.0)
            if (meets(0.0, high, opening))
                return QString("met %1 mm before it is down").arg(high);
        for (double open = 0.0; open < opening; open += longRun() ? 1.0 : 5.0)
            if (meets(0.0, 0.0, open))
                return QString("met by the clamp %1 mm open").arg(open);
        return {};
    }

    /// What the step's bend stands at as it is laid in, degrees.
    [[nodiscard]] double standsAt(const FoldStep& step) const
    {
        return step.action == Action::FinishFold
                   ? Angle::radians(std::abs(now_.angles[step.line])).inDegrees()
                   : 0.0;
    }

    /// The way out: how far the sheet is drawn and lifted and the clamp is open, one moment after the other.
    [[nodiscard]] std::vector<std::array<double, 3>> wayOut(const FoldStep& step) const
    {
        const bool little = step.handling.out == fold::WayOut::LittleOpen;
        const double wide = inMillimetres(little ? step.handling.open : machine_->clampOpening);
        const double lift = inMillimetres(step.handling.lift);
        const double drawn = inMillimetres(step.handling.drawn), far = now_.girth + 300.0;
        const bool down = step.direction == fold::Direction::Down;
        std::vector<std::array<double, 3>> way{{0.0, 0.0, 0.0}};
        if (step.handling.out == fold::WayOut::DrawnFirst && down)
            way.push_back({0.0, 0.0, wide});
        if (step.handling.out == fold::WayOut::DrawnFirst)
            way.push_back({drawn, 0.0, down ? wide : 0.0});
        if (step.handling.out == fold::WayOut::AsClampOpens)
            way.push_back(
                {drawn, 0.0, std::min(wide, drawn * std::abs(std::tan(step.foldAngle.inRadians())))});
        way.push_back({drawn, 0.0, wide});
        way.push_back({drawn, lift, wide});
        way.push_back({drawn + far, lift, wide});
        return way;
    }

    QString takenOut(const FoldStep& step)
    {
        if (step.handling.out == fold::WayOut::Endways)
            return {};
        const Parts parts = partsAt(step, step.foldAngle.inDegrees());
        const bool up = step.direction == fold::Direction::Up;
        const double half = thickness_ / 2.0, give = 1.6; // a sheet that leans by less springs aside
        const std::vector<std::array<double, 3>> way = wayOut(step);
        for (std::size_t i = 0; i + 1 < way.size(); ++i) {
            double most = 1.0;
            for (std::size_t k = 0; k < 3; ++k)
                most = std::max(most, std::abs(way[i + 1][k] - way[i][k]));
            const int moments = static_cast<int>(std::ceil(most / (longRun() ? 1.0 : 8.0)));
            for (int moment = 0; moment <= moments; ++moment) {
                const auto at = [&](std::size_t k) {
                    return way[i][k] + (way[i + 1][k] - way[i][k]) * moment / moments;
                };
                ++sections_;
                const BoostPolygon bed = polygon(machine_->bed, -at(0) - give, -at(1) - half);
                const BoostPolygon clamp = polygon(machine_->clamp, -at(0) - give, at(2) - at(1) + half);
                const BoostPolygon beam = polygon(machine_->beamFaces[plan_.beamFace].body, -at(0),
                                                  -at(1) - 2.0 * thickness_ - 0.3);
                for (const BoostLine& part : {parts.front, parts.rear})
                    if (apart(part, bed) <= 0.0 || apart(part, clamp) <= 0.0 ||
                        (up && apart(part, beam) <= 0.0))
                        return QString("caught at %1, %2, %3").arg(at(0)).arg(at(1)).arg(at(2));
            }
        }
        return {};
    }

    QString swept(const FoldStep& step)
    {
        const double half = thickness_ / 2.0, set = step.angleToSet.inDegrees();
        const BoostPolygon bed = polygon(machine_->bed, 0.0, -half);
        const BoostPolygon clamp = polygon(machine_->clamp, 0.0, half);
        // Folded as far as it goes, the flat lies against the clamp's nose, give or take its thickness.
        const BoostPolygon behindNose = polygon(machine_->clamp, -thickness_ - 0.3, 0.0);
        const double every = longRun() ? 0.25 : 2.0;
        const double from = standsAt(step);
        for (int moment = 0; from + moment * every <= set; ++moment) {
            const double degrees = std::min(set, from + moment * every);
            const Parts parts = partsAt(step, degrees);
            ++sections_;
            if (apart(parts.flat, behindNose) <= 0.0)
                return QString("the flat meets the clamp at %1°").arg(degrees);
            if (apart(parts.front, clamp) < half - 0.1 || apart(parts.front, bed) < half - 0.1)
                return QString("meets clamp or bed at %1°").arg(degrees);
            // Bends are planned with chords that stay within 0.25 mm of them, on both sides.
            if (parts.front.size() > 1 && parts.rear.size() > 1 &&
                std::min(bg::distance(parts.front, parts.rear),
                         parts.flat.size() > 1 ? bg::distance(parts.flat, parts.rear) : 1e9) <
                    std::max(0.02, thickness_ - 0.6))
                return QString("meets itself at %1°").arg(degrees);
        }
        return {};
    }

    double thickness_;
    const fold::Machine& machine_;
    const FoldPlan& plan_;
    fold::Standing now_;
    std::vector<double> wanted_;
    std::vector<double> radii_; ///< of the finished bends
    int sections_ = 0;
};

struct Count {
    int plans = 0;
    int sections = 0;
};

QString faultsOf(const trim::Profile& profile, const fold::Machine& folder, Count& count)
{
    metal::Metal metal = steel();
    const auto flat = trim::flatPattern(profile, metal, metal.sheets[0]);
    if (!flat)
        return {};
    fold::Settings settings;
    settings.findSuggestions = false;
    const auto outcome =
        fold::planFold(profile, *flat, metal, metal.sheets[0], folder, Length::feet(4), settings);
    if (!outcome)
        return QString::fromStdString(tell(outcome));
    const auto* plan = std::get_if<FoldPlan>(&*outcome);
    if (plan == nullptr)
        return {};
    Piece piece(*flat, metal.sheets[0], folder, *plan);
    const QString faults = piece.faults();
    ++count.plans;
    count.sections += piece.sections();
    return faults.isEmpty() ? faults
                            : faults + " " + QString::fromStdString(folder->id + " " + tell(outcome));
}

} // namespace

class FoldClearTest : public QObject {
    Q_OBJECT
private slots:
    void knownTrim()
    {
        Count count;
        const trim::Profile profiles[] = {
            profile({{25, 35}, {75, -90}, {250, -90}, {75, 35}, {25, 0}}, closedHem(trim::Side::Right),
                    closedHem(trim::Side::Right)),
            profile({{50.8, -90}, {38.1, 35}, {38.1, 0}}, {}, closedHem(trim::Side::Right)),
            profile({{25, 90}, {40, -90}, {100, -90}, {40, 90}, {25, 0}}),
            profile({{60, 90}, {18, -90}, {25, 0}})};
        for (const trim::Profile& known : profiles)
            for (const std::string& id : machineIds()) {
                const QString faults = faultsOf(known, machine(id), count);
                QVERIFY2(faults.isEmpty(), qPrintable(faults));
            }
        qInfo("%d plans, %d sections", count.plans, count.sections);
        QVERIFY(count.plans >= 10);
    }

    void randomProfilesOnEveryMachine()
    {
        std::mt19937 random(23);
        Count count;
        const int wanted = longRun() ? 400 : 8;
        std::vector<fold::Machine> folders{thinClamp()};
        for (const std::string& id : machineIds())
            folders.push_back(machine(id));
        for (int i = 0; i < wanted; ++i) {
            const trim::Profile profile = i % 3 == 2 ? ribbed(random, 3 + i % 4) : randomProfile(random, 5);
            for (const fold::Machine& folder : folders) {
                const QString faults = faultsOf(profile, folder, count);
                QVERIFY2(faults.isEmpty(), qPrintable(QString("profile %1 %2").arg(i).arg(faults)));
            }
        }
        qInfo("%d plans, %d sections", count.plans, count.sections);
        QVERIFY(count.plans > wanted);
    }
};

QTEST_APPLESS_MAIN(FoldClearTest)
#include "tst_fold_clear.moc"
