#pragma once

#include "cutting/bar_relaxation.h"
#include "cutting/setup_combiner.h"

#include <functional>
#include <optional>
#include <random>
#include <vector>

namespace lapwright::cutting {

/// Makes setups one after the other, each cut so often that it finishes at least one width: about as many
/// setups as widths then suffice, however many sheets there are. After each the relaxation says whether what
/// is left still fits the sheets that are left.
class SetupMaker {
public:
    /// True ends the search; told of the ticks of work since.
    using Stop = std::function<bool(std::int64_t ticks)>;

    /// `begin`: any plan of `sheets` for the bars. `spare`: how many more strips of each width may be made.
    SetupMaker(const BarProblem& bars, const std::vector<Setup>& begin, std::int64_t sheets,
               std::vector<std::int64_t> spare, Stop stop);

    /// Fewer setups than `limit` for all strips wanted, found another way with each call; none where it did
    /// not come out so or was stopped.
    [[nodiscard]] std::optional<std::vector<Setup>> make(std::size_t limit, std::mt19937& random);

private:
    struct State {
        std::vector<std::int64_t> wanted, spare; ///< strips of each width
        std::int64_t sheets = 0;
        std::vector<double> worths; ///< of the strips; no sheet of them is worth more than 1
        double slack = 0.0;         ///< sheets less than the relaxation needs
    };
    struct Offer {
        Setup setup;
        int finished = 0; ///< widths
    };
    /// What an attempt prefers.
    struct Manner {
        double prize = 0.0;  ///< worth of finishing a width, in sheets
        double thrift = 0.0; ///< how much losing all slack counts against a setup
        double blur = 0.0;   ///< of the worths, so that attempts differ
    };

    [[nodiscard]] std::vector<std::int64_t> frequencies() const;
    [[nodiscard]] Offer offer(std::int64_t sheets, const Manner& manner, std::mt19937& random);
    [[nodiscard]] double lossOf(const Offer& offer) const;
    [[nodiscard]] double budget(const State& state) const;
    [[nodiscard]] State after(const Setup& setup) const;
    [[nodiscard]] std::optional<double> relax(State& state);
    [[nodiscard]] bool step(const Manner& manner, std::mt19937& random);
    [[nodiscard]] bool finish(std::mt19937& random);
    void stepBack(std::size_t count);
    bool stopped(std::int64_t ticks);

    const BarProblem& bars_;
    Stop stop_;
    bool stopped_ = false;
    BarRelaxation relaxation_;
    State state_;
    std::vector<State> before_; ///< each setup
    std::vector<Setup> setups_;
};

} // namespace lapwright::cutting
