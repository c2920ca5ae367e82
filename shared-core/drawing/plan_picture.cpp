#include "drawing/plan_picture.h"

#include "drawing/marks.h"
#include "drawing/placement.h"
#include "drawing/text.h"
#include "measure/rounding.h"
#include "site/closure.h"
#include "site/run_kind.h"
#include "site/run_length.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <utility>

namespace lapwright::drawing {

namespace {

constexpr double margin = 8.0;
constexpr double headHeight = 14.0;
constexpr double footHeight = 16.0;
/// Room for labels around the chain in its panel.
constexpr double padding = 15.0;
constexpr double sidePadding = 27.0;
/// Above and below a chain of one straight line there is only its name to be written.
constexpr double paddingOfLine = 9.0;
constexpr double captionHeight = 6.0;
constexpr double leastPanel = 46.0;

/// One chain laid out, real millimetres, x east, y north, from its lower left corner.
struct LaidOut {
    const site::Chain* chain = nullptr;
    site::ClosureReport closure;
    std::vector<Point> points;
    double width = 0.0;
    double height = 0.0;
    Rectangle panel;
};

std::optional<LaidOut> layOut(const site::Chain& chain, const site::Tolerance& tolerance)
{
    LaidOut made;
    made.chain = &chain;
    made.closure = site::closureReport(chain, tolerance);
    const std::optional<site::Plan> plan = made.closure.plan ? made.closure.plan : site::planOf(chain);
    if (!plan)
        return std::nullopt;
    const bool adjusted = made.closure.drawnPoints.size() == plan->points.size();
    for (const site::PlanVector& point : adjusted ? made.closure.drawnPoints : plan->points)
        made.points.push_back({inMillimetres(point.east), inMillimetres(point.north)});
    const Rectangle reach = bounds(made.points);
    if (reach.width() < 1.0 && reach.height() < 1.0)
        return std::nullopt;
    for (Point& point : made.points)
        point = point - Point{reach.left, reach.top};
    made.width = reach.width();
    made.height = reach.height();
    return made;
}

double paddingOf(const LaidOut& chain, double scale)
{
    return chain.height * scale < 1.0 ? paddingOfLine : padding;
}

/// Sets the panels in rows, tallest first; returns the height that takes.
double setPanels(std::vector<LaidOut>& chains, double scale, double width)
{
    std::vector<std::size_t> order(chains.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t left, std::size_t right) {
        return chains[left].height > chains[right].height;
    });
    double x = 0.0, y = 0.0, rowHeight = 0.0;
    for (const std::size_t index : order) {
        LaidOut& chain = chains[index];
        const double wide = std::max(chain.width * scale + 2.0 * sidePadding, leastPanel);
        const double high = chain.height * scale + 2.0 * paddingOf(chain, scale) + captionHeight;
        if (x > 0.0 && x + wide > width) {
            x = 0.0;
            y += rowHeight;
            rowHeight = 0.0;
        }
        chain.panel = {margin + x, margin + headHeight + y, margin + x + wide,
                       margin + headHeight + y + high};
        x += wide;
        rowHeight = std::max(rowHeight, high);
    }
    return y + rowHeight;
}

bool panelsFit(const std::vector<LaidOut>& chains, double right)
{
    return std::all_of(chains.begin(), chains.end(),
                       [&](const LaidOut& chain) { return chain.panel.right <= right + 1e-9; });
}

/// One chain in its panel.
class ChainPainter {
public:
    ChainPainter(const LaidOut& laid, double scale, const PlanPicture& picture, std::vector<Shape>& shapes)
        : laid_(laid), chain_(*laid.chain), picture_(picture), shapes_(shapes),
          placement_({laid.panel.left + 0.5, laid.panel.top + captionHeight, laid.panel.right - 0.5,
                      laid.panel.bottom - 0.5})
    {
        const double left = laid.panel.centre().x - laid.width * scale / 2.0;
        const double bottom = laid.panel.bottom - paddingOf(laid, scale);
        for (const Point& point : laid.points)
            points_.push_back({left + point.x * scale, bottom - point.y * scale});
    }

    void paint()
    {
        shapes_.emplace_back(words(Role::Title, shortened(title(), 3.2, laid_.panel.width() - 2.0, true),
                                   {laid_.panel.left + 1.0, laid_.panel.top + 4.0}, 3.2, Anchor::Start,
                                   true));
        const std::size_t first = shapes_.size();
        drawRuns();
        drawWalk();
        drawCorners();
        drawGap();
        for (std::size_t i = first; i < shapes_.size(); ++i)
            placement_.block(shapes_[i]);
        nameGap();
        for (std::size_t i = 0; i < chain_.runs.size(); ++i)
            nameRun(i);
        nameCorners();
    }

