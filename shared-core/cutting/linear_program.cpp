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
    bool columnsCame = false;
    std::vector<int> starts{0}, rows;
    std::vector<double> entries, costs;

    void takeColumns();
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

LinearProgram::Basis LinearProgram::basis() const
{
    const ClpSimplex& clp = model_->clp;
    Basis basis;
    if (!clp.statusExists())
        return basis;
    for (int column = 0; column < clp.numberColumns(); ++column)
        basis.columns.push_back(clp.getColumnStatus(column) == ClpSimplex::basic);
    for (int row = 0; row < clp.numberRows(); ++row)
        basis.rows.push_back(clp.getRowStatus(row) == ClpSimplex::basic);
    return basis;
}

void LinearProgram::startFrom(const Basis& basis)
{
    model_->takeColumns();
    ClpSimplex& clp = model_->clp;
    clp.createStatus();
    for (int column = 0; column < clp.numberColumns(); ++column)
        clp.setColumnStatus(column, basis.columns[static_cast<std::size_t>(column)]
                                        ? ClpSimplex::basic
                                        : ClpSimplex::atLowerBound);
    for (int row = 0; row < clp.numberRows(); ++row)
        clp.setRowStatus(row, basis.rows[static_cast<std::size_t>(row)] ? ClpSimplex::basic
                                                                        : ClpSimplex::atLowerBound);
    model_->columnsCame = true;
}

void LinearProgram::Model::takeColumns()
{
    if (costs.empty())
        return;
    const std::vector<double> lower(costs.size(), 0.0);
    const std::vector<double> upper(costs.size(), std::numeric_limits<double>::max());
    clp.addColumns(static_cast<int>(costs.size()), lower.data(), upper.data(), costs.data(), starts.data(),
                   rows.data(), entries.data());
    starts.assign(1, 0);
    rows.clear();
    entries.clear();
    costs.clear();
    columnsCame = true;
}

bool LinearProgram::solve()
{
    Model& model = *model_;
    model.takeColumns();
    if (model.rowsMoved && !model.columnsCame)
        model.clp.dual();
    else
        model.clp.primal(0);
    model.rowsMoved = false;
    model.columnsCame = false;
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
