#pragma once

#include "site/job.h"
#include "store/connection.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Jobs and the journal of what a person did to them.
namespace lapwright::store {

enum class Shelf { Open, Archived, Deleted };
/// Whether the shop has what is on the tablet.
enum class JobState { Measuring, Sent, Changed };

/// What a list shows of a job.
struct JobLine {
    std::string id;
    std::string name;
    std::string customer;
    std::string address;
    std::string wantedBy;
    std::int64_t runs = 0;
    JobState state = JobState::Measuring;
    std::string changedAt;
};

struct JobFilter {
    /// Words that must all stand in name, customer or address; any case.
    QString words;
    Shelf shelf = Shelf::Open;
    std::optional<JobState> state;
};

/// One thing a person did: its name for the program ("job.new", "job.copy", "job.import", "job.archive",
/// "job.delete", "job.reopen" and "job.back" are of the job as a whole and never undone as others are), its
/// words for the person ("run E3 added"), when.
struct Act {
    std::string kind;
    std::string words;
    std::string at; ///< ISO 8601, UTC
};

/// A job as kept: its canonical text, and the act it stands at.
struct KeptJob {
    std::string document;
    std::int64_t lastAct = 0;
};

/// Newest change first; after `last` of the page before. Work grows with the page, with the number of jobs
/// where words are searched for.
[[nodiscard]] std::vector<JobLine> jobPage(const Connection& connection, const JobFilter& filter,
                                           const std::optional<JobLine>& last, int most);
[[nodiscard]] std::int64_t countJobs(const Connection& connection, const JobFilter& filter);
[[nodiscard]] std::optional<Shelf> shelfOf(const Connection& connection, const std::string& id);
/// The line of one job, on whatever shelf. Nothing if there is no such job.
[[nodiscard]] std::optional<JobLine> jobLine(const Connection& connection, const std::string& id);

/// Keeps a new job whose canonical text is `document`. Throws StoreFailure if its id is there already.
void addJob(const Connection& connection, const site::Job& job, const std::string& document, const Act& act);
/// Puts a job on another shelf; its journal says so. The shelf it stood on.
Shelf moveJob(const Connection& connection, const std::string& id, Shelf shelf, const Act& act);
[[nodiscard]] std::optional<KeptJob> keptJob(const Connection& connection, const std::string& id);

/// Commits one act that turns `kept` into `document`: journal row, document and list line together. What is
/// kept now. Throws StoreFailure if the job was changed by someone else meanwhile, or cannot be written; then
/// nothing is changed.
KeptJob commitAct(const Connection& connection, const site::Job& job, const KeptJob& kept,
                  std::string document, const Act& act);

/// The act that undo would take back, and the one redo would make again.
struct UndoState {
    std::optional<std::string> undo;
    std::optional<std::string> redo;
};
[[nodiscard]] UndoState undoState(const Connection& connection, const std::string& id);

enum class Way { Undo, Redo };
/// The document as it would stand after undo or redo, with the act's words; nothing if there is nothing to
/// take back or to make again. Nothing is changed yet.
struct Step {
    std::string document;
    std::string words;
    std::string kind;
};
[[nodiscard]] std::optional<Step> stepFrom(const Connection& connection, const std::string& id,
                                           const KeptJob& kept, Way way);
/// Commits the step; `job` is what its document says.
KeptJob commitStep(const Connection& connection, const site::Job& job, const KeptJob& kept, const Step& step,
                   Way way, const std::string& at);

/// The document of a job built again from its journal alone, to hold against the one that is kept.
[[nodiscard]] std::string documentFromJournal(const Connection& connection, const std::string& id);

} // namespace lapwright::store
