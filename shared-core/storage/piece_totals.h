#pragma once

#include "schedule/piece_life.h"
#include "storage/database.h"
#include "storage/piece_events.h"

#include <cstdint>
#include <map>
#include <string>

/// Counts kept beside the event log; for the files of this folder only. All of them can be built again from
/// the log.
namespace lapwright::storage {

/// The key of PieceCounts::remade beside the names of states.
inline constexpr const char* remadeKey = "remade";

/// Sums by order and for the whole shop, gathered over one transaction and written once at its end.
class PieceTotals {
public:
    /// Pieces of `order` went from `before` to `now`.
    void add(const std::string& order, const schedule::PieceCounts& before, const schedule::PieceCounts& now);
    /// Adds what was gathered to the tables. Call inside Database::write().
    void save(const Database& database) const;

private:
    /// By order, then by state.
    std::map<std::string, std::map<std::string, std::int64_t>> changes_;
};

/// Writes what changed of one mark.
void saveCounts(const Database& database, const std::string& order, const std::string& mark,
                const schedule::PieceCounts& before, const schedule::PieceCounts& now);

/// Appends an event known to be new and to follow from `before`. Call inside Database::write().
void append(const Database& database, const LoggedEvent& event, const schedule::PieceCounts& before,
            const schedule::PieceCounts& now, const Stamp& stamp);

/// Counts out of rows of state and count.
[[nodiscard]] schedule::PieceCounts countsFrom(Rows rows);

} // namespace lapwright::storage
