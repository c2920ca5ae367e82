#pragma once

#include "fold/check.h"
#include "fold/retrace.h"

#include <cmath>
#include <string>
#include <vector>

namespace lapwright::fold {

/// Sheet lying on a face of the machine, as far as numbers go.
inline constexpr double liesOn = 0.1;

/// Folds a plan's blank again, step by step; see check.h.
class Recheck {
public:
    Recheck(const trim::Profile& profile, const trim::FlatPattern& flat, const metal::Sheet& sheet,
            const Machine& machine, const FoldPlan& plan, Length pieceLength, const Settings& settings);

    PlanCheck run(const metal::Metal& metal);

private:
    void fail(bool& flag, const FoldStep& step, const std::string& what)
    {
        flag = false;
        check_.problems.push_back("bend line " + std::to_string(step.line + 1) + ": " + what);
    }
    // Each holds one step to one demand.
    void order(const FoldStep& step, std::size_t index);
    void angles(const FoldStep& step);
    void gauge(const FoldStep& step);
    void way(const FoldStep& step);
    void sweep(const FoldStep& step);
    void leave(const FoldStep& step);
    /// Holds what the steps made to the profile.
    void finished();
    [[nodiscard]] double reach(const Standing& standing, const FoldStep& step) const;
    /// How far the section reaches back from the bend line.
    [[nodiscard]] double depth(const FoldStep& step) const;
    /// The flat part in front of the bend line, at most: up to the next line that is bent.
    [[nodiscard]] double flatInFront(const FoldStep& step) const;
    [[nodiscard]] const Solid& beam(const FoldStep& step) const;
    [[nodiscard]] const char* laidIn(const std::vector<Trace>& lying, const FoldStep& step) const;
    [[nodiscard]] bool beamReturns(const FoldStep& step) const;
    /// Whether anything of the sheet, moved by `sheet`, is in the machine with its clamp `open`.
    [[nodiscard]] bool meets(const std::vector<Trace>& traces, Place sheet, double open, bool upBeam,
                             double give) const;
    /// The same all along a straight move of both, looked at every `spacing`.
    [[nodiscard]] bool meetsOnTheWay(const std::vector<Trace>& traces, Place from, Place to, double openFrom,
                                     double openTo, double spacing, bool upBeam, double give = 0.0) const;
    [[nodiscard]] double radiusAt(std::size_t line, double angle) const;
    /// Above the first go at a bend, 0 otherwise.
    [[nodiscard]] double standsAt(const FoldStep& step) const
    {
        return step.action == Action::FinishFold ? std::abs(standing_.angles[step.line]) : 0.0;
    }
    [[nodiscard]] double signOf(const FoldStep& step) const;
    [[nodiscard]] std::vector<Trace> formed(const FoldStep& step, double angle) const;
    [[nodiscard]] bool hem(std::size_t line) const
    {
        return flat_.lines[line].kind != trim::BendLine::Kind::Bend;
    }

    const trim::Profile& profile_;
    const trim::FlatPattern& flat_;
    const metal::Sheet& sheet_;
    const Machine& machine_;
    const FoldPlan& plan_;
    Length pieceLength_;
    const Settings& settings_;
    Solid bed_, clamp_, upBeam_, downBeam_;
    Standing standing_;
    std::vector<double> asSet_;
    std::vector<double> finishedRadii_;
    std::vector<bool> preBent_;
    std::vector<bool> partly_;
    PlanCheck check_;
};

} // namespace lapwright::fold
