#include "print/cut_ticket.h"

#include "drawing/cut_map.h"
#include "print/words.h"
#include "speech/spoken.h"

namespace lapwright::print {

namespace {

/// Two patterns of few strips stand on a page; one of many takes it alone and is drawn larger.
constexpr std::size_t fewStrips = 3;
constexpr std::int64_t smallMapHeight = 88;
constexpr std::int64_t mapHeight = 116;
/// So many sheets cut alike have a box each; more are counted off by hand.
constexpr std::int64_t mostBoxes = 24;

std::string times(std::int64_t count)
{
    return std::to_string(count) + " \xC3\x97 ";
}

class TicketWriter {
public:
    TicketWriter(const cutting::Problem& problem, const cutting::Plan& plan, const CutTicket& ticket,
                 const Printing& printing)
        : problem_(problem), plan_(plan), ticket_(ticket), printing_(printing)
    {
    }

    Sheet write()
    {
        sheet_.title = spoken("Cut ticket") + " " + std::to_string(ticket_.number);
        sheet_.subject = materialInWords(ticket_.material);
        sheet_.foot = footOf(jobs(), 0, printing_);
        facts();
        served();
        remnants();
        notCut();
        sheet_.add(Paragraph{cautionAtTheMachine(), Tone::Caution});
        for (std::size_t pattern = 0; pattern < plan_.patterns.size(); ++pattern)
            map(pattern);
        return std::move(sheet_);
    }

private:
    [[nodiscard]] std::string length(Length value) const { return lapwright::write(value, ticket_.style); }
    [[nodiscard]] std::string size(Length wide, Length longPart) const
    {
        return length(wide) + " \xC3\x97 " + length(longPart);
    }

    [[nodiscard]] std::string jobs() const
    {
        std::string jobs;
        for (const ServedOrder& order : ticket_.orders)
            jobs += (jobs.empty() ? "" : ", ") + order.job + " " + spoken("revision") + " " +
                    std::to_string(order.revision);
        return jobs;
    }

    void facts()
    {
        std::int64_t cut = 0, blanks = 0;
        for (const cutting::Pattern& pattern : plan_.patterns)
            cut += pattern.count;
        for (const cutting::Blank& blank : problem_.blanks())
            blanks += blank.count;
        for (const cutting::Shortfall& missing : plan_.notCut)
            blanks -= missing.count;
        sheet_.add(
            Facts{{{spoken("blanks"), std::to_string(blanks)},
                   {spoken("sheets or levels"),
                    std::to_string(cut) + " " + spoken("in") + " " +
                        spoken(counted(static_cast<std::int64_t>(plan_.patterns.size()), "pattern"))}}});
        sheet_.add(Paragraph{spoken(ticket_.summary), Tone::Strong});
    }

    void served()
    {
        Table table;
        table.columns = {{spoken("letter"), 16.0, Align::Middle},
                         {spoken("order served")},
                         {spoken("revision"), 20.0, Align::Right},
                         {spoken("wanted by"), 30.0},
                         {spoken("blanks"), 18.0, Align::Right}};
        Group group;
        for (const ServedOrder& order : ticket_.orders)
            group.rows.push_back({{{ticket_.orders.size() > 1 ? order.letter : "", Tone::Strong},
                                   {order.job, Tone::Strong},
                                   {std::to_string(order.revision)},
                                   {order.wantedBy},
                                   {std::to_string(order.blanks)}}});
        table.groups.push_back(std::move(group));
        sheet_.add(Heading{spoken("Orders")});
        sheet_.add(std::move(table));
    }

    void remnants()
    {
        if (plan_.remnants.empty())
            return;
        Table table;
        table.columns = {{spoken("labelled"), 40.0},
                         {spoken("width") + " \xC3\x97 " + spoken("length")},
                         {spoken("from map"), 20.0, Align::Right},
                         {spoken("how many"), 20.0, Align::Right}};
        Group group;
        for (const cutting::NewRemnant& remnant : plan_.remnants)
            group.rows.push_back({{{cutting::keysInWords(remnant), Tone::Strong, Cell::Kind::Tick},
                                   {size(remnant.width, remnant.length)},
                                   {std::to_string(remnant.pattern + 1)},
                                   {std::to_string(remnant.count)}}});
        table.groups.push_back(std::move(group));
        sheet_.add(Heading{spoken("Remnants to label and keep")});
        sheet_.add(std::move(table));
    }

