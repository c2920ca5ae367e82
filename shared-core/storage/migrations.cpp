#include "storage/migrations.h"

namespace lapwright::storage {

namespace {

// Lengths are nanometres. Times are ISO 8601 in UTC, handed in by the program. Documents are kept word for
// word.
const QStringList& first()
{
    static const QStringList statements = {
        "CREATE TABLE orders (id TEXT NOT NULL, revision INTEGER NOT NULL CHECK (revision >= 1), hash TEXT "
        "NOT NULL,"
        " previous_hash TEXT NOT NULL, job_name TEXT NOT NULL, customer TEXT NOT NULL, wanted_by TEXT NOT "
        "NULL,"
        " received_at TEXT NOT NULL, document TEXT NOT NULL, derived TEXT NOT NULL, PRIMARY KEY (id, "
        "revision))",
        // What a person must look at before it counts: same revision with another content, a change after
        // cutting.
        "CREATE TABLE quarantine (hash TEXT PRIMARY KEY, order_id TEXT NOT NULL, revision INTEGER NOT NULL,"
        " reason TEXT NOT NULL, received_at TEXT NOT NULL, document TEXT NOT NULL)",
        // The pieces of the revision that counts; those of an older one that were begun stay, withdrawn.
        "CREATE TABLE pieces (order_id TEXT NOT NULL, mark TEXT NOT NULL, revision INTEGER NOT NULL,"
        " run TEXT NOT NULL, profile TEXT NOT NULL, metal TEXT NOT NULL, gauge TEXT NOT NULL, colour TEXT "
        "NOT NULL,"
        " girth_nm INTEGER NOT NULL, length_nm INTEGER NOT NULL, grams INTEGER NOT NULL, count INTEGER NOT NULL, make TEXT NOT NULL,"
        " withdrawn INTEGER NOT NULL DEFAULT 0, PRIMARY KEY (order_id, mark))",
        "CREATE TABLE piece_events (seq INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE,"
        " order_id TEXT NOT NULL, mark TEXT NOT NULL, kind TEXT NOT NULL, state TEXT NOT NULL,"
        " count INTEGER NOT NULL CHECK (count > 0), at TEXT NOT NULL, station TEXT NOT NULL, person TEXT NOT "
        "NULL,"
        " note TEXT NOT NULL, FOREIGN KEY (order_id, mark) REFERENCES pieces (order_id, mark))",
        "CREATE INDEX piece_events_by_piece ON piece_events (order_id, mark, seq)",
        // Derived from piece_events in the same transaction; can be built again from them at any time.
        "CREATE TABLE piece_counts (order_id TEXT NOT NULL, mark TEXT NOT NULL, state TEXT NOT NULL,"
        " count INTEGER NOT NULL CHECK (count >= 0), PRIMARY KEY (order_id, mark, state)) WITHOUT ROWID",
        "CREATE INDEX piece_counts_by_state ON piece_counts (state) WHERE count > 0",
        "CREATE TABLE plans (id TEXT PRIMARY KEY, metal TEXT NOT NULL, gauge TEXT NOT NULL, colour TEXT NOT "
        "NULL,"
        " state TEXT NOT NULL CHECK (state IN ('planned', 'cut', 'replaced')), made_at TEXT NOT NULL,"
        " document TEXT NOT NULL)",
        "CREATE TABLE loads (id TEXT PRIMARY KEY, made_at TEXT NOT NULL, document TEXT NOT NULL)",
        "CREATE TABLE receipts (id TEXT PRIMARY KEY, load_id TEXT NOT NULL, received_at TEXT NOT NULL,"
        " document TEXT NOT NULL)",
        "CREATE TABLE settings (key TEXT PRIMARY KEY, value TEXT NOT NULL)",
    };
    return statements;
}

/// What lists and reports of a long history need: the orders that count with what a person said of them, sums
/// by order and shop, which pieces a plan cuts, what was done to stock, what arrived.
const QStringList& second()
{
    static const QStringList statements = {
        "ALTER TABLE pieces ADD COLUMN number INTEGER NOT NULL DEFAULT 0",
        "UPDATE pieces SET number = rowid",
        "CREATE TABLE current_orders (id TEXT PRIMARY KEY, revision INTEGER NOT NULL, job_name TEXT NOT NULL,"
        " customer TEXT NOT NULL, address TEXT NOT NULL, wanted_by TEXT NOT NULL, due TEXT NOT NULL,"
        " first_received_at TEXT NOT NULL DEFAULT '',"
        " priority INTEGER NOT NULL DEFAULT 0, held INTEGER NOT NULL DEFAULT 0,"
        " cancelled INTEGER NOT NULL DEFAULT 0, unfinished INTEGER NOT NULL DEFAULT 0)",
        "INSERT INTO current_orders (id, revision, job_name, customer, address, wanted_by, due, first_received_at)"
        " SELECT o.id, o.revision, o.job_name, o.customer, '', o.wanted_by,"
        " CASE WHEN o.wanted_by = '' THEN '9999' ELSE o.wanted_by END,"
        " (SELECT MIN(f.received_at) FROM orders f WHERE f.id = o.id) FROM orders o"
        " WHERE o.revision = (SELECT MAX(m.revision) FROM orders m WHERE m.id = o.id)",
        "CREATE INDEX current_orders_by_due ON current_orders (due, job_name, id)",
        "CREATE INDEX current_orders_unfinished ON current_orders (due, job_name, id) WHERE unfinished > 0",
        "CREATE INDEX current_orders_held ON current_orders (due, job_name, id) WHERE held > 0",
        "CREATE INDEX current_orders_by_address ON current_orders (address) WHERE address <> ''",
        "ALTER TABLE piece_counts ADD COLUMN due TEXT NOT NULL DEFAULT '9999'",
        "ALTER TABLE piece_counts ADD COLUMN number INTEGER NOT NULL DEFAULT 0",
        "UPDATE piece_counts SET due = (SELECT o.due FROM current_orders o WHERE o.id = piece_counts.order_id),"
        " number = (SELECT p.number FROM pieces p WHERE p.order_id = piece_counts.order_id"
        " AND p.mark = piece_counts.mark)",
        "DROP INDEX piece_counts_by_state",
        "CREATE INDEX piece_counts_by_state ON piece_counts (state, due, order_id, number, mark) WHERE count > 0",
        "CREATE TABLE order_counts (order_id TEXT NOT NULL, state TEXT NOT NULL,"
        " count INTEGER NOT NULL CHECK (count >= 0), PRIMARY KEY (order_id, state)) WITHOUT ROWID",
        "INSERT INTO order_counts (order_id, state, count)"
        " SELECT order_id, state, SUM(count) FROM piece_counts GROUP BY order_id, state",
        "CREATE TABLE shop_counts (state TEXT PRIMARY KEY, count INTEGER NOT NULL CHECK (count >= 0))",
        "INSERT INTO shop_counts (state, count) SELECT state, SUM(count) FROM order_counts GROUP BY state",
        "UPDATE current_orders SET unfinished = (SELECT COALESCE(SUM(CASE WHEN c.state = 'received' THEN 0"
        " WHEN c.state = 'remade' THEN -c.count ELSE c.count END), 0)"
        " FROM order_counts c WHERE c.order_id = current_orders.id)",
        "CREATE INDEX piece_events_by_order ON piece_events (order_id, seq)",
        // Plans of an older program do not say which pieces they cut in a way that can be searched.
        "UPDATE plans SET state = 'replaced' WHERE state = 'planned'",
        "ALTER TABLE plans ADD COLUMN pieces INTEGER NOT NULL DEFAULT 0",
        "ALTER TABLE plans ADD COLUMN stock_area DOUBLE PRECISION NOT NULL DEFAULT 0",
        "ALTER TABLE plans ADD COLUMN blank_area DOUBLE PRECISION NOT NULL DEFAULT 0",
        "ALTER TABLE plans ADD COLUMN remnant_area DOUBLE PRECISION NOT NULL DEFAULT 0",
        "ALTER TABLE plans ADD COLUMN cut_at TEXT NOT NULL DEFAULT ''",
        "CREATE INDEX plans_by_state ON plans (state, made_at, id)",
        "CREATE TABLE plan_pieces (plan_id TEXT NOT NULL REFERENCES plans (id), order_id TEXT NOT NULL,"
        " mark TEXT NOT NULL, count INTEGER NOT NULL CHECK (count > 0), PRIMARY KEY (plan_id, order_id, mark))",
        "CREATE INDEX plan_pieces_by_order ON plan_pieces (order_id, plan_id)",
        "ALTER TABLE loads ADD COLUMN truck TEXT NOT NULL DEFAULT ''",
        "ALTER TABLE loads ADD COLUMN bundles INTEGER NOT NULL DEFAULT 0",
        "ALTER TABLE loads ADD COLUMN pieces INTEGER NOT NULL DEFAULT 0",
        "ALTER TABLE loads ADD COLUMN kilograms DOUBLE PRECISION NOT NULL DEFAULT 0",
        "ALTER TABLE loads ADD COLUMN longest_nm INTEGER NOT NULL DEFAULT 0",
        "CREATE INDEX loads_by_time ON loads (made_at, id)",
        "ALTER TABLE receipts ADD COLUMN person TEXT NOT NULL DEFAULT ''",
        "CREATE INDEX receipts_by_time ON receipts (received_at, id)",
        "ALTER TABLE quarantine ADD COLUMN dismissed INTEGER NOT NULL DEFAULT 0",
        "CREATE INDEX quarantine_open ON quarantine (received_at, hash) WHERE dismissed = 0",
        "CREATE TABLE arrivals (seq INTEGER PRIMARY KEY AUTOINCREMENT, order_id TEXT NOT NULL,"
        " revision INTEGER NOT NULL, hash TEXT NOT NULL, outcome TEXT NOT NULL, reasons TEXT NOT NULL,"
        " at TEXT NOT NULL, station TEXT NOT NULL, person TEXT NOT NULL)",
        "CREATE TABLE stock_events (seq INTEGER PRIMARY KEY AUTOINCREMENT, key TEXT NOT NULL, kind TEXT NOT NULL,"
        " count INTEGER NOT NULL, length_nm INTEGER NOT NULL, plan_id TEXT NOT NULL, at TEXT NOT NULL,"
        " station TEXT NOT NULL, person TEXT NOT NULL, note TEXT NOT NULL)",
        "CREATE INDEX stock_events_by_key ON stock_events (key, seq)",
        "CREATE TABLE data_version (version INTEGER NOT NULL)",
        "INSERT INTO data_version (version) VALUES (0)",
    };
    return statements;
}

/// Single marks that a person keeps out of every batch (current_orders.held keeps a whole order out); which
/// sheets of a waiting plan are cut.
const QStringList& third()
{
    static const QStringList statements = {
        "CREATE TABLE held_pieces (order_id TEXT NOT NULL, mark TEXT NOT NULL, PRIMARY KEY (order_id, mark))",
        "CREATE TABLE cut_ticks (plan_id TEXT NOT NULL REFERENCES plans (id), pattern INTEGER NOT NULL,"
        " PRIMARY KEY (plan_id, pattern))",
    };
    return statements;
}

/// Tablets whose signatures count, and those that were lost.
const QStringList& fourth()
{
    static const QStringList statements = {
        "CREATE TABLE tablets (key TEXT PRIMARY KEY, name TEXT NOT NULL, paired_at TEXT NOT NULL,"
        " person TEXT NOT NULL, revoked_at TEXT NOT NULL)"};
    return statements;
}

/// Who ticked a sheet as cut, where and when; empty for what was ticked before.
const QStringList& fifth()
{
    static const QStringList statements = {
        "ALTER TABLE cut_ticks ADD COLUMN at TEXT NOT NULL DEFAULT ''",
        "ALTER TABLE cut_ticks ADD COLUMN station TEXT NOT NULL DEFAULT ''",
        "ALTER TABLE cut_ticks ADD COLUMN person TEXT NOT NULL DEFAULT ''"};
    return statements;
}

} // namespace

QStringList migration(int from)
{
    if (from == 0)
        return first();
    if (from == 1)
        return second();
    if (from == 2)
        return third();
    if (from == 3)
        return fourth();
    if (from == 4)
        return fifth();
    return {};
}

} // namespace lapwright::storage
