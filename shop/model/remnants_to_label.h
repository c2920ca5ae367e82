#pragma once

#include "print/piece_labels.h"
#include "rows_model.h"

#include <QString>

#include <map>
#include <vector>

namespace lapwright::model {

class Shop;

/// The remnants that lie at the shear and have no label yet. They outlive the plan that left them.
class RemnantsToLabel {
public:
    /// What cutting `sheet` left, in place of what was known of it.
    void put(const QString& sheet, std::vector<print::KeptRemnant> remnants);
    /// The sheet is not cut after all.
    void drop(const QString& sheet) { bySheet_.erase(sheet); }
    /// All of them have their labels.
    void clear() { bySheet_.clear(); }

    [[nodiscard]] std::vector<print::KeptRemnant> all() const;
    /// As a person at the shear reads them: label, size, metal.
    [[nodiscard]] QList<Row> rows(const Shop& shop) const;

private:
    std::map<QString, std::vector<print::KeptRemnant>> bySheet_;
};

} // namespace lapwright::model