    void notCut()
    {
        if (plan_.notCut.empty())
            return;
        std::string missing;
        for (const cutting::Shortfall& shortfall : plan_.notCut)
            missing +=
                (missing.empty() ? "" : ", ") + times(shortfall.count) + ticket_.names[shortfall.blank];
        sheet_.add(Paragraph{spoken("The stock does not suffice for") + ": " + missing + ".", Tone::Caution});
    }

    void map(std::size_t index)
    {
        const cutting::Pattern& pattern = plan_.patterns[index];
        drawing::CutMapPicture picture;
        picture.style = ticket_.style;
        picture.names = ticket_.names;
        picture.material = materialInWords(ticket_.material);
        picture.width = nearestFromMillimetres(contentWidth(printing_.paper));
        picture.height = Length::millimetres(pattern.strips.size() <= fewStrips ? smallMapHeight : mapHeight);
        sheet_.add(Picture{drawing::cutMap(problem_, plan_, index, picture)}, true);
        if (pattern.count > 1 && pattern.count <= mostBoxes)
            sheet_.add(Paragraph{spoken("Cut alike, tick each:") + " " + boxes(pattern.count), Tone::Strong},
                       true);
        else if (pattern.count > mostBoxes)
            sheet_.add(Paragraph{say(spoken(Phrase{"Cut alike, {count} in all; done so far:",
                                                   {{"count", pattern.count}}}),
                                     {}),
                                 Tone::Strong},
                       true);
        sheet_.add(strips(pattern));
    }

    static std::string boxes(std::int64_t count)
    {
        std::string boxes;
        for (std::int64_t box = 0; box < count; ++box)
            boxes += "\xE2\x98\x90 ";
        return boxes;
    }

    [[nodiscard]] Table strips(const cutting::Pattern& pattern) const
    {
        const bool crosswise = pattern.order == cutting::CutOrder::LengthsFirst;
        Table table;
        table.together = true;
        table.columns = {{spoken("strip"), 16.0},
                         {spoken(crosswise ? "length" : "width"), 24.0, Align::Right},
                         {spoken(crosswise ? "stop at" : "knife at"), 24.0, Align::Right},
                         {spoken(crosswise ? "then slit to" : "then cut to")},
                         {spoken("left over"), 24.0, Align::Right}};
        Group group;
        for (std::size_t number = 0; number < pattern.strips.size(); ++number) {
            const cutting::Strip& strip = pattern.strips[number];
            group.rows.push_back({{{std::to_string(number + 1), Tone::Strong, Cell::Kind::Tick},
                                   {length(strip.width), Tone::Strong},
                                   {length(strip.position + strip.width)},
                                   {blanksOf(pattern, strip)},
                                   {strip.rest > Length() ? length(strip.rest) : ""}}});
        }
        table.groups.push_back(std::move(group));
        return table;
    }

    [[nodiscard]] std::string blanksOf(const cutting::Pattern& pattern, const cutting::Strip& strip) const
    {
        std::string text;
        for (const cutting::Crosscut& cut : strip.crosscuts) {
            const cutting::Lying lying =
                cutting::lyingIn(pattern.order, problem_.blanks()[cut.blank], cut.turned);
            text +=
                (text.empty() ? "" : "; ") + times(cut.count) + ticket_.names[cut.blank] + " " +
                length(lying.along) +
                (lying.across < strip.width ? ", " + spoken("trimmed to") + " " + length(lying.across) : "");
        }
        return text;
    }

    const cutting::Problem& problem_;
    const cutting::Plan& plan_;
    const CutTicket& ticket_;
    const Printing& printing_;
    Sheet sheet_;
};

} // namespace

Style fine(Style style)
{
    style.inchDenominator = 64;
    style.tenthsOfMillimetre = 1;
    return style;
}

Sheet cutTicket(const cutting::Problem& problem, const cutting::Plan& plan, const CutTicket& ticket,
                const Printing& printing)
{
    return TicketWriter(problem, plan, ticket, printing).write();
}

} // namespace lapwright::print
