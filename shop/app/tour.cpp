#include "tour.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QImage>
#include <QQuickWindow>
#include <QVariant>

#include <array>
#include <cstdio>
#include <utility>

namespace lapwright::shop_app {

namespace {

/// How long a screen may settle before its picture is taken, milliseconds.
constexpr int settle = 250;

int& warnings()
{
    static int count = 0;
    return count;
}

void listen(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    if (type != QtDebugMsg && type != QtInfoMsg && !message.contains(QLatin1String("XDG_RUNTIME_DIR")))
        ++warnings();
    std::fprintf(stderr, "%s\n", qPrintable(message));
}

void letSettle()
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < settle)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
}

} // namespace

Tour::Tour(QString pictures) : pictures_(std::move(pictures))
{
    warnings() = 0;
    qInstallMessageHandler(listen);
}

Tour::~Tour()
{
    qInstallMessageHandler(nullptr);
}

bool Tour::walk(QObject& window) const
{
    auto* shown = qobject_cast<QQuickWindow*>(&window);
    const QVariantList places = window.property("places").toList();
    if (shown == nullptr || places.isEmpty())
        return false;
    constexpr std::array sizes = {std::pair{1366, 768}, std::pair{1920, 1080}};
    for (const auto& [width, height] : sizes) {
        shown->resize(width, height);
        for (int place = 0; place < places.size(); ++place) {
            QMetaObject::invokeMethod(&window, "go", Q_ARG(QVariant, place));
            letSettle();
            const QImage image = shown->grabWindow();
            const QString name = places[place].toMap().value("name").toString().toLower();
            if (image.isNull())
                ++warnings();
            else if (!pictures_.isEmpty() &&
                     !image.save(QDir(pictures_).filePath(QStringLiteral("%1-%2.png").arg(name).arg(width))))
                ++warnings();
        }
    }
    return warnings() == 0;
}

} // namespace lapwright::shop_app
