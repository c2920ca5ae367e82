#pragma once

#include "measure/result.h"

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

/// Documents on disk. Paths are those a person named; no name from inside a document ever becomes a path.
namespace lapwright::storage {

/// The largest document that is read: far over any job, far under what would hurt the machine.
inline constexpr std::int64_t largestDocument = std::int64_t{256} << 20;

/// The whole text of `path`, or of standard input for "-". Errors name the file: missing, unreadable, a
/// folder, or larger than `largestDocument`.
[[nodiscard]] Result<std::string> readDocument(const std::string& path);

/// Replaces `path` whole or not at all: a temporary file beside it, flushed to the disk, then renamed over
/// it. "-" writes to standard output. True on success. Errors name the file: it cannot be written, or the
/// text is larger than `largestDocument`.
[[nodiscard]] Result<bool> writeDocument(const std::string& path, const std::string& text);

/// The files of `path` with one of these endings (".json"), sorted by name, not those that start with a dot;
/// `path` itself if it is a file or "-".
[[nodiscard]] Result<std::vector<std::string>> documentsAt(const std::string& path,
                                                           const std::vector<std::string>& endings);

} // namespace lapwright::storage
