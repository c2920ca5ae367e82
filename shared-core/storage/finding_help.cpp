#include "storage/finding_help.h"

#include "rules/rule_set.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

namespace lapwright::storage {

namespace {

constexpr auto rulesPrefix = "rules.";

const QJsonObject& allHelp()
{
    static const QJsonObject all = [] {
        QFile file(":/lapwright/help/findings.json");
        return file.open(QIODevice::ReadOnly) ? QJsonDocument::fromJson(file.readAll()).object()
                                              : QJsonObject();
    }();
    return all;
}

/// The key of the help for a clause's finding, whose code is rules.SET.CLAUSE.FACT: set, clause and fact may
/// have dots of their own, so the longest fact that ends the code is the one.
QString keyOfClause(const QString& code)
{
    if (code.endsWith(rules::uncheckedSuffix))
        return QString(rulesPrefix) + "unchecked";
    QString longest = QString(rulesPrefix) + "clause";
    qsizetype length = 0;
    const QStringList keys = allHelp().keys();
    for (const QString& key : keys) {
        const QString fact = key.mid(QString(rulesPrefix).size());
        if (key.startsWith(rulesPrefix) && code.endsWith("." + fact) && fact.size() > length) {
            longest = key;
            length = fact.size();
        }
    }
    return longest;
}

} // namespace

std::optional<FindingHelp> helpFor(const std::string& code)
{
    const QString whole = QString::fromStdString(code);
    const auto found = allHelp().constFind(whole.startsWith(rulesPrefix) ? keyOfClause(whole) : whole);
    if (found == allHelp().constEnd())
        return std::nullopt;
    const QJsonObject help = found->toObject();
    return FindingHelp{help["reason"].toString().toStdString(), help["remedy"].toString().toStdString()};
}

} // namespace lapwright::storage
