#pragma once

#include "cutting/plan.h"
#include "cutting/problem.h"
#include "documents/codec.h"

#include <cstdint>

/// Members of cutting problems and plans.
namespace lapwright::documents {

template <>
struct Words<cutting::StockKind> {
    using K = cutting::StockKind;
    static constexpr std::array<std::pair<K, std::string_view>, 3> all{
        {{K::Sheet, "sheet"}, {K::Coil, "coil"}, {K::Remnant, "remnant"}}};
};

template <>
struct Words<cutting::CutOrder> {
    using K = cutting::CutOrder;
    static constexpr std::array<std::pair<K, std::string_view>, 2> all{
        {{K::StripsFirst, "strips_first"}, {K::LengthsFirst, "lengths_first"}}};
};

template <>
struct Words<cutting::PatternClass> {
    using K = cutting::PatternClass;
    static constexpr std::array<std::pair<K, std::string_view>, 2> all{
        {{K::Exact, "exact"}, {K::NonExact, "non_exact"}}};
};

template <>
struct Words<cutting::Measure> {
    using K = cutting::Measure;
    static constexpr std::array<std::pair<K, std::string_view>, 3> all{
        {{K::Sheets, "sheets"}, {K::CoilLength, "coil_length"}, {K::Cost, "cost"}}};
};

template <>
struct Words<cutting::Proof> {
    using K = cutting::Proof;
    static constexpr std::array<std::pair<K, std::string_view>, 3> all{
        {{K::ProvenLeast, "proven_least"}, {K::ProvenWithinOne, "proven_within_one"}, {K::Gap, "gap"}}};
};

template <>
struct Words<cutting::Certificate::Method> {
    using K = cutting::Certificate::Method;
    static constexpr std::array<std::pair<K, std::string_view>, 4> all{
        {{K::Area, "area"},
         {K::Patterns, "patterns"},
         {K::StripsThenSheets, "strips_then_sheets"},
         {K::EveryPlan, "every_plan"}}};
};

template <>
struct Words<cutting::Ending> {
    using K = cutting::Ending;
    static constexpr std::array<std::pair<K, std::string_view>, 5> all{
        {{K::Proven, "proven"},
         {K::NothingBetterFound, "nothing_better_found"},
         {K::WorkLimit, "work_limit"},
         {K::TimeLimit, "time_limit"},
         {K::Cancelled, "cancelled"}}};
};

/// A small number whose range the schema bounds.
inline void smallNumber(ReadFields& fields, const char* name, int& value, int usual)
{
    std::int64_t wide = 0;
    fields(name, wide, std::int64_t{usual});
    value = static_cast<int>(wide);
}
inline void smallNumber(WriteFields& fields, const char* name, int value, int usual)
{
    fields(name, std::int64_t{value}, std::int64_t{usual});
}

template <class V, Like<cutting::Blank> T>
void describe(V& fields, T& blank)
{
    fields("key", blank.key);
    fields("girth_mm", blank.girth);
    fields("length_mm", blank.length);
    fields("count", blank.count);
    fields("may_turn", blank.mayTurn, false);
    smallNumber(fields, "due_class", blank.dueClass, 0);
    smallNumber(fields, "priority", blank.priority, 0);
}

template <class V, Like<cutting::Stock> T>
void describe(V& fields, T& stock)
{
    fields("key", stock.key);
    fields("kind", stock.kind);
    fields("width_mm", stock.width);
    fields("length_mm", stock.length);
    fields("count", stock.count);
    fields("cost", stock.cost);
    fields("longest_crosscut_mm", stock.longestCrosscut);
}

template <class V, Like<cutting::EdgeTrim> T>
void describe(V& fields, T& trim)
{
    fields("left_mm", trim.left, Length());
    fields("right_mm", trim.right, Length());
    fields("lead_mm", trim.lead, Length());
    fields("tail_mm", trim.tail, Length());
}

void describe(ReadFields& fields, cutting::ShopRules& rules);
void describe(WriteFields& fields, const cutting::ShopRules& rules);

template <class V, Like<cutting::Crosscut> T>
void describe(V& fields, T& crosscut)
{
    fields("blank", crosscut.blank);
    fields("count", crosscut.count);
    fields("turned", crosscut.turned, false);
}

template <class V, Like<cutting::Strip> T>
void describe(V& fields, T& strip)
{
    fields("position_mm", strip.position);
    fields("width_mm", strip.width);
    fields("crosscuts", strip.crosscuts);
    fields("rest_mm", strip.rest, Length());
}

template <class V, Like<cutting::Pattern> T>
void describe(V& fields, T& pattern)
{
    fields("stock", pattern.stock);
    fields("order", pattern.order, cutting::CutOrder::StripsFirst);
    fields("length_mm", pattern.length);
    fields("count", pattern.count);
    fields("strips", pattern.strips);
    fields("rest_mm", pattern.rest, Length());
}

template <class V, Like<cutting::NewRemnant> T>
void describe(V& fields, T& remnant)
{
    fields("label", remnant.label);
    fields("pattern", remnant.pattern);
    fields("strip", remnant.strip);
    fields("across_mm", remnant.across);
    fields("along_mm", remnant.along);
    fields("width_mm", remnant.width);
    fields("length_mm", remnant.length);
    fields("count", remnant.count);
}

template <class V, Like<cutting::Waste> T>
void describe(V& fields, T& waste)
{
    fields("stock_m2", waste.stock);
    fields("blanks_m2", waste.blanks);
    fields("edge_trim_m2", waste.edgeTrim, 0.0);
    fields("kerf_m2", waste.kerf, 0.0);
    fields("girth_trim_m2", waste.girthTrim, 0.0);
    fields("remnants_m2", waste.remnants, 0.0);
    fields("scrap_m2", waste.scrap, 0.0);
}

template <class V, Like<cutting::Certificate::Girth> T>
void describe(V& fields, T& girth)
{
    fields("width_mm", girth.width);
    fields("most_strip_value", girth.mostStripValue);
    fields("value", girth.value);
}

template <class V, Like<cutting::Certificate::LevelCount> T>
void describe(V& fields, T& count)
{
    fields("from_mm", count.from);
    fields("blank_values", count.blankValues);
    fields("value", count.value);
}

template <class V, Like<cutting::Certificate> T>
void describe(V& fields, T& certificate)
{
    fields("method", certificate.method);
    fields("patterns", certificate.patterns);
    fields("blank_values", certificate.blankValues, {});
    fields("per_cost", certificate.perCost, std::int64_t{1});
    fields("girths", certificate.girths, {});
    fields("least", certificate.least, std::int64_t{0});
    fields("level_counts", certificate.levelCounts, {});
}

template <class V, Like<cutting::Shortfall> T>
void describe(V& fields, T& shortfall)
{
    fields("blank", shortfall.blank);
    fields("count", shortfall.count);
}

template <class V, Like<cutting::SetupTrade> T>
void describe(V& fields, T& trade)
{
    fields("value", trade.value);
    fields("setups", trade.setups);
}

template <class V, Like<cutting::DueStage> T>
void describe(V& fields, T& stage)
{
    smallNumber(fields, "due_class", stage.dueClass, 0);
    fields("value", stage.value);
    fields("bound", stage.bound);
    fields("certificate", stage.certificate, cutting::Certificate());
}

/// Feasibility is not a member: the checker derives it again whenever a plan is read.
template <class V, Like<cutting::Plan> T>
void describe(V& fields, T& plan)
{
    fields("patterns", plan.patterns);
    fields("remnants", plan.remnants, {});
    fields("not_cut", plan.notCut, {});
    fields("waste", plan.waste);
    fields("measure", plan.measure);
    fields("cost_scale", plan.costScale, std::int64_t{1});
    fields("value", plan.value);
    fields("bound", plan.bound);
    fields("proof", plan.proof);
    fields("certificate", plan.certificate);
    fields("setups", plan.setups, std::int64_t{0});
    fields("setup_trades", plan.setupTrades, {});
    fields("due_stages", plan.dueStages, {});
    fields("ending", plan.ending);
    fields("work", plan.work, std::int64_t{0});
}

} // namespace lapwright::documents
