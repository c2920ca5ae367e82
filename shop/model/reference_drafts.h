#pragma once

#include "draft.h"
#include "reference_shelf.h"
#include "storage/library.h"

#include <QString>

#include <optional>

namespace lapwright::model {

/// A document of the reference data of that kind to be changed, in the shop's own library or its database.
[[nodiscard]] DraftSubject referenceDraft(ReferenceShelf::Kind kind, const QString& title, Shop& shop);

/// Where the shop's library keeps documents of that kind; nothing for the floor and the rates, which the
/// database keeps.
[[nodiscard]] std::optional<storage::LibraryKind> libraryKind(ReferenceShelf::Kind kind);

} // namespace lapwright::model
