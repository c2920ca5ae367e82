#pragma once

#include "cutting/one_dimension.h"
#include "cutting/setup_combiner.h"

#include <functional>
#include <optional>
#include <random>
#include <vector>

namespace lapwright::cutting {

/// Makes setups one after the other, each cut so often that it finishes at least one width: as many setups as
/// widths then suffice, however many sheets there are. What metal may be lost on the way is measured in the
/// worths that prove the number of sheets, and spent sparingly, since the last setups have least to choose
/// from.
class SetupMaker {
public:
    /// True ends the search; told of the ticks of work since.
    using Stop = std::function<bool(std::int64_t ticks)>;

    /// `proof`: worths of the widths that show how few sheets there can be. `parts`: how many more strips of
    /// each width parting could make.
    SetupMaker(const BarProblem& bars, std::int64_t sheets, const BarPlan& proof,
               const std::vector<std::int64_t>& parts, Stop stop);

    /// Setups for exactly the strips wanted and what parting adds; another way with each call. None where it
    /// was stopped or needed more sheets.
    [[nodiscard]] std::optional<std::vector<Setup>> make(std::mt19937& random);

private:
    struct Offer {
        Setup setup;
        double loss = 0.0; ///< of all its sheets, in worths
        int finished = 0;  ///< widths
        BarPlan proof;
    };

    [[nodiscard]] std::vector<std::int64_t> frequencies() const;
    [[nodiscard]] std::optional<Offer> offer(std::int64_t sheets, double prize);
    [[nodiscard]] std::optional<Offer> choose(std::mt19937& random);
    [[nodiscard]] double budget() const;
    void take(const Setup& setup);
    BarPlan proofOf(const Setup& setup);
    void takeBack(const Setup& setup, const std::vector<std::int64_t>& before);
    [[nodiscard]] bool finishRest(std::mt19937& random, std::vector<Setup>& setups);

    const BarProblem& bars_;
    std::int64_t sheets_;
    std::vector<double> worths_; ///< a sheet is worth 1
    const std::vector<std::int64_t>& parts_;
    Stop stop_;
    bool stopped_ = false;
    std::vector<std::int64_t> wanted_, spare_;
    std::int64_t left_ = 0; ///< sheets
};

} // namespace lapwright::cutting
