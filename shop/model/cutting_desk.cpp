#include "cutting_desk.h"

#include "acts/checked_plan.h"
#include "acts/cut_words.h"
#include "acts/making.h"
#include "acts/words.h"
#include "done_words.h"
#include "drawing/cut_map.h"
#include "print/cut_ticket.h"
#include "schedule/batch.h"
#include "shop.h"
#include "storage/shop_state.h"
#include "strip_rows.h"
#include "text.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace lapwright::model {

namespace {

/// "Larkfield E1.2": the mark, and whose it is where the plan serves several.
std::vector<std::string> namesOf(const documents::CutProblem& problem,
                                 const std::map<std::string, std::string>& jobs)
{
    std::vector<std::string> names;
    std::set<std::string> orders;
    for (const cutting::Blank& blank : problem.blanks)
        orders.insert(schedule::orderOfBlank(blank.key));
    for (const cutting::Blank& blank : problem.blanks) {
        const auto job = jobs.find(schedule::orderOfBlank(blank.key));
        const std::string mark = schedule::markOfBlank(blank.key);
        names.push_back(job == jobs.end() || orders.size() == 1
                            ? mark
                            : job->second.substr(0, job->second.find(' ')) + " " + mark);
    }
    return names;
}

} // namespace

CuttingDesk::CuttingDesk(Shop& shop) : Desk(shop) {}

void CuttingDesk::reload()
{
    readPlans();
    showRows();
    showToLabel();
    if (sheets_.indexOf(current_) < 0) {
        current_ = sheets_.idAt(0);
        currentStrip_.clear();
    }
    showCurrent();
}

Result<CuttingDesk::Plan> CuttingDesk::read(const storage::StoredPlan& stored)
{
    auto checked = acts::readChecked(stored);
    if (!checked.ok())
        return checked.errors();
    return Plan{stored.id, stored.material, std::move(checked->cut), std::move(checked->problem), {}};
}

void CuttingDesk::readPlans()
{
    ticked_ = storage::tickedPatterns(shop().database());
    std::vector<Plan> known = std::exchange(plans_, {});
    order_.clear();
    std::map<std::string, std::string> jobs;
    for (const storage::OrderSummary& order : storage::unfinishedOrders(shop().database()))
        jobs[order.id] = order.jobName;
    for (const storage::StoredPlan& stored : storage::waitingPlans(shop().database())) {
        const auto same =
            std::find_if(known.begin(), known.end(), [&](const Plan& plan) { return plan.id == stored.id; });
        auto plan = same == known.end() ? read(stored) : Result<Plan>(std::move(*same));
        if (!plan.ok()) {
            shop().tellTrouble(plan.errors());
            continue;
        }
        for (std::size_t pattern = 0; pattern < plan->cut.plan.patterns.size(); ++pattern)
            order_.push_back({exact(stored.id) + u'#' + QString::number(pattern), plans_.size(), pattern});
        plan->names = namesOf(plan->cut.problem, jobs);
        plans_.push_back(*std::move(plan));
    }
}

void CuttingDesk::showRows()
{
    QList<Row> rows;
    for (const Sheet& sheet : order_) {
        const Plan& plan = plans_[sheet.plan];
        const cutting::Pattern& pattern = plan.cut.plan.patterns[sheet.pattern];
        Row row;
        row.id = sheet.id;
        row.title = shown(plan.cut.problem.stocks[pattern.stock].key);
        row.detail = shop().describe(plan.material);
        row.trailing = tr("× %1").arg(pattern.count);
        row.trailingDetail = counted(static_cast<std::int64_t>(pattern.strips.size()), "strip");
        row.swatch = shop().swatchOf(plan.material.colour);
        row.sign = isTicked(sheet) ? QStringLiteral("done") : QString();
        rows.append(row);
    }
    sheets_.setRows(rows);
}

const CuttingDesk::Sheet* CuttingDesk::sheet() const
{
    const auto found =
        std::find_if(order_.begin(), order_.end(), [this](const Sheet& one) { return one.id == current_; });
    return found == order_.end() ? nullptr : &*found;
}

