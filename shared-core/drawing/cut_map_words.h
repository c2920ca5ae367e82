#pragma once

#include "cutting/plan.h"
#include "cutting/problem.h"
#include "drawing/cut_map.h"

#include <cstddef>
#include <string>

namespace lapwright::drawing {

/// What a cut map says of a pattern, in the reader's language and units. Refers to what it is made of.
class CutMapWords {
public:
    CutMapWords(const cutting::Problem& problem, const cutting::Plan& plan, std::size_t pattern,
                const CutMapPicture& picture);

    [[nodiscard]] std::string said(const std::string& english) const;
    [[nodiscard]] std::string lengthOf(Length length) const;
    /// "1' 0" × 10' 6"".
    [[nodiscard]] std::string sizeOf(Length wide, Length longPart) const;
    [[nodiscard]] std::string nameOf(std::size_t blank) const;

    /// "Cut map 2 of 14".
    [[nodiscard]] std::string number() const;
    /// With the stock's name and how many are cut alike.
    [[nodiscard]] std::string title() const;
    /// Size and material.
    [[nodiscard]] std::string facts() const;
    [[nodiscard]] std::string orderOfCuts() const;
    /// "width drawn 3 times as large".
    [[nodiscard]] std::string stretched(double times) const;
    /// Strip by strip, for who cannot see the map.
    [[nodiscard]] std::string description() const;

private:
    const cutting::Problem& problem_;
    const cutting::Plan& plan_;
    std::size_t index_;
    const cutting::Pattern& pattern_;
    const cutting::Stock& stock_;
    const CutMapPicture& picture_;
};

} // namespace lapwright::drawing
