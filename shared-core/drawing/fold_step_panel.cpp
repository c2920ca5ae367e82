#include "drawing/fold_step_panel.h"

#include "drawing/marks.h"
#include "drawing/move_marks.h"
#include "drawing/palette.h"
#include "drawing/text.h"

#include <algorithm>

namespace lapwright::drawing {

namespace {

constexpr double indent = 16.0;

class PanelPainter {
public:
    PanelPainter(const fold::FoldStep& step, const FoldStepPicture& picture, Rectangle room,
                 std::vector<Shape>& shapes)
        : step_(step), picture_(picture), left_(room.left), width_(room.width()), row_(room.top),
          shapes_(shapes)
    {
    }

    void paint(bool hasGauge)
    {
        shapes_.emplace_back(words(Role::Title, shortened(said(stepAction(step_)), 4.6, width_, true),
                                   {left_, row_}, 4.6, Anchor::Start, true));
        row_ += 11.0;
        large(Role::Gauge, said(hasGauge ? "to gauge" : "mark"), write(step_.gaugeSetting, picture_.style));
        small(Role::Gauge, said(std::string("from the ") + fold::nameOf(step_.touching)));
        if (step_.action == fold::Action::Flatten)
            large(Role::AngleMark, said("gap"), said(writeGap(step_, picture_.style)));
        else
            angle();
        face();
        movement();
        cautions();
    }

private:
    /// In the reader's language.
    [[nodiscard]] std::string said(const std::string& english) const
    {
        return translated(english, picture_.style);
    }

    void large(Role role, const std::string& name, const std::string& value)
    {
        shapes_.emplace_back(words(Role::Note, name, {left_, row_}, 3.0));
        const double size = fittingSize(value, 8.0, width_ - indent, true);
        shapes_.emplace_back(words(role, value, {left_ + indent, row_}, size, Anchor::Start, true));
        row_ += 10.5;
    }

    /// A line under the large one before.
    void small(Role role, const std::string& text)
    {
        row_ -= 4.5;
        shapes_.emplace_back(words(role, text, {left_ + indent, row_}, 3.0));
        row_ += 8.8;
    }

    void angle()
    {
        large(Role::AngleMark, said("angle"), said(writeAngle(step_.foldAngle, picture_.angles)));
        if (isOverbent(step_))
            small(Role::AngleMark,
                  said("set " + writeAngle(step_.angleToSet, picture_.angles) + " for springback"));
    }

    /// Which way the coloured face lies, as a short piece of sheet.
    void face()
    {
        const Stroke outline{0.2, Dash::Solid, {}};
        const double middle = row_ - 1.2;
        const double colour = step_.colourUp ? middle - 1.6 : middle + 1.0;
        shapes_.emplace_back(box(Role::Sheet, {left_, middle, left_ + 12.0, middle + 1.0}, outline, Fill{}));
        shapes_.emplace_back(box(Role::ColouredFace, {left_, colour, left_ + 12.0, colour + 1.6}, outline,
                                 Fill{true, picture_.colour, Hatch::None}));
        shapes_.emplace_back(Path{Role::ColouredFace,
                                  {{left_ + 1.0, colour + 0.8}, {left_ + 11.5, colour + 0.8}},
                                  false,
                                  Stroke{0.4, Dash::Dotted, contrasting(picture_.colour)},
                                  {}});
        shapes_.emplace_back(words(Role::Label, said(writeFace(step_)), {left_ + indent, row_ + 0.6}, 4.4,
                                   Anchor::Start, true));
        row_ += 8.0;
    }

    void movement()
    {
        addMoveMark(shapes_, {left_, row_ - 4.0}, step_.move, picture_.colour);
        const bool still = step_.move == fold::Move::None;
        const double beside = still ? 0.0 : step_.move == fold::Move::TurnOverAndSpin ? 29.0 : 15.0;
        double base = row_ + (still ? 1.0 : 3.0);
        for (const std::string& part : wrapped(said(wordsFor(step_.move)), 3.8, width_ - beside)) {
            shapes_.emplace_back(
                words(Role::Movement, part, {left_ + beside, base}, 3.8, Anchor::Start, true));
            base += 5.0;
        }
        row_ = std::max(base, row_ + (still ? 4.0 : 12.0)) + 3.0;
    }

    void cautions()
    {
        const double top = row_ - 3.0;
        std::vector<Phrase> all = step_.cautions;
        all.insert(all.end(), step_.notes.begin(), step_.notes.end());
        for (const Phrase& caution : all)
            for (const std::string& part : wrapped(say(caution, picture_.style), 3.0, width_ - 4.0)) {
                shapes_.emplace_back(words(Role::Caution, part, {left_ + 4.0, row_}, 3.0));
                row_ += 4.2;
            }
        if (!all.empty())
            shapes_.emplace_back(
                box(Role::Caution, {left_, top, left_ + 1.6, row_ - 3.2}, std::nullopt, Fill{}));
    }

    const fold::FoldStep& step_;
    const FoldStepPicture& picture_;
    double left_;
    double width_;
    double row_;
    std::vector<Shape>& shapes_;
};

} // namespace

std::string writeAngle(Angle foldAngle, AngleShown shown)
{
    return shown == AngleShown::Fold ? write(foldAngle) : write(halfTurn - foldAngle) + " included";
}

bool isOverbent(const fold::FoldStep& step)
{
    return magnitude(step.angleToSet - step.foldAngle) > Angle::degrees(0.005);
}

std::string writeGap(const fold::FoldStep& step, const Style& style)
{
    return step.openGap > Length() ? write(step.openGap, style) : "closed";
}

std::string writeFace(const fold::FoldStep& step)
{
    return step.colourUp ? "colour up" : "colour down";
}

void addStepPanel(const fold::FoldStep& step, const FoldStepPicture& picture, bool hasGauge, Rectangle room,
                  std::vector<Shape>& shapes)
{
    PanelPainter(step, picture, room, shapes).paint(hasGauge);
}

} // namespace lapwright::drawing
