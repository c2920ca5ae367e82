#pragma once

#include "documents/extras.h"
#include "documents/json_text.h"
#include "measure/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// What every document has in common: format and version first, then what its schema says.
namespace lapwright::documents {

/// Makes the next version of a document's members out of one version; may refuse what cannot be carried over.
using Migration = Result<Json> (*)(Json older);

/// One kind of document.
struct Kind {
    std::string_view format;     ///< "lapwright/job"
    std::int64_t version = 1;    ///< the newest version this program reads, and the one it writes
    std::string_view schemaFile; ///< "job.schema.json"
    /// The first program version that reads `version`; written into the document, so that an older program
    /// can say what is needed.
    std::string_view program;
    /// migrations[i] makes version i + 2 out of version i + 1. Size: version - 1.
    std::vector<Migration> migrations;
};

namespace kinds {
inline const Kind job{"lapwright/job", 1, "job.schema.json", "0.1.0", {}};
inline const Kind order{"lapwright/order", 1, "order.schema.json", "0.1.0", {}};
inline const Kind stock{"lapwright/stock", 1, "stock.schema.json", "0.1.0", {}};
inline const Kind machine{"lapwright/machine", 1, "machine.schema.json", "0.1.0", {}};
inline const Kind trim{"lapwright/trim", 1, "trim.schema.json", "0.1.0", {}};
inline const Kind rules{"lapwright/rules", 1, "rules.schema.json", "0.1.0", {}};
inline const Kind metal{"lapwright/metal", 1, "metal.schema.json", "0.1.0", {}};
inline const Kind cutProblem{"lapwright/cut-problem", 1, "cut-problem.schema.json", "0.1.0", {}};
inline const Kind cutPlan{"lapwright/cut-plan", 1, "cut-plan.schema.json", "0.1.0", {}};
inline const Kind load{"lapwright/load", 1, "load.schema.json", "0.1.0", {}};
inline const Kind receipt{"lapwright/receipt", 1, "receipt.schema.json", "0.1.0", {}};
inline const Kind floor{"lapwright/floor", 1, "floor.schema.json", "0.1.0", {}};
inline const Kind schedule{"lapwright/schedule", 1, "schedule.schema.json", "0.1.0", {}};
inline const Kind profile{"lapwright/profile", 1, "profile.schema.json", "0.1.0", {}};
inline const Kind rates{"lapwright/rates", 1, "rates.schema.json", "0.1.0", {}};
} // namespace kinds

/// The members of a document of this kind, at its newest version and allowed by its schema. Errors:
/// everything of parseJson; not an object; another format; a version newer than the kind's (what is expected
/// names the program that reads it) or none; what the schema does not allow.
[[nodiscard]] Result<Json> openDocument(std::string_view text, const Kind& kind, const Limits& limits = {});

/// The document, if that schema ("machine.schema.json") allows it. Errors: what it does not allow.
[[nodiscard]] Result<Json> allowedBy(std::string_view schemaFile, Json document);

/// The format a text claims to be, without reading further than its size and syntax allow: for a command that
/// takes any document. Error: not JSON, or no text member "format".
[[nodiscard]] Result<std::string> formatOf(std::string_view text, const Limits& limits = {});

/// The whole text of a document: format, version and the program it needs, then `members` and `extras`. What
/// would be too large to be read back in the readable layout is written in the canonical one.
[[nodiscard]] std::string closeDocument(const Kind& kind, const Members& members, const Extras& extras,
                                        Layout layout);

} // namespace lapwright::documents
