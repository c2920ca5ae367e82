#pragma once

#include <chrono>
#include <cstdint>
#include <functional>
#include <optional>
#include <string_view>
#include <vector>

namespace lapwright::cutting {

/// How long and how to look for a plan. Everything but the time limit decides by counting, so the same
/// problem, seed and work limit give the same plan byte for byte, with any number of threads.
struct Settings {
    std::optional<std::chrono::milliseconds> timeLimit; ///< needs Control::clock
    std::int64_t workLimit = 20'000; ///< roughly thousandths of a second on a desk computer
    std::uint64_t seed = 1;
    int threads = 1;
    bool fewerSetups = true; ///< second goal: fewer different slitter setups at the same value
    bool dueFirst = true;    ///< blanks due earlier get the best plan they can have alone; later ones fill up

    friend bool operator==(const Settings&, const Settings&) = default;
};

/// One row of the table that feeds screens, files, help and range checks.
struct SettingRecord {
    std::string_view key;
    std::string_view label;
    std::string_view help;
    std::string_view unit;
    std::int64_t least;
    std::int64_t most;
    std::int64_t standard;
};

[[nodiscard]] const std::vector<SettingRecord>& settingRecords();

struct Progress {
    std::int64_t work = 0;
    std::int64_t value = 0; ///< of the best plan so far, in the plan's measure
    std::int64_t bound = 0;
    std::string_view phase;
};

/// The caller's side of a running search. The core has no clock of its own: without `clock` there is no time
/// limit and progress comes by work alone.
struct Control {
    std::function<std::chrono::microseconds()> clock; ///< since any fixed instant, never backwards
    std::function<bool(const Progress&)> progress;    ///< false cancels; called on the calling thread
};

} // namespace lapwright::cutting
