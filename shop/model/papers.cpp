#include "papers.h"

#include "acts/cut_words.h"
#include "acts/kept_order.h"
#include "acts/shop_stock.h"
#include "cutting/checker.h"
#include "documents/cut.h"
#include "documents/shop.h"
#include "print/confirmation.h"
#include "print/cut_ticket.h"
#include "print/layout.h"
#include "print/load_papers.h"
#include "print/pdf.h"
#include "print/piece_labels.h"
#include "print/quality_sheet.h"
#include "schedule/batch.h"
#include "shop.h"
#include "storage/document_file.h"
#include "storage/shop_state.h"
#include "strip_rows.h"
#include "text.h"

#include <QDateTime>
#include <QDir>

#include <map>
#include <utility>

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

/// A to Z, AA to ZZ…
std::string letterOf(std::size_t place)
{
    std::string letters;
    for (std::size_t number = place + 1; number > 0; number = (number - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (number - 1) % 26));
    return letters;
}

/// What the cut ticket says of the orders it serves, and what each blank is called on it: "A E1.2".
void nameOrders(const storage::Database& database, const documents::CutProblem& problem,
                print::CutTicket& ticket)
{
    std::map<std::string, std::int64_t> blanks;
    for (const cutting::Blank& blank : problem.blanks)
        blanks[schedule::orderOfBlank(blank.key)] += blank.count;
    std::map<std::string, std::string> letters;
    for (const storage::OrderSummary& order : storage::unfinishedOrders(database))
        if (const auto count = blanks.find(order.id); count != blanks.end()) {
            letters[order.id] = letterOf(ticket.orders.size());
            ticket.orders.push_back(
                {letters[order.id], order.jobName, order.revision, order.wantedBy, count->second});
        }
    for (const cutting::Blank& blank : problem.blanks) {
        const std::string mark = schedule::markOfBlank(blank.key);
        const auto letter = letters.find(schedule::orderOfBlank(blank.key));
        ticket.names.push_back(letter == letters.end() || letters.size() == 1 ? mark
                                                                              : letter->second + " " + mark);
    }
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

Papers::Paper Papers::paperOf(const char* name, const print::Sheet& sheet) const
{
    return {name, sheet.title + (sheet.subject.empty() ? "" : ", " + sheet.subject),
            print::layOut(sheet, printing().paper)};
}

Papers::Paper Papers::labelsOf(const char* name, const char* title,
                               const std::vector<print::Label>& labels) const
{
    return {name, title,
            labels.empty()
                ? std::vector<print::Page>()
                : print::labelPages(labels, labelStock(shop_.preferences()->labels(), printing().paper))};
}

void Papers::write(const QUrl& folder, const std::vector<Paper>& papers)
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
        if (!written.ok())
            return shop_.tellTrouble(written.errors());
        names.append(name);
    }
    shop_.tell(tr("Written to %1: %2").arg(place.path(), names.join(QStringLiteral(", "))));
}

void Papers::printOrder(const QString& order, const QUrl& folder)
{
    shop_.attempt([&] {
        const pieces::Order kept = acts::keptOrder(shop_.database(), order.toStdString());
        std::map<std::string, drawing::Colour> colours;
        for (const pieces::OrderedProfile& profile : kept.profiles)
            colours[profile.material.colour] = shop_.colourOf(profile.material.colour);
        write(
            folder,
            {paperOf("confirmation", print::confirmation(kept, std::nullopt, printing(), shop_.style())),
             paperOf("quality-sheet", print::qualitySheet(kept, {}, colours, printing(), shop_.style(),
                                                          shop_.preferences()->angles())),
             labelsOf("piece-labels", "Piece labels", print::pieceLabels(kept, printing(), shop_.style()))});
    });
}

void Papers::printCut(const QString& sheet, const QUrl& folder)
{
    shop_.attempt([&] {
        const auto stored = storage::waitingPlan(shop_.database(), sheet.section(u'#', 0, 0).toStdString());
        if (!stored)
            return shop_.tellTrouble(tr("This plan does not wait to be cut any more"));
        const auto plan = documents::readCutPlan(stored->document);
        if (!plan.ok())
            return shop_.tellTrouble(plan.errors());
        const cutting::Admission admission = documents::admit(plan->value.problem);
        if (!admission.problem ||
            !cutting::check(*admission.problem, plan->value.plan).feasibility.cuttable())
            return shop_.tellTrouble(tr("This plan does not pass its check; plan again"));
        print::CutTicket ticket;
        ticket.material = stored->material;
        ticket.style = fine(shop_.style());
        ticket.summary = acts::summaryInWords(plan->value, ticket.style);
        nameOrders(shop_.database(), plan->value.problem, ticket);
        write(folder,
              {paperOf("cut-ticket",
                       print::cutTicket(*admission.problem, plan->value.plan, ticket, printing())),
               labelsOf("remnant-labels", "Remnant labels",
                        print::remnantLabels(plan->value.plan, stored->material, printing(), ticket.style))});
    });
}

void Papers::printLoad(const QString& load, const QUrl& folder)
{
    shop_.attempt([&] {
        const auto document = storage::loadDocument(shop_.database(), load.toStdString());
        if (!document)
            return;
        auto read = documents::readLoad(*document);
        if (!read.ok())
            return shop_.tellTrouble(read.errors());
        print::LoadedOrders orders;
        for (const schedule::Bundle& bundle : read->value.bundles)
            if (!orders.contains(bundle.order) && storage::derivedOrder(shop_.database(), bundle.order))
                orders[bundle.order] = print::loadedOrder(acts::keptOrder(shop_.database(), bundle.order));
        read->value.madeAt = localTime(read->value.madeAt).replace(u' ', u'T').toStdString();
        const Style style = shop_.style();
        write(folder, {paperOf("load-list", print::loadList(read->value, orders, printing(), style)),
                       paperOf("check-sheet", print::checkSheet(read->value, orders, printing(), style)),
                       labelsOf("bundle-labels", "Bundle labels",
                                print::bundleLabels(read->value, orders, printing(), style))});
    });
}

} // namespace lapwright::model
