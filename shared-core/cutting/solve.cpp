#include "cutting/solve.h"

#include "cutting/certificate_check.h"
#include "cutting/checker.h"
#include "cutting/due.h"
#include "cutting/every_plan.h"
#include "cutting/first_fit.h"
#include "cutting/metal_search.h"
#include "cutting/offcuts.h"
#include "cutting/plan_value.h"
#include "cutting/setups.h"
#include "cutting/value_correction.h"
#include "cutting/write_out.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace lapwright::cutting {

namespace {

constexpr std::string_view fewerSetups = "fewer setups";

class Search {
public:
    Search(const Problem& problem, const Settings& settings, const Control& control)
        : problem_(problem), settings_(settings), watch_(settings, control)
    {
    }

    Plan run()
    {
        watch_.enter("first fit");
        firstFit();
        const bool inStages = settings_.dueFirst && dueClassesOf(instance_).size() > 1;
        // What the search for less metal may use up; the rest is for the setups.
        constexpr double metalShare = 0.85;
        watch_.allow(combinesSetups() ? metalShare : 1.0);
        if (inStages)
            byDueClasses();
        else if (best_.notCut.empty() || findsRoom())
            byMetal();
        best_.work = watch_.work();
        best_.ending = watch_.ending().value_or(Ending::NothingBetterFound);
        if (best_.proof == Proof::ProvenLeast)
            best_.ending = Ending::Proven;
        best_.feasibility = check(problem_, best_).feasibility;
        return std::move(best_);
    }

private:
    void firstFit()
    {
        for (const Units units : {Units::Tabulated, Units::Finest}) {
            instance_ = normalise(problem_, units);
            std::vector<std::int64_t> residual, used(instance_.stocks.size(), 0);
            for (const Kind& kind : instance_.kinds)
                residual.push_back(kind.demand);
            raw_ = firstFitPlan(instance_, residual, used);
            if (std::ranges::all_of(residual, [](std::int64_t left) { return left == 0; }))
                break;
        }
        writeOut(instance_, raw_, best_);
        noteTrade(best_);
        best_.certificate.patterns = problem_.rules().patterns;
        best_.bound = provenBound(problem_, best_.certificate);
        judge();
        (void)watch_.over(0);
    }

    /// Levels of a coil are not combined.
    [[nodiscard]] bool combinesSetups() const
    {
        return settings_.fewerSetups &&
               std::ranges::any_of(instance_.stocks, [](const StockClass& stock) { return !stock.coil; });
    }

    /// A bound beyond the value would contradict itself; limited stock that does not suffice has no proof.
    void judge()
    {
        const std::int64_t gap = best_.value - best_.bound;
        best_.proof = gap <= 0 ? Proof::ProvenLeast : gap == 1 ? Proof::ProvenWithinOne : Proof::Gap;
        if (!best_.notCut.empty()) {
            best_.bound = 0;
            best_.proof = Proof::Gap;
        }
        watch_.show(best_.value, best_.bound);
    }

    /// Where first fit runs out of stock another plan may not.
    bool findsRoom()
    {
        constexpr std::int64_t anyCost = std::numeric_limits<std::int64_t>::max() / 2;
        constexpr int plans = 20;
        const auto over = [this](std::int64_t ticks) { return watch_.over(ticks); };
        watch_.enter("room for all");
        if (EveryPlan::takes(instance_)) {
            const auto found = EveryPlan(instance_, over).search(anyCost);
            return found && consider(*found);
        }
        if (!NestedPatterns::takes(instance_))
            return false;
        ValueCorrection search(instance_, settings_.seed, over);
        for (int plan = 0; plan < plans && !over(0); ++plan)
            if (const auto found = search.next(anyCost); found && consider(*found))
                return true;
        return false;
    }

    void byMetal()
    {
        MetalSearch::Listener listener;
        listener.plan = [this](const RawPlan& raw) { return consider(raw); };
        listener.certificate = [this](const Certificate& certificate) { certify(certificate); };
        listener.proven = [this] { return best_.proof == Proof::ProvenLeast; };
        listener.everyPlanTried = [this] { claimLeast(best_.value); };
        MetalSearch(instance_, settings_, watch_, std::move(listener)).run(raw_);
        if (combinesSetups() && best_.setups > 1 && mayGoOn(fewerSetups))
            consider(
                withFewerSetups(instance_, raw_, [this](std::int64_t ticks) { return watch_.over(ticks); }));
        if (problem_.creditsRemnants() && mayGoOn("offcuts"))
            consider(withLargerOffcuts(instance_, raw_, [this] { return watch_.interrupted(); }));
    }

