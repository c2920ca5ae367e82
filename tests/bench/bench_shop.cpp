// Guards nothing by itself: prints how long the shop's window takes to its first frame beside a minimal
// window of the same toolkit, how long each screen takes to show over a history of 50 000 orders, how long a
// key of a search, the longest frame while a list of more than 10 000 lines is scrolled, and the longest time
// the window stands still while a plan of 20 000 pieces is made. Ends with 1 over 1.8 times the minimal
// window, 150 ms for a screen, 33 ms for a key, a frame or of standing still. Usage: bench_shop [ORDERS
// [PIECES]]
#include "faces.h"
#include "seen_items.h"
#include "shop.h"
#include "shop_year.h"
#include "source_directory.h"
#include "storage/catalogue.h"
#include "storage/lists.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QProcess>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTimer>

#include <algorithm>
#include <cstdio>
#include <future>
#include <string>
#include <utility>
#include <vector>

using namespace lapwright;
using model::Shop;

namespace {

constexpr std::size_t largeOrders = 10; ///< so many orders make the large plan

const char* const minimalWindow = R"(
import QtQuick
import QtQuick.Controls
ApplicationWindow {
    width: 1366; height: 768; visible: true
    ListView { anchors.fill: parent; model: 100; delegate: ItemDelegate { required property int index; text: "Line " + index } }
})";

std::unique_ptr<Shop> open(const QString& folder, std::future<Result<pieces::Catalogue>> catalogue)
{
    auto shop = Shop::open(folder + "/shop.db", folder + "/station.ini", {}, std::move(catalogue));
    return shop.ok() ? *std::move(shop) : nullptr;
}

