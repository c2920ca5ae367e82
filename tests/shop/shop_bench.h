#pragma once

#include "acts/identity.h"
#include "acts/incoming.h"
#include "documents/job.h"
#include "documents/order.h"
#include "documents/shop.h"
#include "draft_form.h"
#include "shop.h"
#include "source_directory.h"
#include "storage/catalogue.h"
#include "storage/document_file.h"

#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest>

#include <memory>
#include <string>
#include <vector>

/// A shop with the demo's houses and stock, for tests of its desks and its window.
namespace lapwright::tests {

using model::Shop;

/// Longer than anything takes on a busy machine, milliseconds.
inline constexpr int longest = 60'000;

inline QString demo(const QString& file)
{
    return QString::fromStdString(sourceDirectory() + "/demo/") + file;
}

/// The order of a demo house as the installer would send it; with `more` to the customer's name another
/// content.
inline QUrl orderOf(const QString& house, const QTemporaryDir& folder,
                    const std::string& id = acts::newUuid(), const std::string& more = {})
{
    const auto catalogue = storage::loadCatalogue({});
    const auto text = storage::readDocument(demo(house + ".job.json").toStdString());
    const auto job = documents::readJob(*text);
    pieces::Order order = acts::takeOff(job->value, *catalogue);
    order.id = id;
    order.job.customer += more;
    const QString path = folder.filePath(house + QString::fromStdString(more) + ".order.json");
    const auto written = storage::writeDocument(path.toStdString(), documents::writeOrder({order, {}}));
    Q_ASSERT(written.ok());
    return QUrl::fromLocalFile(path);
}

inline std::unique_ptr<Shop> open(const QTemporaryDir& folder, const QString& station = "station",
                                  const std::vector<std::string>& libraryFolders = {})
{
    auto shop = Shop::open(folder.filePath("shop.db"), folder.filePath(station + ".ini"), libraryFolders);
    return shop.ok() ? *std::move(shop) : nullptr;
}

/// One with the demo's stock.
inline std::unique_ptr<Shop> openWithStock(const QTemporaryDir& folder)
{
    auto shop = open(folder);
    if (shop)
        shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
    return shop;
}

/// The shop's window, active; nullptr if it does not load.
inline QQuickWindow* windowOf(Shop& shop, QQmlApplicationEngine& engine)
{
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{"shop", QVariant::fromValue(&shop)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Lapwright/Shop/Main.qml")));
    if (engine.rootObjects().isEmpty())
        return nullptr;
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    window->requestActivate();
    const auto isReady = [window] { return window->property("ready").toBool(); };
    return QTest::qWaitForWindowActive(window) && QTest::qWaitFor(isReady, longest) ? window : nullptr;
}

/// A shop at its window, which fails the test with whatever QML warns of.
struct AtWindow {
    explicit AtWindow(std::unique_ptr<Shop> opened) : shop(std::move(opened))
    {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("qrc:")));
        window = windowOf(*shop, engine);
    }

    /// To the screen of that digit.
    void go(Qt::Key place) const
    {
        window->requestActivate();
        QVERIFY(QTest::qWaitForWindowActive(window));
        QTest::keyClick(window, place, Qt::ControlModifier);
    }

    std::unique_ptr<Shop> shop;
    QQmlApplicationEngine engine;
    QQuickWindow* window = nullptr; ///< null if it does not load
};

/// The control of that name, or of that object name, below `item`; nullptr if there is none.
inline QQuickItem* named(QQuickItem* item, const QString& name)
{
    if (item->property("name").toString() == name || item->objectName() == name)
        return item;
    for (QQuickItem* child : item->childItems())
        if (QQuickItem* found = named(child, name))
            return found;
    return nullptr;
}

/// The button below `item` that shows these words; nullptr if there is none.
inline QQuickItem* showing(QQuickItem* item, const QString& words)
{
    if (item->isVisible() && item->property("text").toString() == words && item->property("kind").isValid())
        return item;
    for (QQuickItem* child : item->childItems())
        if (QQuickItem* found = showing(child, words))
            return found;
    return nullptr;
}

/// The first field or heading of that name; -1 if there is none.
inline int rowOf(const model::DraftForm& form, const QString& label)
{
    for (int row = 0; row < form.count(); ++row)
        if (form.data(form.index(row), model::DraftForm::LabelRole) == label)
            return row;
    return -1;
}

inline void plan(Shop& shop)
{
    shop.preferences()->setPlanSeconds(1);
    shop.batches()->setActive(true);
    QSignalSpy progress(shop.planner(), &model::PlanWorker::progressed);
    shop.batches()->plan();
    QVERIFY(shop.planner()->running());
    QTRY_VERIFY_WITH_TIMEOUT(!shop.planner()->running(), longest);
    QVERIFY(progress.size() >= 2);
}

inline void cutEverything(Shop& shop)
{
    model::CuttingDesk* desk = shop.cutting();
    desk->setActive(true);
    for (int sheet = 0; desk->sheets()->count() > 0 && sheet < 500; ++sheet) {
        QVERIFY(!desk->map().empty());
        desk->tick();
    }
    QCOMPARE(desk->sheets()->count(), 0);
}

/// One that has cut all pieces of the cottage of the demo.
inline std::unique_ptr<Shop> openWithCut(const QTemporaryDir& folder)
{
    auto shop = openWithStock(folder);
    shop->arrivals()->takeFiles({orderOf("hollin", folder)});
    plan(*shop);
    cutEverything(*shop);
    return shop;
}

inline void foldEverything(Shop& shop)
{
    model::FoldingDesk* desk = shop.folding();
    desk->setActive(true);
    for (int lot = 0; desk->lots()->count() > 0 && lot < 200; ++lot) {
        QVERIFY2(desk->refusal().isEmpty(), qPrintable(desk->refusal()));
        QVERIFY(!desk->picture().empty());
        desk->lotFolded();
    }
    QCOMPARE(desk->lots()->count(), 0);
}

/// Everything on the load came but one piece, which came damaged.
inline QUrl receiptOf(const QUrl& loadFile, const QTemporaryDir& folder)
{
    const auto load = documents::readLoad(*storage::readDocument(loadFile.toLocalFile().toStdString()));
    schedule::Receipt receipt;
    receipt.id = acts::newUuid();
    receipt.load = load->value.id;
    bool first = true;
    for (const schedule::Bundle& bundle : load->value.bundles)
        for (const schedule::LoadedPiece& piece : bundle.pieces) {
            schedule::ReceiptEvent event;
            event.id = acts::newUuid();
            event.order = bundle.order;
            event.mark = piece.mark;
            event.found = first ? schedule::PieceState::Damaged : schedule::PieceState::Received;
            event.count = first ? 1 : piece.count;
            event.at = "2026-12-10T09:30:00Z";
            first = false;
            receipt.events.push_back(event);
        }
    const QString path = folder.filePath("receipt.json");
    const auto written = storage::writeDocument(path.toStdString(), documents::writeReceipt({receipt, {}}));
    Q_ASSERT(written.ok());
    return QUrl::fromLocalFile(path);
}

} // namespace lapwright::tests
