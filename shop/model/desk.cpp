#include "desk.h"

#include "shop.h"

namespace lapwright::model {

Desk::Desk(Shop& shop) : QObject(&shop), shop_(shop) {}

void Desk::setActive(bool active)
{
    if (active == active_)
        return;
    active_ = active;
    if (active_ && stale_)
        reloadSafely();
    emit activeChanged();
}

void Desk::noteChange()
{
    stale_ = true;
    if (active_)
        reloadSafely();
}

void Desk::reloadSafely()
{
    stale_ = false;
    shop_.attempt([this] { reload(); });
}

} // namespace lapwright::model
