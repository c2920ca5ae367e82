#include "app/self_test.h"

#include "app/message_count.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QImage>
#include <QThread>

#include <array>

namespace lapwright::field {

namespace {

struct Size {
    const char* name;
    int width;
    int height;
};
/// 7 inches both ways, 10 inches both ways, 13 inches.
constexpr std::array<Size, 5> sizes{{{"landscape", 1280, 800},
                                     {"portrait", 800, 1280},
                                     {"small-landscape", 1024, 600},
                                     {"small-portrait", 600, 1024},
                                     {"large", 1920, 1200}}};
constexpr std::array<const char*, 9> places{"jobs",  "form",  "house",    "keypad",  "trim",
                                            "check", "order", "delivery", "settings"};

/// Lets layouts, bindings and one frame happen.
void settle(QQuickWindow& window)
{
    QElapsedTimer timer;
    timer.start();
    do {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        QThread::msleep(5);
    } while (timer.elapsed() < 60);
    window.update();
    QCoreApplication::processEvents();
}

bool isBlank(const QImage& image)
{
    const QRgb first = image.pixel(0, 0);
    for (int y = 0; y < image.height(); y += 7)
        for (int x = 0; x < image.width(); x += 7)
            if (image.pixel(x, y) != first)
                return false;
    return true;
}

class Walk {
public:
    Walk(FieldApp& app, QQuickWindow& window, QString folder)
        : app_(app), window_(window), folder_(std::move(folder))
    {
    }

    QStringList walk()
    {
        if (!app_.openSample())
            wrong_ << "the sample house does not open: " + app_.message();
        window_.setProperty("place", "house");
        settle(window_);
        app_.settings()->setGuideSeen(true);
        for (const char* theme : {"sunlight", "light", "dark"}) {
            app_.settings()->setTheme(theme);
            for (const Size& size : sizes) {
                const bool every = QString(theme) == "sunlight" || QString(size.name) == "landscape";
                if (every)
                    showAll(theme, size);
            }
        }
        app_.settings()->setTheme("sunlight");
        app_.settings()->setLeftHanded(true);
        app_.settings()->setTextScale(1.4);
        showAll("left-handed-large-text", sizes[0]);
        app_.settings()->setLeftHanded(false);
        app_.settings()->setTextScale(1.0);
        return wrong_ + MessageCount::warnings();
    }

private:
    void showAll(const QString& variant, const Size& size)
    {
        window_.resize(size.width, size.height);
        settle(window_);
        for (const char* place : places) {
            show(place);
            const QImage image = window_.grabWindow();
            const QString name = QString("%1-%2-%3").arg(place, QString(size.name), variant);
            if (image.isNull() || isBlank(image))
                wrong_ << name + " shows nothing";
            if (!folder_.isEmpty() && !image.save(QDir(folder_).filePath(name + ".png")))
                wrong_ << "cannot write " + name + ".png";
        }
    }

    /// "keypad" is the house with an open chain and a measure half typed.
    void show(const QString& place)
    {
        JobEditor& editor = *app_.editor();
        const bool typing = place == "keypad";
        editor.setChain(typing ? 1 : 0);
        if (typing)
            editor.entry()->length()->setText("18' 4 3/8");
        window_.setProperty("place", typing ? "house" : place);
        settle(window_);
    }

    FieldApp& app_;
    QQuickWindow& window_;
    QString folder_;
    QStringList wrong_;
};

} // namespace

QStringList selfTest(FieldApp& app, QQuickWindow& window, const QString& folder)
{
    if (!folder.isEmpty() && !QDir().mkpath(folder))
        return {"cannot make the folder " + folder};
    return Walk(app, window, folder).walk();
}

} // namespace lapwright::field
