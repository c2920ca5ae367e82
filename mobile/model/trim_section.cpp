#include "drawing/profile_picture.h"
#include "measure/rounding.h"
#include "model/colours.h"
#include "model/trim_model.h"
#include "model/words.h"
#include "pieces/why.h"
#include "speech/spoken.h"

#include <algorithm>
#include <utility>

// The trim in hand as it would be folded, and its measures and legs.
namespace lapwright::field {

namespace {

/// More than any lap of trim: common practice, no source.
constexpr Length mostLap = Length::inches(12);

QString limitsOf(Length least, Length most, const Style& style)
{
    return TrimModel::tr("%1 to %2").arg(shown(write(least, style)), shown(write(most, style)));
}

/// Whether the leg is as long as what was measured, nothing added.
bool isMeasure(const trim::LengthExpression& length)
{
    return length.constant == Length() && length.terms.size() == 1 && length.terms.front().first == 1.0;
}

} // namespace

void TrimModel::setPage(double widthMillimetres, double heightMillimetres)
{
    // A section with its labels needs so much paper; a smaller view shows it smaller.
    constexpr double leastWidth = 84.0, leastHeight = 52.0, most = 1000.0;
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
        wish.style.translation = spoken;
        wish.framed = false;
        wish.width = pageWidth_;
        wish.height = pageHeight_;
        section_ = look::Picture(drawing::profilePicture(profile->profile, wish));
        girth_ = shown(write(profile->girth, style));
        for (const Derivation& derivation : profile->derivations)
            why_ += shown(pieces::writeDerivation(spoken(derivation), style));
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
        sizes.push_back({measure.name, named(measure.label), value ? shown(write(*value, style)) : QString(),
                         limitsOf(measure.least, measure.most, style), TrimSizes::Kind::Measure,
                         measure.least, measure.most, byHand, !value});
    }
    for (std::size_t i = 0; i < trim.legs.size(); ++i) {
        const trim::LegTemplate& leg = trim.legs[i];
        const bool byHand = choice.legs.count(leg.name) > 0;
        if (isMeasure(leg.length) && !byHand)
            continue; // the measure stands above, under a name that says what to measure
        const bool made = profile != nullptr && i < profile->profile.legs.size();
        const Length value = made     ? profile->profile.legs[i].length
                             : byHand ? choice.legs.at(leg.name)
                                      : Length();
        sizes.push_back(
            {leg.name, named(leg.label), value > Length() ? shown(write(value, style)) : QString(),
             limitsOf(leg.least, leg.most, style), TrimSizes::Kind::Leg, leg.least, leg.most, byHand, false});
    }
    if (!trim.installation.courseHeadLap) {
        const Length lap = trim::lapOf(trim, choice);
        sizes.push_back({"lap", tr("Lap of one piece over the next"), shown(write(lap, style)),
                         limitsOf(Length(), mostLap, style), TrimSizes::Kind::Lap, Length(), mostLap,
                         choice.lap.has_value(), false});
    }
    sizes_.show(std::move(sizes));
}

bool TrimModel::setSize(int row, const QString& text)
{
    if (row < 0 || row >= sizes_.rowCount())
        return false;
    // What is shown may be rounded: left as it stands, it is left as it is.
    if (text == sizes_.sizes()[static_cast<std::size_t>(row)].value)
        return true;
    if (text.trimmed().isEmpty())
        return setSizeTo(row, std::nullopt);
    MeasureRead read = readMeasured(text, settings_.style());
    // A trim has no foot-long parts that anyone gives in feet alone: a bare number is inches here.
    if (!read.measured && !settings_.metric())
        read.measured = readMeasured(text.trimmed() + "\"", settings_.style()).measured;
    if (!read.measured) {
        emit failed(read.problem);
        return false;
    }
    return setSizeTo(row, read.measured);
}

bool TrimModel::stepSize(int row, int steps)
{
    if (row < 0 || row >= sizes_.rowCount() || templateInHand() == nullptr)
        return false;
    const Length step = settings_.metric() ? Length::millimetres(2) : Length::sixtyFourths(8);
    const TrimSizes::Size& size = sizes_.sizes()[static_cast<std::size_t>(row)];
    const MeasureRead read = readMeasured(size.value, settings_.style());
    const Length now = read.measured ? read.measured->value : size.least;
    const Length wanted = std::clamp(roundToNearest(now, step) + step * steps, size.least, size.most);
    const LengthUnit unit = settings_.metric() ? LengthUnit::Millimetres : LengthUnit::Inches;
    return setSizeTo(row, site::Measured{wanted, writeExact(wanted, unit)});
}

bool TrimModel::setSizeTo(int row, const std::optional<site::Measured>& value)
{
    if (row < 0 || row >= sizes_.rowCount())
        return false;
    const TrimSizes::Size size = sizes_.sizes()[static_cast<std::size_t>(row)];
    if (size.kind == TrimSizes::Kind::Lap && value && value->value > size.most) {
        emit failed(tr("A lap is at most %1.").arg(shown(write(size.most, settings_.style()))));
        return false;
    }
    return change("trim.size", tr("%1 of %2 set").arg(size.label, trimName()), [&](site::Run& run) {
        for (site::TrimChoice& choice : run.trims) {
            if (choice.trim != trim_)
                continue;
            switch (size.kind) {
            case TrimSizes::Kind::Leg:
                choice.legs.erase(size.name);
                if (value)
                    choice.legs.emplace(size.name, value->value);
                break;
            case TrimSizes::Kind::Lap:
                choice.lap = value ? std::optional(value->value) : std::nullopt;
                break;
            case TrimSizes::Kind::Measure:
                choice.measures.erase(size.name);
                if (value)
                    choice.measures.emplace(size.name, *value);
            }
        }
    });
}

} // namespace lapwright::field
