#include "storage/find_orders.h"

#include "storage/rows.h"

#include <QStringList>

#include <algorithm>
#include <limits>
#include <utility>

namespace lapwright::storage {

namespace {

bool isAscii(const std::string& word)
{
    return std::all_of(word.begin(), word.end(),
                       [](char letter) { return static_cast<unsigned char>(letter) < 0x80; });
}

/// The mark that a person means who types it all in small or in capital letters: those of the run before its
/// number are capitals, those of the trim after it are small: "S1a.1". No number: not a mark.
QStringList marksTypedAs(const std::string& word)
{
    const QString typed = text(word);
    const auto digit =
        std::find_if(typed.begin(), typed.end(), [](QChar letter) { return letter.isDigit(); });
    if (digit == typed.end())
        return {};
    const auto number = static_cast<qsizetype>(digit - typed.begin());
    QStringList marks = {typed, typed.toUpper(), typed.left(number).toUpper() + typed.mid(number).toLower()};
    marks.removeDuplicates();
    return marks;
}

/// A pattern that finds `word` anywhere, whether in small letters or capitals. SQLite knows that of ASCII
/// alone: any other letter is any letter here.
QString patternFor(const std::string& word)
{
    QString pattern;
    for (const QChar letter : text(word).toLower()) {
        if (letter.isLowSurrogate())
            continue; // the sign it is half of is there
        if (letter == u'!' || letter == u'%' || letter == u'_')
            pattern += u'!';
        pattern += letter.unicode() < 0x80 ? letter : QChar(u'_');
    }
    return '%' + pattern + '%';
}

/// Of a mark of the order `o.id`, one of so many.
QString isMarked(qsizetype marks)
{
    return "EXISTS (SELECT 1 FROM pieces p WHERE p.order_id = o.id AND p.mark IN (" +
           QStringList(marks, "?").join(", ") + "))";
}

bool hasMark(const Database& database, const std::string& order, const QStringList& marks)
{
    const QVariantList values = QVariantList{text(order)} + QVariantList(marks.begin(), marks.end());
    return !marks.isEmpty() &&
           database
               .query("SELECT 1 FROM current_orders o WHERE o.id = ? AND " + isMarked(marks.size()), values)
               .next();
}

/// Whether the words that a pattern cannot tell from others are in the names of the order, or marks of it.
bool really(const Database& database, const std::vector<std::string>& words, const OrderSummary& order)
{
    return std::all_of(words.begin(), words.end(), [&](const std::string& word) {
        return text(order.jobName).contains(text(word), Qt::CaseInsensitive) ||
               text(order.customer).contains(text(word), Qt::CaseInsensitive) ||
               hasMark(database, order.id, marksTypedAs(word));
    });
}

} // namespace

std::vector<OrderRow> findOrders(const Database& database, const std::vector<std::string>& words,
                                 std::int64_t most)
{
    if (words.empty())
        return {};
    QStringList conditions;
    QVariantList values;
    std::vector<std::string> beyondAscii;
    for (const std::string& word : words) {
        const QStringList marks = marksTypedAs(word);
        values << patternFor(word) << patternFor(word);
        conditions.append("(LOWER(o.job_name) LIKE ? ESCAPE '!' OR LOWER(o.customer) LIKE ? ESCAPE '!'");
        if (!isAscii(word))
            beyondAscii.push_back(word);
        if (!marks.isEmpty()) {
            conditions.back() += " OR " + isMarked(marks.size());
            values += QVariantList(marks.begin(), marks.end());
        }
        conditions.back() += ")";
    }
    values << (beyondAscii.empty() ? qint64(most) : std::numeric_limits<qint64>::max());
    Rows rows =
        database.query("SELECT " + summaryColumns() + " FROM current_orders o WHERE " +
                           conditions.join(" AND ") + " ORDER BY o.due DESC, o.job_name, o.id LIMIT ?",
                       values);
    std::vector<OrderRow> found;
    while (static_cast<std::int64_t>(found.size()) < most && rows.next())
        if (OrderSummary order = summaryAt(rows, 0); really(database, beyondAscii, order))
            found.push_back({std::move(order), {}});
    for (OrderRow& row : found)
        row.counts = orderCounts(database, row.order.id);
    return found;
}

} // namespace lapwright::storage
