#pragma once

#include "measure/result.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace lapwright::acts {

/// How the names of orders end: plain documents and ZIPs of one with its photos.
[[nodiscard]] const std::vector<std::string>& orderEndings();

/// A folder that tablets, mail or a network share copy orders into. A file is ready when two looks in a row
/// found it of the same size and time and it ends as a whole document or ZIP does; until then, half copied,
/// it is left alone. Each file is given once for each content it ever has.
class DropFolder {
public:
    /// The orders (orderEndings) in `folder` that are ready now and were not given before, by name. Error:
    /// the folder cannot be read.
    [[nodiscard]] Result<std::vector<std::string>> look(const std::string& folder);
    /// The next look gives this file once more: nothing could be done with it.
    void giveAgain(const std::string& path) { seen_[path].given = false; }

private:
    struct Seen {
        std::int64_t size = -1;
        std::int64_t changed = -1; ///< milliseconds
        bool given = false;
    };
    std::map<std::string, Seen> seen_;
};

} // namespace lapwright::acts
