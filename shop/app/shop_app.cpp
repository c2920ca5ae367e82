#include "shop_app.h"

#include "about.h"
#include "faces.h"
#include "shop.h"
#include "speech/language.h"
#include "storage/catalogue.h"
#include "tour.h"

#include <QCommandLineParser>
#include <QDir>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTextStream>

#include <optional>
#include <utility>

namespace lapwright::shop_app {

namespace {

constexpr int foundSomething = 1;
constexpr int badUsage = 2;
constexpr int couldNot = 3;

void tell(const QString& line)
{
    QTextStream(stderr) << line << Qt::endl;
}

struct Options {
    QString database;
    QString preferences;
    std::vector<std::string> libraryFolders;
    QList<QUrl> files;
    QString language;
    QString pictures;
    bool selfTest = false;
};

QString ownFolder()
{
    QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    return folder;
}

/// Where this machine's shop keeps its own machines, trim and rules, unless it names a folder.
QString ownLibrary()
{
    QString folder = ownFolder() + "/library";
    QDir().mkpath(folder);
    return folder;
}

Options read(const QGuiApplication& application)
{
    QGuiApplication::setApplicationVersion(look::version());
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QStringLiteral("Lapwright for the shop: from orders that arrive to the truck."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addOptions(
        {{"db", "The shop's database.", "FILE"},
         {"preferences", "Where this station keeps its choices.", "FILE"},
         {"library", "A folder with the shop's own metals, trim, rules and machines.", "DIR"},
         {"language",
          "Speaks this language from now on: a code such as es, or the .qm file of a translation "
          "in the making.",
          "LANGUAGE"},
         {"self-test", "Show every screen once; status 1 if any of them warns or cuts words off."},
         {"pictures", "Write a picture of every screen into this folder.", "DIR"}});
    parser.addPositionalArgument("ORDER", "Order files to take in.", "[ORDER...]");
    parser.process(application);
    Options options;
    options.selfTest = parser.isSet("self-test") || parser.isSet("pictures");
    options.pictures = parser.value("pictures");
    options.language = parser.value("language");
    options.database = parser.isSet("db") || options.selfTest ? parser.value("db") : ownFolder() + "/shop.db";
    options.preferences = parser.isSet("preferences") || options.selfTest ? parser.value("preferences")
                                                                          : ownFolder() + "/station.ini";
    for (const QString& folder : parser.values("library"))
        options.libraryFolders.push_back(folder.toStdString());
    if (options.libraryFolders.empty() && !options.selfTest)
        options.libraryFolders.push_back(ownLibrary().toStdString());
    for (const QString& file : parser.positionalArguments())
        options.files.append(QUrl::fromLocalFile(QDir::current().absoluteFilePath(file)));
    return options;
}

} // namespace

int run(QGuiApplication& application)
{
    Options options = read(application);
    const QTemporaryDir scratch;
    if (options.database.isEmpty())
        options.database = scratch.filePath("shop.db");
    if (options.preferences.isEmpty())
        options.preferences = scratch.filePath("station.ini");
    if (!options.pictures.isEmpty() && !QDir().mkpath(options.pictures)) {
        tell(options.pictures + ": found a place that cannot be written, expected a folder");
        return badUsage;
    }
    if (const auto why = whyNotSpoken(options.language)) {
        tell(QString::fromStdString(why->sentence()));
        return badUsage;
    }
    auto catalogue = storage::loadCatalogueBeside(options.libraryFolders);
    look::prepareFaces();
    const auto shop = model::Shop::open(options.database, options.preferences, options.libraryFolders,
                                        std::move(catalogue));
    if (!shop.ok()) {
        for (const Error& error : shop.errors())
            tell(QString::fromStdString(error.sentence()));
        return couldNot;
    }
    model::Preferences& preferences = *(*shop)->preferences();
    if (!options.language.isEmpty())
        preferences.setLanguage(options.language);
    speak(preferences.language());
    std::optional<Tour> tour;
    if (options.selfTest)
        tour.emplace(options.pictures);
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QObject::connect(&preferences, &model::Preferences::languageChanged, &engine, [&] {
        speak(preferences.language());
        engine.retranslate();
    });
    engine.setInitialProperties({{"shop", QVariant::fromValue(shop->get())}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Lapwright/Shop/Main.qml")));
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    if (window == nullptr)
        return foundSomething;
    if (!options.files.isEmpty())
        (*shop)->arrivals()->takeFiles(options.files);
    if (tour) {
        const QStringList wrong = tour->walk(*window, **shop);
        for (const QString& line : wrong)
            tell(line);
        return wrong.isEmpty() ? 0 : foundSomething;
    }
    return QGuiApplication::exec();
}

} // namespace lapwright::shop_app