    [[nodiscard]] const std::vector<std::string>& leftOut() const { return leftOut_; }

private:
    [[nodiscard]] std::string title() const
    {
        std::string text = chain_.name.empty() ? chain_.id : chain_.name;
        if (laid_.closure.plan && laid_.closure.plan->figure == site::Figure::WallFace)
            text += " (in the face of the wall)";
        return text;
    }

    /// The run that would explain the misclosure.
    [[nodiscard]] std::optional<site::LengthChange> blamed() const
    {
        return hasGap() && !laid_.closure.blames.empty() ? laid_.closure.blames.front().length : std::nullopt;
    }

    [[nodiscard]] bool hasGap() const
    {
        return laid_.closure.verdict == site::ClosureReport::Verdict::LengthsOff ||
               laid_.closure.verdict == site::ClosureReport::Verdict::AnglesOff;
    }

    [[nodiscard]] bool isDrawn(std::size_t run) const { return norm(points_[run + 1] - points_[run]) > 0.3; }

    void drawRuns()
    {
        for (std::size_t i = 0; i < chain_.runs.size(); ++i) {
            if (!isDrawn(i))
                continue;
            const bool suspect = blamed() && blamed()->run == i;
            shapes_.emplace_back(line(suspect ? Role::Misclosure : Role::Run, points_[i], points_[i + 1],
                                      suspect ? 1.0 : 0.6));
        }
    }

    /// Where the walk begins and which way it goes.
    void drawWalk()
    {
        shapes_.emplace_back(Circle{Role::Run, points_.front(), 0.9, std::nullopt, Fill{}});
        if (chain_.runs.empty() || !isDrawn(0) || norm(points_[1] - points_[0]) < 8.0)
            return;
        const Point heading = unit(points_[1] - points_[0]);
        const Point tip = between(points_[0], points_[1], 0.5) + 1.4 * heading;
        const Point wing = 0.9 * quarter(heading);
        shapes_.emplace_back(Path{Role::Run,
                                  {tip, tip - 2.6 * heading + wing, tip - 2.6 * heading - wing},
                                  true,
                                  Stroke{0.1, Dash::Solid, {}},
                                  Fill{}});
    }

    /// Runs before and after corner i; the corner stands where the first of them ends.
    [[nodiscard]] std::size_t runAfter(std::size_t corner) const { return (corner + 1) % chain_.runs.size(); }

    [[nodiscard]] bool isSquare(std::size_t corner) const
    {
        return std::holds_alternative<site::SquareOutside>(chain_.corners[corner]) ||
               std::holds_alternative<site::SquareInside>(chain_.corners[corner]);
    }

    [[nodiscard]] bool isDrawnCorner(std::size_t corner) const
    {
        return corner < chain_.runs.size() && isDrawn(corner) && isDrawn(runAfter(corner));
    }

    void drawCorners()
    {
        const std::optional<std::vector<Angle>> interior = site::interiorAngles(chain_);
        if (!interior)
            return;
        for (std::size_t i = 0; i < chain_.corners.size(); ++i) {
            if (!isDrawnCorner(i))
                continue;
            const Point at = points_[i + 1];
            const Point back = unit(points_[i] - points_[i + 1]);
            const Point on = unit(points_[runAfter(i) + 1] - points_[runAfter(i)]);
            const double room = 0.4 * std::min(norm(points_[i + 1] - points_[i]),
                                               norm(points_[runAfter(i) + 1] - points_[runAfter(i)]));
            if (isSquare(i)) {
                const double side = std::min(1.8, room);
                shapes_.emplace_back(Path{Role::Corner,
                                          {at + side * back, at + side * (back + on), at + side * on},
                                          false,
                                          Stroke{0.18, Dash::Solid, {}},
                                          {}});
            } else {
                // The building is on the left of the walk: the interior angle opens from the way on to the
                // way back.
                const double start = std::atan2(-on.y, on.x);
                shapes_.emplace_back(Arc{Role::AngleMark, at, std::min(3.0, room), start,
                                         (*interior)[i].inRadians(), Stroke{0.18, Dash::Solid, {}}});
            }
        }
    }

    void nameCorners()
    {
        const std::optional<std::vector<Angle>> interior = site::interiorAngles(chain_);
        if (!interior)
            return;
        for (std::size_t i = 0; i < chain_.corners.size(); ++i) {
            if (!isDrawnCorner(i) || isSquare(i))
                continue;
            const Point on = unit(points_[runAfter(i) + 1] - points_[runAfter(i)]);
            const double middle = std::atan2(-on.y, on.x) + (*interior)[i].inRadians() / 2.0;
            LabelWish wish;
            wish.text = write((*interior)[i]);
            wish.size = 2.5;
            wish.role = Role::AngleMark;
            wish.directions = {direction(-middle), direction(-middle + 0.6), direction(-middle - 0.6)};
            wish.target = points_[i + 1] + 3.0 * direction(-middle);
            wish.gap = 0.7;
            place(wish);
        }
    }

