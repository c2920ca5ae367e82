#pragma once

#include "model/tablet.h"

#include <QString>

#include <memory>
#include <string>

/// A tablet whose clock and chance stand still, for tests.
inline lapwright::field::Tablet tabletAt(const QString& path)
{
    const auto ticks = std::make_shared<int>(0);
    const auto ids = std::make_shared<int>(0);
    return *lapwright::field::Tablet::open(
        path, {},
        {[ticks] {
             return QString("2026-11-25T10:%1:%2.000Z")
                 .arg(*ticks / 60, 2, 10, QChar('0'))
                 .arg((*ticks)++ % 60, 2, 10, QChar('0'))
                 .toStdString();
         },
         [ids] {
             return QString("00000000-0000-4000-8000-%1").arg(++*ids, 12, 10, QChar('0')).toStdString();
         },
         [] { return std::string("2026-11-25"); }});
}
