#pragma once

#include "invented_jobs.h"
#include "measure/writing.h"

#include <QString>
#include <QStringList>

#include <algorithm>
#include <cstdint>
#include <string>

/// What a test asks of an order that was taken off.
namespace invented {

inline const pieces::Piece& pieceOf(const pieces::Order& order, const std::string& mark)
{
    const auto found = std::find_if(order.pieces.begin(), order.pieces.end(),
                                    [&](const pieces::Piece& piece) { return piece.mark == mark; });
    if (found == order.pieces.end())
        qFatal("no piece %s", mark.c_str());
    return *found;
}

inline std::int64_t countOf(const pieces::Order& order, const std::string& run, const std::string& name)
{
    std::int64_t count = 0;
    for (const pieces::Accessory& accessory : order.accessories)
        if (accessory.run == run && accessory.name == name)
            count += accessory.count;
    return count;
}

inline QStringList codesOf(const pieces::Order& order)
{
    QStringList codes;
    for (const rules::Finding& finding : order.findings)
        codes << QString::fromStdString(finding.code);
    return codes;
}

inline QString told(const pieces::Order& order)
{
    QString text;
    for (const rules::Finding& finding : order.findings)
        text += QString::fromStdString(finding.code + " at " + finding.place + ": " +
                                       lapwright::say(finding.statement, {}) + "\n");
    return text;
}

} // namespace invented
