#include "site/reading_slip.h"

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::site {

namespace {

constexpr Length slack = Length::sixtyFourths(32);

bool close(Length left, Length right)
{
    return magnitude(left - right) <= slack;
}

/// A length as its digits stand on paper. What is under a whole inch or millimetre is kept apart and does not
/// slip.
struct Written {
    bool metric = false;
    std::string major; ///< feet, or millimetres
    std::string minor; ///< inches; empty in millimetres
    Length rest;
};

Written writtenAs(Length length)
{
    const bool onInchTape = length % Length::sixtyFourths(1) == Length();
    const bool onMetricTape = length % Length::millimetres(1) == Length();
    if (onMetricTape && !onInchTape)
        return {true, std::to_string(length / Length::millimetres(1)), "", Length()};
    const Length inches = length % Length::feet(1);
    return {false, std::to_string(length / Length::feet(1)), std::to_string(inches / Length::inches(1)),
            inches % Length::inches(1)};
}

std::optional<Length> valueOf(const Written& written)
{
    const std::int64_t major = std::stoll(written.major);
    if (written.metric)
        return Length::millimetres(major);
    const std::int64_t minor = std::stoll(written.minor);
    if (minor > 11)
        return std::nullopt;
    return Length::feet(major) + Length::inches(minor) + written.rest;
}

std::vector<Written> withDigitsSwapped(const Written& written)
{
    std::vector<Written> all;
    const std::string digits = written.major + written.minor;
    for (std::size_t first = 0; first < digits.size(); ++first)
        for (std::size_t second = first + 1; second < digits.size(); ++second) {
            std::string swapped = digits;
            std::swap(swapped[first], swapped[second]);
            Written other = written;
            other.major = swapped.substr(0, written.major.size());
            other.minor = swapped.substr(written.major.size());
            all.push_back(std::move(other));
        }
    return all;
}

std::vector<Written> withSixForNine(const Written& written)
{
    std::vector<Written> all;
    const std::string digits = written.major + written.minor;
    for (std::size_t at = 0; at < digits.size(); ++at) {
        if (digits[at] != '6' && digits[at] != '9')
            continue;
        std::string turned = digits;
        turned[at] = digits[at] == '6' ? '9' : '6';
        Written other = written;
        other.major = turned.substr(0, written.major.size());
        other.minor = turned.substr(written.major.size());
        all.push_back(std::move(other));
    }
    return all;
}

std::optional<Length> oneThatFits(const std::vector<Written>& candidates, Length wouldBe)
{
    for (const Written& candidate : candidates) {
        const std::optional<Length> value = valueOf(candidate);
        if (value && close(*value, wouldBe))
            return value;
    }
    return std::nullopt;
}

} // namespace

std::optional<ReadingSlip> readingSlip(Length measured, Length wouldBe)
{
    // Digits of anything longer are no tape's.
    if (measured <= Length() || measured > Length::feet(10'000) || close(measured, wouldBe))
        return std::nullopt;
    const Written written = writtenAs(measured);
    if (const auto meant = oneThatFits(withDigitsSwapped(written), wouldBe))
        return ReadingSlip{{"two digits of {meant} changed places", {{"meant", *meant}}}, true};
    if (const auto meant = oneThatFits(withSixForNine(written), wouldBe))
        return ReadingSlip{{"a 6 and a 9 of {meant} taken for one another", {{"meant", *meant}}}, true};
    if (close(wouldBe, measured / 12))
        return ReadingSlip{{"inches taken for feet", {}}, true};
    if (close(wouldBe, measured * 12))
        return ReadingSlip{{"feet taken for inches", {}}, true};
    const Length difference = magnitude(wouldBe - measured);
    if (magnitude(difference - Length::inches(1)) <= Length::sixtyFourths(8))
        return ReadingSlip{{"an inch lost or won where the tape began", {}}, false};
    const std::int64_t feet = (difference + slack) / Length::feet(1);
    if ((feet == 1 || (feet > 0 && feet % 10 == 0 && feet <= 50)) && close(difference, Length::feet(feet)))
        return ReadingSlip{feet == 1 ? Phrase{"a foot misread on the tape", {}}
                                     : Phrase{"{feet} feet misread on the tape", {{"feet", feet}}},
                           false};
    return std::nullopt;
}

} // namespace lapwright::site
