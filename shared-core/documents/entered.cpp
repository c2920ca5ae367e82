#include "documents/entered.h"

#include "measure/reading.h"

#include <algorithm>
#include <array>

namespace lapwright::documents {
namespace {

/// Finer than a tape is read: what a file may lose by rounding millimetres to one decimal.
constexpr Length lengthSlack = Length::micrometres(51);
/// Finer than any angle finder on a building.
constexpr Angle angleSlack = Angle::degrees(0.01);

template <class T>
std::vector<T> possibleValues(const Reading<T>& reading)
{
    std::vector<T> values;
    if (const auto exact = reading.value())
        values.push_back(*exact);
    for (const Candidate<T>& candidate : reading.candidates())
        values.push_back(candidate.value);
    return values;
}

template <class T>
bool fits(const std::vector<T>& values, T wanted, T slack)
{
    return std::any_of(values.begin(), values.end(),
                       [&](T value) { return !(slack < magnitude(value - wanted)); });
}

bool reads(const site::Measured& measured)
{
    if (measured.entered.empty())
        return true;
    const std::array<LengthField, 3> fields{
        {{std::nullopt, false}, {LengthUnit::FeetInches, false}, {LengthUnit::Millimetres, false}}};
    return std::any_of(fields.begin(), fields.end(), [&measured](const LengthField& field) {
        return fits(possibleValues(readLength(measured.entered, field)), measured.value, lengthSlack);
    });
}

class Comparison {
public:
    rules::Findings check(const site::Job& job)
    {
        for (const site::Chain& chain : job.chains) {
            for (const site::Run& run : chain.runs)
                checkRun(run);
            for (std::size_t index = 0; index < chain.corners.size(); ++index)
                checkCorner(chain.corners[index],
                            "chain " + chain.id + ", corner " + std::to_string(index + 1));
        }
        return std::move(findings_);
    }

private:
    void checkRun(const site::Run& run)
    {
        const std::string place = "run " + run.id;
        for (const site::Measured& measured : run.lengths)
            check(measured, place);
        if (run.levelRun)
            check(*run.levelRun, place);
        for (const site::TrimChoice& choice : run.trims)
            for (const auto& [name, measured] : choice.measures)
                check(measured, std::string(place).append(", ").append(name));
    }

    void checkCorner(const site::Corner& corner, const std::string& place)
    {
        if (const auto* triangle = std::get_if<site::TapedTriangle>(&corner)) {
            for (const auto* measured : {&triangle->before, &triangle->after, &triangle->diagonal})
                check(*measured, place);
        } else if (const auto* angle = std::get_if<site::InteriorAngle>(&corner)) {
            if (!angle->entered.empty() &&
                !fits(possibleValues(readAngle(angle->entered, {})), angle->angle, angleSlack))
                report(place, angle->entered, angle->angle);
        }
    }

    void check(const site::Measured& measured, const std::string& place)
    {
        if (!reads(measured))
            report(place, measured.entered, measured.value);
    }

    void report(const std::string& place, const std::string& entered, Phrase::Value value)
    {
        findings_.push_back(
            {rules::Weight::Warns,
             enteredCode,
             place,
             {"{entered} was entered, and the value beside it is {value}: one of the two was changed",
              {{"entered", entered}, {"value", std::move(value)}}},
             {"measure again, or enter the measure again; the value counts, not the text", {}},
             std::nullopt});
    }

    rules::Findings findings_;
};

} // namespace

rules::Findings enteredThatDiffer(const site::Job& job)
{
    return Comparison().check(job);
}

} // namespace lapwright::documents
