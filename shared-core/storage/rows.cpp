#include "storage/rows.h"

namespace lapwright::storage {

std::optional<std::string> setting(const Database& database, const char* key)
{
    Rows rows = database.query("SELECT value FROM settings WHERE key = ?", {key});
    return rows.next() ? std::optional(rows.text(0)) : std::nullopt;
}

void saveSetting(const Database& database, const char* key, const std::string& value)
{
    database.run("INSERT INTO settings (key, value) VALUES (?, ?)"
                 " ON CONFLICT (key) DO UPDATE SET value = excluded.value",
                 {key, text(value)});
}

QString pieceColumns()
{
    return "p.mark, p.run, p.profile, p.metal, p.gauge, p.colour, p.girth_nm, p.length_nm, p.grams, p.count, p.make";
}

OrderedPiece pieceAt(const Rows& rows, int first)
{
    const auto string = [&](int column) { return rows.text(first + column); };
    const auto length = [&](int column) { return Length::nanometres(rows.number(first + column)); };
    return {string(0),
            string(1),
            string(2),
            string(3),
            string(4),
            string(5),
            length(6),
            length(7),
            rows.number(first + 8),
            rows.number(first + 9),
            string(10)};
}

} // namespace lapwright::storage
