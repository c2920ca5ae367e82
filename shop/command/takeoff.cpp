#include "acts/catalogue.h"
#include "acts/incoming.h"
#include "acts/words.h"
#include "command.h"
#include "documents/job.h"
#include "documents/order.h"
#include "input.h"
#include "pieces/summary.h"
#include "pieces/why.h"
#include "storage/catalogue.h"
#include "storage/document_file.h"

#include <QFileInfo>

#include <algorithm>

namespace lapwright::command {

namespace {

using documents::OrderDocument;

std::string padded(const std::string& text, int width)
{
    return QString::fromStdString(text).leftJustified(width).toStdString();
}

/// Pieces that follow one another and differ in nothing but their ordinal stand in one line.
bool alike(const pieces::Piece& one, const pieces::Piece& other)
{
    return one.run == other.run && one.profile == other.profile && one.blankLength == other.blankLength &&
           one.count == other.count && one.spare == other.spare;
}

void printSummary(const pieces::Order& order, const Style& style)
{
    print(order.job.name + ", " + order.job.address);
    print("");
    print(padded("mark", 18) + padded("trim", 32) + padded("profile", 9) + padded("girth", 12) +
          padded("length", 16) + "count");
    double kilograms = 0.0;
    std::int64_t count = 0;
    for (std::size_t first = 0, next = 0; first < order.pieces.size(); first = next) {
        const pieces::Piece& piece = order.pieces[first];
        std::int64_t together = 0;
        for (next = first; next < order.pieces.size() && alike(piece, order.pieces[next]); ++next)
            together += order.pieces[next].count;
        const std::string& last = order.pieces[next - 1].mark;
        const pieces::OrderedProfile& profile = order.profiles[piece.profile];
        print(padded(piece.mark == last ? last : piece.mark + " to " + last, 18) +
              padded(profile.profile.name, 32) + padded(profile.id, 9) +
              padded(write(profile.girth, style), 12) + padded(write(piece.blankLength, style), 16) +
              std::to_string(together));
        kilograms += pieces::kilogramsEach(order, piece) * static_cast<double>(together);
        count += together;
    }
    print("");
    print(counted(count, "piece") + " of " +
          counted(static_cast<std::int64_t>(order.profiles.size()), "profile") + ", " +
          writeMass(kilograms, style) + ", " + acts::describe(order.job.material));
}

/// The order takes the job's identity. Where `path` already holds an order of it, this is its next revision,
/// or the same one if nothing changed. What that order says beyond what this program knows stays.
Result<OrderDocument> withIdentity(pieces::Order order, const documents::Extras& ofJob,
                                   const std::string& path, bool cancelled)
{
    order.id = order.job.id;
    order.cancelled = cancelled;
    OrderDocument document{std::move(order), {}};
    if (!ofJob.empty())
        document.extras.inside["job"] = ofJob;
    if (path.empty() || path == "-" || !QFileInfo::exists(QString::fromStdString(path)))
        return document;
    const auto before = readFrom(path, documents::readOrder);
    if (!before.ok())
        return before.errors();
    if (before->value.id != document.value.id)
        return Error{path, "an order of another job (" + before->value.job.name + ")", "another file name"};
    document.extras.members = before->extras.members;
    for (const auto& [name, inner] : before->extras.inside)
        if (name != "job")
            document.extras.inside.emplace(name, inner);
    document.value.revision = before->value.revision;
    document.value.previousHash = before->value.previousHash;
    std::string hash = documents::revisionHash(*before);
    if (documents::revisionHash(document) != hash) {
        document.value.revision = before->value.revision + 1;
        document.value.previousHash = std::move(hash);
    }
    return document;
}

Exit explainMark(const pieces::Order& order, const std::string& mark, const Style& style)
{
    const auto why = pieces::explain(order, mark);
    if (!why) {
        tell("lapwright: no piece " + mark + " in this job; `lapwright takeoff JOB` lists the marks");
        return Exit::BadInput;
    }
    printLines(pieces::writeDerivation(*why, style));
    return Exit::Done;
}

Exit run(const QCommandLineParser& options)
{
    const auto job = readFrom(argument(options), documents::readJob);
    if (!job.ok()) {
        tell(job.errors());
        return Exit::BadInput;
    }
    const auto catalogue = storage::loadCatalogue(libraryFolders(options));
    if (!catalogue.ok()) {
        tell(catalogue.errors());
        return Exit::BadInput;
    }
    const Style style = styleOf(options);
    pieces::Order order = acts::takeOff(job->value, *catalogue);
    if (options.isSet("why"))
        return explainMark(order, command::text(options, "why"), style);
    const std::string path = command::text(options, "output");
    if (options.isSet("cancel") && path.empty() && !options.isSet("json")) {
        tell("--cancel: found no -o, expected the order's file, whose next revision cancels it");
        return Exit::BadInput;
    }
    const auto document = withIdentity(std::move(order), job->extras, path, options.isSet("cancel"));
    if (!document.ok()) {
        tell(document.errors());
        return Exit::BadInput;
    }
    const rules::Findings& findings = document->value.findings;
    tell(findings, nameOf(argument(options)), style, options.isSet("advice") ? Advice::Given : Advice::None);
    const std::string text =
        path.empty() && !options.isSet("json") ? std::string() : documents::writeOrder(*document);
    if (!path.empty()) {
        const auto written = storage::writeDocument(path, text);
        if (!written.ok()) {
            tell(written.errors());
            return Exit::CouldNot;
        }
    }
    if (path != "-" && options.isSet("json"))
        printDocument(text);
    else if (path != "-")
        printSummary(document->value, style);
    return rules::anyBlocks(findings) ? Exit::Blocked : Exit::Done;
}

} // namespace

Subcommand takeoffCommand()
{
    return {
        "takeoff",
        "JOB",
        "turn a measured job into an order: findings, profiles, pieces",
        "JOB is a job document (lapwright/job), or - for standard input. Findings go to standard error, the list of "
        "pieces to standard output. With -o the order is written to a file; if that file already holds an order of "
        "this job, it becomes the next revision, or stays as it is when nothing changed. With --cancel that revision "
        "says that nothing of the order is to be made.",
        {libraryOption(),
         outputOption("Write the order document to this file (- for standard output).", "ORDER"),
         {"cancel", "Write the revision that cancels the order: the shop makes nothing more of it."},
         {"advice", "Say with each finding why it matters and what to do."},
         {"why", "Print where girth, angles, length and count of this piece come from.", "MARK"}},
        1,
        1,
        run};
}

} // namespace lapwright::command