void CuttingDesk::setCurrent(const QString& id)
{
    if (id == current_)
        return;
    current_ = id;
    currentStrip_.clear();
    shop().attempt([this] { showCurrent(); });
}

void CuttingDesk::showCurrent()
{
    map_ = look::Picture();
    QList<Row> rows;
    if (const Sheet* at = sheet()) {
        const Plan& plan = plans_[at->plan];
        if (plan.problem) {
            drawing::CutMapPicture picture;
            picture.style = print::fine(shop().style());
            picture.framed = false;
            picture.width = Length::millimetres(150);
            picture.height = Length::millimetres(66);
            picture.names = plan.names;
            map_ = look::Picture(drawing::cutMap(*plan.problem, plan.cut.plan, at->pattern, picture));
        } else {
            shop().tellTrouble(tr("This plan does not pass its check; plan again"));
        }
        rows = stripRows(plan.cut, at->pattern, plan.names, shop().style());
    }
    strips_.setRows(rows);
    if (strips_.indexOf(currentStrip_) < 0)
        currentStrip_.clear();
    emit currentChanged();
}

QString CuttingDesk::title() const
{
    const Sheet* at = sheet();
    if (at == nullptr)
        return {};
    const Plan& plan = plans_[at->plan];
    const cutting::Pattern& pattern = plan.cut.plan.patterns[at->pattern];
    const QString name = shown(plan.cut.problem.stocks[pattern.stock].key);
    return pattern.count == 1 ? name : tr("%1, %2 cut alike").arg(name).arg(pattern.count);
}

QString CuttingDesk::material() const
{
    const Sheet* at = sheet();
    return at == nullptr ? QString() : shop().describe(plans_[at->plan].material);
}

QColor CuttingDesk::swatch() const
{
    const Sheet* at = sheet();
    return at == nullptr ? QColor(Qt::transparent) : shop().swatchOf(plans_[at->plan].material.colour);
}

QString CuttingDesk::position() const
{
    const Sheet* at = sheet();
    return at == nullptr ? QString() : tr("%1 of %2").arg(at - order_.data() + 1).arg(order_.size());
}

QString CuttingDesk::remnants() const
{
    const Sheet* at = sheet();
    if (at == nullptr)
        return {};
    const Style style = print::fine(shop().style());
    QStringList labels;
    for (const cutting::NewRemnant& remnant : plans_[at->plan].cut.plan.remnants)
        if (remnant.pattern == at->pattern)
            labels.append(tr("%1: %2 × %3")
                              .arg(shown(cutting::keysInWords(remnant)), shown(write(remnant.width, style)),
                                   shown(write(remnant.length, style))));
    return labels.isEmpty() ? QString() : tr("Keep and label %1").arg(labels.join(QStringLiteral("; ")));
}

QString CuttingDesk::summary() const
{
    const Sheet* at = sheet();
    return at == nullptr ? QString() : said(acts::summaryInWords(plans_[at->plan].cut, shop().style()));
}

const storage::Stamp* CuttingDesk::tickOf(const Sheet& sheet) const
{
    const auto ticks = ticked_.find(plans_[sheet.plan].id);
    if (ticks == ticked_.end())
        return nullptr;
    const auto tick = ticks->second.find(sheet.pattern);
    return tick == ticks->second.end() ? nullptr : &tick->second;
}

bool CuttingDesk::isTicked(const Sheet& sheet) const
{
    return tickOf(sheet) != nullptr;
}

bool CuttingDesk::ticked() const
{
    return sheet() != nullptr && isTicked(*sheet());
}

QString CuttingDesk::tickedBy() const
{
    const Sheet* at = sheet();
    const storage::Stamp* by = at == nullptr ? nullptr : tickOf(*at);
    if (by == nullptr)
        return {};
    return by->at.empty() ? said("cut")
                          : inWords(acts::Done{"cut", acts::onTheWall(by->at), by->person, by->station});
}

