#pragma once

#include "documents/signature.h"
#include "measure/result.h"
#include "storage/database.h"

#include <optional>
#include <string>

/// Whose documents this shop takes without asking.
namespace lapwright::acts {

/// Why the order or receipt `text` should not be taken without a person's word; nothing where it may. Its
/// signature must hold where it has one. Once the shop has paired a tablet, a document must be signed by one
/// that is paired and not revoked; before that, one without a signature, or of an unknown tablet, is as good
/// as any. Errors: those of documents::checkSignature.
[[nodiscard]] Result<std::optional<std::string>> distrust(const storage::Database& database,
                                                          const std::string& text);

/// The key a person means: 64 hexadecimal digits as a tablet shows or a file holds them, or the pairing code
/// of a tablet that is paired or whose order waits. Error: neither; a code that no such tablet has.
[[nodiscard]] Result<documents::PublicKey> keyNamed(const storage::Database& database,
                                                    const std::string& name);

} // namespace lapwright::acts
