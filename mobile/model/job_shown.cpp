#include "model/job_editor.h"
#include "model/photo_list.h"
#include "model/words.h"
#include "site/checks.h"
#include "site/editing.h"
#include "site/run_kind.h"

// What screens show of the job in hand.
namespace lapwright::field {

namespace {

constexpr std::size_t mostSuspects = 4;

} // namespace

QString JobEditor::jobId() const
{
    return exact(job().id);
}

QString JobEditor::name() const
{
    return shown(job().name);
}

QString JobEditor::undoWords() const
{
    return undo_.undo ? shown(*undo_.undo) : QString();
}

QString JobEditor::redoWords() const
{
    return undo_.redo ? shown(*undo_.redo) : QString();
}

const site::Chain* JobEditor::currentChain() const
{
    const bool there = chain_ >= 0 && static_cast<std::size_t>(chain_) < job().chains.size();
    return there ? &job().chains[static_cast<std::size_t>(chain_)] : nullptr;
}

std::shared_ptr<const site::Chain> JobEditor::heldChain() const
{
    return {document_, currentChain()};
}

const site::Run* JobEditor::currentRun() const
{
    const site::Chain* chain = currentChain();
    const bool there = chain != nullptr && run_ >= 0 && static_cast<std::size_t>(run_) < chain->runs.size();
    return there ? &chain->runs[static_cast<std::size_t>(run_)] : nullptr;
}

QString JobEditor::runId() const
{
    const site::Run* run = currentRun();
    return run == nullptr ? QString() : shown(run->id);
}

QString JobEditor::runKey() const
{
    const site::Run* run = currentRun();
    return run == nullptr ? QString() : exact(run->id);
}

QString JobEditor::newRunId() const
{
    return shown(site::nextRunId(job(), *site::runKindNamed(kept(entry_.kind()))));
}

QString JobEditor::chainName() const
{
    const site::Chain* chain = currentChain();
    return chain == nullptr ? QString() : shown(chain->name);
}

bool JobEditor::hasObstacle() const
{
    const site::Chain* chain = currentChain();
    return chain != nullptr && chain->obstacle.has_value();
}

QString JobEditor::obstacleWidth() const
{
    const site::Chain* chain = currentChain();
    const bool given = chain != nullptr && chain->obstacle && chain->obstacle->width;
    return given ? shown(write(chain->obstacle->width->value, settings_.style())) : QString();
}

bool JobEditor::hasCricket() const
{
    const site::Chain* chain = currentChain();
    return chain != nullptr && chain->obstacle && chain->obstacle->cricket.value_or(false);
}

bool JobEditor::isClosed() const
{
    const site::Chain* chain = currentChain();
    return chain != nullptr && chain->closed;
}

bool JobEditor::canClose() const
{
    const site::Chain* chain = currentChain();
    return chain != nullptr && !chain->closed && chain->runs.size() >= 3;
}

int JobEditor::counting() const
{
    const site::Run* run = currentRun();
    return run == nullptr || run->lengths.empty() ? -1 : static_cast<int>(run->counts);
}

int JobEditor::photos() const
{
    const site::Run* run = currentRun();
    return run == nullptr ? 0 : photosOf(job(), {}, photoPlace(run->id));
}

QString JobEditor::spread() const
{
    const site::Run* run = currentRun();
    const auto apart = run == nullptr ? std::nullopt : site::spread(*run);
    return apart ? shown(write(*apart, settings_.style())) : QString();
}

JobEditor::Closure JobEditor::closure() const
{
    using Verdict = site::ClosureReport::Verdict;
    switch (report_.verdict) {
    case Verdict::Open:
        return Closure::Open;
    case Verdict::Closes:
        return Closure::Closes;
    case Verdict::AnglesOff:
    case Verdict::LengthsOff:
    case Verdict::Crosses:
        return Closure::Off;
    case Verdict::NotComputable:
        break;
    }
    return Closure::Unknown;
}

QString JobEditor::closureWords() const
{
    const site::Chain* chain = currentChain();
    if (chain == nullptr || !chain->closed)
        return {};
    if (!report_.findings.empty())
        return said(report_.findings.front().statement, settings_.style());
    if (closure() == Closure::Closes)
        return tr("Closes to %1 around %2")
            .arg(shown(write(report_.linearMisclosure, settings_.style())),
                 shown(write(report_.perimeter, settings_.style())));
    return tr("Something is missing before this chain can be checked");
}

void JobEditor::refresh()
{
    std::vector<Choice> chains;
    for (std::size_t i = 0; i < job().chains.size(); ++i) {
        const site::Chain& chain = job().chains[i];
        chains.push_back({exact(chain.id), shown(site::nameOrId(chain)),
                          tr("%n runs", "", static_cast<int>(chain.runs.size())),
                          static_cast<int>(i) == chain_});
    }
    chains_.show(std::move(chains));
    const site::Chain* chain = currentChain();
    report_ = chain == nullptr ? site::ClosureReport() : site::closureReport(*chain, job().tolerance);
    runs_.show(heldChain(), settings_.style());
    showSuspects(chain);
    refreshPlan();
    emit jobChanged();
    emit runChanged();
}

void JobEditor::showSuspects(const site::Chain* chain)
{
    std::vector<Choice> suspects;
    for (const site::Blame& blame : report_.blames) {
        if (suspects.size() == mostSuspects || chain == nullptr)
            break;
        if (blame.length)
            suspects.push_back(
                {QString::number(blame.length->run),
                 tr("Measure %1 again").arg(shown(chain->runs[blame.length->run].id)),
                 tr("it would close at %1").arg(shown(write(blame.length->wouldBe, settings_.style()))),
                 blame.telling});
        else if (blame.corner)
            suspects.push_back(
                {QString::number((blame.corner->corner + 1) % chain->runs.size()),
                 tr("Check the corner after %1").arg(shown(chain->runs[blame.corner->corner].id)),
                 tr("it would close at %1").arg(shown(write(blame.corner->wouldBe))), blame.telling});
    }
    suspects_.show(std::move(suspects));
}

void JobEditor::refreshPlan()
{
    std::vector<Choice> measures;
    if (const site::Run* run = currentRun())
        for (std::size_t i = 0; i < run->lengths.size(); ++i)
            measures.push_back({QString::number(i), shown(write(run->lengths[i].value, settings_.style())),
                                shown(run->lengths[i].entered), i == run->counts});
    measures_.show(std::move(measures));
    if (currentChain() == nullptr)
        plan_.clear();
    else
        plan_.show(heldChain(), report_,
                   run_ < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(run_)),
                   settings_.style());
}

} // namespace lapwright::field
