#pragma once

#include "documents/job.h"
#include "measure/writing.h"

#include <cmath>
#include <string>
#include <utility>
#include <vector>

/// A job of many invented houses for the benchmarks: no two neighbours alike, trims of the shipped library.
namespace invented {

using namespace lapwright;

inline constexpr std::size_t runsPerHouse = 8;

inline site::Measured taped(Length length)
{
    return {length, writeExact(length, LengthUnit::FeetInches)};
}

inline site::Run trimmed(std::string id, site::RunKind kind, const char* trim, Length length, Slope slope)
{
    site::Run run;
    run.id = std::move(id);
    run.kind = kind;
    run.lengths = {taped(length)};
    run.slope = slope;
    site::TrimChoice choice;
    choice.trim = trim;
    run.trims = {choice};
    return run;
}

inline Length toSixteenths(double millimetres)
{
    return Length::sixtyFourths(4 * std::llround(millimetres / 1.5875));
}

/// Four eaves around, a ridge, a valley, and two rakes with the level runs under them.
inline void addHouse(std::size_t number, site::Job& job)
{
    const std::string name = "H" + std::to_string(number);
    const Slope slope = Slope::twelfths(static_cast<std::int64_t>(3 + number % 8));
    const double rise = static_cast<double>(3 + number % 8) / 12.0;
    const auto sixteenths = [](std::size_t count) {
        return Length::sixtyFourths(4 * static_cast<std::int64_t>(count));
    };
    const Length front = Length::feet(20) + sixteenths(number * 7 % 4'999);
    const Length side = Length::feet(16) + sixteenths(number * 11 % 2'999);
    site::Chain eaves;
    eaves.id = name + " eaves";
    eaves.closed = true;
    for (int i = 0; i < 4; ++i) {
        site::Run run = trimmed(name + "E" + std::to_string(i + 1), site::RunKind::Eave, "eave-drip-edge",
                                i % 2 == 0 ? front : side, slope);
        run.start = run.end = site::EndKind::Mitre;
        eaves.runs.push_back(std::move(run));
        eaves.corners.emplace_back(site::SquareOutside());
    }
    job.chains.push_back(std::move(eaves));

    const Length level = Length::feet(8) + sixteenths(number * 13 % 997);
    const double levelMillimetres = static_cast<double>(level.inNanometres()) / 1e6;
    site::Run ridge = trimmed(name + "T1", site::RunKind::Ridge, "ridge-cap", front - side / 2, slope);
    ridge.otherSlope = slope;
    site::Run valley = trimmed(name + "V1", site::RunKind::Valley, "open-valley-with-centre-rib",
                               toSixteenths(levelMillimetres * std::sqrt(2.0 + rise * rise)), slope);
    valley.otherSlope = slope;
    valley.levelRun = taped(level);
    std::vector<site::Run> alone{std::move(ridge), std::move(valley)};
    for (int i = 1; i <= 2; ++i) {
        alone.push_back(trimmed(name + "R" + std::to_string(i), site::RunKind::Rake, "rake-drip-edge",
                                toSixteenths(levelMillimetres * std::sqrt(1.0 + rise * rise)), slope));
        alone.back().levelRun = taped(level);
    }
    for (site::Run& run : alone) {
        site::Chain chain;
        chain.id = run.id;
        chain.runs = {std::move(run)};
        job.chains.push_back(std::move(chain));
    }
}

/// At least `runs` runs, whole houses.
inline documents::JobDocument houses(std::size_t runs)
{
    documents::JobDocument document;
    site::Job& job = document.value;
    job.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e21";
    job.name = "Invented houses";
    job.material = {"galvanised-steel", "24 ga", "Slate"};
    job.ruleSets = {"irc-flashing"};
    for (std::size_t made = 0; made < runs; made += runsPerHouse)
        addHouse(made / runsPerHouse + 1, job);
    return document;
}

} // namespace invented
