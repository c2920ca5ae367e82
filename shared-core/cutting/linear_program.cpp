#include "cutting/linear_program.h"

#include <coin/ClpEventHandler.hpp>
#include <coin/ClpSimplex.hpp>

#include <algorithm>
#include <limits>

namespace lapwright::cutting {

namespace {

class Stopper : public ClpEventHandler {
public:
    explicit Stopper(std::function<bool()> stop) : stop_(std::move(stop)) {}

    int event(Event which) override
    {
        constexpr int between = 64;
        if (which != endOfIteration || ++count_ % between != 0 || !stop_())
            return -1;
        return 5; // Clp's status for "stopped by event handler"
    }
    [[nodiscard]] ClpEventHandler* clone() const override { return new Stopper(*this); }

private:
    std::function<bool()> stop_;
    int count_ = 0;
};

} // namespace

struct LinearProgram::Model {
    ClpSimplex clp;
    bool rowsMoved = false;
    std::vector<int> starts{0}, rows;
    std::vector<double> entries, costs;
};

LinearProgram::LinearProgram(const std::vector<double>& leastOfRows, std::function<bool()> stop)
    : model_(std::make_unique<Model>())
{
    ClpSimplex& clp = model_->clp;
    if (stop) {
        const Stopper stopper(std::move(stop));
        clp.passInEventHandler(&stopper);
    }
    clp.setLogLevel(0);
    clp.scaling(0);
    clp.setPerturbation(100);
    clp.resize(static_cast<int>(leastOfRows.size()), 0);
    for (std::size_t row = 0; row < leastOfRows.size(); ++row)
        clp.setRowBounds(static_cast<int>(row), leastOfRows[row], std::numeric_limits<double>::max());
}

LinearProgram::~LinearProgram() = default;

void LinearProgram::addColumn(double cost, const std::vector<std::pair<int, double>>& entries)
{
    // Kept until the next solve: Clp takes columns far faster in batches.
    for (const auto& [row, value] : entries) {
        model_->rows.push_back(row);
        model_->entries.push_back(value);
    }
    model_->starts.push_back(static_cast<int>(model_->rows.size()));
    model_->costs.push_back(cost);
}

void LinearProgram::setLeast(int row, double least)
{
    model_->clp.setRowLower(row, least);
    model_->rowsMoved = true;
}

bool LinearProgram::solve()
{
    Model& model = *model_;
    const bool columnsCame = !model.costs.empty();
    if (columnsCame) {
        const std::vector<double> lower(model.costs.size(), 0.0);
        const std::vector<double> upper(model.costs.size(), std::numeric_limits<double>::max());
        model.clp.addColumns(static_cast<int>(model.costs.size()), lower.data(), upper.data(),
                             model.costs.data(), model.starts.data(), model.rows.data(),
                             model.entries.data());
        model.starts.assign(1, 0);
        model.rows.clear();
        model.entries.clear();
        model.costs.clear();
    }
    if (model.rowsMoved && !columnsCame)
        model.clp.dual();
    else
        model.clp.primal(1);
    model.rowsMoved = false;
    return model.clp.status() == 0;
}

double LinearProgram::objective() const
{
    return model_->clp.objectiveValue();
}

std::int64_t LinearProgram::iterations() const
{
    return model_->clp.numberIterations();
}

std::vector<double> LinearProgram::duals() const
{
    std::vector<double> duals(model_->clp.dualRowSolution(),
                              model_->clp.dualRowSolution() + model_->clp.numberRows());
    for (double& dual : duals)
        dual = std::max(0.0, dual);
    return duals;
}

std::vector<double> LinearProgram::values() const
{
    std::vector<double> values(model_->clp.primalColumnSolution(),
                               model_->clp.primalColumnSolution() + model_->clp.numberColumns());
    for (double& value : values)
        value = std::max(0.0, value);
    return values;
}

} // namespace lapwright::cutting
