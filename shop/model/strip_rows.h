#pragma once

#include "documents/cut.h"
#include "measure/writing.h"
#include "rows_model.h"

#include <QList>

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::model {

/// The strips of one pattern of the plan, in the order they are cut: what each is set to, how far along it
/// each blank is cut off, what a narrower blank is trimmed to, what is left at the end. `names` is what each
/// blank of the problem is called.
[[nodiscard]] QList<Row> stripRows(const documents::CutPlan& plan, std::size_t pattern,
                                   const std::vector<std::string>& names, const Style& style);

} // namespace lapwright::model
