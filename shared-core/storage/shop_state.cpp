#include "storage/shop_state.h"

#include "storage/rows.h"

namespace lapwright::storage {

namespace {

constexpr const char* stockKey = "stock";
constexpr const char* floorKey = "floor";
constexpr const char* scheduleKey = "schedule";
constexpr const char* ratesKey = "rates";

std::optional<std::string> firstText(Rows rows)
{
    if (!rows.next())
        return std::nullopt;
    return rows.text(0);
}

/// Inserts a row of `table` unless its id is there.
bool insertOnce(const Database& database, const QString& statement, const QVariantList& values)
{
    return database.query(statement + " ON CONFLICT (id) DO NOTHING", values).changed() > 0;
}

qint64 countOf(const StoredPlan& plan)
{
    qint64 count = 0;
    for (const PlannedPiece& piece : plan.pieces)
        count += piece.count;
    return count;
}

void savePieces(const Database& database, const StoredPlan& plan)
{
    for (const PlannedPiece& piece : plan.pieces)
        database.run("INSERT INTO plan_pieces (plan_id, order_id, mark, count) VALUES (?, ?, ?, ?)",
                     {text(plan.id), text(piece.order), text(piece.mark), qint64(piece.count)});
}

void savePlan(const Database& database, const StoredPlan& plan, const Stamp& stamp)
{
    database.run("INSERT INTO plans (id, metal, gauge, colour, state, made_at, document, pieces, stock_area,"
                 " blank_area, remnant_area) VALUES (?, ?, ?, ?, 'planned', ?, ?, ?, ?, ?, ?)",
                 {text(plan.id), text(plan.material.metal), text(plan.material.gauge),
                  text(plan.material.colour), text(stamp.at), text(plan.document), countOf(plan),
                  plan.stockArea, plan.blankArea, plan.remnantArea});
    savePieces(database, plan);
}

StoredPlan planAt(const Rows& rows)
{
    return {rows.text(0), {rows.text(1), rows.text(2), rows.text(3)}, rows.text(4)};
}

/// Waiting plans wait no longer, those alone that `which` picks. What is ticked of a plan goes with it: by
/// then it must count as cut.
bool takeBack(const Database& database, const QString& which, const QVariantList& values)
{
    if (database
            .query(
                "SELECT 1 FROM plans JOIN cut_ticks t ON t.plan_id = plans.id WHERE plans.state = 'planned'" +
                    which,
                values)
            .next())
        throw StorageFailure("sheets of a plan that is taken back were ticked as cut meanwhile; do it again");
    return database.query("UPDATE plans SET state = 'replaced' WHERE state = 'planned'" + which, values)
               .changed() > 0;
}

} // namespace

std::optional<std::string> stockDocument(const Database& database)
{
    return setting(database, stockKey);
}

void saveStockDocument(const Database& database, const std::string& document)
{
    saveSetting(database, stockKey, document);
}

std::optional<std::string> floorDocument(const Database& database)
{
    return setting(database, floorKey);
}

void saveFloorDocument(const Database& database, const std::string& document)
{
    saveSetting(database, floorKey, document);
}

std::optional<std::string> scheduleDocument(const Database& database)
{
    return setting(database, scheduleKey);
}

void saveScheduleDocument(const Database& database, const std::string& document)
{
    saveSetting(database, scheduleKey, document);
}

std::optional<std::string> ratesDocument(const Database& database)
{
    return setting(database, ratesKey);
}

void saveRatesDocument(const Database& database, const std::string& document)
{
    saveSetting(database, ratesKey, document);
}

bool replacePlans(const Database& database, const std::vector<StoredPlan>& plans, const Stamp& stamp,
                  const std::function<bool()>& stands)
{
    return database.write([&] {
        if (stands && !stands())
            return false;
        (void)takeBack(database, "", {});
        for (const StoredPlan& plan : plans)
            savePlan(database, plan, stamp);
        return true;
    });
}

std::vector<StoredPlan> waitingPlans(const Database& database)
{
    Rows rows = database.query("SELECT id, metal, gauge, colour, document FROM plans WHERE state = 'planned'"
                               " ORDER BY made_at, metal, gauge, colour, id");
    std::vector<StoredPlan> plans;
    while (rows.next())
        plans.push_back(planAt(rows));
    return plans;
}

std::optional<StoredPlan> waitingPlan(const Database& database, const std::string& plan)
{
    Rows rows = database.query("SELECT id, metal, gauge, colour, document FROM plans"
                               " WHERE id = ? AND state = 'planned'",
                               {text(plan)});
    if (!rows.next())
        return std::nullopt;
    return planAt(rows);
}

bool takeBackPlans(const Database& database, const std::string& order, const std::optional<std::string>& mark)
{
    const QString pieces = " AND plans.id IN (SELECT plan_id FROM plan_pieces WHERE order_id = ?";
    return mark ? takeBack(database, pieces + " AND mark = ?)", {text(order), text(*mark)})
                : takeBack(database, pieces + ")", {text(order)});
}

bool markCut(const Database& database, const std::string& plan, const Stamp& stamp)
{
    return database
               .query("UPDATE plans SET state = 'cut', cut_at = ? WHERE id = ? AND state = 'planned'",
                      {text(stamp.at), text(plan)})
               .changed() > 0;
}

bool markPartCut(const Database& database, const StoredPlan& part, const Stamp& stamp)
{
    if (!markCut(database, part.id, stamp))
        return false;
    database.run("UPDATE plans SET pieces = ?, stock_area = ?, blank_area = ?, remnant_area = ? WHERE id = ?",
                 {countOf(part), part.stockArea, part.blankArea, part.remnantArea, text(part.id)});
    database.run("DELETE FROM plan_pieces WHERE plan_id = ?", {text(part.id)});
    savePieces(database, part);
    return true;
}

void tickPatterns(const Database& database, const std::string& plan, const std::set<std::size_t>& patterns,
                  const Stamp& stamp)
{
    for (const std::size_t pattern : patterns)
        database.run("INSERT INTO cut_ticks (plan_id, pattern, at, station, person)"
                     " VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING",
                     {text(plan), static_cast<qint64>(pattern), text(stamp.at), text(stamp.station),
                      text(stamp.person)});
}

bool tickPattern(const Database& database, const std::string& plan, std::size_t pattern, bool cut,
                 const Stamp& stamp)
{
    return database.write([&] {
        if (!database.query("SELECT 1 FROM plans WHERE id = ? AND state = 'planned'", {text(plan)}).next())
            return false;
        if (cut)
            tickPatterns(database, plan, {pattern}, stamp);
        else
            database.run("DELETE FROM cut_ticks WHERE plan_id = ? AND pattern = ?",
                         {text(plan), static_cast<qint64>(pattern)});
        return true;
    });
}

std::map<std::string, std::map<std::size_t, Stamp>> tickedPatterns(const Database& database)
{
    Rows rows = database.query("SELECT t.plan_id, t.pattern, t.at, t.station, t.person FROM cut_ticks t"
                               " JOIN plans p ON p.id = t.plan_id WHERE p.state = 'planned'");
    std::map<std::string, std::map<std::size_t, Stamp>> ticked;
    while (rows.next())
        ticked[rows.text(0)][static_cast<std::size_t>(rows.number(1))] = {rows.text(2), rows.text(3),
                                                                          rows.text(4)};
    return ticked;
}

std::vector<PlannedPiece> piecesOfPlan(const Database& database, const std::string& plan)
{
    Rows rows = database.query("SELECT c.order_id, c.mark, c.count FROM plan_pieces c"
                               " JOIN pieces p ON p.order_id = c.order_id AND p.mark = c.mark"
                               " WHERE c.plan_id = ? ORDER BY c.order_id, p.number",
                               {text(plan)});
    std::vector<PlannedPiece> pieces;
    while (rows.next())
        pieces.push_back({rows.text(0), rows.text(1), rows.number(2)});
    return pieces;
}

void logStock(const Database& database, const StockEvent& event, const Stamp& stamp)
{
    database.run("INSERT INTO stock_events (key, kind, count, length_nm, plan_id, at, station, person, note)"
                 " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                 {text(event.key), text(event.kind), qint64(event.count), qint64(event.length.inNanometres()),
                  text(event.plan), text(stamp.at), text(stamp.station), text(stamp.person),
                  text(event.note)});
}

