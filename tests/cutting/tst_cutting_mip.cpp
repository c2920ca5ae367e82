// Guards: on one-dimensional problems of middle size the bars are as few as an independent mixed-integer
// program over all patterns proves, and the bound is never above that.
#include "cutting/one_dimension.h"

#include <coin/CbcModel.hpp>
#include <coin/OsiClpSolverInterface.hpp>

#include <QtTest>

#include <map>
#include <random>

using namespace lapwright::cutting;

namespace {

/// Every pattern that takes no further item.
void maximalPatterns(const BarProblem& problem, std::size_t item, int left, std::vector<int>& counts,
                     std::vector<std::vector<int>>& patterns)
{
    if (item == problem.sizes.size()) {
        const int smallest = problem.sizes.front();
        if (left < smallest)
            patterns.push_back(counts);
        return;
    }
    // Largest first: what is left in the end is compared with the smallest size.
    const std::size_t at = problem.sizes.size() - 1 - item;
    for (int count = left / problem.sizes[at]; count >= 0; --count) {
        counts[at] = count;
        maximalPatterns(problem, item + 1, left - count * problem.sizes[at], counts, patterns);
    }
    counts[at] = 0;
}

/// Fewest bars by Cbc; none where it does not finish.
std::optional<int> fewestByMip(const BarProblem& problem)
{
    std::vector<std::vector<int>> patterns;
    std::vector<int> counts(problem.sizes.size(), 0);
    maximalPatterns(problem, 0, problem.capacity, counts, patterns);
    CoinPackedMatrix matrix(true, 0.0, 0.0);
    matrix.setDimensions(static_cast<int>(problem.sizes.size()), 0);
    for (const std::vector<int>& pattern : patterns) {
        CoinPackedVector column;
        for (std::size_t item = 0; item < pattern.size(); ++item)
            if (pattern[item] > 0)
                column.insert(static_cast<int>(item), pattern[item]);
        matrix.appendCol(column);
    }
    const auto columns = static_cast<std::size_t>(matrix.getNumCols());
    const std::vector<double> zero(columns, 0.0), many(columns, 1e6), one(columns, 1.0);
    const std::vector<double> least(problem.demands.begin(), problem.demands.end());
    const std::vector<double> most(problem.sizes.size(), COIN_DBL_MAX);
    OsiClpSolverInterface solver;
    solver.messageHandler()->setLogLevel(0);
    solver.loadProblem(matrix, zero.data(), many.data(), one.data(), least.data(), most.data());
    for (int column = 0; column < matrix.getNumCols(); ++column)
        solver.setInteger(column);
    CbcModel model(solver);
    model.setLogLevel(0);
    model.setMaximumNodes(20'000);
    model.branchAndBound();
    if (!model.isProvenOptimal())
        return std::nullopt;
    return static_cast<int>(std::lround(model.getObjValue()));
}

BarProblem middleProblem(std::mt19937& random)
{
    BarProblem problem;
    problem.capacity = problem.mostPieces = 200 + static_cast<int>(random() % 400);
    std::map<int, int> counts;
    const unsigned kinds = 8 + random() % 8;
    for (unsigned kind = 0; kind < kinds; ++kind) {
        const int size =
            problem.capacity / 6 + static_cast<int>(random() % static_cast<unsigned>(problem.capacity / 2));
        counts[size] += 1 + static_cast<int>(random() % 25);
    }
    for (const auto& [size, count] : counts) {
        problem.sizes.push_back(size);
        problem.demands.push_back(count);
    }
    return problem;
}

} // namespace

class CuttingMipTest : public QObject {
    Q_OBJECT
private slots:
    void barsAreAsFewAsTheMipProves();
};

void CuttingMipTest::barsAreAsFewAsTheMipProves()
{
    // LAPWRIGHT_CUTTING_MIP_CASES: how many; the full run is 500.
    bool given = false;
    const int wanted = qEnvironmentVariableIntValue("LAPWRIGHT_CUTTING_MIP_CASES", &given);
    const int cases = given ? wanted : 40;
    std::mt19937 random(29);
    int compared = 0;
    for (int round = 0; round < cases; ++round) {
        const BarProblem problem = middleProblem(random);
        const std::optional<int> least = fewestByMip(problem);
        if (!least)
            continue;
        ++compared;
        BarSearch search;
        search.attempts = 24;
        const BarPlan plan = cutBars(problem, search);
        const std::string which = "case " + std::to_string(round);
        QVERIFY2(plan.bound <= *least, which.c_str());
        QVERIFY2(plan.bars == *least, (which + ": " + std::to_string(plan.bars)).c_str());
        for (std::size_t item = 0; item < problem.sizes.size(); ++item) {
            std::int64_t cut = 0;
            for (const BarPattern& pattern : plan.patterns)
                for (const auto& [kind, count] : pattern.pieces)
                    cut += std::cmp_equal(kind, item) ? pattern.count * count : 0;
            QCOMPARE(cut, problem.demands[item]);
        }
    }
    qInfo("%d cases compared of %d", compared, cases);
    QVERIFY(compared > cases * 9 / 10);
}

QTEST_APPLESS_MAIN(CuttingMipTest)
#include "tst_cutting_mip.moc"
