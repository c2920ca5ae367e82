#include "print/confirmation.h"

#include "pieces/summary.h"
#include "print/order_words.h"
#include "print/words.h"
#include "speech/spoken.h"

#include <map>
#include <utility>
#include <vector>

namespace lapwright::print {

namespace {

/// Pieces that follow one another and are alike to a customer: one line of the confirmation.
struct Alike {
    std::string first;
    std::string last;
    std::int64_t count = 0;
    Length length;
    std::string where;
};

class ConfirmationWriter {
public:
    ConfirmationWriter(const pieces::Order& order, const std::optional<schedule::Cost>& cost,
                       const Printing& printing, const Style& style)
        : order_(order), cost_(cost), printing_(printing), style_(style), places_(placesOf(order.job))
    {
    }

    Sheet write()
    {
        sheet_.title = spoken("Order confirmation");
        sheet_.subject = order_.job.name;
        sheet_.foot = footOf(order_.job.name, order_.revision, printing_);
        facts();
        pieces();
        accessories();
        siteCuts();
        accepted();
        cost();
        sheet_.add(
            Paragraph{
                spoken(
                    "Made as measured on site and listed here; a change after this needs a new revision.") +
                    " " + cautionAboutCodes(),
                Tone::Plain},
            true);
        sheet_.add(Signatures{{spoken("for the customer"), spoken("for the shop"), spoken("date")}});
        return std::move(sheet_);
    }

private:
    [[nodiscard]] std::string length(Length value) const { return lapwright::write(value, style_); }

    void facts()
    {
        const site::Job& job = order_.job;
        Facts facts;
        const auto add = [&](const char* name, const std::string& value) {
            if (!value.empty())
                facts.facts.push_back({spoken(name), value});
        };
        add("customer", job.customer);
        add("wanted by", job.wantedBy);
        add("address", job.address);
        add("measured by", job.measuredBy);
        add("material", materialInWords(job.material));
        add("revision", std::to_string(order_.revision));
        const pieces::Totals totals = pieces::totalsOf(order_);
        add("pieces", std::to_string(totals.pieces));
        add("weight", writeBothMasses(totals.kilograms, style_));
        sheet_.add(std::move(facts));
    }

    [[nodiscard]] std::vector<Alike> alikeOf(std::size_t profile) const
    {
        std::vector<Alike> all;
        for (const pieces::Piece& piece : order_.pieces) {
            if (piece.profile != profile)
                continue;
            const std::string where = placeOf(piece, places_);
            if (!all.empty() && all.back().where == where && all.back().length == piece.blankLength) {
                all.back().last = piece.mark;
                all.back().count += piece.count;
            } else {
                all.push_back({piece.mark, piece.mark, piece.count, piece.blankLength, where});
            }
        }
        return all;
    }

    void pieces()
    {
        Table table;
        table.columns = {{spoken("marks"), 40.0},
                         {spoken("pieces"), 16.0, Align::Right},
                         {spoken("length"), 28.0, Align::Right},
                         {spoken("where it goes")}};
        for (std::size_t index = 0; index < order_.profiles.size(); ++index) {
            const pieces::OrderedProfile& profile = order_.profiles[index];
            Group group{profile.id + "  " + spoken(profile.profile.name),
                        materialInWords(profile.material) + ", " + spoken("girth") + " " +
                            length(profile.girth),
                        {}};
            for (const Alike& alike : alikeOf(index))
                group.rows.push_back(
                    {{{alike.first == alike.last ? alike.first
                                                 : alike.first + " " + spoken("to") + " " + alike.last,
                       Tone::Strong},
                      {std::to_string(alike.count)},
                      {length(alike.length)},
                      {alike.where}}});
            if (!group.rows.empty())
                table.groups.push_back(std::move(group));
        }
        sheet_.add(Heading{spoken("Pieces")});
        sheet_.add(std::move(table));
    }

    void accessories()
    {
        std::map<std::string, std::pair<std::int64_t, Length>> sums;
        for (const pieces::Accessory& accessory : order_.accessories) {
            auto& [count, total] = sums[accessory.name];
            count += accessory.count;
            total += accessory.length;
        }
        if (sums.empty())
            return;
        Table table;
        table.columns = {{spoken("goes along")},
                         {spoken("how many"), 30.0, Align::Right},
                         {spoken("together"), 40.0, Align::Right}};
        Group group;
        for (const auto& [name, sum] : sums)
            group.rows.push_back({{{spoken(name)},
                                   {sum.first > 0 ? std::to_string(sum.first) : ""},
                                   {sum.second > Length() ? length(sum.second) : ""}}});
        table.groups.push_back(std::move(group));
        sheet_.add(Heading{spoken("What goes along")});
        sheet_.add(std::move(table));
    }

    void siteCuts()
    {
        if (order_.siteCuts.empty())
            return;
        Table table;
        table.columns = {{spoken("stock length"), 34.0},
                         {spoken("cut for")},
                         {spoken("length"), 34.0, Align::Right},
                         {spoken("left over"), 34.0, Align::Right}};
        Group group;
        for (const pieces::SiteCut& cut : order_.siteCuts)
            group.rows.push_back({{{"stock." + std::to_string(cut.stock), Tone::Strong, Cell::Kind::Tick},
                                   {cut.mark, Tone::Strong},
                                   {length(cut.length)},
                                   {length(cut.left)}}});
        table.groups.push_back(std::move(group));
        sheet_.add(Heading{spoken("Cutting guide: stock lengths on site, in this order")});
        sheet_.add(std::move(table));
    }

    void accepted()
    {
        if (order_.job.acknowledgements.empty())
            return;
        Table table;
        table.columns = {{spoken("where"), 60.0}, {spoken("accepted because")}};
        Group group;
        for (const site::Acknowledgement& one : order_.job.acknowledgements)
            group.rows.push_back({{{spoken(one.place), Tone::Strong}, {one.reason}}});
        table.groups.push_back(std::move(group));
        sheet_.add(Heading{spoken("Accepted with a reason")});
        sheet_.add(std::move(table));
    }

    void cost()
    {
        if (!cost_)
            return;
        const schedule::Cost& cost = *cost_;
        Table table;
        table.together = true;
        table.columns = {
            {spoken("for"), 58.0}, {spoken("how it comes about")}, {cost.currency, 30.0, Align::Right}};
        Group group;
        for (const schedule::CostLine& line : cost.lines)
            group.rows.push_back({{{say(line.what, style_)},
                                   {say(line.how, style_)},
                                   {schedule::writeMoney(line.cents, "")}}});
        group.rows.push_back({{{spoken("together"), Tone::Strong},
                               {""},
                               {schedule::writeMoney(cost.cents, ""), Tone::Strong}}});
        table.groups.push_back(std::move(group));
        sheet_.add(Heading{spoken("Cost")});
        sheet_.add(std::move(table), !cost.note.empty());
        if (!cost.note.empty())
            sheet_.add(Paragraph{cost.note, Tone::Plain});
    }

    const pieces::Order& order_;
    const std::optional<schedule::Cost>& cost_;
    const Printing& printing_;
    const Style& style_;
    std::map<std::string, std::string> places_;
    Sheet sheet_;
};

} // namespace

Sheet confirmation(const pieces::Order& order, const std::optional<schedule::Cost>& cost,
                   const Printing& printing, const Style& style)
{
    return ConfirmationWriter(order, cost, printing, style).write();
}

} // namespace lapwright::print
