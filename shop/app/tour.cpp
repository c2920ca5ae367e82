#include "tour.h"

#include "overlaps.h"
#include "seen_items.h"
#include "shop.h"

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
constexpr int settle = 60;
/// How many times it is looked at before it is wrong.
constexpr int mostFrames = 5;

/// How the screens are looked at: at a desk, on a large screen, on a touch panel beside a machine, on an old
/// laptop.
struct Sight {
    const char* name;
    int width;
    int height;
    bool touch;
};

constexpr std::array sights = {Sight{"1366", 1366, 768, false}, Sight{"1920", 1920, 1080, false},
                               Sight{"touch", 1280, 800, true}, Sight{"small", 1024, 600, false}};

struct Scheme {
    const char* name;
    int index;
};

/// As Settings list them, without "sunlight", which is for outdoors.
constexpr std::array schemes = {Scheme{"light", 0}, Scheme{"dark", 1}, Scheme{"floor", 3}};

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

QStringList Tour::walk(QQuickWindow& window, model::Shop& shop) const
{
    model::Preferences& choices = *shop.preferences();
    const int before = choices.scheme();
    const bool touch = choices.touch();
    while (!window.property("ready").toBool())
        letSettle();
    QStringList wrong;
    for (const Sight& sight : sights) {
        choices.setTouch(sight.touch);
        window.resize(sight.width, sight.height);
        for (const Scheme& scheme : schemes) {
            // Words take the same room in every theme: more than one is for the eye alone.
            if (pictures_.isEmpty() && scheme.index != (sight.touch ? 3 : 0))
                continue;
            choices.setScheme(scheme.index);
            wrong +=
                visit(window, shop,
                      QStringLiteral("%1-%2").arg(QLatin1String(sight.name), QLatin1String(scheme.name)));
        }
    }
    choices.setScheme(before);
    choices.setTouch(touch);
    return wrong + look::MessageCount::warnings();
}

QStringList Tour::visit(QQuickWindow& window, model::Shop& shop, const QString& sight) const
{
    QStringList wrong;
    const QVariantList places = window.property("places").toList();
    for (int place = 0; place < places.size(); ++place) {
        QMetaObject::invokeMethod(&window, "go", Q_ARG(QVariant, place));
        const QString name = nameOf(places[place].toMap());
        wrong += see(window, name + u'-' + sight);
        if (name == QLatin1String("arrivals"))
            wrong += visitOrder(window, sight);
        if (name == QLatin1String("schedule"))
            wrong += visitFolded(window, QStringLiteral("schedule-whole-") + sight);
        if (name == QLatin1String("reference"))
            wrong += visitDrafts(window, *shop.reference(), sight);
        if (name == QLatin1String("stock"))
            wrong += visitStock(window, *shop.stock(), sight);
    }
    return wrong;
}

QStringList Tour::visitOrder(QQuickWindow& window, const QString& sight) const
{
    QStringList wrong;
    for (QQuickItem* item : look::visibleItems(window)) {
        if (item->objectName() != QLatin1String("sheets"))
            continue;
        const QStringList sheets = {"plan", "profiles", "pieces", "findings"};
        for (int sheet = 1; sheet < sheets.size(); ++sheet) {
            QMetaObject::invokeMethod(item, "choose", Q_ARG(QVariant, sheet));
            wrong += see(window, QStringLiteral("arrivals-%1-%2").arg(sheets[sheet], sight));
        }
        QMetaObject::invokeMethod(item, "choose", Q_ARG(QVariant, 0));
        break;
    }
    return wrong;
}

QStringList Tour::visitFolded(QQuickWindow& window, const QString& name) const
{
    QStringList wrong;
    for (QQuickItem* item : look::visibleItems(window)) {
        if (item->objectName() != QLatin1String("folded"))
            continue;
        item->setProperty("open", true);
        wrong += see(window, name);
        item->setProperty("open", false);
        break;
    }
    return wrong;
}

QStringList Tour::visitDrafts(QQuickWindow& window, model::ReferenceShelf& shelf, const QString& sight) const
{
    QStringList wrong;
    const QStringList kinds = {"machine", "trim", "rules", "floor", "rates"};
    for (int kind = 0; kind < kinds.size(); ++kind) {
        shelf.setKind(kind);
        wrong += see(window, QStringLiteral("reference-%1-%2").arg(kinds[kind], sight));
        shelf.edit();
        wrong += seeDraft(window, *shelf.draft(),
                          QStringLiteral("reference-%1-fields-%2").arg(kinds[kind], sight));
    }
    shelf.setKind(0);
    return wrong;
}

QStringList Tour::visitStock(QQuickWindow& window, model::StockDesk& desk, const QString& sight) const
{
    QStringList wrong;
    if (desk.items()->count() > 0) {
        desk.changeItem();
        wrong = seeDraft(window, *desk.draft(), QStringLiteral("stock-change-") + sight);
    }
    desk.addItem();
    return wrong + seeDraft(window, *desk.draft(), QStringLiteral("stock-new-") + sight);
}

QStringList Tour::seeDraft(QQuickWindow& window, model::Draft& draft, const QString& name) const
{
    QStringList wrong;
    if (!draft.open())
        wrong << name + QStringLiteral(" does not open to be changed");
    wrong += see(window, name);
    draft.leave();
    return wrong;
}

QStringList Tour::see(QQuickWindow& window, const QString& name) const
{
    letSettle();
    window.grabWindow(); // rows of lists that this frame makes get their sizes before the next
    QImage image;
    QStringList found;
    // Where that leaves room for more rows it takes another frame: what is wrong on a screen stays wrong.
    for (int frame = 0; frame < mostFrames && (frame == 0 || !found.isEmpty()); ++frame) {
        letSettle();
        image = window.grabWindow();
        found = look::cutOff(window) + look::overlaps(window);
    }
    QStringList wrong;
    if (image.isNull())
        wrong << name + QStringLiteral(" shows nothing");
    for (const QString& what : found)
        wrong << name + QStringLiteral(": ") + what;
    if (!pictures_.isEmpty() && !image.save(QDir(pictures_).filePath(name + QStringLiteral(".png"))))
        wrong << QStringLiteral("cannot write %1.png").arg(name);
    return wrong;
}

} // namespace lapwright::shop_app
