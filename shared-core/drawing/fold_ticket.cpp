#include "drawing/fold_ticket.h"

#include "drawing/fold_picture.h"
#include "drawing/fold_step_panel.h"
#include "drawing/marks.h"
#include "drawing/move_marks.h"
#include "drawing/palette.h"
#include "drawing/text.h"
#include "drawing/ticket_page.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::drawing {

namespace {

constexpr std::size_t checkColumns = 4;
constexpr double checkRow = 5.2;
/// One line of the table of steps.
constexpr double stepRow = 11.6;

const char* endInWords(fold::End end)
{
    return end == fold::End::Start ? "first edge" : "last edge";
}

class TicketPainter {
public:
    TicketPainter(const trim::Profile& profile, const trim::FlatPattern& flat, const fold::FoldPlan& plan,
                  const fold::FoldPictures& pictures, const FoldTicket& ticket)
        : profile_(profile), flat_(flat), plan_(plan), pictures_(pictures), ticket_(ticket),
          pages_(said("Fold ticket") + ", " + said(profile.name), ticket.job, ticket.form)
    {
    }

    std::vector<DisplayList> paint()
    {
        facts();
        pieces();
        finished();
        checks();
        steps();
        cautions();
        stepPictures();
        return pages_.take(ticket_.style);
    }

private:
    /// In the reader's language.
    [[nodiscard]] std::string said(const std::string& english) const
    {
        return translated(english, ticket_.style);
    }
    [[nodiscard]] std::string length(Length value) const { return write(value, ticket_.style); }
    [[nodiscard]] std::string angle(Angle fold) const
    {
        return write(ticket_.angles == AngleShown::Fold ? fold : halfTurn - fold);
    }

    void facts()
    {
        const double row = pages_.down(5.0);
        const double swatch = pages_.left() + 8.0;
        pages_.add(box(Role::ColouredFace, {pages_.left(), row - 2.6, swatch, row + 0.2},
                       Stroke{0.2, Dash::Solid, {}}, Fill{true, ticket_.colour, Hatch::None}));
        std::string text = ticket_.colourName.empty() ? said("coloured face") : ticket_.colourName;
        for (const std::string& fact : {said(ticket_.metal), writeThickness(ticket_.thickness, ticket_.style),
                                        said("girth") + " " + length(flat_.girth)})
            text += (fact.empty() ? "" : " \xC2\xB7 ") + fact;
        pages_.add(words(Role::Label, shortened(text, 3.4, pages_.right() - swatch - 2.0),
                         {swatch + 2.0, row}, 3.4));
        std::string machine = said(ticket_.machine);
        if (!ticket_.beamFace.empty())
            machine += ", " + said("beam face") + " " + said(ticket_.beamFace);
        pages_.text(Role::Label, machine, 3.8, true);
    }

    void pieces()
    {
        std::int64_t count = 0;
        std::string marks;
        for (const TicketPieces& piece : ticket_.pieces) {
            count += piece.count;
            marks += (marks.empty() ? "" : ";  ") + piece.mark + ": " + std::to_string(piece.count) + " " +
                     said("of") + " " + length(piece.length);
        }
        if (count > 0)
            pages_.text(Role::Title, counted(count, "piece", ticket_.style), 4.6, true);
        if (!marks.empty())
            pages_.text(Role::Label, marks, 3.8, false);
        pages_.rule();
    }

    void finished()
    {
        ProfilePicture picture;
        picture.thickness = ticket_.thickness;
        picture.metal = ticket_.metal;
        picture.colour = ticket_.colour;
        picture.colourName = ticket_.colourName;
        picture.style = ticket_.style;
        picture.angles = ticket_.angles;
        picture.width = nearestFromMillimetres(pages_.right() - pages_.left());
        // What is left when everything else of the first page has its room; the steps go on overleaf rather
        // than the drawing becoming too small to read.
        const double rest = pages_.room() - checkRoom() - cautionRoom() -
                            static_cast<double>(plan_.steps.size()) * (stepRow + TicketPages::ruleHeight) -
                            20.0;
        picture.height = nearestFromMillimetres(std::clamp(rest, 100.0, 110.0));
        pages_.picture(profilePicture(profile_, picture));
    }

