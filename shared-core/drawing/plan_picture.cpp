#include "drawing/plan_picture.h"

#include "drawing/chain_painter.h"
#include "drawing/chain_panels.h"
#include "drawing/marks.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace lapwright::drawing {

namespace {

constexpr double margin = 8.0;
constexpr double headHeight = 14.0;
constexpr double footHeight = 16.0;

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
std::string noteOf(const std::string& undrawn, const std::vector<std::string>& leftOut, const Style& style)
{
    std::string note = translated(
        "Dot: start of the walk, the building on its left. Square: a square corner. Sloped runs are "
        "drawn with their level length.",
        style);
    if (!undrawn.empty())
        note += " " + translated("Not drawn:", style) + " " + undrawn + ".";
    for (const std::string& missing : leftOut)
        note += " " + translated("No room for:", style) + " " + missing + ".";
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
    const auto [scale, used] = setPanels(chains, {margin, margin + headHeight}, width - 2.0 * margin, room);
    DisplayList list;
    list.title = translated("Plan of", picture.style) + " " + job.name;
    addHead(list.shapes, job, width);
    std::vector<std::string> leftOut;
    for (const LaidOut& chain : chains) {
        std::vector<std::string> missing = paintChain(chain, scale, picture, list.shapes);
        std::move(missing.begin(), missing.end(), std::back_inserter(leftOut));
        list.description += (list.description.empty() ? "" : "; ") + chain.chain->name + ", " +
                            std::to_string(chain.chain->runs.size()) + translated(" runs", picture.style);
    }
    const double base = margin + headHeight + std::max(used, room) + 6.0;
    addScaleBar(list.shapes, {margin, base}, scale, 50.0, picture.style.unit == LengthUnit::Millimetres);
    list.shapes.emplace_back(words(Role::Label, translated("scale " + scaleName(scale), picture.style),
                                   {width - margin, base}, 2.8, Anchor::End));
    double row = base + 4.2;
    for (const std::string& text :
         wrapped(noteOf(undrawn, leftOut, picture.style), 2.4, width - 2.0 * margin)) {
        list.shapes.emplace_back(words(Role::Note, text, {margin, row}, 2.4));
        row += 3.2;
    }
    list.width = picture.width;
    list.height = std::max(picture.height, nearestFromMillimetres(std::ceil(row)));
    return list;
}

} // namespace lapwright::drawing
