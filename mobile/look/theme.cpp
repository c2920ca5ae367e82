#include "theme.h"

#include "paint/face.h"

#include <QFile>
#include <QFontDatabase>

#include <algorithm>
#include <cmath>

namespace lapwright::look {

namespace {

/// A face drawn to be read at a glance, from inside the program or the system; else the pictures' face.
QString interfaceFamily()
{
    const QString wanted = QStringLiteral("B612");
    // A system that has the monospaced cut files it under the same family; the face added last wins, so the
    // system's have to be known first.
    (void)QFontDatabase::families();
    for (const char* file : {":/lapwright/faces/B612-Regular.otf", ":/lapwright/faces/B612-Bold.otf"}) {
        if (QFile::exists(file))
            QFontDatabase::addApplicationFont(file);
    }
    return QFontDatabase::hasFamily(wanted) ? wanted : paint::pictureFace(false).families().constFirst();
}

} // namespace

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
