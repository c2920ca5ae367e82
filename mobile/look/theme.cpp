#include "theme.h"

#include "faces.h"

#include <algorithm>
#include <cmath>

namespace lapwright::look {

Theme::Theme(QObject* parent) : QObject(parent), family_(interfaceFamily()) {}

void Theme::setScheme(Scheme scheme)
{
    if (scheme == scheme_)
        return;
    scheme_ = scheme;
    tones_ = tonesOf(static_cast<look::Scheme>(scheme));
    emit changed();
}

void Theme::setTextFactor(double factor)
{
    const double held = std::clamp(factor, 0.8, 2.0);
    if (held == textFactor_)
        return;
    textFactor_ = held;
    emit changed();
}

void Theme::setLeftHanded(bool leftHanded)
{
    if (leftHanded == leftHanded_)
        return;
    leftHanded_ = leftHanded;
    emit changed();
}

void Theme::setTouch(bool touch)
{
    if (touch == touch_)
        return;
    touch_ = touch;
    emit changed();
}

QString Theme::spoken(const QStringList& parts, const QString& separator) const
{
    QStringList said = parts;
    said.removeAll(QString());
    return said.join(separator);
}

int Theme::target() const
{
    return touch_ ? touchTarget() : std::max(36, sized(36));
}

int Theme::outline() const
{
    return scheme_ == Scheme::Sunlight || scheme_ == Scheme::ShopFloor ? 2 : 1;
}

int Theme::sized(int pixels) const
{
    return static_cast<int>(std::lround(pixels * textFactor_));
}

} // namespace lapwright::look