void CuttingDesk::step(int by)
{
    const Sheet* at = sheet();
    if (at == nullptr)
        return;
    const auto next = std::clamp<std::ptrdiff_t>(at - order_.data() + by, 0,
                                                 static_cast<std::ptrdiff_t>(order_.size()) - 1);
    setCurrent(order_[static_cast<std::size_t>(next)].id);
}

void CuttingDesk::tick()
{
    const Sheet* at = sheet();
    if (at == nullptr || !shop().letsMake())
        return;
    const std::string plan = plans_[at->plan].id;
    const bool now = !ticked();
    bool done = false;
    shop().act([&] {
        done = storage::tickPattern(shop().database(), plan, at->pattern, now, shop().stamp());
        if (!done)
            return shop().tellTrouble(
                tr("This plan does not wait any more: another station cut it or planned again"));
        if (now)
            remnants_.put(at->id, print::keptRemnants(plans_[at->plan].cut.plan, plans_[at->plan].material,
                                                      at->pattern));
        else
            remnants_.drop(at->id);
    });
    if (!done || !now)
        return;
    if (unfinished())
        return finishPlan(plan);
    const auto open = std::find_if(order_.begin(), order_.end(), [&](const Sheet& one) {
        return plans_[one.plan].id == plan && !isTicked(one);
    });
    if (open != order_.end())
        setCurrent(open->id);
}

bool CuttingDesk::unfinished() const
{
    const Sheet* at = sheet();
    return at != nullptr && std::all_of(order_.begin(), order_.end(), [&](const Sheet& one) {
               return one.plan != at->plan || isTicked(one);
           });
}

void CuttingDesk::finish()
{
    if (unfinished() && shop().letsMake())
        finishPlan(plans_[sheet()->plan].id);
}

void CuttingDesk::finishPlan(std::string plan)
{
    const QString name = material();
    shop().act([&] {
        const auto batch = acts::cutPlan(shop().database(), plan, shop().stamp());
        if (!batch.ok())
            return shop().tellTrouble(batch.errors());
        if (!batch->errors.empty())
            return shop().tellTrouble(batch->errors);
        shop().tell(tr("Cut: %1").arg(name));
    });
}

void CuttingDesk::labelled()
{
    remnants_.clear();
    showToLabel();
}

void CuttingDesk::showToLabel()
{
    toLabel_.setRows(remnants_.rows(shop()));
}

void CuttingDesk::setCurrentStrip(const QString& strip)
{
    if (strip == currentStrip_)
        return;
    currentStrip_ = strip;
    emit currentChanged();
}

void CuttingDesk::stripSpoilt()
{
    const Sheet* at = sheet();
    const int strip = strips_.indexOf(currentStrip_);
    if (at == nullptr || strip < 0 || isTicked(*at) || !shop().letsMake())
        return;
    const std::string plan = plans_[at->plan].id;
    const acts::CutPart::Spoilt spoilt{at->pattern, static_cast<std::size_t>(strip)};
    const bool done = shop().act([&] {
        const Plan& of = plans_[at->plan];
        auto left = print::keptRemnants(acts::portionOf(of.cut, {{}, spoilt}).plan, of.material, 0);
        const auto batch = acts::spoilStrip(shop().database(), plan, spoilt, shop().stamp());
        if (!batch.ok())
            return shop().tellTrouble(batch.errors());
        if (!batch->errors.empty())
            return shop().tellTrouble(batch->errors);
        remnants_.put(at->id, std::move(left));
        shop().tell(tr("The strip is scrapped; the rest is planned again"));
    });
    if (done && !shop().trouble())
        shop().planCuts([this](const PlanDone& planned) {
            if (planned.planned->complete())
                shop().tell(tr("The strip is scrapped, the rest is planned again"));
            else
                shop().tellTrouble(tr("Planned again, but not everything can be made: see Batches"));
        });
}

} // namespace lapwright::model