    [[nodiscard]] std::string detailsOf(const site::Run& run) const
    {
        std::string text = site::wordsFor(run.kind);
        if (run.slope)
            text += ", " + write(*run.slope);
        if (run.otherSlope)
            text += " and " + write(*run.otherSlope);
        const std::string marks = marksOf(run);
        if (!marks.empty())
            text += ", " + marks;
        return text;
    }

    void nameRun(std::size_t index)
    {
        const site::Run& run = chain_.runs[index];
        const Point from = points_[index], to = points_[index + 1];
        LabelWish wish;
        wish.text = shortened(run.id, 3.0, 30.0, true);
        if (const auto length = site::effectiveLength(run))
            wish.text += "  " + write(length->value, picture_.style);
        const std::string details = detailsOf(run), marks = shortened(marksOf(run), 2.4, 58.0);
        // Where both do not fit, the marks are what the shop looks for.
        const bool fits = shortened(details, 2.4, 58.0) == details;
        wish.below = fits || marks.empty() ? shortened(details, 2.4, 58.0) : marks;
        wish.bold = true;
        wish.size = 3.0;
        if (blamed() && blamed()->run == index) {
            wish.role = Role::Misclosure;
            wish.below = "would close at " + write(blamed()->wouldBe, picture_.style);
        }
        wish.target = between(from, to, 0.5);
        const Point along = isDrawn(index) ? unit(to - from) : Point{1.0, 0.0};
        // Out of the building: to the right of the walk.
        const Point outwards = quarter(along);
        wish.directions = {outwards, -1.0 * outwards};
        wish.approach = outwards;
        wish.gap = 1.4;
        wish.nearby = 3.0;
        if (placement_.place(wish, shapes_))
            return;
        const std::string all = wish.below;
        wish.below = marks;
        if (!marks.empty() && wish.role != Role::Misclosure && placement_.place(wish, shapes_))
            return;
        wish.below.clear();
        place(wish);
        leftOut_.push_back(run.id + " " + all);
    }

    [[nodiscard]] std::string marksOf(const site::Run& run) const
    {
        const auto marks = picture_.marks.find(run.id);
        return marks == picture_.marks.end() ? "" : marks->second;
    }

    void drawGap()
    {
        if (!hasGap())
            return;
        shapes_.emplace_back(
            Circle{Role::Misclosure, gapAt(), gapRadius(), Stroke{0.3, Dash::Dashed, {}}, {}});
        if (norm(points_.front() - points_.back()) > 0.8)
            addArrow(shapes_, Role::Misclosure, points_.back(), points_.front(), 0.3,
                     std::min(1.6, 0.6 * norm(points_.front() - points_.back())));
    }
    [[nodiscard]] Point gapAt() const { return between(points_.front(), points_.back(), 0.5); }
    [[nodiscard]] double gapRadius() const { return norm(points_.front() - points_.back()) / 2.0 + 1.8; }

    void nameGap()
    {
        if (!hasGap())
            return;
        LabelWish wish;
        const bool angles = laid_.closure.verdict == site::ClosureReport::Verdict::AnglesOff;
        wish.text = angles ? "corners are off by " + write(magnitude(laid_.closure.angularMisclosure))
                           : "does not close: " + write(laid_.closure.linearMisclosure, picture_.style);
        wish.below = angles ? "" : towards();
        wish.role = Role::Misclosure;
        wish.size = 2.8;
        wish.bold = true;
        const Point outwards = gapAt() - laid_.panel.centre();
        const Point heading = norm(outwards) > 1e-6 ? unit(outwards) : Point{0.0, 1.0};
        wish.target = gapAt() + gapRadius() * heading;
        wish.directions = {heading, quarter(heading), -1.0 * quarter(heading)};
        wish.gap = 1.0;
        place(wish);
    }

    [[nodiscard]] std::string towards() const
    {
        const site::PlanVector miss = laid_.closure.misclosure;
        const auto part = [&](Length value, const char* plus, const char* minus) -> std::string {
            if (value == Length())
                return "";
            return write(magnitude(value), picture_.style) + (value > Length() ? plus : minus);
        };
        const std::string east = part(miss.east, " east", " west"),
                          north = part(miss.north, " north", " south");
        return "it ends " + east + (east.empty() || north.empty() ? "" : ", ") + north + " of the start";
    }

    void place(const LabelWish& wish)
    {
        if (!placement_.place(wish, shapes_))
            leftOut_.push_back(wish.text);
    }