    /// What to measure on the finished piece: name and value.
    [[nodiscard]] std::vector<std::pair<std::string, std::string>> measured() const
    {
        std::vector<std::pair<std::string, std::string>> all;
        if (profile_.startHem)
            all.emplace_back(said("first hem"), length(profile_.startHem->flat));
        for (std::size_t i = 0; i < profile_.legs.size(); ++i) {
            all.emplace_back(said(withSpaces(profile_.legs[i].name)), length(profile_.legs[i].length));
            if (i < profile_.bends.size())
                all.emplace_back(said("bend"), angle(magnitude(profile_.bends[i].turn)));
        }
        if (profile_.endHem)
            all.emplace_back(said("last hem"), length(profile_.endHem->flat));
        return all;
    }

    [[nodiscard]] double checkRoom() const
    {
        const auto rows = (measured().size() + checkColumns - 1) / checkColumns;
        return 8.0 + checkRow * static_cast<double>(rows);
    }

    void checks()
    {
        pages_.rule();
        pages_.text(Role::Title,
                    say({"Check the finished piece: outside lengths within {length}, angles within {angle}",
                         {{"length", ticket_.legTolerance}, {"angle", ticket_.angleTolerance}}},
                        ticket_.style),
                    3.6, true);
        const auto cells = measured();
        const double width = (pages_.right() - pages_.left()) / checkColumns;
        for (std::size_t i = 0; i < cells.size(); i += checkColumns) {
            const double row = pages_.down(checkRow);
            for (std::size_t k = i; k < std::min(i + checkColumns, cells.size()); ++k) {
                const double left = pages_.left() + width * static_cast<double>(k - i);
                const auto& [name, value] = cells[k];
                pages_.add(box(Role::Note, {left, row - 2.5, left + 2.5, row}, Stroke{0.2, Dash::Solid, {}},
                               std::nullopt));
                const double room = width - 8.0 - textWidth(value, 3.2, true);
                const std::string shown = shortened(name, 3.0, room);
                pages_.add(words(Role::Label, shown, {left + 4.0, row}, 3.0));
                pages_.add(words(Role::Dimension, value, {left + 5.4 + textWidth(shown, 3.0), row}, 3.2,
                                 Anchor::Start, true));
            }
        }
    }

    void steps()
    {
        stepsHead();
        for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
            if (pages_.room() < stepRow) {
                pages_.next();
                stepsHead();
            }
            step(i, plan_.steps[i]);
        }
    }

    void stepsHead()
    {
        pages_.rule();
        const double row = pages_.down(3.0);
        const std::pair<double, const char*> columns[] = {{0.0, "step"},
                                                          {10.0, "to gauge"},
                                                          {54.0, "fold, angle"},
                                                          {102.0, "lies, to the gauge"},
                                                          {154.0, "do first"}};
        for (const auto& [x, name] : columns)
            pages_.add(words(Role::Note, said(name), {pages_.left() + x, row}, 2.6));
        pages_.rule();
    }

    void step(std::size_t index, const fold::FoldStep& step)
    {
        const double row = pages_.down(stepRow), left = pages_.left();
        const auto cell = [&](double x, double width, Role role, const std::string& text, double size,
                              double above) {
            pages_.add(words(role, shortened(text, size, width, true), {left + x, row - above}, size,
                             Anchor::Start, true));
        };
        cell(0.0, 9.0, Role::Title, std::to_string(index + 1), 5.0, 3.0);
        const std::string setting = length(step.gaugeSetting);
        cell(10.0, 42.0, Role::Gauge, setting, fittingSize(setting, 6.4, 41.0, true), 4.2);
        const std::string display = said(onDisplay(step));
        pages_.add(words(Role::Note, display, {left + 10.0, row - 0.8}, fittingSize(display, 2.4, 43.0)));
        cell(54.0, 46.0, Role::Label, said(stepAction(step)), 3.6, 5.4);
        cell(54.0, 46.0, Role::AngleMark, said(stepAngle(step)), 3.6, 0.9);
        cell(102.0, 24.0, Role::Label, said(writeFace(step)), 3.2, 5.4);
        cell(102.0, 24.0, Role::Label, said(endInWords(step.endToGauge)), 3.2, 0.9);
        addMoveMark(pages_.shapes(), {left + 127.0, row - stepRow - 0.4}, step.move, ticket_.colour);
        const double beside = left + 154.0;
        double base = row - 7.4;
        for (const std::string& part :
             wrapped(said(moveInWords(step)), 3.2, 0.86 * (pages_.right() - beside))) {
            pages_.add(words(Role::Movement, part, {beside, base}, 3.2, Anchor::Start, true));
            base += 3.7;
        }
        pages_.rule();
    }

