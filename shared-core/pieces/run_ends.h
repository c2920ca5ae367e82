#pragma once

#include "pieces/ends.h"
#include "site/chain.h"
#include "site/run_geometry.h"
#include "trim/profile.h"
#include "trim/template.h"

#include <cstddef>

namespace lapwright::pieces {

/// The end of `chain.runs[run]` (its end or its start) for a trim with this profile and installation.
///
/// A level edge is mitred to the corner of the chain (trim::mitreCut). Two rakes that meet at a
/// peak meet in a plumb plane: a mould line y above the measured line reaches y tan((θ₁ + θ₂)/2) beyond it.
/// Any other mitre of a sloping run is left square with a warning, "pieces.end.cut_on_site". Other ends and
/// findings as endOf; "pieces.end.mitre" blocks where the corner is too sharp to mitre.
[[nodiscard]] RunEnd runEndOf(const site::Chain& chain, std::size_t run, const site::RunGeometry& geometry,
                              const trim::Profile& profile, const trim::Installation& installation,
                              bool atEnd);

/// Whether runEndOf() makes that end mitred rather than square, if the corner is not too sharp.
[[nodiscard]] bool isMitred(const site::Chain& chain, std::size_t run, bool atEnd);

} // namespace lapwright::pieces
