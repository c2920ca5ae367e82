#include "acts/arrivals.h"
#include "acts/catalogue.h"
#include "acts/drop_folder.h"
#include "command.h"
#include "input.h"
#include "results.h"
#include "storage/catalogue.h"
#include "storage/document_file.h"

#include <QThread>

#include <algorithm>
#include <cstdio>
#include <iterator>

namespace lapwright::command {

namespace {

using storage::Arrival;

std::string joined(const std::vector<std::string>& names)
{
    std::string all;
    for (const std::string& name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all;
}

class Receiver {
public:
    Receiver(const storage::Database& database, const pieces::Catalogue& catalogue,
             const QCommandLineParser& options)
        : database_(database), catalogue_(catalogue), options_(options), style_(styleOf(options)),
          results_(options)
    {
    }

    void take(const std::string& path)
    {
        const auto text = storage::readDocument(path);
        if (!text.ok())
            return refuse(text.errors());
        takeIn(*text, path);
    }

    /// The same of a file in a watched folder: what a watch before this one took or set aside stays as it is,
    /// unless a person asks for it.
    void takeNew(const std::string& path)
    {
        const auto text = storage::readDocument(path);
        if (!text.ok())
            return refuse(text.errors());
        if (options_.isSet("accept") || !acts::isKnown(database_, *text))
            takeIn(*text, path);
    }

    [[nodiscard]] Exit finish() const
    {
        results_.finish();
        return worst_;
    }

private:
    void takeIn(const std::string& text, const std::string& path)
    {
        const auto arrived =
            acts::receiveOrder(database_, catalogue_, text, stampOf(options_), options_.isSet("accept"));
        if (!arrived.ok())
            return refuse(arrived.errorsWithin(nameOf(path)));
        // Of runs that block little can be derived: what differs from it would bury why.
        if (arrived->arrival)
            tell(arrived->differences, nameOf(path) + " and what the shop derives from its runs", style_);
        else {
            tell(arrived->findings, nameOf(path), style_);
            tell(nameOf(path) + ": not taken in, because its runs have findings that block");
            return raise(Exit::Blocked);
        }
        tell(warningsOf(arrived->findings), nameOf(path), style_);
        report(*arrived, *arrived->arrival);
    }

    void report(const acts::Arrived& arrived, const Arrival& arrival)
    {
        const std::string outcome(acts::inWords(arrival.outcome));
        results_.add(arrived.job + ", revision " + std::to_string(arrived.revision) +
                         (arrived.cancelled ? ", which cancels it: " : ": ") + outcome,
                     {{"order", arrived.order},
                      {"job", arrived.job},
                      {"revision", arrived.revision},
                      {"cancelled", arrived.cancelled},
                      {"photos", arrived.photos},
                      {"outcome", outcome},
                      {"reasons", arrival.reasons},
                      {"marks", marks(arrived)},
                      {"same_house", sameHouse(arrived)}});
        if (arrived.news)
            tellNews(*arrived.news, arrived.revision);
        for (const std::string& reason : arrival.reasons)
            tell("  " + reason);
        for (const acts::SameHouse& other : arrived.sameHouse)
            tell("  another order for this house is here: " + other.order.jobName + ", " +
                 other.order.customer + " (" + other.order.id + "), " +
                 (other.runsAlike.empty() ? "no run alike" : "runs alike: " + joined(other.runsAlike)));
        if (arrival.outcome == Arrival::Outcome::Waits) {
            tell("  `lapwright receive --accept` takes it all the same, where that can be done");
            raise(Exit::Blocked);
        }
    }

    static nlohmann::json marks(const acts::Arrived& arrived)
    {
        nlohmann::json rows = nlohmann::json::array();
        if (!arrived.news)
            return rows;
        for (const storage::MarkChange& change : arrived.news->marks) {
            nlohmann::json made = nlohmann::json::object();
            for (const schedule::PieceState state : schedule::statesBegun)
                if (change.counts.of(state) > 0)
                    made[std::string(schedule::name(state))] = change.counts.of(state);
            rows.push_back({{"mark", change.mark},
                            {"wanted_before", change.before ? change.before->count : 0},
                            {"wanted", change.now ? change.now->count : 0},
                            {"made_alike", change.samePiece()},
                            {"made", made},
                            {"scrap", change.scrap()}});
        }
        return rows;
    }

    static nlohmann::json sameHouse(const acts::Arrived& arrived)
    {
        nlohmann::json others = nlohmann::json::array();
        for (const acts::SameHouse& other : arrived.sameHouse)
            others.push_back({{"order", other.order.id}, {"runs_alike", other.runsAlike}});
        return others;
    }

    void tellNews(const acts::RevisionNews& news, std::int64_t to) const
    {
        for (const storage::MarkChange& change : news.marks)
            if (change.begun() > 0)
                tell("  " + acts::inWords(change));
        tell("  from revision " + std::to_string(news.from) + " to " + std::to_string(to) +
             (news.changes.empty() ? ": nothing that is made changes" : ":"));
        tell(news.changes, style_);
    }

    /// What the installer was warned of as well: the shop's last chance to ask.
    static rules::Findings warningsOf(const rules::Findings& findings)
    {
        rules::Findings warnings;
        std::copy_if(findings.begin(), findings.end(), std::back_inserter(warnings),
                     [](const rules::Finding& finding) { return finding.weight == rules::Weight::Warns; });
        return warnings;
    }

    void refuse(const std::vector<Error>& errors)
    {
        tell(errors);
        raise(Exit::BadInput);
    }
    void raise(Exit exit)
    {
        if (static_cast<int>(exit) > static_cast<int>(worst_))
            worst_ = exit;
    }

    const storage::Database& database_;
    const pieces::Catalogue& catalogue_;
    const QCommandLineParser& options_;
    const Style style_;
    Results results_;
    Exit worst_ = Exit::Done;
};

/// Takes what is named, each folder as it stands now. False if something named cannot be read.
bool takeOnce(const QStringList& named, Receiver& receiver)
{
    for (const QString& given : named) {
        const auto paths = storage::documentsAt(given.toStdString(), acts::orderEndings());
        if (!paths.ok()) {
            tell(paths.errors());
            return false;
        }
        if (paths->empty())
            tell(given.toStdString() + ": found no .json or .zip file, expected orders");
        for (const std::string& path : *paths)
            receiver.take(path);
    }
    return true;
}

/// Takes every file of the folders that is whole and no longer grows, until the program is ended. What the
/// database would not take is tried again.
[[noreturn]] void watch(const QStringList& folders, Receiver& receiver, double seconds)
{
    acts::DropFolder drop;
    for (;;) {
        for (const QString& folder : folders) {
            const auto ready = drop.look(folder.toStdString());
            if (!ready.ok())
                tell(ready.errors());
            else
                for (const std::string& path : *ready)
                    try {
                        receiver.takeNew(path);
                    } catch (const storage::StorageFailure& failure) {
                        tell(path + ": " + failure.what());
                        drop.giveAgain(path);
                    }
        }
        std::fflush(stdout);
        QThread::msleep(static_cast<unsigned long>(seconds * 1000.0));
    }
}

Exit receiveAll(const QCommandLineParser& options, const storage::Database& database)
{
    const auto catalogue = storage::loadCatalogue(libraryFolders(options));
    if (!catalogue.ok()) {
        tell(catalogue.errors());
        return Exit::BadInput;
    }
    Receiver receiver(database, *catalogue, options);
    if (options.isSet("watch")) {
        bool isNumber = false;
        const double seconds = options.value("watch").toDouble(&isNumber);
        if (!isNumber || !(seconds >= 0.1 && seconds <= 3600.0)) {
            tell("--watch: found " + text(options, "watch") + ", expected seconds from 0.1 to 3600");
            return Exit::BadInput;
        }
        watch(options.positionalArguments(), receiver, seconds);
    }
    if (!takeOnce(options.positionalArguments(), receiver))
        return Exit::BadInput;
    return receiver.finish();
}

Exit run(const QCommandLineParser& options)
{
    if (options.isSet("watch") && options.isSet("json")) {
        tell("--watch: found with --json, expected one of them: a watch never ends its list");
        return Exit::BadInput;
    }
    return inShop(
        options, [&](const storage::Database& database) { return receiveAll(options, database); },
        storage::WhenMissing::Make);
}

} // namespace

Subcommand receiveCommand()
{
    return {
        "receive",
        "ORDER...",
        "take orders into the shop's database, in any sequence, as often as you like",
        "ORDER is an order document (lapwright/order), a ZIP of one with its photos as the field app writes it, a "
        "folder of them, or - for standard input; a photo that did not come is a warning. The shop derives "
        "every number again from the runs and shows what differs. The same order twice changes nothing; a late "
        "revision never undoes a newer one. A later revision shows what it changes and what is already made; it "
        "waits for a person if it changes pieces already begun, or was made from another revision than the one "
        "that is here.",
        {databaseOption(),
         libraryOption(),
         {"watch",
          "Look into the folders every so many seconds until the program is ended; a file is taken when it is whole "
          "and no longer grows. What was taken, waits or was dismissed before is passed over.",
          "SECONDS"},
         {"accept",
          "Take an order that waits: one whose signature is not trusted, or a revision although pieces already begun "
          "become scrap."},
         stationOption(),
         personOption()},
        1,
        -1,
        run};
}

} // namespace lapwright::command
