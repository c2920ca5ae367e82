#pragma once

#include "acts/stuff.h"
#include "fold/planner.h"
#include "pieces/order.h"
#include "pieces/takeoff.h"
#include "trim/girth.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::acts {

/// How the pieces of one profile of an order are folded: on the machine of the shop that makes it with the
/// least handling, or why none can.
struct FoldProgram {
    Stuff stuff;
    trim::FlatPattern flat;
    std::size_t machine = 0; ///< index in FoldPrograms::machines()
    /// Blank length of the longest piece.
    Length longest;
    fold::Outcome outcome;

    [[nodiscard]] const fold::FoldPlan* plan() const { return std::get_if<fold::FoldPlan>(&outcome); }
};

/// What a plan's independent check finds wrong with it, in words; nothing where it holds. Errors as
/// fold::checkPlan.
[[nodiscard]] Result<std::vector<std::string>> faultsOf(const trim::Profile& profile,
                                                        const trim::FlatPattern& flat, const Stuff& stuff,
                                                        const fold::Machine& machine,
                                                        const fold::FoldPlan& plan, Length pieceLength);

/// Makes fold programs on the shop's machines.
class FoldPrograms {
public:
    /// `machines` are the ids of those that stand in the shop; none: all that are known. Errors: a library
    /// file that cannot be right, a name no machine has.
    [[nodiscard]] static Result<FoldPrograms> forShop(const std::vector<std::string>& machines,
                                                      const std::vector<std::string>& libraryFolders);

    /// Precondition: `profile` < order.profiles.size(). Nothing if no piece of the order has it. Errors: a
    /// metal or gauge that is not known, a profile that cannot be unfolded, a plan that its own check does
    /// not pass.
    [[nodiscard]] Result<std::optional<FoldProgram>> of(const pieces::Order& order,
                                                        std::size_t profile) const;

    /// The same on every machine that can make it, the least handling first; none if none can, or no piece of
    /// the order has it.
    [[nodiscard]] Result<std::vector<FoldProgram>> every(const pieces::Order& order,
                                                         std::size_t profile) const;

    [[nodiscard]] const std::vector<fold::Machine>& machines() const { return machines_; }

private:
    FoldPrograms(pieces::Catalogue catalogue, std::vector<fold::Machine> machines)
        : catalogue_(std::move(catalogue)), machines_(std::move(machines))
    {
    }

    /// On every machine, those that can make it first. Checked.
    [[nodiscard]] Result<std::vector<FoldProgram>> onAll(const pieces::Order& order,
                                                         std::size_t profile) const;

    pieces::Catalogue catalogue_;
    std::vector<fold::Machine> machines_;
};

/// "Larkfield House, P1 Eave drip edge": what a message about a profile of an order begins with.
[[nodiscard]] std::string nameOf(const pieces::Order& order, std::size_t profile);

} // namespace lapwright::acts