bool saveLoad(const Database& database, const std::string& id, const std::string& document,
              const Stamp& stamp, const LoadSummary& summary)
{
    return insertOnce(
        database,
        "INSERT INTO loads (id, made_at, document, truck, bundles, pieces, kilograms, longest_nm)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        {text(id), text(stamp.at), text(document), text(summary.truck), qint64(summary.totals.bundles),
         qint64(summary.totals.pieces), summary.totals.kilograms,
         qint64(summary.totals.longest.inNanometres())});
}

std::optional<std::string> loadDocument(const Database& database, const std::string& id)
{
    return firstText(database.query("SELECT document FROM loads WHERE id = ?", {text(id)}));
}

std::vector<std::string> loadDocuments(const Database& database)
{
    Rows rows = database.query("SELECT document FROM loads ORDER BY made_at, id");
    std::vector<std::string> documents;
    while (rows.next())
        documents.push_back(rows.text(0));
    return documents;
}

bool saveReceipt(const Database& database, const std::string& id, const std::string& load,
                 const std::string& document, const Stamp& stamp)
{
    return insertOnce(database,
                      "INSERT INTO receipts (id, load_id, received_at, document, person)"
                      " VALUES (?, ?, ?, ?, ?)",
                      {text(id), text(load), text(stamp.at), text(document), text(stamp.person)});
}

std::optional<std::string> derivedOrder(const Database& database, const std::string& order)
{
    return firstText(database.query("SELECT derived FROM orders WHERE id = ? ORDER BY revision DESC LIMIT 1",
                                    {text(order)}));
}

std::optional<std::string> derivedIdentity(const Database& database, const std::string& order)
{
    Rows rows = database.query(
        "SELECT hash, received_at FROM orders WHERE id = ? ORDER BY revision DESC LIMIT 1", {text(order)});
    if (!rows.next())
        return std::nullopt;
    return rows.text(0) + ' ' + rows.text(1);
}

std::optional<std::int64_t> currentRevision(const Database& database, const std::string& order)
{
    Rows rows = database.query("SELECT revision FROM current_orders WHERE id = ?", {text(order)});
    if (!rows.next())
        return std::nullopt;
    return rows.number(0);
}

} // namespace lapwright::storage
