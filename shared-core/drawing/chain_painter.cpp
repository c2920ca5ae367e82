#include "drawing/chain_painter.h"

#include "drawing/marks.h"
#include "drawing/placement.h"
#include "drawing/text.h"
#include "site/corner.h"
#include "site/run_kind.h"
#include "site/run_length.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace lapwright::drawing {

namespace {

class ChainPainter {
public:
    ChainPainter(const LaidOut& laid, double scale, const PlanPicture& picture, std::vector<Shape>& shapes)
        : laid_(laid), chain_(*laid.chain), picture_(picture), shapes_(shapes),
          placement_({laid.panel.left + 0.5, laid.panel.top + panelCaption, laid.panel.right - 0.5,
                      laid.panel.bottom - 0.5})
    {
        const double left = laid.panel.centre().x - laid.width * scale / 2.0;
        const double bottom = laid.panel.bottom - panelPadding(laid, scale);
        for (const Point& point : laid.points)
            points_.push_back({left + point.x * scale, bottom - point.y * scale});
    }

    /// Returns the labels there was no room for.
    std::vector<std::string> paint()
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
        return std::move(leftOut_);
    }

private:
    [[nodiscard]] std::string title() const
    {
        std::string text = chain_.name.empty() ? chain_.id : chain_.name;
        if (laid_.closure.plan && laid_.closure.plan->figure == site::Figure::WallFace)
            text += translated(" (in the face of the wall)", picture_.style);
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
        std::string kind = site::wordsFor(run.kind);
        if (run.slope)
            kind += ", " + write(*run.slope);
        if (run.otherSlope)
            kind += " and " + write(*run.otherSlope);
        std::string text = translated(kind, picture_.style);
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
            wish.below =
                translated("would close at " + write(blamed()->wouldBe, picture_.style), picture_.style);
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
        return marks == picture_.marks.end() ? "" : translated(marks->second, picture_.style);
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
        wish.text =
            translated(angles ? "corners are off by " + write(magnitude(laid_.closure.angularMisclosure))
                              : "does not close: " + write(laid_.closure.linearMisclosure, picture_.style),
                       picture_.style);
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
        return translated("it ends " + east + (east.empty() || north.empty() ? "" : ", ") + north +
                              " of the start",
                          picture_.style);
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

} // namespace

std::vector<std::string> paintChain(const LaidOut& chain, double scale, const PlanPicture& picture,
                                    std::vector<Shape>& onto)
{
    return ChainPainter(chain, scale, picture, onto).paint();
}

} // namespace lapwright::drawing