    /// Whether the whole limits leave anything for a last phase.
    bool mayGoOn(std::string_view phase)
    {
        // A little stays for the offcuts.
        watch_.allow(problem_.creditsRemnants() && phase == fewerSetups ? 0.97 : 1.0);
        watch_.enter(phase);
        return !watch_.over(0);
    }

    /// Stage by stage: the least metal for what is due first, then for what is due next when what came before
    /// keeps its sheets and is only filled up, and so on.
    void byDueClasses()
    {
        boundOfAll();
        DueStages stages{dueClassesOf(instance_), {}};
        std::vector<DueStage> found;
        RawPlan plan;
        bool enough = true;
        while (stages.taken.size() < stages.classes.size()) {
            const std::size_t done = stages.taken.size() + 1;
            const double each = 0.85 / static_cast<double>(stages.classes.size());
            watch_.allow(each * (static_cast<double>(done) - 0.5));
            const StagePart stage = nextStage(instance_, stages);
            const int due = stages.classes[done - 1];
            found.push_back({due, 0, 0, {}});
            std::vector<std::int64_t> residual;
            RawPlan raw = stageStart(instance_, stage, plan, residual);
            enough = enough && std::ranges::all_of(residual, [](std::int64_t left) { return left == 0; });
            if (enough && done > 1)
                raw = withNewSheetsAlone(stage, done - 1, std::move(raw));
            watch_.allow(each * static_cast<double>(done));
            if (enough)
                raw = stageOfLeastMetal(stage.part, std::move(raw), found.back());
            if (done == stages.classes.size() && combinesSetups() && mayGoOn(fewerSetups))
                raw = withFewerSetups(stage.part.instance, raw,
                                      [this](std::int64_t ticks) { return watch_.over(ticks); });
            if (done == stages.classes.size() && problem_.creditsRemnants())
                raw = withLargerOffcuts(stage.part.instance, raw, [this] { return watch_.interrupted(); });
            plan = stage.part.inWhole(std::move(raw), instance_);
            stages.taken = takenByStages(instance_, plan, done);
        }
        adopt(plan, std::move(found));
    }

    /// A bound for the plan without regard to what is due when: none with it can be cheaper.
    void boundOfAll()
    {
        if (!best_.notCut.empty())
            return;
        constexpr double share = 0.25;
        watch_.allow(share);
        std::int64_t least = best_.value;
        MetalSearch::Listener listener;
        listener.plan = [this, &least](const RawPlan& raw) {
            Plan plan;
            writeOut(instance_, raw, plan);
            least = std::min(least, plan.value);
            return true;
        };
        listener.certificate = [this](const Certificate& certificate) { certify(certificate); };
        listener.proven = [this, &least] { return best_.bound >= least; };
        listener.everyPlanTried = [this, &least] { claimLeast(least); };
        MetalSearch(instance_, settings_, watch_, std::move(listener)).bound(raw_);
    }

    /// What the sheets of earlier stages had no room for, on its own: mostly a batch of one kind of sheet.
    RawPlan withNewSheetsAlone(const StagePart& stage, std::size_t index, RawPlan raw)
    {
        const Instance& instance = stage.part.instance;
        RawPlan plan, rest;
        for (RawPattern& pattern : raw) {
            const bool isNew = stage.stageOfStock[static_cast<std::size_t>(pattern.stock)] == index;
            (isNew ? rest : plan).push_back(std::move(pattern));
        }
        if (rest.empty())
            return plan;
        std::vector<std::int64_t> available;
        for (std::size_t stock = 0; stock < instance.stocks.size(); ++stock)
            available.push_back(stage.stageOfStock[stock] == index ? instance.stocks[stock].available : 0);
        const Part part = partOf(instance, contentOf(instance, rest).kinds, available, Widths::Wanted);
        RawPlan alone = inPart(part, rest);
        std::int64_t cost = costOf(part.instance, alone);
        MetalSearch::Listener listener;
        listener.plan = [&](const RawPlan& found) {
            const std::int64_t next = costOf(part.instance, found);
            return next < cost ? (cost = next, true) : false;
        };
        listener.certificate = [](const Certificate&) {};
        listener.proven = [] { return false; };
        alone = MetalSearch(part.instance, settings_, watch_, std::move(listener)).run(std::move(alone));
        for (RawPattern& pattern : part.inWhole(std::move(alone), instance))
            plan.push_back(std::move(pattern));
        return plan;
    }

