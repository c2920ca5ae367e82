#include "model/trim_model.h"

#include "model/words.h"
#include "site/run_kind.h"

#include <algorithm>
#include <map>
#include <utility>

namespace lapwright::field {

namespace {

using site::RunKind;

bool has(const site::Run& run, const std::string& trim)
{
    return std::any_of(run.trims.begin(), run.trims.end(),
                       [&trim](const site::TrimChoice& choice) { return choice.trim == trim; });
}

} // namespace

std::vector<const trim::Template*> trimsFor(RunKind kind, const pieces::Catalogue& catalogue)
{
    std::vector<const trim::Template*> suiting;
    for (const auto& [id, trim] : catalogue.trims)
        if (std::find(trim.suits.begin(), trim.suits.end(), kind) != trim.suits.end())
            suiting.push_back(&trim);
    // What suits this kind alone, and asks for nothing, is the usual one; the order of ids decides among
    // alike.
    const auto strangeness = [kind](const trim::Template* trim) {
        const bool asks = std::any_of(trim->measures.begin(), trim->measures.end(),
                                      [](const trim::MeasureDeclaration& one) { return !one.byDefault; });
        return std::pair(asks, trim->suits.front() != kind);
    };
    std::stable_sort(suiting.begin(), suiting.end(),
                     [&](const trim::Template* left, const trim::Template* right) {
                         return strangeness(left) < strangeness(right);
                     });
    return suiting;
}

TrimModel::TrimModel(TakeOff& takeOff, const Settings& settings, QObject* parent)
    : QObject(parent), takeOff_(takeOff), settings_(settings)
{
    connect(&takeOff, &TakeOff::stale, this, &TrimModel::countBare);
}

QString TrimModel::kind() const
{
    return kind_ ? exact(std::string(site::nameOf(*kind_))) : QString();
}

void TrimModel::setKind(const QString& kind)
{
    const auto known = site::runKindNamed(kept(kind));
    if (!known || known == kind_)
        return;
    kind_ = known;
    run_.clear();
    trim_.clear();
    refresh();
}

QString TrimModel::run() const
{
    return exact(run_);
}

void TrimModel::setRun(const QString& run)
{
    run_ = kept(run);
    refresh();
}

QString TrimModel::trim() const
{
    return exact(trim_);
}

void TrimModel::setTrim(const QString& trim)
{
    trim_ = kept(trim);
    refresh();
}

const trim::Template* TrimModel::templateInHand() const
{
    const auto found = takeOff_.tablet().catalogue().trims.find(trim_);
    return found == takeOff_.tablet().catalogue().trims.end() ? nullptr : &found->second;
}

QString TrimModel::trimName() const
{
    const trim::Template* trim = templateInHand();
    return trim == nullptr ? QString() : named(trim->name);
}

QString TrimModel::note() const
{
    const trim::Template* trim = templateInHand();
    return trim == nullptr ? QString() : named(trim->note);
}

bool TrimModel::inHand(const site::Run& run) const
{
    return run.kind == kind_ && (run_.empty() || run.id == run_);
}

bool TrimModel::isChosen() const
{
    bool any = false;
    for (const site::Chain& chain : takeOff_.editor().job().chains)
        for (const site::Run& run : chain.runs)
            if (inHand(run)) {
                if (!has(run, trim_))
                    return false;
                any = true;
            }
    return any;
}

const site::Run* TrimModel::firstRun(std::size_t* chain) const
{
    const site::Job& job = takeOff_.editor().job();
    const site::Run* bare = nullptr;
    for (std::size_t i = 0; i < job.chains.size(); ++i)
        for (const site::Run& run : job.chains[i].runs)
            if (inHand(run) && (has(run, trim_) || bare == nullptr)) {
                *chain = i;
                if (has(run, trim_))
                    return &run;
                bare = &run;
            }
    return bare;
}

site::TrimChoice TrimModel::choiceInHand() const
{
    std::size_t chain = 0;
    if (const site::Run* run = firstRun(&chain))
        for (const site::TrimChoice& choice : run->trims)
            if (choice.trim == trim_)
                return choice;
    site::TrimChoice fresh;
    fresh.trim = trim_;
    return fresh;
}

void TrimModel::refresh()
{
    showKinds();
    showRuns();
    showTrims();
    showSection();
    emit changed();
}

void TrimModel::goTo(const QString& run, const QString& trim)
{
    for (const site::Chain& chain : takeOff_.editor().job().chains)
        for (const site::Run& one : chain.runs)
            if (one.id == kept(run))
                kind_ = one.kind;
    run_.clear();
    trim_ = kept(trim);
    refresh();
}

void TrimModel::countBare()
{
    bare_ = 0;
    for (const site::Chain& chain : takeOff_.editor().job().chains)
        for (const site::Run& run : chain.runs)
            bare_ += run.trims.empty() ? 1 : 0;
    emit changed();
}

void TrimModel::showKinds()
{
    std::vector<std::pair<RunKind, int>> counts;
    std::map<RunKind, int> without;
    for (const site::Chain& chain : takeOff_.editor().job().chains)
        for (const site::Run& run : chain.runs) {
            auto known = std::find_if(counts.begin(), counts.end(),
                                      [&run](const auto& one) { return one.first == run.kind; });
            if (known == counts.end())
                known = counts.insert(counts.end(), {run.kind, 0});
            ++known->second;
            without[run.kind] += run.trims.empty() ? 1 : 0;
        }
    const bool stillThere =
        std::any_of(counts.begin(), counts.end(), [this](const auto& one) { return one.first == kind_; });
    if (!stillThere) {
        kind_ = counts.empty() ? std::nullopt : std::optional(counts.front().first);
        run_.clear();
        trim_.clear();
    }
    std::vector<Choice> kinds;
    for (const auto& [kind, count] : counts)
        kinds.push_back({exact(std::string(site::nameOf(kind))), kindWords(kind),
                         without[kind] == 0 ? tr("%n runs", "", count)
                                            : tr("%1 of %n without trim", "", count).arg(without[kind]),
                         kind == kind_});
    kinds_.show(std::move(kinds));
}

/// A run of another job, or one that is gone, is not in hand any more.
void TrimModel::showRuns()
{
    const site::Job& job = takeOff_.editor().job();
    std::size_t chain = 0;
    if (job.id != job_ || firstRun(&chain) == nullptr)
        run_.clear();
    job_ = job.id;
    std::vector<Choice> runs;
    for (const site::Chain& one : job.chains)
        for (const site::Run& run : one.runs)
            if (run.kind == kind_)
                runs.push_back({exact(run.id), shown(run.id), {}, run.id == run_});
    runs.insert(runs.begin(), {QString(), tr("All %n", "", static_cast<int>(runs.size())), {}, run_.empty()});
    runs_.show(std::move(runs));
}

void TrimModel::showTrims()
{
    if (!kind_) {
        trims_.show({});
        return;
    }
    const auto suiting = trimsFor(*kind_, takeOff_.tablet().catalogue());
    std::vector<Choice> trims;
    std::string first;
    for (const trim::Template* trim : suiting) {
        int with = 0, all = 0;
        for (const site::Chain& chain : takeOff_.editor().job().chains)
            for (const site::Run& run : chain.runs)
                if (inHand(run)) {
                    ++all;
                    with += has(run, trim->id) ? 1 : 0;
                }
        if (with > 0 && first.empty())
            first = trim->id;
        trims.push_back({exact(trim->id), named(trim->name),
                         with == 0     ? QString()
                         : with == all ? tr("on all of them")
                                       : tr("on %1 of %2").arg(with).arg(all),
                         with > 0 && with == all});
    }
    if (templateInHand() == nullptr && !suiting.empty())
        trim_ = first.empty() ? suiting.front()->id : first;
    trims_.show(std::move(trims));
}

bool TrimModel::change(const char* kind, const QString& words, const std::function<void(site::Run&)>& change)
{
    const bool done = takeOff_.editor().act(kind, words, [&](site::Job& job) {
        for (site::Chain& chain : job.chains)
            for (site::Run& run : chain.runs)
                if (inHand(run))
                    change(run);
    });
    refresh();
    return done;
}

bool TrimModel::toggle()
{
    if (templateInHand() == nullptr)
        return false;
    const site::TrimChoice choice = choiceInHand();
    if (isChosen())
        return change("trim.remove", tr("%1 taken off").arg(trimName()), [&](site::Run& run) {
            run.trims.erase(std::remove_if(run.trims.begin(), run.trims.end(),
                                           [&](const site::TrimChoice& one) { return one.trim == trim_; }),
                            run.trims.end());
        });
    return change("trim.add", tr("%1 chosen").arg(trimName()), [&](site::Run& run) {
        if (!has(run, trim_))
            run.trims.push_back(choice);
    });
}

bool TrimModel::suggestAll()
{
    const pieces::Catalogue& catalogue = takeOff_.tablet().catalogue();
    const bool done = takeOff_.editor().act("trim.suggest", tr("usual trims chosen"), [&](site::Job& job) {
        for (site::Chain& chain : job.chains)
            for (site::Run& run : chain.runs) {
                const auto suiting = trimsFor(run.kind, catalogue);
                if (!run.trims.empty() || suiting.empty())
                    continue;
                site::TrimChoice choice;
                choice.trim = suiting.front()->id;
                run.trims.push_back(std::move(choice));
            }
    });
    refresh();
    return done;
}

} // namespace lapwright::field
