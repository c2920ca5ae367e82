#include "app/self_test.h"

#include "documents/shop.h"
#include "look/message_count.h"
#include "look/overlaps.h"
#include "look/seen_items.h"
#include "model/sample_house.h"
#include "storage/document_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
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
constexpr std::array<const char*, 13> places{"jobs",   "form",     "house",   "keypad", "chains",
                                             "misses", "photos",   "trim",    "why",    "check",
                                             "order",  "delivery", "settings"};

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

/// A gable against the sky: something to see on a photo.
bool paintPhoto(const QString& path)
{
    QImage photo(1200, 900, QImage::Format_RGB32);
    photo.fill(QColor("#b9cbd6"));
    QPainter painter(&photo);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor("#8d7f6e"));
    painter.drawRect(250, 430, 700, 470);
    painter.setBrush(QColor("#4d555c"));
    painter.drawPolygon(QPolygonF({{180, 450}, {600, 170}, {1020, 450}}));
    painter.setBrush(QColor("#e7e2d6"));
    painter.drawRect(520, 560, 160, 340);
    painter.end();
    return photo.save(path);
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
    Walk(FieldApp& app, const Tablet& tablet, QQuickWindow& window, QString folder)
        : app_(app), tablet_(tablet), window_(window), folder_(std::move(folder))
    {
    }

    QStringList walk()
    {
        if (!app_.openSample())
            wrong_ << "the sample house does not open: " + app_.message();
        takePhoto();
        bringTheTruck();
        if (!app_.message().isEmpty())
            wrong_ << app_.message();
        window_.setProperty("place", "house");
        settle(window_);
        if (auto* guide = window_.findChild<QQuickItem*>("guide"))
            guide->setProperty("running", false);
        if (!app_.settings()->language().isEmpty()) {
            showSmallest();
            return wrong_ + look::MessageCount::warnings();
        }
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
        for (const Size& size : {sizes[0], sizes[3]})
            showAll("left-handed-large-text", size);
        app_.settings()->setLeftHanded(false);
        app_.settings()->setTextScale(1.0);
        return wrong_ + look::MessageCount::warnings();
    }

private:
    void takePhoto()
    {
        const QString path = scratch_.filePath("gable.jpg");
        app_.photos()->showRun("E1");
        if (!paintPhoto(path) || !app_.photos()->add(path))
            wrong_ << "no photo is taken";
    }

    /// One bundle counted in, a piece of the next one damaged, another in hand.
    void bringTheTruck()
    {
        pieces::Order order = pieces::takeoff(app_.editor()->job(), tablet_.catalogue());
        order.id = order.job.id;
        schedule::Load load = sampleLoad(order);
        load.id = tablet_.newId();
        load.madeAt = tablet_.now();
        const QString path = scratch_.filePath("truck.load.json");
        DeliveryCheck& delivery = *app_.delivery();
        if (!storage::writeDocument(path.toStdString(), documents::writeLoad({load, {}})).ok() ||
            !delivery.openFile(path) || !delivery.countBundle("B1"))
            wrong_ << "the truck does not come";
        delivery.take(delivery.rowOf("B2"));
        if (!delivery.count(DeliveryCheck::Found::Damaged, 1, "bent at one end"))
            wrong_ << "a damaged piece is not counted";
        delivery.take(delivery.rowOf("B2") + 1);
    }

    /// A language is tried where there is least room for its words.
    void showSmallest()
    {
        app_.settings()->setTheme("sunlight");
        for (const Size& size : sizes)
            if (QString(size.name).startsWith("small"))
                showAll(app_.settings()->language().section('/', -1).section('.', 0, 0), size);
    }

    void showAll(const QString& variant, const Size& size)
    {
        window_.resize(size.width, size.height);
        settle(window_);
        for (const char* place : places) {
            show(place);
            window_.grabWindow(); // rows of lists that this frame makes get their sizes before the next
            settle(window_);
            const QImage image = window_.grabWindow();
            const QString name = QString("%1-%2-%3").arg(place, QString(size.name), variant);
            if (image.isNull() || isBlank(image))
                wrong_ << name + " shows nothing";
            for (const QString& what :
                 look::hardToHit(window_) + look::cutOff(window_) + look::overlaps(window_))
                wrong_ << name + ": " + what;
            if (!folder_.isEmpty() && !image.save(QDir(folder_).filePath(name + ".png")))
                wrong_ << "cannot write " + name + ".png";
        }
    }

    /// "keypad" is the house with an open chain and a measure half typed, "chains" what is begun next,
    /// "misses" a chain that does not come back to its start and a run of it measured twice, "photos" those
    /// of a run, "why" where the numbers of a trim come from.
    void show(const QString& place)
    {
        JobEditor& editor = *app_.editor();
        const bool typing = place == "keypad";
        const bool ofHouse = typing || place == "chains" || place == "misses" || place == "photos";
        editor.setChain(typing ? 1 : 0);
        if (typing)
            editor.entry()->length()->setText("18' 4 3/8");
        spoil(place == "misses");
        window_.setProperty("place", ofHouse ? "house" : place == "why" ? "trim" : place);
        settle(window_);
        for (QQuickItem* item : look::visibleItems(window_)) {
            if (ofHouse && item->property("showsPhotos").isValid()) {
                item->setProperty("starting", place == "chains");
                item->setProperty("showsPhotos", place == "photos");
            }
            if (item->property("showsWhy").isValid())
                item->setProperty("showsWhy", place == "why");
        }
        settle(window_);
    }

    /// Makes the eave line miss its start, or takes that back.
    void spoil(bool wanted)
    {
        JobEditor& editor = *app_.editor();
        if (wanted && !spoiled_) {
            editor.setRun(2);
            editor.entry()->length()->setText("21'");
            spoiled_ = editor.keepRun();
            editor.setRun(1);
            editor.entry()->length()->setText("28' 1/2\"");
            if (!spoiled_ || !editor.repeatMeasure())
                wrong_ << "the eave line cannot be made to miss";
        } else if (!wanted && spoiled_) {
            spoiled_ = false;
            if (!editor.undo() || !editor.undo())
                wrong_ << "the eave line cannot be made good again";
            editor.setRun(-1);
        }
    }

    FieldApp& app_;
    const Tablet& tablet_;
    QTemporaryDir scratch_;
    QQuickWindow& window_;
    QString folder_;
    bool spoiled_ = false;
    QStringList wrong_;
};

} // namespace

QStringList selfTest(FieldApp& app, const Tablet& tablet, QQuickWindow& window, const QString& folder)
{
    if (!folder.isEmpty() && !QDir().mkpath(folder))
        return {"cannot make the folder " + folder};
    return Walk(app, tablet, window, folder).walk();
}

} // namespace lapwright::field