    RawPlan stageOfLeastMetal(const Part& part, RawPlan raw, DueStage& stage)
    {
        std::int64_t cost = costOf(part.instance, raw);
        MetalSearch::Listener listener;
        listener.plan = [&](const RawPlan& found) {
            const std::int64_t next = costOf(part.instance, found);
            if (next >= cost)
                return false;
            cost = next;
            watch_.show(cost, stage.bound);
            return true;
        };
        listener.certificate = [&](const Certificate& certificate) {
            const std::int64_t bound = provenBound(problem_, certificate, stage.dueClass);
            if (bound > stage.bound) {
                stage.bound = bound;
                stage.certificate = certificate;
            }
        };
        listener.proven = [&] { return stage.bound >= cost; };
        return MetalSearch(part.instance, settings_, watch_, std::move(listener)).run(std::move(raw));
    }

    /// The plan by due classes stands, whatever metal a plan without them would save.
    void adopt(const RawPlan& raw, std::vector<DueStage> stages)
    {
        Plan plan = best_;
        plan.dueStages = std::move(stages);
        writeOut(instance_, raw, plan);
        for (DueStage& stage : plan.dueStages) {
            stage.value = costDueBy(problem_, plan.patterns, stage.dueClass);
            stage.bound = plan.notCut.empty() ? std::min(stage.bound, stage.value) : 0;
        }
        if (!plan.notCut.empty())
            plan.bound = 0;
        plan.setupTrades.clear();
        noteTrade(plan);
        if (!check(problem_, plan).feasibility.cuttable())
            return;
        best_ = std::move(plan);
        judge();
    }

    /// The better plan stays, and only one the checker agrees with can replace another.
    bool consider(const RawPlan& raw)
    {
        Plan plan = best_;
        writeOut(instance_, raw, plan);
        // The certificate does not depend on the plan: it is checked where it comes in and at the end.
        plan.proof = Proof::Gap;
        plan.bound = 0;
        plan.certificate = Certificate();
        plan.certificate.patterns = problem_.rules().patterns;
        const auto key = [](const Plan& one) {
            return std::tuple(!one.notCut.empty(), one.value, one.setups);
        };
        const bool better = plan.notCut.empty() && key(plan) < key(best_);
        if (!better || !check(problem_, plan).feasibility.all())
            return false;
        plan.bound = best_.bound;
        plan.certificate = std::move(best_.certificate);
        noteTrade(plan);
        best_ = std::move(plan);
        raw_ = raw;
        judge();
        return true;
    }

    /// Keeps the pairs of value and setups that no other pair beats in both.
    static void noteTrade(Plan& plan)
    {
        auto& trades = plan.setupTrades;
        std::erase_if(trades, [&plan](const SetupTrade& trade) {
            return trade.value >= plan.value && trade.setups >= plan.setups;
        });
        trades.insert(trades.begin(), {plan.value, plan.setups});
    }

    /// Every plan was tried: the checker tries them its own way and says whether it agrees.
    void claimLeast(std::int64_t value)
    {
        Certificate certificate;
        certificate.method = Certificate::Method::EveryPlan;
        certificate.patterns = problem_.rules().patterns;
        certificate.least = value;
        certify(certificate);
    }

    void certify(const Certificate& certificate)
    {
        const std::int64_t bound = provenBound(problem_, certificate);
        if (bound > best_.bound) {
            best_.bound = bound;
            best_.certificate = certificate;
        }
        judge();
    }

    const Problem& problem_;
    const Settings& settings_;
    Watch watch_;
    Instance instance_;
    RawPlan raw_;
    Plan best_;
};

} // namespace

Plan solve(const Problem& problem, const Settings& settings, const Control& control)
{
    return Search(problem, settings, control).run();
}

} // namespace lapwright::cutting
