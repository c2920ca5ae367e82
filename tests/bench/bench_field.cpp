// Guards nothing by itself: prints what the field app costs beside a minimal Qt Quick Controls window of the
// same machine and backend: time to the first frame, memory with a 40-run job open; then what one more run
// costs the GUI thread in a job of 1 000 runs, and the longest frame while its list, plan and 10 000 jobs are
// scrolled. Wall time, best run in a quiet machine: QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software
// bench_field; with --adding only what one more run costs, for a profiler.
#include "app/window.h"
#include "documents/job.h"
#include "look/faces.h"
#include "look/seen_items.h"
#include "model/field_app.h"
#include "picture_canvas.h"
#include "site/editing.h"
#include "storage/catalogue.h"
#include "store/jobs.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QQmlApplicationEngine>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <functional>
#include <utility>
#include <vector>

using namespace lapwright;
using namespace lapwright::field;

namespace {

constexpr int launches = 7;

// A list of 10 000, a button and a picture: what any program of this kind has.
const char* const minimalWindow = R"(
import QtQuick
import QtQuick.Controls
import QtQuick.Shapes

ApplicationWindow {
    width: 1280
    height: 800
    visible: true

    ListView {
        width: 640
        height: 800
        model: 10000
        delegate: ItemDelegate { required property int index; text: "row " + index }
    }
    Button { x: 700; y: 20; text: "press" }
    Shape {
        x: 700; y: 200; width: 400; height: 400
        ShapePath {
            strokeColor: "black"
            PathLine { x: 300; y: 0 }
            PathLine { x: 300; y: 300 }
        }
    }
}
)";

double residentMegabytes()
{
    QFile status("/proc/self/status");
    if (!status.open(QIODevice::ReadOnly))
        return 0.0;
    for (const QByteArray& line : status.readAll().split('\n'))
        if (line.startsWith("VmRSS:"))
            return line.simplified().split(' ')[1].toDouble() / 1024.0;
    return 0.0;
}

void awaitFrame(QQuickWindow& window)
{
    bool swapped = false;
    const auto seen = QObject::connect(&window, &QQuickWindow::frameSwapped, [&swapped] { swapped = true; });
    window.update();
    while (!swapped)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    QObject::disconnect(seen);
}

/// "eave line" of so many runs, every second corner inside: no two sides of it lie over each other.
site::Job invented(std::size_t runs, const Tablet& tablet)
{
    site::Job job;
    job.id = tablet.newId();
    job.name = "Long eave";
    job.material = {"galvanised-steel", "24 ga", "Slate"};
    const std::size_t chain = site::addChain(job, "Eave line");
    for (std::size_t i = 0; i < runs; ++i) {
        site::Run run;
        run.kind = site::RunKind::Eave;
        run.slope = Slope::twelfths(6);
        const auto feet = static_cast<std::int64_t>(8 + i % 5);
        run.lengths = {{Length::feet(feet), std::to_string(feet) + "'"}};
        run.trims.resize(1);
        run.trims[0].trim = "eave-drip-edge";
        const site::Corner corner =
            i % 2 == 0 ? site::Corner(site::SquareOutside{}) : site::Corner(site::SquareInside{});
        site::addRun(job, chain, std::move(run), corner);
    }
    return job;
}

void keep(const Tablet& tablet, const site::Job& job)
{
    store::addJob(tablet.database(), job, documents::writeJob({job, {}}, documents::Layout::Canonical),
                  {"job.new", "started", tablet.now()});
}

/// Started by the bench itself: one launch, to the first frame; then the memory it takes.
int launchMinimal()
{
    QQmlApplicationEngine engine;
    engine.loadData(minimalWindow);
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    if (window == nullptr)
        return 1;
    awaitFrame(*window);
    std::puts("frame");
    std::fflush(stdout);
    awaitFrame(*window);
    std::printf("%.1f\n", residentMegabytes());
    return 0;
}

int launchField(const QString& database)
{
    // As the program starts (mobile/app/start.cpp).
    auto catalogue = storage::loadCatalogueBeside({});
    look::prepareFaces();
    const auto tablet = Tablet::openBeside(database, std::move(catalogue));
    if (!tablet.ok())
        return 1;
    FieldApp app(*tablet);
    QQmlApplicationEngine engine;
    QQuickWindow* window = openWindow(engine, app);
    if (window == nullptr)
        return 1;
    awaitFrame(*window);
    std::puts("frame");
    std::fflush(stdout);
    app.editor()->openJob(app.jobs()->index(0).data(JobList::IdRole).toString());
    for (const char* place : {"house", "trim", "check", "order", "house"}) {
        window->setProperty("place", place);
        awaitFrame(*window);
    }
    std::printf("%.1f\n", residentMegabytes());
    return 0;
}

struct Launch {
    double milliseconds = 0.0;
    double megabytes = 0.0;
};

