#pragma once

#include "documents/codec.h"
#include "site/job.h"

/// The members of a job and what it consists of.
namespace lapwright::documents {

template <>
struct Words<site::RunKind> {
    using K = site::RunKind;
    static constexpr std::array<std::pair<K, std::string_view>, 17> all{{{K::Eave, "eave"},
                                                                         {K::Rake, "rake"},
                                                                         {K::Ridge, "ridge"},
                                                                         {K::Hip, "hip"},
                                                                         {K::Valley, "valley"},
                                                                         {K::Headwall, "headwall"},
                                                                         {K::Sidewall, "sidewall"},
                                                                         {K::SlopeChange, "slope_change"},
                                                                         {K::Fascia, "fascia"},
                                                                         {K::WallBase, "wall_base"},
                                                                         {K::OutsideCorner, "outside_corner"},
                                                                         {K::InsideCorner, "inside_corner"},
                                                                         {K::OpeningHead, "opening_head"},
                                                                         {K::OpeningSill, "opening_sill"},
                                                                         {K::OpeningJamb, "opening_jamb"},
                                                                         {K::Parapet, "parapet"},
                                                                         {K::GravelEdge, "gravel_edge"}}};
};

template <>
struct Words<site::EndKind> {
    using K = site::EndKind;
    static constexpr std::array<std::pair<K, std::string_view>, 6> all{{{K::Free, "free"},
                                                                        {K::Butt, "butt"},
                                                                        {K::Mitre, "mitre"},
                                                                        {K::WrapTab, "wrap_tab"},
                                                                        {K::Closed, "closed"},
                                                                        {K::TurnUp, "turn_up"}}};
};

template <>
struct Words<site::PiecePolicy> {
    using K = site::PiecePolicy;
    static constexpr std::array<std::pair<K, std::string_view>, 3> all{
        {{K::FullAndRemainder, "full_and_remainder"},
         {K::EqualLengths, "equal_lengths"},
         {K::StockLengths, "stock_lengths"}}};
};

template <class V, Like<site::Measured> T>
void describe(V& fields, T& measured)
{
    fields("mm", measured.value);
    fields("entered", measured.entered, std::string());
}

template <class V, Like<site::TrimChoice> T>
void describe(V& fields, T& choice)
{
    fields("trim", choice.trim);
    fields("measures", choice.measures, {});
    fields("legs_mm", choice.legs, {});
    fields("lap_mm", choice.lap);
    fields("colour", choice.colour);
}

template <class V, Like<site::Run> T>
void describe(V& fields, T& run)
{
    fields("id", run.id);
    fields("kind", run.kind);
    fields("lengths", run.lengths, {});
    fields("counts", run.counts, std::size_t{0});
    fields("level_run", run.levelRun);
    fields("slope", run.slope);
    fields("other_slope", run.otherSlope);
    fields("plan_corner_degrees", run.planCorner);
    fields("start", run.start, site::EndKind::Free);
    fields("end", run.end, site::EndKind::Free);
    fields("course_exposure_mm", run.courseExposure);
    fields("trims", run.trims, {});
    fields("note", run.note, std::string());
}

void describe(ReadFields& fields, site::Corner& corner);
void describe(WriteFields& fields, const site::Corner& corner);

template <class V, Like<site::Obstacle> T>
void describe(V& fields, T& obstacle)
{
    fields("width", obstacle.width);
    fields("cricket", obstacle.cricket);
}

template <class V, Like<site::Chain> T>
void describe(V& fields, T& chain)
{
    fields("id", chain.id);
    fields("name", chain.name, std::string());
    fields("closed", chain.closed, false);
    fields("runs", chain.runs);
    fields("corners", chain.corners, {});
    fields("first_bearing_degrees", chain.firstBearing, Angle());
    fields("obstacle", chain.obstacle);
}

template <class V, Like<site::Material> T>
void describe(V& fields, T& material)
{
    fields("metal", material.metal);
    fields("gauge", material.gauge);
    fields("colour", material.colour);
}

template <class V, Like<site::PieceLimits> T>
void describe(V& fields, T& limits)
{
    const site::PieceLimits usual;
    fields("folding_length_mm", limits.foldingLength, usual.foldingLength);
    fields("stock_length_mm", limits.stockLength);
    fields("transport_length_mm", limits.transportLength);
    fields("shortest_piece_mm", limits.shortestPiece, usual.shortestPiece);
}

template <class V, Like<site::Tolerance> T>
void describe(V& fields, T& tolerance)
{
    const site::Tolerance usual;
    fields("closure_mm", tolerance.closure, usual.closure);
    fields("perimeter_share", tolerance.perimeterShare, usual.perimeterShare);
    fields("per_corner_degrees", tolerance.perCorner, usual.perCorner);
    fields("derived_mm", tolerance.derived, usual.derived);
    fields("repeats_mm", tolerance.repeats, usual.repeats);
}

template <class V, Like<site::Acknowledgement> T>
void describe(V& fields, T& acknowledgement)
{
    fields("code", acknowledgement.code);
    fields("place", acknowledgement.place);
    fields("reason", acknowledgement.reason);
}

template <class V, Like<site::Photo> T>
void describe(V& fields, T& photo)
{
    fields("sha256", photo.sha256);
    fields("place", photo.place);
    fields("code", photo.code, std::string());
}

template <class V, Like<site::Job> T>
void describe(V& fields, T& job)
{
    fields("id", job.id);
    fields("name", job.name, std::string());
    fields("customer", job.customer, std::string());
    fields("address", job.address, std::string());
    fields("wanted_by", job.wantedBy, std::string());
    fields("measured_by", job.measuredBy, std::string());
    fields("material", job.material);
    fields("limits", job.limits, site::PieceLimits());
    fields("policy", job.policy, site::PiecePolicy::FullAndRemainder);
    fields("rule_sets", job.ruleSets, {});
    fields("tolerance", job.tolerance, site::Tolerance());
    fields("velocity_pressure_psf", job.velocityPressurePsf);
    fields("spares", job.spares, std::int64_t{0});
    fields("chains", job.chains);
    fields("acknowledgements", job.acknowledgements, {});
    fields("photos", job.photos, {});
}

/// What no schema can say about a job: ids told apart, as many corners as the chain has, the entry of
/// `lengths` that counts. Places as in the job.
void checkJob(const site::Job& job, Errors& errors);

} // namespace lapwright::documents
