#include "documents/cut.h"

#include "documents/describe_cutting.h"

namespace lapwright::documents {

namespace {

template <class V, class T>
void describeRules(V& fields, T& rules)
{
    fields("order", rules.order, cutting::CutOrder::StripsFirst);
    fields("patterns", rules.patterns, cutting::PatternClass::NonExact);
    fields("kerf_mm", rules.kerf, Length());
    fields("edge_trim", rules.edgeTrim, cutting::EdgeTrim());
    fields("least_strip_width_mm", rules.leastStripWidth, Length());
    fields("least_remnant_width_mm", rules.leastRemnantWidth, Length());
    fields("least_remnant_length_mm", rules.leastRemnantLength, Length());
    smallNumber(fields, "remnant_discount_percent", rules.remnantDiscountPercent, 40);
    smallNumber(fields, "remnant_credit_percent", rules.remnantCreditPercent, 0);
}

} // namespace

void describe(ReadFields& fields, cutting::ShopRules& rules)
{
    describeRules(fields, rules);
    std::optional<std::int64_t> most;
    fields("most_strips", most);
    rules.mostStrips.reset();
    if (most)
        rules.mostStrips = static_cast<int>(*most);
}

void describe(WriteFields& fields, const cutting::ShopRules& rules)
{
    describeRules(fields, rules);
    std::optional<std::int64_t> most;
    if (rules.mostStrips)
        most = *rules.mostStrips;
    fields("most_strips", most);
}

template <class V, Like<CutProblem> T>
void describe(V& fields, T& problem)
{
    fields("blanks", problem.blanks);
    fields("stocks", problem.stocks);
    fields("rules", problem.rules, cutting::ShopRules());
}

template <class V, Like<CutPlan> T>
void describe(V& fields, T& plan)
{
    fields("problem", plan.problem);
    fields("plan", plan.plan);
}

namespace {

void checkIndex(std::size_t index, std::size_t size, const std::string& place, const char* what,
                Errors& errors)
{
    constexpr std::size_t most = 20;
    if (index >= size && errors.size() < most)
        errors.push_back({place, std::to_string(index),
                          std::string("the position of a ") + what + ", counted from 0; there are " +
                              std::to_string(size)});
}

void checkPlan(const CutPlan& document, Errors& errors)
{
    const std::size_t blanks = document.problem.blanks.size();
    const auto& patterns = document.plan.patterns;
    for (std::size_t p = 0; p < patterns.size(); ++p) {
        const std::string place = "/plan/patterns/" + std::to_string(p);
        checkIndex(patterns[p].stock, document.problem.stocks.size(), place + "/stock", "stock", errors);
        for (std::size_t s = 0; s < patterns[p].strips.size(); ++s)
            for (const cutting::Crosscut& crosscut : patterns[p].strips[s].crosscuts)
                checkIndex(crosscut.blank, blanks, place + "/strips/" + std::to_string(s), "blank", errors);
    }
    for (std::size_t r = 0; r < document.plan.remnants.size(); ++r) {
        const cutting::NewRemnant& remnant = document.plan.remnants[r];
        const std::string place = "/plan/remnants/" + std::to_string(r);
        checkIndex(remnant.pattern, patterns.size(), place + "/pattern", "pattern", errors);
        if (remnant.strip && remnant.pattern < patterns.size())
            checkIndex(*remnant.strip, patterns[remnant.pattern].strips.size(), place + "/strip", "strip",
                       errors);
    }
    for (std::size_t n = 0; n < document.plan.notCut.size(); ++n)
        checkIndex(document.plan.notCut[n].blank, blanks, "/plan/not_cut/" + std::to_string(n), "blank",
                   errors);
}

} // namespace

Result<Document<CutProblem>> readCutProblem(std::string_view text)
{
    return readDocument<CutProblem>(text, kinds::cutProblem, [](const CutProblem&, Errors&) {});
}

std::string writeCutProblem(const Document<CutProblem>& problem, Layout layout)
{
    return writeDocument(kinds::cutProblem, problem, layout);
}

Result<Document<CutPlan>> readCutPlan(std::string_view text)
{
    return readDocument<CutPlan>(text, kinds::cutPlan, checkPlan);
}

std::string writeCutPlan(const Document<CutPlan>& plan, Layout layout)
{
    return writeDocument(kinds::cutPlan, plan, layout);
}

cutting::Admission admit(const CutProblem& problem)
{
    cutting::ProblemBuilder builder;
    builder.rules(problem.rules);
    for (const cutting::Blank& blank : problem.blanks)
        builder.blank(blank);
    for (const cutting::Stock& stock : problem.stocks)
        builder.stock(stock);
    return builder.admit();
}

CutProblem writtenDown(const cutting::Problem& problem)
{
    return {problem.blanks(), problem.stocks(), problem.rules()};
}

} // namespace lapwright::documents
