#pragma once

#include "measure/length.h"
#include "schedule/load.h"
#include "site/job.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

/// What the shop keeps beside orders and pieces: its stock, its cut plans, its loads and receipts.
namespace lapwright::storage {

/// The stock document as it stands now; nothing before the first one was given.
[[nodiscard]] std::optional<std::string> stockDocument(const Database& database);
void saveStockDocument(const Database& database, const std::string& document);

/// The floor document (lapwright/floor) and the schedule last made (lapwright/schedule); nothing before the
/// first.
[[nodiscard]] std::optional<std::string> floorDocument(const Database& database);
void saveFloorDocument(const Database& database, const std::string& document);
[[nodiscard]] std::optional<std::string> scheduleDocument(const Database& database);
void saveScheduleDocument(const Database& database, const std::string& document);

/// The shop's own rates (lapwright/rates); nothing before they were given.
[[nodiscard]] std::optional<std::string> ratesDocument(const Database& database);
void saveRatesDocument(const Database& database, const std::string& document);

/// So many pieces of one mark that a plan cuts.
struct PlannedPiece {
    std::string order;
    std::string mark;
    std::int64_t count = 1;

    friend bool operator==(const PlannedPiece&, const PlannedPiece&) = default;
};

struct StoredPlan {
    std::string id;
    site::Material material;
    std::string document; ///< lapwright/cut-plan; blank keys are "order/mark"
    std::vector<PlannedPiece> pieces = {};
    /// Square metres of metal taken, of blanks in it, of remnants kept: for reports of yield.
    double stockArea = 0.0;
    double blankArea = 0.0;
    double remnantArea = 0.0;
};

/// Puts `plans` in place of every plan that is not yet cut. Throws StorageFailure where sheets of one of
/// those are ticked as cut: they would be cut twice. Where `stands`, asked in the same write, says that what
/// they were made from is another by now, changes nothing and gives false.
bool replacePlans(const Database& database, const std::vector<StoredPlan>& plans, const Stamp& stamp,
                  const std::function<bool()>& stands = {});
/// The plans waiting to be cut, in the order they were made.
[[nodiscard]] std::vector<StoredPlan> waitingPlans(const Database& database);
/// The plan of this id if it waits to be cut.
[[nodiscard]] std::optional<StoredPlan> waitingPlan(const Database& database, const std::string& plan);
/// The plan is cut and waits no longer. False if it does not wait: another station was first, or it is taken
/// back. Call inside Database::write().
[[nodiscard]] bool markCut(const Database& database, const std::string& plan, const Stamp& stamp);
/// The same where only part of it was cut: its pieces and areas are then those of `part`. Call inside
/// Database::write().
[[nodiscard]] bool markPartCut(const Database& database, const StoredPlan& part, const Stamp& stamp);

/// A person says that all sheets of one pattern of a plan are cut, or that they are not after all; who said
/// so first is kept. False if the plan does not wait to be cut.
[[nodiscard]] bool tickPattern(const Database& database, const std::string& plan, std::size_t pattern,
                               bool cut, const Stamp& stamp);
/// The same of patterns that are being cut. Call inside Database::write().
void tickPatterns(const Database& database, const std::string& plan, const std::set<std::size_t>& patterns,
                  const Stamp& stamp);
/// The patterns that are ticked, of every plan that waits, and who ticked each; nobody where that was before
/// schema 5.
[[nodiscard]] std::map<std::string, std::map<std::size_t, Stamp>> tickedPatterns(const Database& database);

/// Waiting plans that cut pieces of the order, or of that one mark of it, wait no longer. True if there was
/// one. Call inside Database::write(). Throws StorageFailure if sheets of one are ticked as cut: they have to
/// count as cut first.
bool takeBackPlans(const Database& database, const std::string& order,
                   const std::optional<std::string>& mark = std::nullopt);

/// Which pieces of which orders a plan cuts, by order.
[[nodiscard]] std::vector<PlannedPiece> piecesOfPlan(const Database& database, const std::string& plan);

/// What happened to one item of stock.
struct StockEvent {
    std::string key;
    std::string kind; ///< "given", "taken", "kept", "corrected", "gone"
    std::int64_t count = 0;
    Length length;    ///< of a coil: how much of it
    std::string plan; ///< that took or left it; empty for a person's
    std::string note;
};

/// Call inside Database::write().
void logStock(const Database& database, const StockEvent& event, const Stamp& stamp);

/// What lists show of a load.
struct LoadSummary {
    std::string truck;
    schedule::LoadTotals totals;
};

/// Keeps a load; false if one of this id is there already.
[[nodiscard]] bool saveLoad(const Database& database, const std::string& id, const std::string& document,
                            const Stamp& stamp, const LoadSummary& summary = {});
[[nodiscard]] std::optional<std::string> loadDocument(const Database& database, const std::string& id);
[[nodiscard]] std::vector<std::string> loadDocuments(const Database& database);

/// Keeps a receipt; false if one of this id is there already.
[[nodiscard]] bool saveReceipt(const Database& database, const std::string& id, const std::string& load,
                               const std::string& document, const Stamp& stamp);

/// The order as this shop derives it, at the revision that counts.
[[nodiscard]] std::optional<std::string> derivedOrder(const Database& database, const std::string& order);
/// What tells the text of derivedOrder() from every other: the hash of its document and when it came in.
/// Nothing if no such order is here.
[[nodiscard]] std::optional<std::string> derivedIdentity(const Database& database, const std::string& order);
/// The revision of the order that counts; nothing if no such order is here.
[[nodiscard]] std::optional<std::int64_t> currentRevision(const Database& database, const std::string& order);

} // namespace lapwright::storage
