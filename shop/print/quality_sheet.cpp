#include "print/quality_sheet.h"

#include "print/order_words.h"
#include "print/words.h"
#include "speech/spoken.h"

namespace lapwright::print {

namespace {

constexpr std::int64_t pictureWidth = 84;
constexpr std::int64_t pictureHeight = 76;
constexpr drawing::Colour grey{140, 140, 140};

std::string plusOrMinus(const std::string& value)
{
    return "\xC2\xB1 " + value;
}

class SheetWriter {
public:
    SheetWriter(const pieces::Order& order, const Tolerances& tolerances,
                const std::map<std::string, drawing::Colour>& colours, const Printing& printing,
                const Style& style, drawing::AngleShown angles)
        : order_(order), tolerances_(tolerances), colours_(colours), printing_(printing), style_(style),
          angles_(angles)
    {
    }

    Sheet write()
    {
        sheet_.title = spoken("Quality sheet");
        sheet_.subject = order_.job.name;
        sheet_.foot = footOf(order_.job.name, order_.revision, printing_);
        sheet_.add(Paragraph{spoken("Measure the first piece before folding the rest, and the last one. "
                                    "Lengths are outside lengths.") +
                                 " " +
                                 spoken(isFold() ? "Angles are how far a bend turns from flat."
                                                 : "Angles are those between the legs."),
                             Tone::Plain});
        for (std::size_t profile = 0; profile < order_.profiles.size(); ++profile)
            one(profile);
        sheet_.add(
            Paragraph{spoken("Tolerances are the shop's own; without them common practice, no source."),
                      Tone::Faint},
            true);
        sheet_.add(Signatures{{spoken("checked by"), spoken("date and time")}});
        return std::move(sheet_);
    }

private:
    [[nodiscard]] bool isFold() const { return angles_ == drawing::AngleShown::Fold; }
    [[nodiscard]] std::string angle(Angle turn) const
    {
        return lapwright::write(isFold() ? magnitude(turn) : halfTurn - magnitude(turn));
    }
    [[nodiscard]] std::string length(Length value) const { return lapwright::write(value, style_); }
    /// Tolerances are finer than what is measured.
    [[nodiscard]] std::string within(Length value) const
    {
        Style fine = style_;
        fine.inchDenominator = 64;
        fine.tenthsOfMillimetre = 1;
        return plusOrMinus(lapwright::write(value, fine));
    }

    void one(std::size_t index)
    {
        const pieces::OrderedProfile& profile = order_.profiles[index];
        std::string marks;
        std::int64_t count = 0;
        for (const pieces::Piece& piece : order_.pieces)
            if (piece.profile == index) {
                marks += (marks.empty() ? "" : ", ") + piece.mark;
                count += piece.count;
            }
        if (count == 0)
            return;
        sheet_.add(Heading{profile.id + "  " + spoken(profile.profile.name)});
        sheet_.add(Paragraph{spoken(counted(count, "piece")) + ": " + marks, Tone::Plain}, true);
        sheet_.add(Beside{{picture(profile)}, table(profile)});
    }

    [[nodiscard]] drawing::DisplayList picture(const pieces::OrderedProfile& profile) const
    {
        drawing::ProfilePicture picture;
        picture.thickness = profile.thickness;
        picture.metal = metalInWords(profile.material);
        const auto colour = colours_.find(profile.material.colour);
        picture.colour = colour == colours_.end() ? grey : colour->second;
        picture.colourName = profile.material.colour;
        picture.girth = profile.girth;
        picture.style = style_;
        picture.angles = angles_;
        picture.width = Length::millimetres(pictureWidth);
        picture.height = Length::millimetres(pictureHeight);
        return drawing::profilePicture(profile.profile, picture);
    }

    [[nodiscard]] Table table(const pieces::OrderedProfile& profile) const
    {
        Table table;
        table.leastRowHeight = 7.2;
        table.columns = {{spoken("measure")},
                         {spoken("wanted"), 21.0, Align::Right},
                         {spoken("may be off"), 17.0, Align::Right},
                         {spoken("first"), 15.0, Align::Middle},
                         {spoken("last"), 15.0, Align::Middle}};
        Group group;
        const auto add = [&](const std::string& what, const std::string& wanted, const std::string& off) {
            const Cell frame{"", Tone::Plain, Cell::Kind::Frame};
            group.rows.push_back({{{what}, {wanted, Tone::Strong}, {off}, frame, frame}});
        };
        const std::string leg = within(tolerances_.leg);
        const std::string turn = plusOrMinus(lapwright::write(tolerances_.angle));
        const trim::Profile& shape = profile.profile;
        add(spoken("girth, flat"), length(profile.girth), within(tolerances_.girth));
        if (shape.startHem)
            add(spoken("first hem"), length(shape.startHem->flat), leg);
        for (std::size_t i = 0; i < shape.legs.size(); ++i) {
            add(spoken(withSpaces(shape.legs[i].name)), length(shape.legs[i].length), leg);
            if (i < shape.bends.size())
                add(spoken("bend to") + " " + spoken(withSpaces(shape.legs[i + 1].name)),
                    angle(shape.bends[i].turn), turn);
        }
        if (shape.endHem)
            add(spoken("last hem"), length(shape.endHem->flat), leg);
        add(spoken("piece length"), spoken("see mark"), within(tolerances_.pieceLength));
        add(spoken("colour, coating"), spoken("clean"), "");
        table.groups.push_back(std::move(group));
        return table;
    }

    const pieces::Order& order_;
    const Tolerances& tolerances_;
    const std::map<std::string, drawing::Colour>& colours_;
    const Printing& printing_;
    const Style& style_;
    drawing::AngleShown angles_;
    Sheet sheet_;
};

} // namespace

Sheet qualitySheet(const pieces::Order& order, const Tolerances& tolerances,
                   const std::map<std::string, drawing::Colour>& colours, const Printing& printing,
                   const Style& style, drawing::AngleShown angles)
{
    return SheetWriter(order, tolerances, colours, printing, style, angles).write();
}

} // namespace lapwright::print
