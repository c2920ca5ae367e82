#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <utility>
#include <vector>

namespace lapwright::cutting {

/// minimise cost · x, rows · x >= right-hand sides, x >= 0: the only place where the search touches
/// floating-point linear algebra. One program belongs to one thread.
class LinearProgram {
public:
    /// `stop` is asked now and then during a solve; true ends it.
    explicit LinearProgram(const std::vector<double>& leastOfRows, std::function<bool()> stop = {});
    ~LinearProgram();
    LinearProgram(const LinearProgram&) = delete;
    LinearProgram& operator=(const LinearProgram&) = delete;
    LinearProgram(LinearProgram&&) = delete;
    LinearProgram& operator=(LinearProgram&&) = delete;

    void addColumn(double cost, const std::vector<std::pair<int, double>>& entries);
    void setLeast(int row, double least);
    /// Which columns and which rows' slacks are basic.
    struct Basis {
        std::vector<bool> columns, rows;
    };
    [[nodiscard]] Basis basis() const; ///< empty before the first solve
    /// Where the next solve starts; for all columns added so far.
    void startFrom(const Basis& basis);
    /// False where no x satisfies the rows, or where it was stopped.
    [[nodiscard]] bool solve();
    [[nodiscard]] double objective() const;
    /// Simplex steps of the last solve.
    [[nodiscard]] std::int64_t iterations() const;
    [[nodiscard]] std::vector<double> duals() const;  ///< one for each row, never negative
    [[nodiscard]] std::vector<double> values() const; ///< one for each column, never negative

private:
    struct Model;
    std::unique_ptr<Model> model_;
};

} // namespace lapwright::cutting
