#include "store/jobs.h"

#include "store/splice.h"
#include "store/values.h"

#include <QRegularExpression>

#include <utility>

namespace lapwright::store {

namespace {

QString wordOf(Shelf shelf)
{
    switch (shelf) {
    case Shelf::Open:
        return "open";
    case Shelf::Archived:
        return "archived";
    case Shelf::Deleted:
        break;
    }
    return "deleted";
}

Shelf shelfNamed(const QString& word)
{
    return word == "open" ? Shelf::Open : word == "archived" ? Shelf::Archived : Shelf::Deleted;
}

QString wordOf(JobState state)
{
    switch (state) {
    case JobState::Measuring:
        return "measuring";
    case JobState::Sent:
        return "sent";
    case JobState::Changed:
        break;
    }
    return "changed";
}

JobState stateOf(const QString& word)
{
    return word == "sent" ? JobState::Sent : word == "changed" ? JobState::Changed : JobState::Measuring;
}

std::int64_t runsOf(const site::Job& job)
{
    std::size_t runs = 0;
    for (const site::Chain& chain : job.chains)
        runs += chain.runs.size();
    return static_cast<std::int64_t>(runs);
}

QString searched(const site::Job& job)
{
    return text(job.name + "\n" + job.customer + "\n" + job.address).toCaseFolded();
}

const QString lineColumns = "id, name, customer, address, wanted_by, runs, state, changed_at";

JobLine lineAt(const Rows& query)
{
    return {string(query.value(0)),
            string(query.value(1)),
            string(query.value(2)),
            string(query.value(3)),
            string(query.value(4)),
            query.value(5).toLongLong(),
            stateOf(query.value(6).toString()),
            string(query.value(7))};
}

/// "WHERE …" of a filter, and its values.
std::pair<QString, QVariantList> where(const JobFilter& filter)
{
    QString clause = " WHERE shelf = ?";
    QVariantList values{wordOf(filter.shelf)};
    if (filter.state) {
        clause += " AND state = ?";
        values << wordOf(*filter.state);
    }
    const QStringList words =
        filter.words.toCaseFolded().split(QRegularExpression("\\s+"), Qt::SkipEmptyParts);
    for (const QString& word : words) {
        clause += " AND instr(words, ?) > 0";
        values << word;
    }
    return {clause, values};
}

std::int64_t addAct(const Connection& connection, const std::string& job, const Act& act, const char* way,
                    const Splice& splice)
{
    const Rows query = connection.query(
        "INSERT INTO acts (job, kind, words, at, way, place, removed, inserted) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        {text(job), text(act.kind), text(act.words), text(act.at), way, static_cast<qint64>(splice.place),
         bytes(splice.removed), bytes(splice.inserted)});
    return query.lastNumber();
}

KeptJob commit(const Connection& connection, const site::Job& job, const KeptJob& kept, std::string document,
               const Act& act, const char* way)
{
    const Splice splice = spliceBetween(kept.document, document);
    return connection.write([&] {
        const std::int64_t seq = addAct(connection, job.id, act, way, splice);
        const int changed = connection.run(
            "UPDATE job_documents SET last_act = ?, document = ? WHERE job = ? AND last_act = ?",
            {static_cast<qint64>(seq), bytes(document), text(job.id), static_cast<qint64>(kept.lastAct)});
        if (changed != 1)
            throw StoreFailure("this job was changed in another window: close it and open it again");
        connection.run(
            "UPDATE jobs SET name = ?, customer = ?, address = ?, wanted_by = ?, words = ?, runs = ?,"
            " changed_at = ?, state = CASE state WHEN 'sent' THEN 'changed' ELSE state END WHERE id = ?",
            {text(job.name), text(job.customer), text(job.address), text(job.wantedBy), searched(job),
             static_cast<qint64>(runsOf(job)), text(act.at), text(job.id)});
        return KeptJob{std::move(document), seq};
    });
}

/// Kinds of act on a job as a whole, which leave its document alone or make it; every other kind changes the
/// document and can be undone.
const QString actsOnTheJobItself =
    "'job.new', 'job.copy', 'job.import', 'job.archive', 'job.delete', 'job.reopen', 'job.back'";

/// The acts on a document that undo and redo would take, from the whole journal of a job.
struct Stacks {
    std::vector<std::int64_t> done;
    std::vector<std::int64_t> undone;
};

Stacks stacksOf(const Connection& connection, const std::string& id)
{
    Stacks stacks;
    Rows query = connection.query("SELECT seq, way FROM acts WHERE job = ? AND kind NOT IN (" +
                                      actsOnTheJobItself + ") ORDER BY seq",
                                  {text(id)});
    while (query.next()) {
        const QString way = query.value(1).toString();
        if (way == "do") {
            stacks.done.push_back(query.value(0).toLongLong());
            stacks.undone.clear();
        } else {
            std::vector<std::int64_t>& from = way == "undo" ? stacks.done : stacks.undone;
            std::vector<std::int64_t>& to = way == "undo" ? stacks.undone : stacks.done;
            if (from.empty())
                throw StoreFailure("the journal of this job takes back more than was done: restore a backup");
            to.push_back(from.back());
            from.pop_back();
        }
    }
    return stacks;
}

std::optional<std::string> wordsOfLast(const Connection& connection, const std::vector<std::int64_t>& acts)
{
    if (acts.empty())
        return std::nullopt;
    Rows query = connection.query("SELECT words FROM acts WHERE seq = ?", {static_cast<qint64>(acts.back())});
    query.next();
    return string(query.value(0));
}

Splice spliceAt(const Rows& query, int first)
{
    return {static_cast<std::size_t>(query.value(first).toLongLong()), raw(query.value(first + 1)),
            raw(query.value(first + 2))};
}

} // namespace