    [[nodiscard]] std::string onDisplay(const fold::FoldStep& step) const
    {
        return writeExact(step.gaugeSetting, LengthUnit::Millimetres) + " from the " +
               fold::nameOf(step.touching);
    }

    [[nodiscard]] std::string stepAngle(const fold::FoldStep& step) const
    {
        if (step.action == fold::Action::Flatten)
            return (step.openGap > Length() ? "gap " : "") + writeGap(step, ticket_.style);
        std::string text = angle(step.foldAngle);
        if (isOverbent(step))
            text += "  set " + angle(step.angleToSet);
        return text;
    }

    [[nodiscard]] std::string moveInWords(const fold::FoldStep& step) const
    {
        std::string text = wordsFor(step.move);
        const Length lift = step.handling.lift;
        if (step.handling.in == fold::WayIn::Endways)
            return text + ", slide in endways";
        return lift > ticket_.slidesOver ? text + ", lift " + length(lift) + " over the bed" : text;
    }

    /// Each said once; what the shop always says is last.
    [[nodiscard]] std::vector<std::string> saidBefore() const
    {
        std::vector<std::string> all;
        const auto add = [&](const Phrase& caution) {
            const std::string text = say(caution, ticket_.style);
            if (std::find(all.begin(), all.end(), text) == all.end())
                all.push_back(text);
        };
        for (const fold::FoldStep& step : plan_.steps)
            for (const Phrase& caution : step.cautions)
                add(caution);
        for (const Phrase& caution : plan_.cautions)
            add(caution);
        for (std::size_t i = 0; i < plan_.steps.size(); ++i)
            if (plan_.steps[i].handling.out != fold::WayOut::Straight) // lifting is said with the step's move
                for (const Phrase& note : plan_.steps[i].notes)
                    all.push_back(said("Step") + " " + std::to_string(i + 1) + ": " +
                                  say(note, ticket_.style));
        if (!ticket_.caution.empty())
            all.push_back(ticket_.caution);
        return all;
    }

    static constexpr double cautionSize = 3.2;

    [[nodiscard]] double cautionRoom() const
    {
        double room = 0.0;
        for (const std::string& text : saidBefore())
            room += pages_.heightOf(text, cautionSize, true);
        return room;
    }

    void cautions()
    {
        for (const std::string& text : saidBefore())
            pages_.text(Role::Caution, text, cautionSize, true);
    }

    void stepPictures()
    {
        // Two on a page of whatever height.
        const double height = std::min(124.0, pages_.wholeRoom() / 2.0);
        for (std::size_t i = 0; i < pictures_.stepCount(); ++i) {
            FoldStepPicture picture;
            picture.number = i + 1;
            picture.count = pictures_.stepCount();
            picture.profile = profile_.name;
            picture.machine = ticket_.machine;
            picture.style = ticket_.style;
            picture.angles = ticket_.angles;
            picture.colour = ticket_.colour;
            picture.colourName = ticket_.colourName;
            picture.width = nearestFromMillimetres(pages_.right() - pages_.left());
            picture.height = nearestFromMillimetres(std::floor(height));
            pages_.picture(foldStepPicture(plan_.steps[i], pictures_.step(i), picture));
        }
    }

    const trim::Profile& profile_;
    const trim::FlatPattern& flat_;
    const fold::FoldPlan& plan_;
    const fold::FoldPictures& pictures_;
    const FoldTicket& ticket_;
    TicketPages pages_;
};

} // namespace

std::vector<DisplayList> foldTicket(const trim::Profile& profile, const trim::FlatPattern& flat,
                                    const fold::FoldPlan& plan, const fold::FoldPictures& pictures,
                                    const FoldTicket& ticket)
{
    return TicketPainter(profile, flat, plan, pictures, ticket).paint();
}

} // namespace lapwright::drawing
