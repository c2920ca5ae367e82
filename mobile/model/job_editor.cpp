#include "model/job_editor.h"

#include "model/guarded.h"
#include "model/read_back.h"
#include "model/words.h"

#include <utility>

namespace lapwright::field {

namespace {

std::vector<Choice> kindsOfChain()
{
    return {{"eave", JobEditor::tr("Eave line"), JobEditor::tr("round the roof, corner by corner"), false},
            {"rake", JobEditor::tr("Rake"), JobEditor::tr("up a gable"), false},
            {"ridge", JobEditor::tr("Ridge"), {}, false},
            {"hip", JobEditor::tr("Hip"), {}, false},
            {"valley", JobEditor::tr("Valley"), {}, false},
            {"fascia", JobEditor::tr("Fascia"), {}, false},
            {"wall_base", JobEditor::tr("Wall line"), JobEditor::tr("round the foot of the walls"), false},
            {"outside_corner", JobEditor::tr("Wall corner"), JobEditor::tr("an upright edge"), false},
            {"opening_head", JobEditor::tr("Opening"), JobEditor::tr("head, jambs and sill"), false},
            {"headwall", JobEditor::tr("Headwall"), JobEditor::tr("a roof meets a wall above"), false},
            {"sidewall", JobEditor::tr("Sidewall"), JobEditor::tr("a roof runs beside a wall"), false},
            {"slope_change", JobEditor::tr("Slope change"), {}, false},
            {"parapet", JobEditor::tr("Parapet"), {}, false},
            {"gravel_edge", JobEditor::tr("Low-slope edge"), {}, false}};
}

} // namespace

JobEditor::JobEditor(const Tablet& tablet, const Settings& settings, QObject* parent)
    : QObject(parent), tablet_(tablet), settings_(settings)
{
    entry_.setStyle(settings.style());
    sayAnew();
    connect(&entry_, &RunEntry::changed, this, &JobEditor::runChanged);
    connect(&settings, &Settings::styleChanged, this, [this] {
        entry_.setStyle(settings_.style());
        refresh();
    });
}

void JobEditor::sayAnew()
{
    chainKinds_.show(kindsOfChain());
    entry_.showChoices();
    plan_.clear();
    refresh();
}

site::Job JobEditor::freshJob() const
{
    site::Job fresh;
    fresh.material = {"galvanised-steel", "24 ga", ""};
    fresh.ruleSets = {"irc-flashing"};
    const auto last = store::jobPage(tablet_.database(), {}, std::nullopt, 1);
    const auto kept = last.empty() ? std::nullopt : store::keptJob(tablet_.database(), last.front().id);
    const auto before = kept ? documents::readJob(kept->document) : Result<documents::JobDocument>(Error{});
    if (before.ok()) {
        fresh.material = before->value.material;
        fresh.limits = before->value.limits;
        fresh.ruleSets = before->value.ruleSets;
        fresh.policy = before->value.policy;
        fresh.tolerance = before->value.tolerance;
    }
    fresh.id = tablet_.newId();
    fresh.measuredBy = field::kept(settings_.person(), longestName);
    return fresh;
}

bool JobEditor::newJob(const QString& name)
{
    return guarded(*this, [&] {
        documents::JobDocument fresh{freshJob(), {}};
        fresh.value.name = kept(name, longestName);
        store::addJob(tablet_.database(), fresh.value,
                      documents::writeJob(fresh, documents::Layout::Canonical),
                      {"job.new", kept(tr("started")), tablet_.now()});
        return openJob(exact(fresh.value.id));
    });
}

bool JobEditor::openJob(const QString& id)
{
    return guarded(*this, [&] {
        auto found = store::keptJob(tablet_.database(), kept(id));
        if (!found) {
            emit failed(tr("This job is not on the tablet any more."));
            return false;
        }
        auto read = documents::readJob(found->document);
        if (!read.ok()) {
            emit failed(tr("This job cannot be read: %1").arg(shown(read.errors().front().sentence())));
            return false;
        }
        chain_ = read->value.chains.empty() ? -1 : 0;
        run_ = -1;
        store::UndoState undo = store::undoState(tablet_.database(), read->value.id);
        const bool taken = take(*std::move(read), *std::move(found), std::move(undo));
        entry_.forget();
        beginRun();
        return taken;
    });
}

void JobEditor::closeJob()
{
    document_ = std::make_shared<documents::JobDocument>();
    kept_ = {};
    undo_ = {};
    chain_ = run_ = -1;
    refresh();
}

void JobEditor::setChain(int chain)
{
    if (chain == chain_ || chain < 0 || static_cast<std::size_t>(chain) >= job().chains.size())
        return;
    chain_ = chain;
    run_ = -1;
    refresh();
    beginRun();
}

void JobEditor::setRun(int run)
{
    const site::Chain* chain = currentChain();
    if (run < 0 || chain == nullptr || static_cast<std::size_t>(run) >= chain->runs.size()) {
        run_ = -1;
        beginRun();
        return;
    }
    run_ = run;
    const auto index = static_cast<std::size_t>(run);
    const site::Corner* before = index > 0       ? &chain->corners[index - 1]
                                 : chain->closed ? &chain->corners.back()
                                                 : nullptr;
    entry_.load(chain->runs[index], before);
    refreshPlan();
    emit runChanged();
}

void JobEditor::beginRun()
{
    const site::Chain* chain = currentChain();
    entry_.begin(chain == nullptr || chain->runs.empty() ? nullptr : &chain->runs.back());
    refreshPlan();
    emit runChanged();
}

void JobEditor::goTo(std::size_t chain, std::size_t run)
{
    setChain(static_cast<int>(chain));
    setRun(static_cast<int>(run));
}

bool JobEditor::act(const char* kind, const QString& words, const std::function<void(site::Job&)>& change)
{
    return actOnDocument(kind, words,
                         [&change](documents::JobDocument& document) { change(document.value); });
}

bool JobEditor::actOnDocument(const char* kind, const QString& words,
                              const std::function<void(documents::JobDocument&)>& change)
{
    documents::JobDocument changed = document();
    change(changed);
    if (changed == document())
        return true;
    std::string text = documents::writeJob(changed, documents::Layout::Canonical);
    // Nothing is kept that would not open again, whatever let it in.
    if (const auto wrong = whatDoesNotRead(document(), changed, text)) {
        emit failed(
            tr("Not kept, because the job could not be opened again: %1").arg(shown(wrong->sentence())));
        return false;
    }
    return guarded(*this, [&] {
        store::KeptJob now = store::commitAct(tablet_.database(), changed.value, kept_, std::move(text),
                                              {kind, kept(words), tablet_.now()});
        return take(std::move(changed), std::move(now), {kept(words), std::nullopt});
    });
}

bool JobEditor::take(documents::JobDocument document, store::KeptJob kept, store::UndoState undo)
{
    document_ = std::make_shared<const documents::JobDocument>(std::move(document));
    kept_ = std::move(kept);
    undo_ = std::move(undo);
    if (chain_ >= static_cast<int>(job().chains.size()))
        chain_ = static_cast<int>(job().chains.size()) - 1;
    if (currentRun() == nullptr)
        run_ = -1;
    refresh();
    return true;
}

bool JobEditor::step(store::Way way)
{
    if (!isOpen())
        return false;
    return guarded(*this, [&] {
        const auto next = store::stepFrom(tablet_.database(), job().id, kept_, way);
        if (!next)
            return false;
        auto read = documents::readJob(next->document);
        if (!read.ok()) {
            emit failed(shown(read.errors().front().sentence()));
            return false;
        }
        store::KeptJob now =
            store::commitStep(tablet_.database(), read->value, kept_, *next, way, tablet_.now());
        store::UndoState undo = store::undoState(tablet_.database(), job().id);
        const bool taken = take(*std::move(read), std::move(now), std::move(undo));
        setRun(run_);
        return taken;
    });
}

bool JobEditor::undo()
{
    return step(store::Way::Undo);
}

bool JobEditor::redo()
{
    return step(store::Way::Redo);
}

} // namespace lapwright::field
