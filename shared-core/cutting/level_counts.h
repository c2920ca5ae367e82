#pragma once

#include "cutting/instance.h"
#include "cutting/relaxation.h"

#include <optional>

namespace lapwright::cutting {

/// For small batches of one coil, a bound above that of the relaxation: it may take a fraction of a long
/// level, but blanks of some length and more need a whole number of levels as long. Each such number bears a
/// price, a discount on those levels, and prices are looked for that lift the bound.
class LevelCounts {
public:
    using Stop = Relaxation::Stop;

    /// Whether the instance is of that sort: all blanks of a problem of one coil, few kinds of them.
    [[nodiscard]] static bool takes(const Instance& instance);

    /// `plan` covers all demand.
    LevelCounts(const Instance& instance, const RawPlan& plan, Stop stop);

    /// Of the best bound found; missing where no number of levels lifts it.
    [[nodiscard]] std::optional<Certificate> certificate();

private:
    struct Count {
        Length from;
        int along = 0; ///< the same in units, kerf included
        std::int64_t levels = 0;
        std::vector<double> worths; ///< of the kinds; no level holds more than 1
        std::int64_t discount = 0;
    };
    struct Bound {
        double value = 0.0;
        std::vector<double> worths;
        std::vector<Count> counts;
    };

    [[nodiscard]] std::vector<Length> lengths() const;
    [[nodiscard]] std::optional<Count> countFrom(Length length);
    [[nodiscard]] Bound boundWith(std::vector<Count> counts);
    void lift(Count count);

    const Instance& instance_;
    const RawPlan& plan_;
    Stop stop_;
    std::vector<Length> leastOfKind_; ///< the shortest level that holds one
    std::vector<int> alongOfKind_;    ///< the same in units, kerf included
    Bound best_;
};

} // namespace lapwright::cutting
