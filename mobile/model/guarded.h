#pragma once

#include "store/connection.h"

#include <QString>

#include <type_traits>
#include <utility>

namespace lapwright::field {

/// Does an act that a screen asked for. Where the tablet's storage will not do what it must, `model` says so
/// (failed()) and the act comes to nothing: false, an empty text. No exception goes on through the event
/// loop, and what was typed stands where it was typed.
template <class Model, class Act>
auto guarded(Model& model, Act&& act)
{
    using Outcome = std::invoke_result_t<Act>;
    try {
        if constexpr (std::is_void_v<Outcome>) {
            act();
            return true;
        } else {
            return std::forward<Act>(act)();
        }
    } catch (const store::StoreFailure& failure) {
        emit model.failed(QString::fromUtf8(failure.what()));
        if constexpr (std::is_void_v<Outcome>)
            return false;
        else
            return Outcome();
    }
}

} // namespace lapwright::field
