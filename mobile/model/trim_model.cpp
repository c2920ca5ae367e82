#include "model/trim_model.h"

#include "drawing/profile_picture.h"
#include "measure/rounding.h"
#include "model/colours.h"
#include "model/words.h"
#include "pieces/why.h"
#include "site/run_kind.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace lapwright::field {

namespace {

using site::RunKind;

bool has(const site::Run& run, const std::string& trim)
{
    return std::any_of(run.trims.begin(), run.trims.end(),
                       [&trim](const site::TrimChoice& choice) { return choice.trim == trim; });
}

QString limitsOf(Length least, Length most, const Style& style)
{
    return TrimModel::tr("%1 to %2").arg(shown(write(least, style)), shown(write(most, style)));
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
}

QString TrimModel::kind() const
{
    return kind_ ? shown(std::string(site::nameOf(*kind_))) : QString();
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
    return shown(run_);
}

void TrimModel::setRun(const QString& run)
{
    run_ = kept(run);
    refresh();
}

QString TrimModel::trim() const
{
    return shown(trim_);
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
    return trim == nullptr ? QString() : shown(trim->name);
}

QString TrimModel::note() const
{
    const trim::Template* trim = templateInHand();
    return trim == nullptr ? QString() : shown(trim->note);
}

void TrimModel::setPage(double widthMillimetres, double heightMillimetres)
{
    // A section with its labels needs so much paper; a smaller view shows it smaller.
    constexpr double leastWidth = 150.0, leastHeight = 115.0, most = 1000.0;
    const double wide = std::clamp(widthMillimetres, 1.0, most),
                 high = std::clamp(heightMillimetres, 1.0, most);
    const double larger = std::max({1.0, leastWidth / wide, leastHeight / high});
    const Length width = nearestFromMillimetres(std::min(wide * larger, most));
    const Length height = nearestFromMillimetres(std::min(high * larger, most));
    if (width == pageWidth_ && height == pageHeight_)
        return;
    pageWidth_ = width;
    pageHeight_ = height;
    showSection();
    emit changed();
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

void TrimModel::showKinds()
{
    std::vector<std::pair<RunKind, int>> counts;
    std::map<RunKind, int> without;
    bare_ = 0;
    for (const site::Chain& chain : takeOff_.editor().job().chains)
        for (const site::Run& run : chain.runs) {
            auto known = std::find_if(counts.begin(), counts.end(),
                                      [&run](const auto& one) { return one.first == run.kind; });
            if (known == counts.end())
                known = counts.insert(counts.end(), {run.kind, 0});
            ++known->second;
            if (run.trims.empty()) {
                ++without[run.kind];
                ++bare_;
            }
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
        kinds.push_back({shown(std::string(site::nameOf(kind))), kindWords(kind),
                         without[kind] == 0 ? tr("%n runs", "", count)
                                            : tr("%1 of %n without trim", "", count).arg(without[kind]),
                         kind == kind_});
    kinds_.show(std::move(kinds));
}

void TrimModel::showRuns()
{
    std::vector<Choice> runs;
    for (const site::Chain& chain : takeOff_.editor().job().chains)
        for (const site::Run& run : chain.runs)
            if (run.kind == kind_)
                runs.push_back({shown(run.id), shown(run.id), {}, run.id == run_});
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
        trims.push_back({shown(trim->id), shown(trim->name),
                         with == 0     ? QString()
                         : with == all ? tr("on all of them")
                                       : tr("on %1 of %2").arg(with).arg(all),
                         with > 0 && with == all});
    }
    if (templateInHand() == nullptr && !suiting.empty())
        trim_ = first.empty() ? suiting.front()->id : first;
    trims_.show(std::move(trims));
}

void TrimModel::showSection()
{
    section_ = {};
    girth_ = why_ = problem_ = {};
    std::size_t chain = 0;
    const site::Run* run = firstRun(&chain);
    if (run == nullptr || templateInHand() == nullptr) {
        sizes_.show({});
        return;
    }
    // The same take-off as the order's, of this one run with this one trim.
    site::Job alone = takeOff_.editor().job();
    const site::TrimChoice choice = choiceInHand();
    site::Chain only = alone.chains[chain];
    for (site::Run& other : only.runs)
        other.trims = other.id == run->id ? std::vector{choice} : std::vector<site::TrimChoice>();
    alone.chains = {std::move(only)};
    const pieces::Order order = pieces::takeoff(alone, takeOff_.tablet().catalogue());
    const Style style = settings_.style();
    const std::string ofTrim = ", " + templateInHand()->name;
    for (const rules::Finding& finding : order.findings)
        if (problem_.isEmpty() && finding.place.find(ofTrim) != std::string::npos &&
            finding.weight != rules::Weight::Informs)
            problem_ = said(finding.statement, style);
    const pieces::OrderedProfile* profile = order.profiles.empty() ? nullptr : &order.profiles.front();
    if (profile != nullptr) {
        drawing::ProfilePicture wish;
        wish.thickness = profile->thickness;
        wish.colour = colourNamed(profile->material.colour);
        wish.colourName = profile->material.colour;
        wish.girth = profile->girth;
        wish.style = style;
        wish.width = pageWidth_;
        wish.height = pageHeight_;
        section_ = look::Picture(drawing::profilePicture(profile->profile, wish));
        girth_ = shown(write(profile->girth, style));
        for (const Derivation& derivation : profile->derivations)
            why_ += shown(pieces::writeDerivation(derivation, style));
    }
    showSizes(choice, profile);
}

void TrimModel::showSizes(const site::TrimChoice& choice, const pieces::OrderedProfile* profile)
{
    const trim::Template& trim = *templateInHand();
    const Style style = settings_.style();
    std::vector<TrimSizes::Size> sizes;
    for (const trim::MeasureDeclaration& measure : trim.measures) {
        const auto given = choice.measures.find(measure.name);
        const bool byHand = given != choice.measures.end();
        const std::optional<Length> value = byHand ? std::optional(given->second.value) : measure.byDefault;
        sizes.push_back({measure.name, capital(shown(measure.label)),
                         value ? shown(write(*value, style)) : QString(),
                         limitsOf(measure.least, measure.most, style), false, byHand, !value});
    }
    for (std::size_t i = 0; i < trim.legs.size(); ++i) {
        const trim::LegTemplate& leg = trim.legs[i];
        const bool byHand = choice.legs.count(leg.name) > 0;
        const bool made = profile != nullptr && i < profile->profile.legs.size();
        const Length value = made     ? profile->profile.legs[i].length
                             : byHand ? choice.legs.at(leg.name)
                                      : Length();
        sizes.push_back({leg.name, capital(shown(leg.label)),
                         value > Length() ? shown(write(value, style)) : QString(),
                         limitsOf(leg.least, leg.most, style), true, byHand, false});
    }
    sizes_.show(std::move(sizes));
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

bool TrimModel::setSize(int row, const QString& text)
{
    if (text.trimmed().isEmpty())
        return setSizeTo(row, std::nullopt);
    MeasureEntry entry(MeasureEntry::What::Length);
    entry.setStyle(settings_.style());
    // A trim has no foot-long parts that anyone gives in feet alone: a bare number is inches here.
    entry.setText(text);
    if (!entry.exact() && !settings_.metric())
        entry.setText(text.trimmed() + "\"");
    if (!entry.exact()) {
        entry.setText(text);
        emit failed(entry.problem());
        return false;
    }
    return setSizeTo(row, entry.measured());
}

bool TrimModel::stepSize(int row, int steps)
{
    if (row < 0 || row >= sizes_.rowCount() || templateInHand() == nullptr)
        return false;
    const Length step = settings_.metric() ? Length::millimetres(2) : Length::sixtyFourths(8);
    const TrimSizes::Size& size = sizes_.sizes()[static_cast<std::size_t>(row)];
    MeasureEntry entry(MeasureEntry::What::Length);
    entry.setStyle(settings_.style());
    entry.setText(size.value);
    const std::size_t leg = static_cast<std::size_t>(row) -
                            std::min(templateInHand()->measures.size(), static_cast<std::size_t>(row));
    const auto [least, most] =
        size.isLeg ? std::pair(templateInHand()->legs[leg].least, templateInHand()->legs[leg].most)
                   : std::pair(templateInHand()->measures[static_cast<std::size_t>(row)].least,
                               templateInHand()->measures[static_cast<std::size_t>(row)].most);
    const Length now = entry.length().value_or(least);
    const Length wanted = std::clamp(roundToNearest(now, step) + step * steps, least, most);
    const LengthUnit unit = settings_.metric() ? LengthUnit::Millimetres : LengthUnit::Inches;
    return setSizeTo(row, site::Measured{wanted, writeExact(wanted, unit)});
}

bool TrimModel::setSizeTo(int row, const std::optional<site::Measured>& value)
{
    if (row < 0 || row >= sizes_.rowCount())
        return false;
    const TrimSizes::Size size = sizes_.sizes()[static_cast<std::size_t>(row)];
    return change("trim.size", tr("%1 of %2 set").arg(size.label, trimName()), [&](site::Run& run) {
        for (site::TrimChoice& choice : run.trims) {
            if (choice.trim != trim_)
                continue;
            if (size.isLeg) {
                choice.legs.erase(size.name);
                if (value)
                    choice.legs.emplace(size.name, value->value);
            } else {
                choice.measures.erase(size.name);
                if (value)
                    choice.measures.emplace(size.name, *value);
            }
        }
    });
}

} // namespace lapwright::field
