#include "documents/compare.h"

#include <map>

namespace lapwright::documents {

namespace {

class Comparison {
public:
    Comparison(const pieces::Order& received, const pieces::Order& derived)
        : received_(received), derived_(derived)
    {
    }

    rules::Findings run()
    {
        std::map<std::string, const pieces::Piece*> claimed;
        for (const pieces::Piece& piece : received_.pieces)
            claimed[piece.mark] = &piece;
        for (const pieces::Piece& piece : derived_.pieces) {
            const auto found = claimed.find(piece.mark);
            if (found == claimed.end()) {
                warn("documents.derived.missing", piece.mark,
                     {"follows from the runs and is not in the order; it is made", {}});
                continue;
            }
            compare(*found->second, piece);
            claimed.erase(found);
        }
        for (const auto& [mark, piece] : claimed)
            warn("documents.derived.extra", mark,
                 {"is in the order and does not follow from the runs; it is not made", {}});
        return std::move(findings_);
    }

private:
    void warn(const char* code, const std::string& mark, Phrase statement)
    {
        findings_.push_back(
            {rules::Weight::Warns, code, "mark " + mark, std::move(statement), {}, std::nullopt});
    }

    void compare(const pieces::Piece& claimed, const pieces::Piece& piece)
    {
        if (claimed.blankLength != piece.blankLength)
            warn("documents.derived.length", piece.mark,
                 {"the order says {claimed} long, the runs say {derived}",
                  {{"claimed", claimed.blankLength}, {"derived", piece.blankLength}}});
        if (claimed.count != piece.count)
            warn("documents.derived.count", piece.mark,
                 {"the order says {claimed} pieces, the runs say {derived}",
                  {{"claimed", claimed.count}, {"derived", piece.count}}});
        const Length claimedGirth = received_.profiles[claimed.profile].girth;
        const Length girth = derived_.profiles[piece.profile].girth;
        if (claimedGirth != girth)
            warn("documents.derived.girth", piece.mark,
                 {"the order says girth {claimed}, the shop's own rules say {derived}",
                  {{"claimed", claimedGirth}, {"derived", girth}}});
    }

    const pieces::Order& received_;
    const pieces::Order& derived_;
    rules::Findings findings_;
};

} // namespace

rules::Findings compareDerived(const pieces::Order& received, const pieces::Order& derived)
{
    return Comparison(received, derived).run();
}

} // namespace lapwright::documents
