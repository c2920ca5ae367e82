#include "documents/compare.h"

#include "documents/differences.h"

#include <utility>

namespace lapwright::documents {

rules::Findings compareDerived(const pieces::Order& received, const pieces::Order& derived)
{
    rules::Findings findings;
    const auto warn = [&findings](const std::string& aspect, std::string place, Phrase statement) {
        findings.push_back({rules::Weight::Warns,
                            "documents.derived." + aspect,
                            std::move(place),
                            std::move(statement),
                            {},
                            std::nullopt});
    };
    PieceDifferences found = comparePieces(received, derived);
    for (Difference& one : found.changed)
        warn(one.aspect, std::move(one.place),
             {"{what}: the order says {claimed}, the runs say {derived}",
              {{"what", std::move(one.what)},
               {"claimed", std::move(one.first)},
               {"derived", std::move(one.second)}}});
    for (const std::string& mark : found.onlyInSecond)
        warn("missing", "mark " + mark, {"follows from the runs and is not in the order; it is made", {}});
    for (const std::string& mark : found.onlyInFirst)
        warn("extra", "mark " + mark,
             {"is in the order and does not follow from the runs; it is not made", {}});
    return findings;
}

} // namespace lapwright::documents