QQuickWindow* windowOf(Shop& shop, QQmlApplicationEngine& engine)
{
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{"shop", QVariant::fromValue(&shop)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Lapwright/Shop/Main.qml")));
    return engine.rootObjects().isEmpty() ? nullptr
                                          : qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
}

/// Runs the event loop until the window has painted.
void waitForFrame(QQuickWindow& window)
{
    QEventLoop loop;
    QObject::connect(&window, &QQuickWindow::frameSwapped, &loop, &QEventLoop::quit, Qt::QueuedConnection);
    QTimer::singleShot(10'000, &loop, &QEventLoop::quit);
    window.update();
    loop.exec();
}

double millisecondsOf(const QElapsedTimer& timer)
{
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

/// A program of its own: shows a window and says how many milliseconds after its begin it had painted.
int showFrame(const QElapsedTimer& sinceBegin, const QString& what)
{
    std::unique_ptr<Shop> shop;
    if (what != "minimal") { // in the sequence of shop_app::run()
        auto catalogue = storage::loadCatalogueBeside({});
        look::prepareFaces();
        shop = open(what, std::move(catalogue));
    }
    QQmlApplicationEngine engine;
    if (!shop)
        engine.loadData(minimalWindow);
    QQuickWindow* window =
        shop ? windowOf(*shop, engine) : qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    if (window == nullptr)
        return 3;
    double first = 0.0; // before what the window does next
    QObject::connect(
        window, &QQuickWindow::frameSwapped, window,
        [&] { first = first > 0.0 ? first : millisecondsOf(sinceBegin); }, Qt::DirectConnection);
    waitForFrame(*window);
    while (shop && !window->property("ready").toBool())
        waitForFrame(*window);
    if (shop)
        waitForFrame(*window);
    std::printf("%.1f %.1f\n", first, millisecondsOf(sinceBegin));
    return 0;
}

/// Milliseconds to the first frame, and to that with the first screen in it.
struct Frames {
    double first = 1e9;
    double screen = 1e9;
};

Frames bestFrames(const QString& what)
{
    Frames best;
    for (int trial = 0; trial < 7; ++trial) {
        QProcess program;
        program.start(QCoreApplication::applicationFilePath(), {"--frame", what});
        program.waitForFinished(120'000);
        const QList<QByteArray> said = program.readAllStandardOutput().simplified().split(' ');
        best.first = std::min(best.first, said.value(0).toDouble());
        best.screen = std::min(best.screen, said.value(1).toDouble());
    }
    return best;
}

bool printFrames(const QString& folder)
{
    const Frames minimal = bestFrames("minimal"), shop = bestFrames(folder);
    std::printf(
        "first frame: minimal window %.0f ms, the shop %.0f ms, ratio %.2f; with its first screen %.0f ms\n",
        minimal.first, shop.first, shop.first / minimal.first, shop.screen);
    return shop.first <= 1.8 * minimal.first;
}

/// Milliseconds until a screen is there.
struct Shown {
    double first = 0.0; ///< frame
    double whole = 0.0; ///< with all that is read beside the window
};

Shown show(Shop& shop, QQuickWindow& window, int place)
{
    QElapsedTimer timer;
    timer.start();
    QMetaObject::invokeMethod(&window, "go", Q_ARG(QVariant, place));
    waitForFrame(window);
    Shown shown{millisecondsOf(timer), 0.0};
    while (shop.batches()->reading())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    waitForFrame(window);
    shown.whole = millisecondsOf(timer);
    return shown;
}

/// Each screen for the first time, and again after another station's work.
bool printScreens(Shop& shop, QQuickWindow& window)
{
    bool good = true;
    const QVariantList places = window.property("places").toList();
    std::vector<Shown> before;
    for (int round = 0; round < 2; ++round)
        for (int place = 0; place < places.size(); ++place) {
            const auto last = static_cast<int>(places.size()) - 1;
            QMetaObject::invokeMethod(&window, "go", Q_ARG(QVariant, place == last ? last - 1 : last));
            waitForFrame(window);
            shop.noteChange();
            const Shown shown = show(shop, window, place);
            good = good && shown.whole <= 150.0;
            if (round == 0) {
                before.push_back(shown);
                continue;
            }
            const Shown& once = before[static_cast<std::size_t>(place)];
            std::printf("%-12s %8.1f ms the first time (frame %.1f), %.1f ms again (frame %.1f)\n",
                        qPrintable(places[place].toMap().value("name").toString()), once.whole, once.first,
                        shown.whole, shown.first);
        }
    return good;
}

/// The pieces of the largest batch, scrolled by most of a page a frame.
bool printScroll(Shop& shop, QQuickWindow& window)
{
    QMetaObject::invokeMethod(&window, "go", Q_ARG(QVariant, 1));
    waitForFrame(window);
    QString largest;
    int most = -1;
    for (const model::Row& batch : shop.batches()->batches()->rows()) {
        shop.batches()->setCurrent(batch.id);
        if (shop.batches()->pieces()->count() > most) {
            most = shop.batches()->pieces()->count();
            largest = batch.id;
        }
    }
    shop.batches()->setCurrent(largest);
    waitForFrame(window);
    QQuickItem* list = look::listNamed(window, "Pieces of the batch");
    if (list == nullptr)
        return false;
    double longest = 0.0, sum = 0.0;
    constexpr int frames = 200;
    for (int frame = 0; frame < frames; ++frame) {
        QElapsedTimer timer;
        timer.start();
        list->setProperty("contentY", frame * list->height() * 0.7);
        waitForFrame(window);
        const double milliseconds = millisecondsOf(timer);
        longest = std::max(longest, milliseconds);
        sum += milliseconds;
    }
    std::printf("a list of %d lines: %.1f ms a frame, %.1f ms at most\n", shop.batches()->pieces()->count(),
                sum / frames, longest);
    return longest <= 33.0;
}

/// What one key of a search costs the window.
bool printSearch(Shop& shop, QQuickWindow& window)
{
    QMetaObject::invokeMethod(&window, "go", Q_ARG(QVariant, 0));
    waitForFrame(window);
    double longest = 0.0;
    for (const char* typed : {"h", "ho", "hou", "hous", "house", "house 4", "house 49"}) {
        QElapsedTimer timer;
        timer.start();
        shop.arrivals()->orders()->setSearch(QString(typed));
        waitForFrame(window);
        longest = std::max(longest, millisecondsOf(timer));
    }
    QElapsedTimer timer;
    timer.start();
    shop.arrivals()->searchHistory();
    waitForFrame(window);
    std::printf("a key of a search: %.1f ms at most, then %.1f ms through the history\n", longest,
                millisecondsOf(timer));
    shop.arrivals()->orders()->setSearch({});
    return longest <= 33.0;
}

/// The longest time between two turns of the event loop while a plan is made.
bool printStall(Shop& shop, QQuickWindow& window)
{
    QMetaObject::invokeMethod(&window, "go", Q_ARG(QVariant, 1));
    waitForFrame(window);
    QElapsedTimer sinceTurn;
    double longest = 0.0;
    QTimer turn;
    QObject::connect(&turn, &QTimer::timeout, &window, [&] {
        longest = std::max(longest, millisecondsOf(sinceTurn));
        sinceTurn.restart();
        window.update();
    });
    const std::int64_t pieces = storage::shopCounts(shop.database()).of(schedule::PieceState::Ordered);
    shop.preferences()->setPlanSeconds(20);
    shop.batches()->plan();
    QElapsedTimer whole;
    whole.start();
    sinceTurn.start();
    turn.start(1);
    while (shop.planner()->running())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    turn.stop();
    // The last turn took the plan over: it is read and listed on the way to the screen.
    std::printf(
        "a plan of %lld pieces in %.1f s; the window stood still for %.1f ms at most, and for %.1f ms when "
        "the plan was there\n",
        static_cast<long long>(pieces), static_cast<double>(whole.elapsed()) / 1e3, longest,
        millisecondsOf(sinceTurn));
    return longest <= 33.0;
}

} // namespace

int main(int argc, char** argv)
{
    QElapsedTimer sinceBegin;
    sinceBegin.start();
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QGuiApplication::arguments();
    if (arguments.value(1) == "--frame")
        return showFrame(sinceBegin, arguments.value(2));
    const int orders = arguments.size() > 1 ? arguments[1].toInt() : 50'000;
    const std::size_t pieces = arguments.size() > 2 ? arguments[2].toUInt() : 20'000;

    const QTemporaryDir folder;
    auto shop = open(folder.path(), storage::loadCatalogueBeside({}));
    shop->stock()->importStock(
        QUrl::fromLocalFile(QString::fromStdString(sourceDirectory() + "/demo/shop.stock.json")));
    bool good = printFrames(folder.path());
    const auto onTheFloor = static_cast<std::size_t>(orders / 100); // what comes in in two or three days
    // Nobody waits here for each write to be on the disk.
    shop->database().run("PRAGMA synchronous = OFF");
    year::fill(shop->database(), orders);
    year::receiveLarge(*shop, folder.path(), largeOrders, pieces);
    year::receiveHouses(*shop, folder.path(), onTheFloor);
    shop->database().run("PRAGMA synchronous = FULL");
    look::prepareFaces();
    QElapsedTimer opening;
    opening.start();
    QQmlApplicationEngine engine;
    QQuickWindow* window = windowOf(*shop, engine);
    if (window == nullptr)
        return 3;
    while (!window->property("ready").toBool())
        waitForFrame(*window);
    waitForFrame(*window);
    std::printf("%d orders delivered, %zu open; the window with its first screen in %.1f ms\n", orders,
                largeOrders + onTheFloor, millisecondsOf(opening));
    good = printStall(*shop, *window) && good; // from here on there are plans and a schedule to be shown
    good = printScreens(*shop, *window) && good;
    good = printSearch(*shop, *window) && good;
    good = printScroll(*shop, *window) && good;
    return good ? 0 : 1;
}