std::vector<JobLine> jobPage(const Connection& connection, const JobFilter& filter,
                             const std::optional<JobLine>& last, int most)
{
    auto [clause, values] = where(filter);
    if (last) {
        clause += " AND (changed_at < ? OR (changed_at = ? AND id > ?))";
        values << text(last->changedAt) << text(last->changedAt) << text(last->id);
    }
    values << most;
    Rows query = connection.query(
        "SELECT " + lineColumns + " FROM jobs" + clause + " ORDER BY changed_at DESC, id LIMIT ?", values);
    std::vector<JobLine> lines;
    while (query.next())
        lines.push_back(lineAt(query));
    return lines;
}

std::int64_t countJobs(const Connection& connection, const JobFilter& filter)
{
    const auto [clause, values] = where(filter);
    Rows query = connection.query("SELECT count(*) FROM jobs" + clause, values);
    query.next();
    return query.value(0).toLongLong();
}

std::optional<JobLine> jobLine(const Connection& connection, const std::string& id)
{
    Rows query = connection.query("SELECT " + lineColumns + " FROM jobs WHERE id = ?", {text(id)});
    if (!query.next())
        return std::nullopt;
    return lineAt(query);
}

void addJob(const Connection& connection, const site::Job& job, const std::string& document, const Act& act)
{
    connection.write([&] {
        connection.run(
            "INSERT INTO jobs (id, name, customer, address, wanted_by, words, runs, shelf, state, changed_at)"
            " VALUES (?, ?, ?, ?, ?, ?, ?, 'open', 'measuring', ?)",
            {text(job.id), text(job.name), text(job.customer), text(job.address), text(job.wantedBy),
             searched(job), static_cast<qint64>(runsOf(job)), text(act.at)});
        const std::int64_t seq = addAct(connection, job.id, act, "do", {0, {}, document});
        connection.run("INSERT INTO job_documents (job, last_act, document) VALUES (?, ?, ?)",
                       {text(job.id), static_cast<qint64>(seq), bytes(document)});
    });
}

std::optional<Shelf> shelfOf(const Connection& connection, const std::string& id)
{
    Rows query = connection.query("SELECT shelf FROM jobs WHERE id = ?", {text(id)});
    return query.next() ? std::optional(shelfNamed(query.value(0).toString())) : std::nullopt;
}

Shelf moveJob(const Connection& connection, const std::string& id, Shelf shelf, const Act& act)
{
    return connection.write([&] {
        const std::optional<Shelf> from = shelfOf(connection, id);
        if (!from)
            throw StoreFailure("there is no such job");
        connection.run("UPDATE jobs SET shelf = ? WHERE id = ?", {wordOf(shelf), text(id)});
        addAct(connection, id, act, "do", {});
        return *from;
    });
}

std::optional<KeptJob> keptJob(const Connection& connection, const std::string& id)
{
    Rows query = connection.query("SELECT document, last_act FROM job_documents WHERE job = ?", {text(id)});
    if (!query.next())
        return std::nullopt;
    return KeptJob{raw(query.value(0)), query.value(1).toLongLong()};
}

KeptJob commitAct(const Connection& connection, const site::Job& job, const KeptJob& kept,
                  std::string document, const Act& act)
{
    return commit(connection, job, kept, std::move(document), act, "do");
}

UndoState undoState(const Connection& connection, const std::string& id)
{
    const Stacks stacks = stacksOf(connection, id);
    return {wordsOfLast(connection, stacks.done), wordsOfLast(connection, stacks.undone)};
}

std::optional<Step> stepFrom(const Connection& connection, const std::string& id, const KeptJob& kept,
                             Way way)
{
    const Stacks stacks = stacksOf(connection, id);
    const std::vector<std::int64_t>& acts = way == Way::Undo ? stacks.done : stacks.undone;
    if (acts.empty())
        return std::nullopt;
    Rows query = connection.query("SELECT kind, words, place, removed, inserted FROM acts WHERE seq = ?",
                                  {static_cast<qint64>(acts.back())});
    query.next();
    const Splice splice = spliceAt(query, 2);
    return Step{spliced(kept.document, way == Way::Undo ? splice.reversed() : splice), string(query.value(1)),
                string(query.value(0))};
}

KeptJob commitStep(const Connection& connection, const site::Job& job, const KeptJob& kept, const Step& step,
                   Way way, const std::string& at)
{
    return commit(connection, job, kept, step.document, {step.kind, step.words, at},
                  way == Way::Undo ? "undo" : "redo");
}

std::string documentFromJournal(const Connection& connection, const std::string& id)
{
    std::string document;
    Rows query =
        connection.query("SELECT place, removed, inserted FROM acts WHERE job = ? ORDER BY seq", {text(id)});
    while (query.next())
        document = spliced(document, spliceAt(query, 0));
    return document;
}

} // namespace lapwright::store
