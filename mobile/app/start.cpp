#include "app/start.h"

#include "app/self_test.h"
#include "app/window.h"
#include "look/about.h"
#include "look/faces.h"
#include "look/message_count.h"
#include "model/field_app.h"
#include "speech/language.h"
#include "storage/catalogue.h"

#include <QCommandLineParser>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <cstdio>
#include <utility>

namespace lapwright::field {

namespace {

void tell(const QString& line)
{
    std::fputs((line + "\n").toUtf8().constData(), stderr);
}

QString usualDatabase()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + "/tablet.db";
}

void describe(QCommandLineParser& options)
{
    options.setApplicationDescription(
        "Measure a house once, choose its trim, check it and send one order; check what "
        "the truck brought.");
    options.addHelpOption();
    options.addVersionOption();
    options.addOptions(
        {{"db", "The tablet's database; made if it is not there.", "FILE"},
         {"library", "A folder with the shop's own trims, metals and rules; may be given several times.",
          "DIR"},
         {"language",
          "Speaks this language from now on: a code such as es, or the .qm file of a translation in the making.",
          "LANGUAGE"},
         {"self-test", "Show every screen with a sample house and fail on any warning."},
         {"pictures", "Keep a picture of every screen of the self-test.", "DIR"}});
    options.addPositionalArgument("FILE", "A job, an order, a load list or a receipt to take in.", "[FILE]");
}

int reportSelfTest(const QStringList& wrong)
{
    for (const QString& line : wrong)
        tell("self-test: " + line);
    tell(wrong.isEmpty() ? QString("self-test: every screen shows, no warning")
                         : QString("self-test: %1 faults").arg(wrong.size()));
    return wrong.isEmpty() ? 0 : 1;
}

int show(const QCommandLineParser& options, const Tablet& tablet)
{
    if (const auto why = whyNotSpoken(options.value("language"))) {
        tell("lapwright-field: " + QString::fromStdString(why->sentence()));
        return 2;
    }
    FieldApp app(tablet);
    if (options.isSet("language"))
        app.settings()->setLanguage(options.value("language"));
    QQmlApplicationEngine engine;
    QQuickWindow* window = openWindow(engine, app);
    if (window == nullptr) {
        tell("lapwright-field: the screens do not load");
        return 1;
    }
    const bool selfTesting = options.isSet("self-test") || options.isSet("pictures");
    if (selfTesting)
        return reportSelfTest(selfTest(app, tablet, *window, options.value("pictures")));
    if (!options.positionalArguments().isEmpty() && app.openFile(options.positionalArguments().front()))
        window->setProperty("place", app.openedDelivery() ? "delivery" : "house");
    return QGuiApplication::exec();
}

} // namespace

int run(int argc, char** argv)
{
    const look::MessageCount counting;
    QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName("lapwright-field");
    QGuiApplication::setOrganizationName("lapwright");
    QGuiApplication::setApplicationVersion(look::version());
    QCommandLineParser options;
    describe(options);
    options.process(application);
    std::vector<std::string> folders;
    for (const QString& folder : options.values("library"))
        folders.push_back(folder.toStdString());
    const QTemporaryDir scratch;
    const bool selfTesting = options.isSet("self-test") || options.isSet("pictures");
    const QString path = options.isSet("db") ? options.value("db")
                         : selfTesting       ? scratch.filePath("tablet.db")
                                             : usualDatabase();
    auto catalogue = storage::loadCatalogueBeside(folders);
    look::prepareFaces();
    const auto tablet = Tablet::openBeside(path, std::move(catalogue));
    if (!tablet.ok()) {
        for (const Error& error : tablet.errors())
            tell("lapwright-field: " + QString::fromStdString(error.sentence()));
        return 3;
    }
    return show(options, *tablet);
}

} // namespace lapwright::field
