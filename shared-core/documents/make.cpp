#include "documents/make.h"

#include "documents/describe_order.h"
#include "documents/identity.h"

namespace lapwright::documents {
namespace {

/// The text of each profile without its id and what explains it.
std::vector<std::string> profileTexts(const pieces::Order& order)
{
    std::vector<std::string> texts;
    texts.reserve(order.profiles.size());
    for (const pieces::OrderedProfile& profile : order.profiles) {
        Writing out;
        WriteFields fields(out);
        fields("material", profile.material);
        fields("profile", profile.profile);
        fields("thickness_mm", profile.thickness);
        fields.close();
        texts.push_back(std::move(out.text));
    }
    return texts;
}

} // namespace

std::vector<std::string> makeDigests(const pieces::Order& order)
{
    constexpr std::size_t digits = 16;
    const std::vector<std::string> profiles = profileTexts(order);
    std::vector<std::string> digests;
    digests.reserve(order.pieces.size());
    Writing out;
    for (const pieces::Piece& piece : order.pieces) {
        out.text = profiles[piece.profile];
        WriteFields fields(out);
        fields("blank_length_mm", piece.blankLength);
        fields("end", piece.end);
        fields("hand", piece.hand);
        fields("length_mm", piece.length);
        fields("start", piece.start);
        fields.close();
        digests.push_back(sha256(out.text).substr(0, digits));
    }
    return digests;
}

} // namespace lapwright::documents
