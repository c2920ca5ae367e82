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

} // namespace

QStringList migration(int from)
{
    if (from == 0)
        return first();
    return {};
}

} // namespace lapwright::storage
