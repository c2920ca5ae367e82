#include "site/merge.h"
#include "command.h"
#include "documents/envelope.h"
#include "documents/job.h"
#include "documents/order.h"
#include "input.h"
#include "storage/document_file.h"

#include <algorithm>
#include <utility>

/// `merge`: what two tablets measured at one house, in one job.
namespace lapwright::command {

namespace {

/// The job at `path`, or that of the order there.
Result<documents::JobDocument> jobAt(const std::string& path)
{
    const auto text = storage::readDocument(path);
    if (!text.ok())
        return text.errors();
    const auto format = documents::formatOf(*text);
    if (!format.ok() || *format != "lapwright/order") {
        auto job = documents::readJob(*text);
        return job.ok() ? std::move(job) : Result<documents::JobDocument>(job.errorsWithin(nameOf(path)));
    }
    auto order = documents::readOrder(*text);
    if (!order.ok())
        return order.errorsWithin(nameOf(path));
    documents::JobDocument job{std::move(order->value.job), {}};
    if (const auto inside = order->extras.inside.find("job"); inside != order->extras.inside.end())
        job.extras = inside->second;
    return job;
}

Exit run(const QCommandLineParser& options)
{
    const auto first = jobAt(argument(options));
    const auto second = jobAt(argument(options, 1));
    if (!first.ok() || !second.ok()) {
        tell(first.ok() ? second.errors() : first.errors());
        return Exit::BadInput;
    }
    site::MergedJob merged = site::mergeJobs(first->value, second->value);
    const Style style = styleOf(options);
    tell(merged.findings, nameOf(argument(options, 1)), style);
    const auto runs =
        std::count_if(merged.findings.begin(), merged.findings.end(),
                      [](const rules::Finding& finding) { return finding.code == "site.merge.alike"; });
    const std::string path = options.isSet("output") ? text(options, "output") : "-";
    const auto written =
        storage::writeDocument(path, documents::writeJob({std::move(merged.job), first->extras}));
    if (!written.ok()) {
        tell(written.errors());
        return Exit::CouldNot;
    }
    return runs > 0 ? Exit::Blocked : Exit::Done;
}

} // namespace

Subcommand mergeCommand()
{
    return {
        "merge",
        "JOB JOB",
        "bring together what two tablets measured at one house",
        "Each JOB is a job document (lapwright/job) or an order (lapwright/order). The job written keeps the first's "
        "identity, metal and limits and holds the chains of both; a chain that is in both with all its runs is kept "
        "once. Runs of one kind and length may be one edge measured twice: all are kept and told, and the exit status "
        "is 1. Take the merged job off into the first's order (`lapwright takeoff`), and cancel the second's.",
        {outputOption("Write the job to this file (- for standard output, which is the default).", "JOB")},
        2,
        2,
        run};
}

} // namespace lapwright::command
