#pragma once

#include "measure/phrase.h"

#include <string>
#include <vector>

namespace lapwright {

/// Where a number came from, as a tree a person can read: what it is, the formula in words with its inputs,
/// and the standard or handbook the formula or value stands in (empty if it is plain arithmetic or was
/// measured).
struct Derivation {
    Phrase statement;
    std::string source;
    std::vector<Derivation> because;

    friend bool operator==(const Derivation&, const Derivation&) = default;
};

} // namespace lapwright
