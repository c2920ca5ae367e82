#pragma once

#include "cutting/plan.h"
#include "schedule/civil.h"
#include "schedule/stock.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::schedule {

/// Pieces of one mark that are still to be cut.
struct OpenPiece {
    std::string order; ///< UUID
    std::string job;   ///< its name, for people
    std::string mark;
    site::Material material;
    Length girth;
    Length length;
    std::int64_t count = 1;
    std::optional<Date> wantedBy;
    int priority = 0;  ///< the higher goes first among what is due together
    bool held = false; ///< a person keeps it out of every batch for now

    friend bool operator==(const OpenPiece&, const OpenPiece&) = default;
};

/// One mark in a batch.
struct BatchLine {
    OpenPiece piece;
    int dueClass = 0; ///< 0 is due first; what is wanted by no date comes last

    friend bool operator==(const BatchLine&, const BatchLine&) = default;
};

/// What a batch does for one order.
struct ServedOrder {
    std::string order;
    std::string job;
    std::optional<Date> wantedBy;
    std::int64_t pieces = 0;

    friend bool operator==(const ServedOrder&, const ServedOrder&) = default;
};

/// Blanks of one metal, gauge and colour, from any number of orders, that are cut together.
struct Batch {
    site::Material material;
    std::optional<Length> coilWidth; ///< the only coil width it is cut from, where that matters
    std::optional<Date> due;         ///< the earliest of its orders
    int priority = 0;                ///< the highest of its pieces
    std::int64_t pieces = 0;
    std::vector<BatchLine> lines;
    std::vector<ServedOrder> orders; ///< what is due first, first

    friend bool operator==(const Batch&, const Batch&) = default;
};

struct Batches {
    std::vector<Batch> batches; ///< due first, then by priority, then by material
    std::vector<OpenPiece> held;
};

/// Every piece in exactly one batch or held. Due classes count the wanted dates of a batch upwards. With
/// `coilWidthsApart`, a material that stands only in coils of several widths (remnants aside) is batched by
/// the narrowest coil whose usable width takes the girth; what is wider than all goes with the widest, where
/// the cut plan refuses it by name.
[[nodiscard]] Batches batchesOf(const std::vector<OpenPiece>& pieces, const ShopStock& stock,
                                bool coilWidthsApart = false);

/// The stock a batch may be cut from: what is of its material; of coils only those of its width where it has
/// one, and remnants with the narrowest of these widths only, so that nothing is in two batches.
[[nodiscard]] std::vector<cutting::Stock> stockFor(const Batch& batch, const ShopStock& stock);

/// What names a blank of a batch in its cutting problem: "order/mark".
[[nodiscard]] std::string blankKey(const std::string& order, const std::string& mark);
/// The order named so.
[[nodiscard]] std::string orderOfBlank(const std::string& blankKey);
/// Its other half, the mark.
[[nodiscard]] std::string markOfBlank(const std::string& blankKey);

} // namespace lapwright::schedule
