#pragma once

#include "documents/describe_profile.h"
#include "documents/describe_site.h"
#include "documents/describe_told.h"
#include "documents/formulas.h"
#include "pieces/order.h"

/// Members of an order.
namespace lapwright::documents {

template <>
struct Words<pieces::Hand> {
    using K = pieces::Hand;
    static constexpr std::array<std::pair<K, std::string_view>, 3> all{
        {{K::None, "none"}, {K::Left, "left"}, {K::Right, "right"}}};
};

template <>
struct Words<pieces::PieceEnd::Kind> {
    using K = pieces::PieceEnd::Kind;
    static constexpr std::array<std::pair<K, std::string_view>, 7> all{{{K::Square, "square"},
                                                                        {K::Lap, "lap"},
                                                                        {K::Butt, "butt"},
                                                                        {K::Mitre, "mitre"},
                                                                        {K::WrapTab, "wrap_tab"},
                                                                        {K::Closed, "closed"},
                                                                        {K::TurnUp, "turn_up"}}};
};

template <class V, Like<pieces::OrderedProfile> T>
void describe(V& fields, T& ordered)
{
    fields("id", ordered.id);
    fields("profile", ordered.profile);
    fields("material", ordered.material);
    fields("thickness_mm", ordered.thickness);
    fields("girth_mm", ordered.girth);
    fields("kilograms_per_metre", ordered.kilogramsPerMetre, 0.0);
    fields("derivations", ordered.derivations, {});
}

template <class V, Like<pieces::Accessory> T>
void describe(V& fields, T& accessory)
{
    fields("name", accessory.name);
    fields("run", accessory.run, std::string());
    fields("trim", accessory.trim, std::string());
    fields("count", accessory.count, std::int64_t{0});
    fields("length_mm", accessory.length, Length());
    fields("derivation", accessory.derivation, Derivation());
}

template <class V, Like<pieces::RunTakeoff> T>
void describe(V& fields, T& run)
{
    fields("run", run.run);
    fields("trim", run.trim);
    fields("mark", run.mark, std::string());
    fields("profile", run.profile);
    fields("usable_length_mm", run.usableLength);
    fields("piece_limit_mm", run.pieceLimit, Length());
    fields("first_piece", run.firstPiece, std::size_t{0});
    fields("piece_count", run.pieceCount, std::size_t{0});
    fields("derivations", run.derivations, {});
}

template <class V, Like<pieces::SiteCut> T>
void describe(V& fields, T& cut)
{
    fields("stock", cut.stock);
    fields("mark", cut.mark);
    fields("length_mm", cut.length);
    fields("left_mm", cut.left);
}

template <class V, Like<pieces::PieceEnd> T>
void describe(V& fields, T& end)
{
    fields("kind", end.kind);
    fields("allowance_mm", end.allowance, Length());
    fields("cut_mm", end.cut, {});
}

template <class V, Like<pieces::Piece> T>
void describe(V& fields, T& piece)
{
    fields("mark", piece.mark);
    fields("run", piece.run, std::string());
    fields("profile", piece.profile);
    fields("hand", piece.hand, pieces::Hand::None);
    fields("count", piece.count, std::int64_t{1});
    fields("length_mm", piece.length);
    fields("blank_length_mm", piece.blankLength);
    fields("start", piece.start, pieces::PieceEnd());
    fields("end", piece.end, pieces::PieceEnd());
    fields("spare", piece.spare, false);
}

template <class V, Like<pieces::Order> T>
void describe(V& fields, T& order)
{
    fields("id", order.id);
    fields("revision", order.revision);
    fields("previous_hash", order.previousHash, std::string());
    fields("cancelled", order.cancelled, false);
    fields("job", order.job);
    fields("profiles", order.profiles);
    fields("runs", order.runs);
    fields("pieces", order.pieces);
    fields("accessories", order.accessories, {});
    fields("site_cuts", order.siteCuts, {});
    fields("findings", order.findings, {});
}

} // namespace lapwright::documents
