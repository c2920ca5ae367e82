#pragma once

#include "cutting/one_dimension.h"

#include <algorithm>
#include <map>

namespace lapwright::cutting {

/// Item and how many of it, by ascending item.
using Pieces = std::vector<std::pair<int, int>>;

/// Bounded knapsack over all capacities with the choices kept, layered by pieces only where that limit can
/// bind.
template <class Value>
class Knapsack {
public:
    explicit Knapsack(const BarProblem& problem) : problem_(problem)
    {
        const int smallest = *std::ranges::min_element(problem.sizes);
        layered_ = problem.mostPieces < problem.capacity / smallest;
        cells_ = static_cast<std::size_t>(problem.capacity) + 1;
    }

    void fill(const std::vector<Value>& values)
    {
        if (layered_)
            fillLayers(values);
        else
            fillPasses(values);
    }

    /// Greatest value within `capacity`; with `spare` one piece fewer than allowed.
    [[nodiscard]] Value best(int capacity, bool spare) const
    {
        return layered_ ? layers_[layer(spare)][static_cast<std::size_t>(capacity)]
                        : best_[static_cast<std::size_t>(capacity)];
    }

    [[nodiscard]] Pieces pieces(int capacity, bool spare) const
    {
        std::map<int, int> counts;
        if (layered_) {
            std::size_t level = layer(spare);
            auto at = static_cast<std::size_t>(capacity);
            while (level > 0) {
                const int item = layerChoices_[level][at];
                if (item >= 0) {
                    ++counts[item];
                    at -= static_cast<std::size_t>(problem_.sizes[static_cast<std::size_t>(item)]);
                }
                --level;
            }
            return {counts.begin(), counts.end()};
        }
        auto at = static_cast<std::size_t>(capacity);
        for (std::size_t pass = passes_.size(); pass-- > 0;) {
            const Pass& entry = passes_[pass];
            const auto step = static_cast<std::size_t>(problem_.sizes[static_cast<std::size_t>(entry.item)]) *
                              static_cast<std::size_t>(entry.bundle);
            while (at >= step && taken_[pass * cells_ + at]) {
                counts[entry.item] += entry.bundle;
                at -= step;
                if (!entry.repeats)
                    break;
            }
        }
        return {counts.begin(), counts.end()};
    }

private:
    struct Pass {
        int item, bundle;
        bool repeats;
    };

    [[nodiscard]] std::size_t layer(bool spare) const
    {
        return static_cast<std::size_t>(problem_.mostPieces) - (spare ? 1 : 0);
    }

    void fillPasses(const std::vector<Value>& values)
    {
        passes_.clear();
        best_.assign(cells_, Value());
        for (std::size_t item = 0; item < values.size(); ++item) {
            if (!(values[item] > Value()))
                continue;
            const int size = problem_.sizes[item];
            const std::int64_t fit = problem_.capacity / size;
            if (problem_.demands[item] >= fit) {
                passes_.push_back({static_cast<int>(item), 1, true});
                continue;
            }
            std::int64_t left = problem_.demands[item];
            for (std::int64_t part = 1; left > 0; part *= 2) {
                passes_.push_back({static_cast<int>(item), static_cast<int>(std::min(part, left)), false});
                left -= std::min(part, left);
            }
        }
        taken_.assign(passes_.size() * cells_, 0);
        for (std::size_t pass = 0; pass < passes_.size(); ++pass) {
            const Pass& entry = passes_[pass];
            const auto item = static_cast<std::size_t>(entry.item);
            const auto step =
                static_cast<std::size_t>(problem_.sizes[item]) * static_cast<std::size_t>(entry.bundle);
            const Value value = values[item] * static_cast<Value>(entry.bundle);
            char* taken = taken_.data() + pass * cells_;
            const auto look = [&](std::size_t at) {
                const Value with = best_[at - step] + value;
                const bool better = with > best_[at];
                best_[at] = better ? with : best_[at];
                taken[at] = better ? 1 : 0;
            };
            if (entry.repeats)
                for (std::size_t at = step; at < cells_; ++at)
                    look(at);
            else
                for (std::size_t at = cells_; at-- > step;)
                    look(at);
        }
    }

    void fillLayers(const std::vector<Value>& values)
    {
        const auto most = static_cast<std::size_t>(problem_.mostPieces);
        layers_.assign(most + 1, std::vector<Value>(cells_, Value()));
        layerChoices_.assign(most + 1, std::vector<int>(cells_, -1));
        for (std::size_t level = 1; level <= most; ++level) {
            layers_[level] = layers_[level - 1];
            for (std::size_t item = 0; item < values.size(); ++item) {
                if (!(values[item] > Value()))
                    continue;
                for (auto at = static_cast<std::size_t>(problem_.sizes[item]); at < cells_; ++at) {
                    const Value with =
                        layers_[level - 1][at - static_cast<std::size_t>(problem_.sizes[item])] +
                        values[item];
                    if (with > layers_[level][at]) {
                        layers_[level][at] = with;
                        layerChoices_[level][at] = static_cast<int>(item);
                    }
                }
            }
        }
    }

    const BarProblem& problem_;
    bool layered_ = false;
    std::size_t cells_ = 0;
    std::vector<Value> best_;
    std::vector<Pass> passes_;
    std::vector<char> taken_;
    std::vector<std::vector<Value>> layers_;
    std::vector<std::vector<int>> layerChoices_;
};

} // namespace lapwright::cutting
