#pragma once

#include "model/tablet.h"

#include <QString>

#include <memory>
#include <string>

/// A tablet whose clock and chance stand still, for tests. What one made is never called as what another
/// made.
inline lapwright::field::Tablet tabletAt(const QString& path)
{
    const auto ticks = std::make_shared<int>(0);
    static int tablets = 0;
    const auto ids = std::make_shared<int>(0);
    return *lapwright::field::Tablet::open(path, {},
                                           {[ticks] {
                                                return QString("2026-11-25T10:%1:%2.000Z")
                                                    .arg(*ticks / 60, 2, 10, QChar('0'))
                                                    .arg((*ticks)++ % 60, 2, 10, QChar('0'))
                                                    .toStdString();
                                            },
                                            [tablet = tablets++, ids] {
                                                return QString("00000000-0000-4000-%1-%2")
                                                    .arg(8000 + tablet)
                                                    .arg(++*ids, 12, 10, QChar('0'))
                                                    .toStdString();
                                            },
                                            [] { return std::string("2026-11-25"); }});
}
