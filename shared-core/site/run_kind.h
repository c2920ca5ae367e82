#pragma once

#include "site/run.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

/// What each kind of run is called and what it asks for.
namespace lapwright::site {

/// How a run lies: level; along a roof plane's slope, so that its length is longer than its plan; or upright.
enum class Lie { Level, Sloped, Upright };

inline constexpr std::array<RunKind, 17> allRunKinds{
    RunKind::Eave,        RunKind::Rake,        RunKind::Ridge,         RunKind::Hip,
    RunKind::Valley,      RunKind::Headwall,    RunKind::Sidewall,      RunKind::SlopeChange,
    RunKind::Fascia,      RunKind::WallBase,    RunKind::OutsideCorner, RunKind::InsideCorner,
    RunKind::OpeningHead, RunKind::OpeningSill, RunKind::OpeningJamb,   RunKind::Parapet,
    RunKind::GravelEdge};
inline constexpr std::array<EndKind, 6> allEndKinds{EndKind::Free,    EndKind::Butt,   EndKind::Mitre,
                                                    EndKind::WrapTab, EndKind::Closed, EndKind::TurnUp};

/// The name in files: "slope_change".
[[nodiscard]] std::string_view nameOf(RunKind kind);
[[nodiscard]] std::string_view nameOf(EndKind kind);
/// Nothing if no kind is called that.
[[nodiscard]] std::optional<RunKind> runKindNamed(std::string_view name);
[[nodiscard]] std::optional<EndKind> endKindNamed(std::string_view name);
/// The name in sentences: "slope change".
[[nodiscard]] std::string wordsFor(RunKind kind);
[[nodiscard]] std::string wordsFor(EndKind kind);

/// Sloped: rake, hip, valley, sidewall. Upright: wall corners and jambs. Level: the rest.
[[nodiscard]] Lie lieOf(RunKind kind);
/// The roof's slope at the run shapes its trim or gives its length.
[[nodiscard]] bool asksForSlope(RunKind kind);
/// Two roof planes meet: ridge, hip, valley, slope change.
[[nodiscard]] bool asksForOtherSlope(RunKind kind);
/// A plan angle shapes the trim: hip and valley (between the eaves), outside and inside corner (of the wall).
[[nodiscard]] bool asksForPlanCorner(RunKind kind);
/// What `Run::planCorner` is if it is not given: 90° for a hip and an outside corner, 270° for a valley and
/// an inside corner, nothing for kinds that do not ask.
[[nodiscard]] std::optional<Angle> squarePlanCorner(RunKind kind);
/// The edge of an opening in a wall: head, sill or jamb.
[[nodiscard]] bool isOfOpening(RunKind kind);

} // namespace lapwright::site
