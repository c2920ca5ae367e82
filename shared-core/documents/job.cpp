#include "documents/job.h"

#include "documents/describe_site.h"
#include "schedule/civil.h"

#include <set>

namespace lapwright::documents {
namespace {

std::string inQuotes(const std::string& text)
{
    std::string result;
    writeJsonText(std::string_view(text).substr(0, 60), result);
    return result;
}

class JobCheck {
public:
    explicit JobCheck(Errors& errors) : errors_(errors) {}

    void check(const site::Job& job)
    {
        // The schema knows how a date looks, not which there are.
        if (!job.wantedBy.empty() && !schedule::readDate(job.wantedBy).ok())
            report("/wanted_by", inQuotes(job.wantedBy), "a day there is, like 2026-05-31");
        for (std::size_t index = 0; index < job.chains.size(); ++index)
            checkChain(job.chains[index], "/chains/" + std::to_string(index));
    }

private:
    void report(std::string place, std::string found, std::string expected)
    {
        constexpr std::size_t most = 20;
        if (errors_.size() < most)
            errors_.push_back({std::move(place), std::move(found), std::move(expected)});
    }

    void checkChain(const site::Chain& chain, const std::string& place)
    {
        if (!chains_.insert(chain.id).second)
            report(place + "/id", inQuotes(chain.id) + " again", "an id of its own for each chain");
        const std::size_t corners =
            chain.closed || chain.runs.empty() ? chain.runs.size() : chain.runs.size() - 1;
        if (chain.corners.size() != corners)
            report(place + "/corners", std::to_string(chain.corners.size()) + " corners",
                   std::to_string(corners) + " between " + std::to_string(chain.runs.size()) + " runs of " +
                       (chain.closed ? "a closed" : "an open") + " chain");
        for (std::size_t index = 0; index < chain.runs.size(); ++index)
            checkRun(chain.runs[index], place, index);
    }

    void checkRun(const site::Run& run, const std::string& chain, std::size_t index)
    {
        const auto place = [&] { return chain + "/runs/" + std::to_string(index); };
        if (!runs_.insert(run.id).second)
            report(place() + "/id", inQuotes(run.id) + " again", "an id of its own for each run of the job");
        if (run.counts >= run.lengths.size() && run.counts != 0)
            report(place() + "/counts", std::to_string(run.counts),
                   "the position of a measure in lengths, counted from 0");
    }

    Errors& errors_;
    std::set<std::string> chains_;
    std::set<std::string> runs_;
};

} // namespace

void describe(ReadFields& fields, site::Corner& corner)
{
    std::string kind;
    fields("kind", kind);
    if (kind == "square_inside") {
        corner = site::SquareInside();
    } else if (kind == "angle") {
        site::InteriorAngle measured;
        fields("degrees", measured.angle);
        fields("entered", measured.entered, std::string());
        corner = measured;
    } else if (kind == "taped") {
        site::TapedTriangle triangle;
        fields("before", triangle.before);
        fields("after", triangle.after);
        fields("diagonal", triangle.diagonal);
        fields("inside", triangle.inside, false);
        corner = triangle;
    } else {
        corner = site::SquareOutside();
    }
}

void describe(WriteFields& fields, const site::Corner& corner)
{
    if (const auto* measured = std::get_if<site::InteriorAngle>(&corner)) {
        fields("kind", std::string("angle"));
        fields("degrees", measured->angle);
        fields("entered", measured->entered, std::string());
    } else if (const auto* triangle = std::get_if<site::TapedTriangle>(&corner)) {
        fields("kind", std::string("taped"));
        fields("before", triangle->before);
        fields("after", triangle->after);
        fields("diagonal", triangle->diagonal);
        fields("inside", triangle->inside, false);
    } else {
        const bool inside = std::holds_alternative<site::SquareInside>(corner);
        fields("kind", std::string(inside ? "square_inside" : "square_outside"));
    }
}

void checkJob(const site::Job& job, Errors& errors)
{
    JobCheck(errors).check(job);
}

Result<JobDocument> readJob(std::string_view text)
{
    return readDocument<site::Job>(text, kinds::job, checkJob);
}

std::string writeJob(const JobDocument& job, Layout layout)
{
    return writeDocument(kinds::job, job, layout);
}

} // namespace lapwright::documents
