#pragma once

#include "cutting/problem.h"

#include <optional>
#include <string>
#include <vector>

/// Published instances and invented batches, for tests and benchmarks. They lie in the folder that the
/// environment variable LAPWRIGHT_CUTTING_DATA names: atp (Alvarez-Valdes, Parajón, Tamarit 2002), silva
/// (Silva, Alvelos, Valério de Carvalho 2010), cintra (Cintra, Miyazawa, Wakabayashi, Xavier 2008),
/// trim-batches, and the tables of references beside them.
namespace lapwright::cutting::instances {

/// The folder, where the variable names one with the tables in it.
[[nodiscard]] std::optional<std::string> folder();

/// What is known of an instance of two stages: H or V is the direction of the first cut.
struct TwoStage {
    std::string name;
    bool horizontal = false;
    PatternClass patterns = PatternClass::NonExact;
    std::int64_t best = 0, bound = 0;
};
[[nodiscard]] std::vector<TwoStage> twoStages();
[[nodiscard]] std::optional<Problem> problemOf(const TwoStage& instance);

/// Several kinds of sheets with costs.
struct SeveralSheets {
    std::string name;
    std::int64_t best = 0, bound = 0;
};
[[nodiscard]] std::vector<SeveralSheets> severalSheets();
[[nodiscard]] std::optional<Problem> problemOf(const SeveralSheets& instance);

struct TrimBatch {
    int pieces = 0;
    PatternClass patterns = PatternClass::NonExact;
    std::int64_t best = 0, bound = 0;
};
[[nodiscard]] std::vector<TrimBatch> trimBatches();
/// From sheets, or from one coil whose levels are at most as long as the sheets.
[[nodiscard]] std::optional<Problem> trimBatch(int pieces, PatternClass patterns, StockKind kind);
/// From two kinds of sheets and remnants.
[[nodiscard]] std::optional<Problem> trimBatchOfSeveralStocks(int pieces);

} // namespace lapwright::cutting::instances
