// A day at a tablet, done by the field app's own models: `tablet_day work FOLDER` says after each act what is
// done from then on, and ends with 3 where the tablet would not; `tablet_day check FOLDER` says as JSON what
// is there, and whether it holds and the tablet can go on.
#include "documents/job.h"
#include "documents/shop.h"
#include "model/field_app.h"
#include "storage/document_file.h"
#include "store/deliveries.h"
#include "store/jobs.h"

#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

#include <cstdio>
#include <cstring>

using namespace lapwright;
using namespace lapwright::field;

namespace {

constexpr const char* loadId = "00000000-0000-4000-8000-00000000aaaa";

/// The load list that comes with the truck; made outside the folder that is disturbed.
QString loadFile(const QTemporaryDir& scratch)
{
    schedule::Load load;
    load.id = loadId;
    load.truck = "White truck";
    load.madeAt = "2026-11-25T08:00:00Z";
    load.bundles = {{"B1",
                     "00000000-0000-4000-8000-00000000bbbb",
                     "Alder",
                     {"galvanised-steel", "24 ga", "Slate"},
                     {{"E1.1", 4, "E1", "P1", Length::feet(10)}},
                     20.0,
                     false}};
    QString path = scratch.filePath("load.json");
    (void)storage::writeDocument(path.toStdString(), documents::writeLoad({load, {}}));
    return path;
}

QString photoFile(const QTemporaryDir& scratch)
{
    QImage photo(400, 300, QImage::Format_RGB32);
    photo.fill(QColor("#8d7f6e"));
    QString path = scratch.filePath("photo.jpg");
    (void)photo.save(path);
    return path;
}

class Day {
public:
    Day(FieldApp& app, QString folder) : app_(app), folder_(std::move(folder)) {}

    bool work()
    {
        JobEditor& editor = *app_.editor();
        return done("job", editor.newJob("Alder")) && measure() && done("closed", editor.closeChain()) &&
               // Between taking the trims back and giving them again there are none.
               done("trim", trim() && editor.undo() && editor.redo()) && done("photo", photo()) &&
               done("sent", send()) && done("load", app_.openFile(loadFile(scratch_))) &&
               done("counted", app_.delivery()->countBundle("B1")) &&
               done("receipt", !app_.delivery()->writeReceipt(folder_).isEmpty()) &&
               done("backup", !app_.backUp(folder_).isEmpty());
    }

private:
    bool done(const char* what, bool well)
    {
        if (well) {
            std::printf("%s\n", what);
            std::fflush(stdout);
        } else {
            std::fprintf(stderr, "%s: %s\n", what, qPrintable(app_.message()));
        }
        return well;
    }
    bool measure()
    {
        JobEditor& editor = *app_.editor();
        if (!editor.startChain("eave"))
            return done("run", false);
        editor.entry()->slope()->setText("6");
        for (const char* length : {"40'", "24'", "40'", "24'"}) {
            editor.entry()->length()->setText(length);
            if (!done("run", editor.keepRun()))
                return false;
        }
        return true;
    }
    bool trim()
    {
        app_.trim()->refresh();
        return app_.trim()->suggestAll();
    }
    bool photo()
    {
        app_.photos()->showRun("E1");
        return app_.photos()->add(photoFile(scratch_));
    }
    bool send()
    {
        app_.order()->refresh();
        return app_.order()->send(folder_);
    }

    FieldApp& app_;
    QString folder_;
    QTemporaryDir scratch_;
};

/// One more act on what is there.
bool goesOn(FieldApp& app, const store::Connection& database)
{
    const auto jobs = store::jobPage(database, {}, std::nullopt, 10);
    return jobs.empty() ? app.editor()->newJob("Birch")
                        : app.editor()->openJob(QString::fromStdString(jobs.front().id)) &&
                              app.editor()->startChain("ridge");
}

QJsonObject whatIsThere(const Tablet& tablet)
{
    const store::Connection& database = tablet.database();
    QJsonObject there{{"sound", database.damage().isEmpty()}, {"run", 0}, {"trim", 0}, {"photo", 0}};
    const auto jobs = store::jobPage(database, {}, std::nullopt, 10);
    there["job"] = static_cast<int>(jobs.size());
    for (const store::JobLine& line : jobs) {
        const auto kept = store::keptJob(database, line.id).value();
        const auto job = documents::readJob(kept.document);
        there["sound"] = there["sound"].toBool() && job.ok() &&
                         store::documentFromJournal(database, line.id) == kept.document;
        there["sent"] = line.state == store::JobState::Sent ? 1 : 0;
        for (const site::Chain& chain : job->value.chains) {
            there["run"] = there["run"].toInt() + static_cast<int>(chain.runs.size());
            there["closed"] = chain.closed ? 1 : 0;
            for (const site::Run& run : chain.runs)
                there["trim"] = there["trim"].toInt() + static_cast<int>(run.trims.size());
        }
        for (const site::Photo& photo : job->value.photos) {
            there["photo"] = there["photo"].toInt() + 1;
            there["sound"] = there["sound"].toBool() && tablet.pictures().read(photo.sha256).ok();
        }
    }
    there["load"] = static_cast<int>(store::loads(database).size());
    there["counted"] = static_cast<int>(store::eventsOf(database, loadId).size());
    return there;
}

int check(FieldApp& app, const Tablet& tablet)
{
    QJsonObject there = whatIsThere(tablet);
    there["goes_on"] = goesOn(app, tablet.database());
    std::printf("%s\n", QJsonDocument(there).toJson(QJsonDocument::Compact).constData());
    return 0;
}

} // namespace

int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    if (argc != 3)
        return 2;
    const QString folder = QString::fromLocal8Bit(argv[2]);
    const auto tablet = Tablet::open(folder + "/tablet.db", {});
    if (!tablet.ok()) {
        std::fprintf(stderr, "%s\n", tablet.errors().front().sentence().c_str());
        return 3;
    }
    FieldApp app(*tablet);
    if (std::strcmp(argv[1], "check") == 0)
        return check(app, *tablet);
    return Day(app, folder).work() ? 0 : 3;
}
