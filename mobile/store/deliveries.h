#pragma once

#include "schedule/load.h"
#include "schedule/receipt.h"
#include "store/connection.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Loads that came, and what the crew lead found. Events are only ever added; one that no receipt has carried
/// away yet may be taken back.
namespace lapwright::store {

struct LoadLine {
    std::string id;
    std::string truck;
    std::string madeAt;
};

/// Newest first.
[[nodiscard]] std::vector<LoadLine> loads(const Connection& connection);
/// Keeps a load list word for word, as it was signed. False if it is here already, whatever its text: a load
/// does not change once it is made.
bool keepLoad(const Connection& connection, const schedule::Load& load, const std::string& document,
              const std::string& at);
[[nodiscard]] std::optional<std::string> loadText(const Connection& connection, const std::string& id);
/// A load list that is better signed, in place of the one of this load that is kept.
void replaceLoad(const Connection& connection, const schedule::Load& load, const std::string& document);
/// A person said that this load counts, whatever its signature.
void acceptLoad(const Connection& connection, const std::string& id, const std::string& at);
[[nodiscard]] bool isAccepted(const Connection& connection, const std::string& id);

/// Events that stand, in the order they were made.
[[nodiscard]] std::vector<schedule::ReceiptEvent> eventsOf(const Connection& connection,
                                                           const std::string& load);
/// Adds events in one commit; those whose id is here already change nothing. How many were new.
std::int64_t addEvents(const Connection& connection, const std::string& load,
                       const std::vector<schedule::ReceiptEvent>& events);
/// Takes the last event back that stands and was not sent. Its mark; nothing if there is none.
std::optional<std::string> withdrawLast(const Connection& connection, const std::string& load);
/// Remembers that every event of the load so far left the tablet.
void markSent(const Connection& connection, const std::string& load);

} // namespace lapwright::store
