#pragma once

#include "measure/derivation.h"

namespace lapwright::site {

/// A computed value and where it came from.
template <class T>
struct Derived {
    T value;
    Derivation derivation;
};

} // namespace lapwright::site
