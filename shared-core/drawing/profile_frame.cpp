#include "drawing/profile_frame.h"

#include "drawing/marks.h"
#include "drawing/palette.h"
#include "drawing/text.h"

#include <algorithm>

namespace lapwright::drawing {

namespace {

constexpr double margin = 4.0;
constexpr double labelSize = 3.0;
constexpr double leastLabelSize = 2.0;
constexpr double headHeight = 13.0;
constexpr double footHeight = 14.0;
constexpr double bareFoot = 3.0;

std::string factsOf(const ProfilePicture& picture)
{
    std::string facts;
    const auto add = [&](const std::string& fact) {
        if (!fact.empty())
            facts += (facts.empty() ? "" : " \xC2\xB7 ") + fact;
    };
    if (picture.girth)
        add(translated("girth ", picture.style) + write(*picture.girth, picture.style));
    add(translated(picture.metal, picture.style));
    if (picture.thickness > Length())
        add(writeThickness(picture.thickness, picture.style));
    return facts;
}

/// The colour's name with a piece of the band, upper right.
void addSwatch(const ProfileFrame& frame, double width, std::vector<Shape>& onto)
{
    const ProfilePicture& picture = frame.picture;
    const std::string name = picture.colourName.empty() ? translated("coloured face", picture.style)
                                                        : translated("colour: ", picture.style) +
                                                              shortened(picture.colourName, labelSize, 30.0);
    const double right = frame.page.right - margin;
    onto.emplace_back(words(Role::Label, name, {right, margin + 3.8}, labelSize, Anchor::End));
    const double end = right - textWidth(name, labelSize) - 1.5;
    const double start = std::max(end - 9.0, right - 0.34 * width);
    const double middle = margin + 2.8;
    onto.emplace_back(box(Role::ColouredFace, {start, middle - 1.1, end, middle + 1.1},
                          Stroke{0.2, Dash::Solid, {}}, Fill{true, picture.colour, Hatch::None}));
    onto.emplace_back(Path{Role::ColouredFace,
                           {{start + 1.0, middle}, {end - 0.6, middle}},
                           false,
                           Stroke{0.4, Dash::Dotted, contrasting(picture.colour)},
                           {}});
}

void addHead(const ProfileFrame& frame, std::vector<Shape>& onto)
{
    const double width = frame.page.width() - 2.0 * margin;
    onto.emplace_back(words(Role::Title,
                            shortened(translated(frame.name, frame.picture.style), 4.4, width * 0.66, true),
                            {margin, margin + 4.2}, 4.4, Anchor::Start, true));
    const std::string facts = factsOf(frame.picture);
    // So much that rounding does not make them wider than their line again.
    const double size = std::max(fittingSize(facts, labelSize, width - 0.01), leastLabelSize);
    onto.emplace_back(words(Role::Label, shortened(facts, size, width), {margin, margin + 9.2}, size));
    addSwatch(frame, width, onto);
    const double below = margin + 11.2;
    onto.emplace_back(line(Role::Note, {margin, below}, {frame.page.right - margin, below}, 0.2));
}

std::string missingIn(const ProfileFrame& frame)
{
    std::string note;
    for (const std::string& missing : frame.leftOut)
        note += " " + translated("No room for:", frame.picture.style) + " " + missing + ".";
    return note;
}

std::string noteOf(const ProfileFrame& frame)
{
    std::string note = frame.picture.angles == AngleShown::Fold
                           ? "Outside lengths. Fold angles: 0\xC2\xB0 is flat."
                           : "Outside lengths. Included angles: 180\xC2\xB0 is flat.";
    if (frame.drawnThicker)
        note += " Metal drawn thicker than it is.";
    if (frame.drawnLonger)
        note += " Shortest parts drawn larger.";
    return translated(note, frame.picture.style) + missingIn(frame);
}

void addFoot(const ProfileFrame& frame, std::vector<Shape>& onto)
{
    const Rectangle& page = frame.page;
    const double top = page.bottom - margin - footHeight + 3.0;
    onto.emplace_back(line(Role::Note, {margin, top}, {page.right - margin, top}, 0.2));
    addScaleBar(onto, {margin, top + 4.6}, frame.scale, 40.0,
                frame.picture.style.unit == LengthUnit::Millimetres);
    onto.emplace_back(words(Role::Label, translated("scale " + scaleName(frame.scale), frame.picture.style),
                            {page.right - margin, top + 4.6}, 2.6, Anchor::End));
    double base = top + 8.6;
    for (const std::string& row : wrapped(noteOf(frame), 2.3, page.width() - 2.0 * margin)) {
        if (base > page.bottom - 1.0)
            return;
        onto.emplace_back(words(Role::Note, row, {margin, base}, 2.3));
        base += 3.0;
    }
}

void addMissing(const ProfileFrame& frame, std::vector<Shape>& onto)
{
    if (!frame.leftOut.empty())
        onto.emplace_back(words(Role::Note,
                                shortened(missingIn(frame).substr(1), 2.3, frame.page.width() - 2.0),
                                {1.0, frame.page.bottom - 1.0}, 2.3));
}

} // namespace

Rectangle fieldOf(const Rectangle& page, bool framed)
{
    if (!framed)
        return {1.0, 1.0, page.right - 1.0, page.bottom - 1.0 - bareFoot};
    return {margin, margin + headHeight, page.right - margin, page.bottom - margin - footHeight};
}

void addProfileFrame(const ProfileFrame& frame, std::vector<Shape>& onto)
{
    if (!frame.picture.framed)
        return addMissing(frame, onto);
    addHead(frame, onto);
    addFoot(frame, onto);
}

} // namespace lapwright::drawing
