#pragma once

#include "documents/json_text.h"

#include <map>
#include <string>
#include <string_view>

namespace lapwright::documents {

/// What a document said beyond what this program understands, kept beside the value and put back when it is
/// written: members by object, objects by where they stand. Entries of a list are known by their "id", "mark"
/// or "key", so that they keep their extras when others are put in or taken out, or else by position.
struct Extras {
    std::map<std::string, Json> members;
    std::map<std::string, Extras> inside;

    [[nodiscard]] bool empty() const { return members.empty() && inside.empty(); }
    friend bool operator==(const Extras&, const Extras&) = default;

    /// Of the entry of that list whose id, mark or key this is; empty where it says nothing more.
    [[nodiscard]] Extras ofEntry(const std::string& list, const std::string& name) const;
    /// In place of what was kept of that entry.
    void putEntry(const std::string& list, const std::string& name, Extras extras);
};

/// The members of a document as canonical text, by name.
using Members = std::map<std::string_view, std::string_view>;

/// Everything in `read` that is not in `written`, where `written` is what this program makes of `read`. What
/// every document has (format, version, program) is none of it,
/// nor is its signature.
[[nodiscard]] Extras extrasOf(const Json& read, const Members& written);

/// The canonical text of a value with its extras put back where they were; what the value says itself wins.
/// Extras of objects that are no longer there are dropped with them.
[[nodiscard]] std::string withExtras(std::string_view written, const Extras& extras);

/// A value as read, with what else its document said.
template <class T>
struct Document {
    T value;
    Extras extras;

    friend bool operator==(const Document&, const Document&) = default;
};

} // namespace lapwright::documents
