#include "ticket_folder.h"

#include "storage/database.h"
#include "storage/document_file.h"

#include <QDir>
#include <QRegularExpression>

namespace lapwright::command {

void TicketFolder::write(const std::string& kind, int number, const std::string& ending,
                         const std::string& text, const std::string& part)
{
    std::string digits = std::to_string(number);
    if (digits.size() < 2)
        digits.insert(0, "0");
    writeFile(kind + "-" + digits + (part.empty() ? "" : "-" + part) + "." + ending, text);
}

void TicketFolder::write(const std::string& kind, const std::string& ending, const std::string& text)
{
    writeFile(kind + "." + ending, text);
}

void TicketFolder::writeFile(const std::string& name, const std::string& text)
{
    const auto written = storage::writeDocument(path_ + "/" + name, text);
    if (!written.ok())
        throw storage::StorageFailure(written.errors().front().sentence());
    ++count_;
    written_.insert(name);
}

void TicketFolder::removeStale() const
{
    static const QRegularExpression ours(
        "^(?:(?:cut|fold|plan|load|schedule|order|quality|labels|bundles|remnants|check)-\\d{2,}"
        "(?:-(?:map|page)-\\d+|-profile)?\\.(?:txt|svg|json|pdf)|labels\\.csv|schedule\\.json)$");
    QDir folder(QString::fromStdString(path_));
    for (const QString& name : folder.entryList(QDir::Files))
        if (ours.match(name).hasMatch() && !written_.contains(name.toStdString()) && !folder.remove(name))
            throw storage::StorageFailure(path_ + "/" + name.toStdString() +
                                          ": a ticket of before cannot be removed");
}

const std::string& cautionsAtTheMachine()
{
    static const std::string cautions =
        "Sheet edges cut: wear gloves. Keep hands clear when a clamp or hem closes: stop with the clamp just\n"
        "open, look, then close. The machine's own manual and guards rule; Lapwright does not control a\n"
        "machine. Long or heavy bundles: two people.\n";
    return cautions;
}

} // namespace lapwright::command