    const LaidOut& laid_;
    const site::Chain& chain_;
    const PlanPicture& picture_;
    std::vector<Shape>& shapes_;
    Placement placement_;
    std::vector<Point> points_;
    std::vector<std::string> leftOut_;
};

void addNorth(std::vector<Shape>& onto, Point centre)
{
    onto.emplace_back(Circle{Role::Compass, centre, 3.6, Stroke{0.2, Dash::Solid, {}}, {}});
    onto.emplace_back(Path{Role::Compass,
                           {centre + Point{0.0, -3.6}, centre + Point{1.1, 2.0}, centre + Point{-1.1, 2.0}},
                           true,
                           Stroke{0.1, Dash::Solid, {}},
                           Fill{}});
    onto.emplace_back(words(Role::Compass, "N", centre + Point{0.0, -4.6}, 3.0, Anchor::Middle, true));
}

/// The largest scale at which all panels fit on the sheet; never so small that the largest chain shrinks
/// below what can still be read: then the sheet gets longer. Sets the panels; returns the scale and the
/// height they take.
std::pair<double, double> chooseScale(std::vector<LaidOut>& chains, double width, double room)
{
    constexpr double leastDrawn = 60.0;
    double largest = 0.0;
    for (const LaidOut& chain : chains)
        largest = std::max({largest, chain.width, chain.height});
    double scale = usualScales().back(), used = 0.0;
    for (const double tried : usualScales()) {
        scale = tried;
        used = setPanels(chains, tried, width - 2.0 * margin);
        if (panelsFit(chains, width - margin) && (used <= room || largest * tried < leastDrawn))
            break;
    }
    return {scale, used};
}

void addHead(std::vector<Shape>& onto, const site::Job& job, double width)
{
    onto.emplace_back(words(Role::Title, shortened(job.name, 5.0, width - 40.0, true), {margin, margin + 5.0},
                            5.0, Anchor::Start, true));
    onto.emplace_back(
        words(Role::Label, shortened(job.address, 3.0, width - 40.0), {margin, margin + 10.0}, 3.0));
    addNorth(onto, {width - margin - 4.0, margin + 8.2});
}

/// "Outside corner 1 (X1.1)": a chain that is not drawn, so that its marks are on the sheet all the same.
std::string namedWithMarks(const site::Chain& chain, const PlanPicture& picture)
{
    std::string all;
    for (const site::Run& run : chain.runs)
        if (const auto marks = picture.marks.find(run.id);
            marks != picture.marks.end() && !marks->second.empty())
            all += (all.empty() ? "" : ", ") + marks->second;
    return (chain.name.empty() ? chain.id : chain.name) + (all.empty() ? "" : " (" + all + ")");
}

/// What the marks mean and what is missing.
std::string noteOf(const std::string& undrawn, const std::vector<std::string>& leftOut)
{
    std::string note =
        "Dot: start of the walk, the building on its left. Square: a square corner. Sloped runs are "
        "drawn with their level length.";
    if (!undrawn.empty())
        note += " Not drawn: " + undrawn + ".";
    for (const std::string& missing : leftOut)
        note += " No room for: " + missing + ".";
    return note;
}

} // namespace

DisplayList planPicture(const site::Job& job, const PlanPicture& picture)
{
    std::vector<LaidOut> chains;
    std::string undrawn;
    for (const site::Chain& chain : job.chains) {
        if (std::optional<LaidOut> made = layOut(chain, job.tolerance))
            chains.push_back(std::move(*made));
        else
            undrawn += (undrawn.empty() ? "" : "; ") + namedWithMarks(chain, picture);
    }
    const double width = inMillimetres(picture.width);
    const double room = inMillimetres(picture.height) - 2.0 * margin - headHeight - footHeight;
    const auto [scale, used] = chooseScale(chains, width, room);
    DisplayList list;
    list.title = "Plan of " + job.name;
    addHead(list.shapes, job, width);
    std::vector<std::string> leftOut;
    for (const LaidOut& chain : chains) {
        ChainPainter painter(chain, scale, picture, list.shapes);
        painter.paint();
        leftOut.insert(leftOut.end(), painter.leftOut().begin(), painter.leftOut().end());
        list.description += (list.description.empty() ? "" : "; ") + chain.chain->name + ", " +
                            std::to_string(chain.chain->runs.size()) + " runs";
    }
    const double base = margin + headHeight + std::max(used, room) + 6.0;
    addScaleBar(list.shapes, {margin, base}, scale, 50.0, picture.style.unit == LengthUnit::Millimetres);
    list.shapes.emplace_back(
        words(Role::Label, "scale " + scaleName(scale), {width - margin, base}, 2.8, Anchor::End));
    double row = base + 4.2;
    for (const std::string& text : wrapped(noteOf(undrawn, leftOut), 2.4, width - 2.0 * margin)) {
        list.shapes.emplace_back(words(Role::Note, text, {margin, row}, 2.4));
        row += 3.2;
    }
    list.width = picture.width;
    list.height = std::max(picture.height, nearestFromMillimetres(std::ceil(row)));
    return list;
}

} // namespace lapwright::drawing
