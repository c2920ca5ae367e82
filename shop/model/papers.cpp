#include "papers.h"

#include "acts/checked_plan.h"
#include "acts/cut_words.h"
#include "acts/kept_order.h"
#include "acts/shop_rates.h"
#include "acts/shop_stock.h"
#include "acts/words.h"
#include "documents/shop.h"
#include "print/cut_ticket.h"
#include "print/layout.h"
#include "print/pdf.h"
#include "print/piece_labels.h"
#include "print/quality_sheet.h"
#include "print/served_orders.h"
#include "schedule/batch.h"
#include "schedule/cost.h"
#include "shop.h"
#include "storage/document_file.h"
#include "storage/shop_state.h"
#include "text.h"

#include <QDateTime>
#include <QDir>

#include <map>

namespace lapwright::model {

namespace {

const print::LabelStock& labelStock(Preferences::Labels labels, const print::Paper& paper)
{
    if (labels == Preferences::Labels::Roll100By50)
        return print::roll100By50();
    if (labels == Preferences::Labels::Roll4By2)
        return print::roll4By2();
    return paper == print::a4Paper ? print::a4SheetOf14() : print::letterSheetOf10();
}

} // namespace

Papers::Papers(Shop& shop) : QObject(&shop), shop_(shop) {}

print::Printing Papers::printing() const
{
    const bool metric = shop_.style().unit == LengthUnit::Millimetres;
    return {shop_.name().toStdString(),
            QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString(),
            metric ? print::a4Paper : print::letterPaper};
}

Papers::Paper Papers::paperOf(const char* name, const print::Sheet& sheet, const print::Paper& paper)
{
    return {name, sheet.title + (sheet.subject.empty() ? "" : ", " + sheet.subject),
            print::layOut(sheet, paper)};
}

Papers::Paper Papers::labelsOf(const char* name, const char* title, const std::vector<print::Label>& labels,
                               const print::Paper& paper) const
{
    return {name, title,
            labels.empty() ? std::vector<print::Page>()
                           : print::labelPages(labels, labelStock(shop_.preferences()->labels(), paper))};
}

bool Papers::write(const QUrl& folder, const std::vector<Paper>& papers)
{
    const QDir place(folder.toLocalFile());
    const std::string madeAt = QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString();
    QStringList names;
    for (const Paper& paper : papers) {
        if (paper.pages.empty())
            continue;
        const QString name = shown(paper.name + ".pdf");
        const auto written = storage::writeDocument(place.filePath(name).toStdString(),
                                                    print::pdfOf(paper.pages, {paper.title, madeAt}));
        if (!written.ok()) {
            shop_.tellTrouble(written.errors());
            return false;
        }
        names.append(name);
    }
    shop_.tell(tr("Written to %1: %2").arg(place.path(), names.join(QStringLiteral(", "))));
    return true;
}

Result<std::optional<schedule::Cost>> Papers::costOf(const pieces::Order& order) const
{
    const auto nothing = std::optional<schedule::Cost>();
    if (!shop_.preferences()->costOnConfirmations())
        return nothing;
    const auto rates = acts::standingRates(shop_.database());
    if (!rates.ok())
        return rates.errors();
    if (!rates->has_value())
        return nothing;
    auto cost = schedule::costOf(order, (*rates)->value);
    if (!cost.ok())
        return cost.errors();
    return std::optional(*std::move(cost));
}

void Papers::printOrder(const QString& order, const QUrl& folder)
{
    shop_.attempt([&] {
        const pieces::Order kept = acts::keptOrder(shop_.database(), order.toStdString());
        std::map<std::string, drawing::Colour> colours;
        for (const pieces::OrderedProfile& profile : kept.profiles)
            colours[profile.material.colour] = shop_.colourOf(profile.material.colour);
        const print::Printing now = printing();
        const Style style = shop_.style();
        const auto cost = costOf(kept);
        const bool written = write(
            folder,
            {paperOf("confirmation", print::confirmation(kept, cost.ok() ? *cost : std::nullopt, now, style),
                     now.paper),
             paperOf("quality-sheet",
                     print::qualitySheet(kept, {}, colours, now, style, shop_.preferences()->angles()),
                     now.paper),
             labelsOf("piece-labels", "Piece labels", print::pieceLabels(kept, now, style), now.paper)});
        if (written && !cost.ok())
            shop_.tellTrouble(tr("Written, but the confirmation says no cost: %1").arg(shown(cost.errors())));
    });
}

void Papers::printMark(const QString& order, const QString& mark, const QUrl& folder)
{
    shop_.attempt([&] {
        const pieces::Order kept = acts::keptOrder(shop_.database(), order.toStdString());
        const print::Printing now = printing();
        std::vector<print::Label> labels = print::pieceLabels(kept, now, shop_.style());
        std::erase_if(labels, [&](const print::Label& label) { return exact(label.mark) != mark; });
        if (labels.empty())
            return shop_.tellTrouble(tr("%1 is not in its order any more").arg(mark));
        write(folder, {labelsOf("piece-label", "Piece label", labels, now.paper)});
    });
}

void Papers::printCut(const QString& sheet, const QUrl& folder)
{
    shop_.attempt([&] {
        const auto stored = storage::waitingPlan(shop_.database(), sheet.section(u'#', 0, 0).toStdString());
        if (!stored)
            return shop_.tellTrouble(tr("This plan does not wait to be cut any more"));
        const auto checked = acts::readChecked(*stored);
        if (!checked.ok())
            return shop_.tellTrouble(checked.errors());
        if (!checked->problem)
            return shop_.tellTrouble(tr("This plan does not pass its check; plan again"));
        const documents::CutPlan& cut = checked->cut;
        print::ServedOrders orders(cut.problem.blanks);
        for (const storage::OrderSummary& order : storage::unfinishedOrders(shop_.database()))
            orders.add(order.id, {{}, order.jobName, order.revision, order.wantedBy, 0});
        const print::Printing now = printing();
        print::CutTicket ticket;
        ticket.material = stored->material;
        ticket.style = print::fine(shop_.style());
        ticket.summary = acts::summaryInWords(cut, ticket.style);
        ticket.orders = orders.all();
        ticket.names = orders.names(cut.problem.blanks);
        write(folder,
              {paperOf("cut-ticket", print::cutTicket(*checked->problem, cut.plan, ticket, now), now.paper),
               labelsOf(
                   "remnant-labels", "Remnant labels",
                   print::remnantLabels(print::keptRemnants(cut.plan, stored->material), now, ticket.style),
                   now.paper)});
    });
}

void Papers::printRemnants(const QUrl& folder)
{
    shop_.attempt([&] {
        const print::Printing now = printing();
        write(folder, {labelsOf("remnant-labels", "Remnant labels",
                                print::remnantLabels(shop_.cutting()->remnantsToLabel().all(), now,
                                                     print::fine(shop_.style())),
                                now.paper)});
    });
}

void Papers::printRemnant(const QString& key, const QUrl& folder)
{
    shop_.attempt([&] {
        const auto stock = acts::listStock(shop_.database());
        if (!stock.ok())
            return shop_.tellTrouble(stock.errors());
        std::vector<print::KeptRemnant> remnants;
        for (const acts::StockRow& row : *stock)
            if (exact(row.item.stock.key) == key && row.item.stock.kind == cutting::StockKind::Remnant)
                remnants.push_back(
                    {row.item.stock.key, row.item.stock.width, row.item.stock.length, row.item.material});
        if (remnants.empty())
            return shop_.tellTrouble(tr("Remnant %1 is not on the shelf any more").arg(key));
        const print::Printing now = printing();
        write(folder, {labelsOf("remnant-labels", "Remnant labels",
                                print::remnantLabels(remnants, now, print::fine(shop_.style())), now.paper)});
    });
}

void Papers::withLoad(const QString& load,
                      const std::function<void(const schedule::Load&, const print::LoadedOrders&)>& use)
{
    shop_.attempt([&] {
        const auto document = storage::loadDocument(shop_.database(), load.toStdString());
        if (!document)
            return;
        auto read = documents::readLoad(*document);
        if (!read.ok())
            return shop_.tellTrouble(read.errors());
        const print::LoadedOrders orders =
            print::loadedOrders(acts::keptOrdersOn(shop_.database(), read->value));
        read->value.madeAt = acts::onTheWall(read->value.madeAt);
        use(read->value, orders);
    });
}

void Papers::printLoad(const QString& load, const QUrl& folder)
{
    withLoad(load, [&](const schedule::Load& made, const print::LoadedOrders& orders) {
        const print::Printing now = printing();
        const Style style = shop_.style();
        write(folder, {paperOf("load-list", print::loadList(made, orders, now, style), now.paper),
                       paperOf("check-sheet", print::checkSheet(made, orders, now, style), now.paper),
                       labelsOf("bundle-labels", "Bundle labels",
                                print::bundleLabels(made, orders, now, style), now.paper)});
    });
}

void Papers::printBundle(const QString& load, const QString& bundle, const QUrl& folder)
{
    withLoad(load, [&](const schedule::Load& made, const print::LoadedOrders& orders) {
        const print::Printing now = printing();
        std::vector<print::Label> labels = print::bundleLabels(made, orders, now, shop_.style());
        // They stand in the order of the bundles.
        for (std::size_t at = made.bundles.size(); at-- > 0;)
            if (exact(schedule::blankKey(made.bundles[at].order, made.bundles[at].label)) != bundle)
                labels.erase(labels.begin() + static_cast<std::ptrdiff_t>(at));
        if (labels.empty())
            return shop_.tellTrouble(tr("This bundle is not on this load"));
        write(folder, {labelsOf("bundle-label", "Bundle label", labels, now.paper)});
    });
}

} // namespace lapwright::model