Launch launched(const QStringList& arguments)
{
    std::vector<double> times;
    Launch launch;
    for (int i = 0; i < launches; ++i) {
        QProcess process;
        process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        QElapsedTimer timer;
        timer.start();
        process.start(QCoreApplication::applicationFilePath(), arguments);
        while (!process.canReadLine() && process.waitForReadyRead(60'000)) {
        }
        times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
        process.waitForFinished(60'000);
        launch.megabytes = process.readAll().simplified().split(' ').last().toDouble();
    }
    std::nth_element(times.begin(), times.begin() + launches / 2, times.end());
    launch.milliseconds = times[launches / 2];
    return launch;
}

/// Longest and median of `count` frames, each after one step.
void printFrames(const char* what, QQuickWindow& window, int count, const std::function<void(int)>& step)
{
    std::vector<double> frames;
    awaitFrame(window);
    for (int i = 0; i < count; ++i) {
        QElapsedTimer timer;
        timer.start();
        step(i);
        awaitFrame(window);
        frames.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    std::sort(frames.begin(), frames.end());
    std::printf("%-44s median %5.1f ms, longest %5.1f ms\n", what, frames[frames.size() / 2], frames.back());
}

void printAddingARun(FieldApp& app, QQuickWindow& window)
{
    constexpr int runs = 21;
    std::vector<double> acts, drawn;
    for (int i = 0; i < runs; ++i) {
        app.editor()->entry()->length()->setText("11' 4 3/8");
        QElapsedTimer timer;
        timer.start();
        app.editor()->keepRun();
        acts.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
        awaitFrame(window);
        drawn.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    std::sort(acts.begin(), acts.end());
    std::sort(drawn.begin(), drawn.end());
    std::printf("%-44s median %5.1f ms, longest %5.1f ms\n", "one more run, kept on the disk and drawn",
                acts[runs / 2], acts.back());
    std::printf("%-44s median %5.1f ms, longest %5.1f ms\n", "the same to the frame that shows it",
                drawn[runs / 2], drawn.back());
}

void printStart(const QTemporaryDir& folder)
{
    const QString database = folder.filePath("tablet.db");
    {
        const auto tablet = Tablet::open(database, {});
        keep(*tablet, invented(40, *tablet));
    }
    const Launch minimal = launched({"--minimal"});
    const Launch field = launched({"--field", database});
    std::printf("%-44s %6.1f ms, minimal window %6.1f ms, ratio %.2f\n", "first frame", field.milliseconds,
                minimal.milliseconds, field.milliseconds / minimal.milliseconds);
    std::printf("%-44s %6.1f MB, minimal window %6.1f MB, ratio %.2f\n",
                "memory, every screen of a 40-run job seen", field.megabytes, minimal.megabytes,
                field.megabytes / minimal.megabytes);
}

void printJobs(FieldApp& app, QQuickWindow& window)
{
    window.setProperty("place", "settings");
    awaitFrame(window);
    QElapsedTimer timer;
    timer.start();
    window.setProperty("place", "jobs");
    awaitFrame(window);
    std::printf("%-44s %6.1f ms\n", "showing 10 000 jobs", static_cast<double>(timer.nsecsElapsed()) / 1e6);
    QQuickItem* jobs = look::listNamed(window, "Jobs");
    printFrames("scrolling 10 000 jobs", window, 300,
                [jobs](int i) { jobs->setProperty("contentY", 90.0 * i); });
    printFrames("a letter more in the search of 10 000 jobs", window, 12,
                [&app](int i) { app.jobs()->setWords(QString("long eave 12").left(i + 1)); });
    app.jobs()->setWords({});
}

void printLargeJob(QQuickWindow& window)
{
    window.setProperty("place", "house");
    awaitFrame(window);
    QQuickItem* runs = look::listNamed(window, "Runs");
    printFrames("scrolling the runs of a 1 000-run job", window, 300,
                [runs](int i) { runs->setProperty("contentX", 120.0 * i); });
    const std::vector<QQuickItem*> items = look::visibleItems(window);
    const auto plan = std::find_if(items.begin(), items.end(), [](const QQuickItem* item) {
        return qobject_cast<const look::PictureCanvas*>(item) != nullptr;
    });
    auto* canvas = qobject_cast<look::PictureCanvas*>(*plan);
    canvas->zoomAt({canvas->width() / 2.0, canvas->height() / 2.0}, 4.0);
    printFrames("moving the plan of a 1 000-run job", window, 200, [canvas](int i) {
        canvas->pan({i % 2 == 0 ? 7.0 : -5.0, 3.0});
    });
}

int measure(bool onlyAdding)
{
    const QTemporaryDir folder;
    if (!onlyAdding)
        printStart(folder);
    const auto tablet = Tablet::open(folder.filePath("large.db"), {});
    for (int i = 0; i < 10'000 && !onlyAdding; ++i)
        keep(*tablet, invented(1, *tablet));
    const site::Job large = invented(1'000, *tablet);
    keep(*tablet, large);
    FieldApp app(*tablet);
    QQmlApplicationEngine engine;
    QQuickWindow* window = openWindow(engine, app);
    if (window == nullptr)
        return 1;
    awaitFrame(*window);
    if (!onlyAdding)
        printJobs(app, *window);
    app.editor()->openJob(QString::fromStdString(large.id));
    printLargeJob(*window);
    printAddingARun(app, *window);
    return 0;
}

} // namespace

int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QGuiApplication::arguments();
    if (arguments.contains("--minimal"))
        return launchMinimal();
    if (const auto field = arguments.indexOf("--field"); field > 0)
        return launchField(arguments.value(field + 1));
    return measure(arguments.contains("--adding"));
}
