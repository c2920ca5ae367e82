#pragma once

#include "store/connection.h"

#include <QString>

#include <string>

namespace lapwright::field {

/// What the signature of a load list is worth on this tablet.
struct LoadTrust {
    enum class Standing {
        Good,    ///< signed by a shop that is trusted; or nobody signed it, and no shop is known yet
        Offered, ///< signed by the first shop this tablet meets
        Doubtful ///< a person has to say that it counts
    } standing = Standing::Good;
    QString words;   ///< why, for a person; empty where it is good
    std::string key; ///< that may be trusted once its code is compared; empty where that would not help
};

/// Once the tablet trusts a shop, a load list must be signed by one that it trusts and not changed since;
/// one that was changed after it was signed is doubtful in any case.
[[nodiscard]] LoadTrust trustIn(const store::Connection& connection, const std::string& loadList);

} // namespace lapwright::field
