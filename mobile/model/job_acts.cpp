#include "model/job_editor.h"
#include "model/words.h"
#include "site/editing.h"

#include <algorithm>

// What a person does to chains and runs: each one act of the journal.
namespace lapwright::field {

bool JobEditor::startChain(const QString& kind)
{
    const auto& kinds = chainKinds_.choices();
    const auto wanted =
        std::find_if(kinds.begin(), kinds.end(), [&](const Choice& one) { return one.key == kind; });
    if (!isOpen() || wanted == kinds.end())
        return false;
    const std::string name = site::freeChainName(job(), kept(wanted->words));
    if (!act("chain.add", tr("%1 started").arg(shown(name)),
             [&](site::Job& job) { site::addChain(job, name); }))
        return false;
    setChain(static_cast<int>(job().chains.size()) - 1);
    entry_.setKind(kind);
    emit runChanged();
    return true;
}

bool JobEditor::renameChain(const QString& name)
{
    const site::Chain* chain = currentChain();
    if (chain == nullptr || name.trimmed().isEmpty())
        return false;
    if (name == chainName())
        return true; // left as it stands: what shows nothing stays in it
    const auto at = static_cast<std::size_t>(chain_);
    const qsizetype room = longestName - 5; // a number comes behind it where another chain goes by that name
    const std::string free = site::freeChainName(job(), kept(name, room), at);
    return act("chain.name", tr("%1 named %2").arg(shown(chain->name), shown(free)),
               [&](site::Job& job) { site::renameChain(job, at, free); });
}

bool JobEditor::removeChain()
{
    const site::Chain* chain = currentChain();
    if (chain == nullptr)
        return false;
    const bool removed = act("chain.remove", tr("%1 removed").arg(shown(chain->name)), [&](site::Job& job) {
        site::removeChain(job, static_cast<std::size_t>(chain_));
    });
    if (removed)
        setRun(-1);
    return removed;
}

bool JobEditor::keepRun()
{
    const site::Chain* chain = currentChain();
    if (chain == nullptr || !entry_.ready())
        return false;
    const auto at = static_cast<std::size_t>(chain_);
    if (const site::Run* changed = currentRun()) {
        const auto index = static_cast<std::size_t>(run_);
        const std::size_t corner = index > 0 ? index - 1 : chain->runs.size() - 1;
        const bool kept =
            act("run.change", tr("run %1 changed").arg(shown(changed->id)), [&](site::Job& job) {
                job.chains[at].runs[index] = entry_.run(job.chains[at].runs[index]);
                if (entry_.hasCorner() && !(job.chains[at].corners[corner] == entry_.cornerGiven()))
                    site::setCorner(job, at, corner, entry_.cornerGiven());
            });
        if (kept)
            setRun(-1);
        return kept;
    }
    if (chain->closed)
        return false;
    site::Run fresh = entry_.run({});
    fresh.id = site::nextRunId(job(), fresh.kind);
    const bool kept = act("run.add", tr("run %1 added").arg(shown(fresh.id)), [&](site::Job& job) {
        site::addRun(job, at, fresh, entry_.hasCorner() ? entry_.cornerGiven() : site::SquareOutside{});
    });
    if (kept)
        beginRun();
    return kept;
}

bool JobEditor::removeRun()
{
    const site::Run* run = currentRun();
    if (run == nullptr)
        return false;
    const bool removed = act("run.remove", tr("run %1 removed").arg(shown(run->id)), [&](site::Job& job) {
        site::removeRun(job, static_cast<std::size_t>(chain_), static_cast<std::size_t>(run_));
    });
    if (removed)
        setRun(-1);
    return removed;
}

bool JobEditor::repeatMeasure()
{
    const site::Run* run = currentRun();
    const auto measured = entry_.length()->measured();
    if (run == nullptr || !measured)
        return false;
    const bool kept = act("run.repeat", tr("run %1 measured again").arg(shown(run->id)), [&](site::Job& job) {
        job.chains[static_cast<std::size_t>(chain_)].runs[static_cast<std::size_t>(run_)].lengths.push_back(
            *measured);
    });
    if (kept)
        setRun(run_);
    return kept;
}

bool JobEditor::countMeasure(int measure)
{
    const site::Run* run = currentRun();
    if (run == nullptr || measure < 0 || static_cast<std::size_t>(measure) >= run->lengths.size())
        return false;
    const bool kept =
        act("run.counts", tr("another measure of run %1 counts").arg(shown(run->id)), [&](site::Job& job) {
            job.chains[static_cast<std::size_t>(chain_)].runs[static_cast<std::size_t>(run_)].counts =
                static_cast<std::size_t>(measure);
        });
    if (kept)
        setRun(run_);
    return kept;
}

bool JobEditor::removeMeasure(int measure)
{
    const site::Run* run = currentRun();
    if (run == nullptr || measure < 0 || static_cast<std::size_t>(measure) >= run->lengths.size() ||
        run->lengths.size() < 2)
        return false;
    const bool kept =
        act("run.measure.remove", tr("a measure of run %1 removed").arg(shown(run->id)), [&](site::Job& job) {
            site::Run& changed =
                job.chains[static_cast<std::size_t>(chain_)].runs[static_cast<std::size_t>(run_)];
            changed.lengths.erase(changed.lengths.begin() + measure);
            if (changed.counts >= static_cast<std::size_t>(measure) && changed.counts > 0)
                --changed.counts;
        });
    if (kept)
        setRun(run_);
    return kept;
}

bool JobEditor::closeChain()
{
    if (!canClose() || run_ >= 0)
        return false;
    if (const QString wrong = entry_.problemOfCorner(); !wrong.isEmpty()) {
        emit failed(wrong);
        return false;
    }
    return act("chain.close", tr("%1 closed").arg(chainName()), [&](site::Job& job) {
        site::closeChain(job, static_cast<std::size_t>(chain_), entry_.cornerGiven());
    });
}

bool JobEditor::openChain()
{
    if (!isClosed())
        return false;
    return act("chain.open", tr("%1 opened").arg(chainName()),
               [&](site::Job& job) { site::openChain(job, static_cast<std::size_t>(chain_)); });
}

bool JobEditor::setObstacle(bool there, const QString& width, bool cricket)
{
    const site::Chain* chain = currentChain();
    if (chain == nullptr)
        return false;
    std::optional<site::Obstacle> obstacle;
    if (there) {
        obstacle = site::Obstacle{std::nullopt, cricket};
        if (width == obstacleWidth()) {
            obstacle->width = chain->obstacle ? chain->obstacle->width : std::nullopt;
        } else if (!width.trimmed().isEmpty()) {
            const MeasureRead read = readMeasured(width, settings_.style());
            if (!read.measured) {
                emit failed(read.problem);
                return false;
            }
            obstacle->width = read.measured;
        }
    }
    return act("chain.obstacle", tr("what %1 goes round").arg(chainName()),
               [&](site::Job& job) { job.chains[static_cast<std::size_t>(chain_)].obstacle = obstacle; });
}

} // namespace lapwright::field
