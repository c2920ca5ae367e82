#include "tour.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QImage>
#include <QQuickWindow>
#include <QVariant>

#include <array>
#include <utility>

namespace lapwright::shop_app {

namespace {

/// How long a screen may settle before its picture is taken, milliseconds.
constexpr int settle = 250;

/// How the screens are looked at: at a desk, on a large screen, on a touch panel beside a machine.
struct Sight {
    const char* name;
    int width;
    int height;
    int scheme; ///< index of the theme
    bool touch;
};

constexpr std::array sights = {Sight{"1366", 1366, 768, 0, false}, Sight{"1920", 1920, 1080, 1, false},
                               Sight{"touch", 1280, 800, 3, true}};

/// "arrivals" of ArrivalsScreen.qml: the same in every language.
QString nameOf(const QVariantMap& place)
{
    return place.value("source").toString().remove("Screen.qml").toLower();
}

void letSettle()
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < settle)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
}

} // namespace

Tour::Tour(QString pictures) : pictures_(std::move(pictures)) {}

bool Tour::walk(QObject& window) const
{
    auto* shown = qobject_cast<QQuickWindow*>(&window);
    auto* shop = window.property("shop").value<QObject*>();
    if (shown == nullptr || shop == nullptr)
        return false;
    auto* choices = shop->property("preferences").value<QObject*>();
    const QVariant scheme = choices->property("scheme"), touch = choices->property("touch");
    bool every = true;
    for (const Sight& sight : sights) {
        choices->setProperty("scheme", sight.scheme);
        choices->setProperty("touch", sight.touch);
        shown->resize(sight.width, sight.height);
        every = visit(*shown, sight.name) && every;
    }
    choices->setProperty("scheme", scheme);
    choices->setProperty("touch", touch);
    return every && look::MessageCount::warnings().isEmpty();
}

bool Tour::visit(QQuickWindow& window, const char* sight) const
{
    bool every = true;
    const QVariantList places = window.property("places").toList();
    for (int place = 0; place < places.size(); ++place) {
        QMetaObject::invokeMethod(&window, "go", Q_ARG(QVariant, place));
        letSettle();
        const QImage image = window.grabWindow();
        const QString name = nameOf(places[place].toMap());
        const QString file =
            QDir(pictures_).filePath(QStringLiteral("%1-%2.png").arg(name, QLatin1String(sight)));
        if (image.isNull() || (!pictures_.isEmpty() && !image.save(file)))
            every = false;
    }
    return every;
}

} // namespace lapwright::shop_app
