#include "model/run_entry.h"

#include "model/run_list.h"
#include "model/words.h"
#include "site/corner.h"
#include "site/run_kind.h"

#include <array>
#include <utility>

namespace lapwright::field {

namespace {

QString word(std::string_view name)
{
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

/// Why a measure that is typed cannot be used; empty if it can, or if nothing is typed.
QString problemOf(const MeasureEntry& entry)
{
    return entry.empty() || entry.exact() ? QString() : entry.problem();
}

/// The same for an angle on the building's side, which must be a corner (site/corner.h).
QString problemOfAngle(const MeasureEntry& entry)
{
    if (!entry.angle() || site::interiorAngle(site::InteriorAngle{*entry.angle(), {}}))
        return problemOf(entry);
    return RunEntry::tr("%1 is no corner. Enter the angle on the building's side: 90° at a square outside "
                        "corner, 270° at a square inside one.")
        .arg(shown(write(*entry.angle())));
}

template <class T>
QString textOf(const std::optional<T>& value)
{
    return value ? shown(write(*value)) : QString();
}

/// What was there before, where the text is still the one made of it: it may be rounded.
template <class T>
std::optional<T> unlessSame(const MeasureEntry& entry, const std::optional<T>& before,
                            const std::optional<T>& typed)
{
    return before && entry.text() == textOf(before) ? before : typed;
}

} // namespace

RunEntry::RunEntry(QObject* parent) : QObject(parent)
{
    for (MeasureEntry* entry : {&length_, &levelRun_, &slope_, &otherSlope_, &planCorner_, &exposure_,
                                &angle_, &sideBefore_, &sideAfter_, &diagonal_})
        connect(entry, &MeasureEntry::changed, this, &RunEntry::changed);
    showChoices();
}

QString RunEntry::kind() const
{
    return word(site::nameOf(kind_));
}

void RunEntry::setKind(const QString& kind)
{
    const auto known = site::runKindNamed(kept(kind));
    if (!known || *known == kind_)
        return;
    kind_ = *known;
    showChoices();
    emit changed();
}

QString RunEntry::kindInWords() const
{
    return kindWords(kind_);
}

void RunEntry::setCorner(Corner corner)
{
    if (corner == corner_)
        return;
    corner_ = corner;
    emit changed();
}

void RunEntry::setTapedInside(bool inside)
{
    if (inside == tapedInside_)
        return;
    tapedInside_ = inside;
    emit changed();
}

QString RunEntry::cornerWords() const
{
    if (corner_ == Corner::Straight)
        return tr("straight on");
    const bool known =
        corner_ == Corner::SquareOutside || corner_ == Corner::SquareInside || problemOfCorner().isEmpty();
    return known ? cornerInWords(cornerGiven()) : QString();
}

QString RunEntry::start() const
{
    return word(site::nameOf(start_));
}

void RunEntry::setStart(const QString& end)
{
    start_ = site::endKindNamed(kept(end)).value_or(start_);
    showChoices();
    emit changed();
}

QString RunEntry::end() const
{
    return word(site::nameOf(end_));
}

void RunEntry::setEnd(const QString& end)
{
    end_ = site::endKindNamed(kept(end)).value_or(end_);
    showChoices();
    emit changed();
}

void RunEntry::setNote(const QString& note)
{
    if (note == note_)
        return;
    note_ = note;
    emit changed();
}

void RunEntry::showChoices()
{
    std::vector<Choice> kinds;
    for (const site::RunKind kind : site::allRunKinds)
        kinds.push_back({word(site::nameOf(kind)), kindWords(kind), {}, kind == kind_});
    kinds_.show(std::move(kinds));
    const auto ends = [](site::EndKind chosen) {
        std::vector<Choice> all;
        for (const site::EndKind end : site::allEndKinds)
            all.push_back({word(site::nameOf(end)), endWords(end), {}, end == chosen});
        return all;
    };
    starts_.show(ends(start_));
    ends_.show(ends(end_));
}

bool RunEntry::asksForSlope() const
{
    return site::asksForSlope(kind_);
}

bool RunEntry::asksForOtherSlope() const
{
    return site::asksForOtherSlope(kind_);
}

bool RunEntry::asksForPlanCorner() const
{
    return site::asksForPlanCorner(kind_);
}

bool RunEntry::asksForLevelRun() const
{
    return site::lieOf(kind_) == site::Lie::Sloped;
}

bool RunEntry::asksForExposure() const
{
    return kind_ == site::RunKind::Sidewall;
}

QString RunEntry::problemOfCorner() const
{
    if (corner_ == Corner::Angle) {
        if (angle_.empty())
            return tr("Enter the angle of the corner, on the building's side.");
        return problemOfAngle(angle_);
    }
    if (corner_ == Corner::Taped) {
        for (const MeasureEntry* side : {&sideBefore_, &sideAfter_, &diagonal_})
            if (!side->exact())
                return side->empty() ? tr("Enter both sides and the diagonal between their ends.")
                                     : side->problem();
        if (!site::interiorAngle(cornerGiven()))
            return tr("These three lengths make no triangle.");
    }
    return {};
}

QString RunEntry::problem() const
{
    for (const MeasureEntry* entry : {&length_, &levelRun_})
        if (QString wrong = problemOf(*entry); !wrong.isEmpty())
            return wrong;
    if (length_.empty() && !(asksForLevelRun() && levelRun_.exact()))
        return tr("Enter the length.");
    if (asksForSlope() || asksForOtherSlope())
        for (const MeasureEntry* entry : {&slope_, &otherSlope_})
            if (QString wrong = problemOf(*entry); !wrong.isEmpty())
                return wrong;
    if (QString wrong = problemOfAngle(planCorner_); asksForPlanCorner() && !wrong.isEmpty())
        return wrong;
    if (QString wrong = problemOf(exposure_); asksForExposure() && !wrong.isEmpty())
        return wrong;
    return hasCorner_ ? problemOfCorner() : QString();
}

void RunEntry::setStyle(const Style& style)
{
    for (MeasureEntry* entry : {&length_, &levelRun_, &slope_, &otherSlope_, &planCorner_, &exposure_,
                                &angle_, &sideBefore_, &sideAfter_, &diagonal_})
        entry->setStyle(style);
}

void RunEntry::forget()
{
    kind_ = site::RunKind::Eave;
    slope_.clear();
    otherSlope_.clear();
}

void RunEntry::begin(const site::Run* before)
{
    length_.clear();
    levelRun_.clear();
    angle_.clear();
    sideBefore_.clear();
    sideAfter_.clear();
    diagonal_.clear();
    planCorner_.clear();
    exposure_.clear();
    corner_ = Corner::SquareOutside;
    tapedInside_ = false;
    start_ = end_ = site::EndKind::Free;
    note_.clear();
    hasCorner_ = before != nullptr;
    if (before != nullptr) {
        kind_ = before->kind;
        slope_.setText(textOf(before->slope));
        otherSlope_.setText(textOf(before->otherSlope));
    }
    showChoices();
    emit changed();
}

void RunEntry::load(const site::Run& run, const site::Corner* before)
{
    begin(&run);
    const bool counts = run.counts < run.lengths.size();
    length_.setText(counts ? shown(run.lengths[run.counts].entered) : QString());
    levelRun_.setText(run.levelRun ? shown(run.levelRun->entered) : QString());
    planCorner_.setText(textOf(run.planCorner));
    exposure_.setText(run.courseExposure ? shown(writeExact(*run.courseExposure, LengthUnit::Inches))
                                         : QString());
    start_ = run.start;
    end_ = run.end;
    note_ = shown(run.note);
    hasCorner_ = before != nullptr;
    if (before != nullptr) {
        if (std::holds_alternative<site::SquareInside>(*before))
            corner_ = Corner::SquareInside;
        if (const auto* angle = std::get_if<site::InteriorAngle>(before)) {
            corner_ = angle->angle == halfTurn ? Corner::Straight : Corner::Angle;
            angle_.setText(angle->entered.empty() ? shown(write(angle->angle)) : shown(angle->entered));
        }
        if (const auto* taped = std::get_if<site::TapedTriangle>(before)) {
            corner_ = Corner::Taped;
            tapedInside_ = taped->inside;
            sideBefore_.setText(shown(taped->before.entered));
            sideAfter_.setText(shown(taped->after.entered));
            diagonal_.setText(shown(taped->diagonal.entered));
        }
    }
    showChoices();
    emit changed();
}

site::Run RunEntry::run(site::Run base) const
{
    base.kind = kind_;
    if (const auto measured = length_.measured()) {
        if (base.counts < base.lengths.size())
            base.lengths[base.counts] = *measured;
        else
            base.lengths.push_back(*measured);
    }
    base.levelRun = asksForLevelRun() ? levelRun_.measured() : std::nullopt;
    base.slope = asksForSlope() ? unlessSame(slope_, base.slope, slope_.slope()) : std::nullopt;
    base.otherSlope =
        asksForOtherSlope() ? unlessSame(otherSlope_, base.otherSlope, otherSlope_.slope()) : std::nullopt;
    base.planCorner =
        asksForPlanCorner() ? unlessSame(planCorner_, base.planCorner, planCorner_.angle()) : std::nullopt;
    base.courseExposure = asksForExposure() ? exposure_.length() : std::nullopt;
    base.start = start_;
    base.end = end_;
    base.note = kept(note_, longestAddress);
    return base;
}

site::Corner RunEntry::cornerGiven() const
{
    switch (corner_) {
    case Corner::SquareOutside:
        return site::SquareOutside{};
    case Corner::SquareInside:
        return site::SquareInside{};
    case Corner::Straight:
        return site::InteriorAngle{halfTurn, "180°"};
    case Corner::Angle:
        return site::InteriorAngle{angle_.angle().value_or(Angle()), kept(angle_.text().simplified())};
    case Corner::Taped:
        break;
    }
    const auto side = [](const MeasureEntry& entry) { return entry.measured().value_or(site::Measured{}); };
    return site::TapedTriangle{side(sideBefore_), side(sideAfter_), side(diagonal_), tapedInside_};
}

} // namespace lapwright::field
