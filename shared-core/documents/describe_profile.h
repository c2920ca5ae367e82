#pragma once

#include "documents/codec.h"
#include "trim/profile.h"

/// Members of a resolved cross-section.
namespace lapwright::documents {

template <>
struct Words<trim::Side> {
    using K = trim::Side;
    static constexpr std::array<std::pair<K, std::string_view>, 2> all{
        {{K::Left, "left"}, {K::Right, "right"}}};
};

template <>
struct Words<trim::HemKind> {
    using K = trim::HemKind;
    static constexpr std::array<std::pair<K, std::string_view>, 3> all{
        {{K::Closed, "closed"}, {K::Open, "open"}, {K::Teardrop, "teardrop"}}};
};

template <class V, Like<trim::Leg> T>
void describe(V& fields, T& leg)
{
    fields("name", leg.name, std::string());
    fields("length_mm", leg.length);
}

template <class V, Like<trim::Bend> T>
void describe(V& fields, T& bend)
{
    fields("turn_degrees", bend.turn);
    fields("inside_radius_mm", bend.insideRadius);
}

template <class V, Like<trim::Hem> T>
void describe(V& fields, T& hem)
{
    fields("kind", hem.kind);
    fields("flat_mm", hem.flat);
    fields("side", hem.side);
    fields("inside_radius_mm", hem.insideRadius);
}

template <class V, Like<trim::Profile> T>
void describe(V& fields, T& profile)
{
    fields("trim", profile.trim, std::string("free"));
    fields("name", profile.name, std::string());
    fields("legs", profile.legs);
    fields("bends", profile.bends);
    fields("start_hem", profile.startHem);
    fields("end_hem", profile.endHem);
    fields("colour_face", profile.colourFace);
    fields("first_direction_degrees", profile.firstDirection, Angle());
    fields("start_x_mm", profile.startX, Length());
    fields("start_y_mm", profile.startY, Length());
}

/// One bend between each two legs.
void checkProfile(const trim::Profile& profile, const std::string& place, Errors& errors);

} // namespace lapwright::documents
