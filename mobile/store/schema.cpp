#include "store/schema.h"

namespace lapwright::store {

namespace {

// Times are ISO 8601 in UTC. Documents are bytes: the journal cuts them anywhere, also inside a character.
QStringList first()
{
    return {
        "CREATE TABLE settings (key TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID",
        // What lists show and search; the document itself stands apart so that a long list stays small.
        "CREATE TABLE jobs (id TEXT PRIMARY KEY, name TEXT NOT NULL, customer TEXT NOT NULL, address TEXT NOT NULL,"
        " wanted_by TEXT NOT NULL, words TEXT NOT NULL, runs INTEGER NOT NULL,"
        " shelf TEXT NOT NULL CHECK (shelf IN ('open', 'archived', 'deleted')),"
        " state TEXT NOT NULL CHECK (state IN ('measuring', 'sent', 'changed')), changed_at TEXT NOT NULL)",
        "CREATE INDEX jobs_by_change ON jobs (shelf, changed_at DESC, id)",
        "CREATE TABLE job_documents (job TEXT PRIMARY KEY REFERENCES jobs (id), last_act INTEGER NOT NULL,"
        " document BLOB NOT NULL)",
        // Append only. An act replaces `removed` at byte `place` of the canonical document by `inserted`.
        "CREATE TABLE acts (seq INTEGER PRIMARY KEY AUTOINCREMENT, job TEXT NOT NULL REFERENCES jobs (id),"
        " kind TEXT NOT NULL, words TEXT NOT NULL, at TEXT NOT NULL, way TEXT NOT NULL CHECK (way IN ('do', 'undo', "
        "'redo')),"
        " place INTEGER NOT NULL, removed BLOB NOT NULL, inserted BLOB NOT NULL)",
        "CREATE INDEX acts_by_job ON acts (job, seq)",
        "CREATE TABLE orders (job TEXT NOT NULL REFERENCES jobs (id), revision INTEGER NOT NULL, hash TEXT NOT NULL,"
        " sent_at TEXT NOT NULL, document BLOB NOT NULL, PRIMARY KEY (job, revision))",
        "CREATE TABLE loads (id TEXT PRIMARY KEY, truck TEXT NOT NULL, made_at TEXT NOT NULL, opened_at TEXT NOT NULL,"
        " document BLOB NOT NULL)",
        "CREATE TABLE receipt_events (seq INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE,"
        " load TEXT NOT NULL REFERENCES loads (id), order_id TEXT NOT NULL, mark TEXT NOT NULL, found TEXT NOT NULL,"
        " count INTEGER NOT NULL CHECK (count > 0), at TEXT NOT NULL, person TEXT NOT NULL, note TEXT NOT NULL,"
        " withdrawn INTEGER NOT NULL DEFAULT 0, sent INTEGER NOT NULL DEFAULT 0)",
        "CREATE INDEX receipt_events_by_load ON receipt_events (load, seq)",
    };
}

/// Whose load lists are taken without asking, and which others a person took knowingly.
QStringList second()
{
    return {
        "CREATE TABLE shops (key TEXT PRIMARY KEY, trusted_at TEXT NOT NULL, refused_at TEXT NOT NULL) WITHOUT ROWID",
        "ALTER TABLE loads ADD COLUMN accepted_at TEXT NOT NULL DEFAULT ''",
    };
}

} // namespace

QStringList schemaAfter(int from)
{
    if (from == 0)
        return first();
    if (from == 1)
        return second();
    return {};
}

} // namespace lapwright::store
