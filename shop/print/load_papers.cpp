#include "print/load_papers.h"

#include "print/piece_labels.h"
#include "print/words.h"
#include "schedule/label_text.h"
#include "speech/spoken.h"

#include <algorithm>
#include <set>

namespace lapwright::print {

namespace {

const LoadedOrder& orderOf(const LoadedOrders& orders, const std::string& id)
{
    static const LoadedOrder unknown;
    const auto order = orders.find(id);
    return order == orders.end() ? unknown : order->second;
}

/// "Larkfield House revision 2, Hollin": whose pieces are on the load.
std::string jobsOn(const schedule::Load& load, const LoadedOrders& orders)
{
    std::set<std::string> seen;
    std::string jobs;
    for (const schedule::Bundle& bundle : load.bundles) {
        if (!seen.insert(bundle.order).second)
            continue;
        const std::int64_t revision = orderOf(orders, bundle.order).revision;
        jobs += (jobs.empty() ? "" : ", ") + bundle.job +
                (revision > 0 ? " " + spoken("revision") + " " + std::to_string(revision) : "");
    }
    return jobs;
}

std::string truckOf(const schedule::Load& load)
{
    return load.truck.empty() ? spoken("no truck named") : load.truck;
}

/// "2026-11-25 14:05" of an ISO 8601 time.
std::string dayAndTime(std::string time)
{
    time = time.substr(0, 16);
    std::replace(time.begin(), time.end(), 'T', ' ');
    return time;
}

Sheet begun(const char* title, const schedule::Load& load, const LoadedOrders& orders,
            const Printing& printing, const Style& style)
{
    Sheet sheet;
    sheet.title = spoken(title);
    sheet.subject = truckOf(load);
    sheet.foot = footOf(jobsOn(load, orders), 0, printing);
    const schedule::LoadTotals whole = schedule::totalsOf(load);
    sheet.add(Paragraph{jobsOn(load, orders), Tone::Strong});
    sheet.add(Facts{
        {{spoken("bundles"),
          std::to_string(whole.bundles) +
              (whole.forTwo > 0 ? ", " + std::to_string(whole.forTwo) + " " + spoken("for two people") : "")},
         {spoken("pieces"), std::to_string(whole.pieces)},
         {spoken("weight"), writeBothMasses(whole.kilograms, style)},
         {spoken("longest piece"), write(whole.longest, style)},
         {spoken("made up"), dayAndTime(load.madeAt)}}});
    return sheet;
}

/// "E1.1, E1.2 × 4": marks with how many where there are several, never parted from their mark.
std::string contentsOf(const schedule::Bundle& bundle)
{
    std::string text;
    for (const schedule::LoadedPiece& piece : bundle.pieces)
        text += (text.empty() ? "" : ", ") + piece.mark +
                (piece.count > 1 ? "\xC2\xA0\xC3\x97\xC2\xA0" + std::to_string(piece.count) : "");
    return text;
}

std::string bandOf(const schedule::Bundle& bundle)
{
    return bundle.label + "   " + bundle.job + " \xC2\xB7 " + materialInWords(bundle.material);
}

} // namespace

LoadedOrders loadedOrders(const std::vector<pieces::Order>& orders)
{
    LoadedOrders loaded;
    for (const pieces::Order& order : orders) {
        LoadedOrder& known = loaded[order.id];
        known.revision = order.revision;
        for (const pieces::OrderedProfile& profile : order.profiles)
            known.profiles[profile.id] = {profile.profile, profile.thickness};
    }
    return loaded;
}

Sheet loadList(const schedule::Load& load, const LoadedOrders& orders, const Printing& printing,
               const Style& style)
{
    Sheet sheet = begun("Load list", load, orders, printing, style);
    sheet.add(Paragraph{cautionForCarriers(), Tone::Caution});
    Table table;
    table.leastRowHeight = 8.0;
    table.columns = {{spoken("bundle"), 20.0},
                     {spoken("pieces"), 14.0, Align::Right},
                     {spoken("weight"), 33.0, Align::Right},
                     {spoken("longest"), 22.0, Align::Right},
                     {spoken("what is in it")},
                     {spoken("carried by"), 29.0}};
    std::string order;
    for (const schedule::Bundle& bundle : load.bundles) {
        if (table.groups.empty() || bundle.order != order) {
            table.groups.push_back({bundle.job, "", {}});
            order = bundle.order;
        }
        table.groups.back().rows.push_back({{{bundle.label, Tone::Strong, Cell::Kind::Tick},
                                             {std::to_string(piecesIn(bundle)), Tone::Strong},
                                             {writeBothMasses(bundle.kilograms, style)},
                                             {write(longestIn(bundle), style)},
                                             {materialInWords(bundle.material) + ": " + contentsOf(bundle)},
                                             {bundle.twoPeople ? spoken("TWO PEOPLE") : "", Tone::Strong}}});
    }
    sheet.add(std::move(table));
    sheet.add(Signatures{{spoken("loaded by"), spoken("driver"), spoken("date and time")}});
    return sheet;
}

Sheet checkSheet(const schedule::Load& load, const LoadedOrders& orders, const Printing& printing,
                 const Style& style)
{
    Sheet sheet = begun("Delivery check", load, orders, printing, style);
    sheet.add(Paragraph{
        spoken("Count at the truck. Write how many of each mark came, and of those that did not come right "
               "how many are short, damaged or wrong; together they make the number sent."),
        Tone::Plain});
    sheet.add(Paragraph{cautionForCarriers(), Tone::Caution});
    Table table;
    table.leastRowHeight = 8.0;
    table.columns = {{spoken("mark"), 22.0},
                     {spoken("sent"), 15.0, Align::Right},
                     {spoken("length"), 25.0, Align::Right},
                     {spoken("received"), 20.0, Align::Middle},
                     {spoken("short"), 19.0, Align::Middle},
                     {spoken("damaged"), 18.0, Align::Middle},
                     {spoken("wrong"), 23.0, Align::Middle},
                     {spoken("note")}};
    const Cell frame{"", Tone::Plain, Cell::Kind::Frame};
    for (const schedule::Bundle& bundle : load.bundles) {
        Group group{bandOf(bundle), bundle.twoPeople ? spoken("TWO PEOPLE") : "", {}};
        for (const schedule::LoadedPiece& piece : bundle.pieces)
            group.rows.push_back({{{piece.mark, Tone::Strong},
                                   {std::to_string(piece.count), Tone::Strong},
                                   {write(piece.length, style)},
                                   frame,
                                   frame,
                                   frame,
                                   frame,
                                   frame}});
        table.groups.push_back(std::move(group));
    }
    sheet.add(std::move(table));
    sheet.add(Signatures{{spoken("crew lead"), spoken("driver"), spoken("date and time")}});
    return sheet;
}

namespace {

Label labelOf(const schedule::Bundle& bundle, const schedule::Load& load, const LoadedOrder& order,
              const Style& style)
{
    Label label;
    label.mark = bundle.label;
    label.beside = spoken(counted(piecesIn(bundle), "piece"));
    label.where = bundle.job;
    label.material = materialInWords(bundle.material);
    label.twoPeople = bundle.twoPeople;
    std::string what = spoken("longest") + " " + write(longestIn(bundle), style);
    if (!bundle.pieces.empty()) {
        const auto profile = order.profiles.find(bundle.pieces.front().profile);
        if (profile != order.profiles.end()) {
            label.profile = profile->second.profile;
            label.thickness = profile->second.thickness;
            what = spoken(label.profile->name) + ", " + what;
        }
    }
    label.lines.push_back(what);
    label.lines.push_back(contentsOf(bundle));
    label.job = writeBothMasses(bundle.kilograms, style) + " \xC2\xB7 " + truckOf(load);
    const auto code = schedule::labelText({bundle.order, std::max<std::int64_t>(1, order.revision), "",
                                           bundle.label, std::max<std::int64_t>(1, piecesIn(bundle))});
    if (code.ok())
        label.code = *code;
    return label;
}

} // namespace

std::vector<Label> bundleLabels(const schedule::Load& load, const LoadedOrders& orders,
                                const Printing& printing, const Style& style)
{
    std::vector<Label> labels;
    for (const schedule::Bundle& bundle : load.bundles) {
        const LoadedOrder& order = orderOf(orders, bundle.order);
        labels.push_back(labelOf(bundle, load, order, style));
        labels.back().foot = labelFoot(order.revision, printing, labels.size(), load.bundles.size());
    }
    return labels;
}

} // namespace lapwright::print
