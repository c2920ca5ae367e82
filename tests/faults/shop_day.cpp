// A day at a station, done by the shop app's own models: `shop_day SHOP ORDERS [ACT...]` does the acts named,
// or all, on what is there, and says after each how much is done from then on. It ends with 3 where the shop
// said that something would not go, and what it said is on standard error.
#include "acts/identity.h"
#include "documents/shop.h"
#include "shop.h"
#include "source_directory.h"
#include "storage/document_file.h"
#include "storage/piece_events.h"

#include <QDir>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <functional>

using namespace lapwright;
using schedule::PieceState;

namespace {

QUrl file(const QString& path)
{
    return QUrl::fromLocalFile(path);
}

/// Everything on the load came, and one piece of it damaged. The same each time, as a tablet would send it.
Result<bool> writeReceipt(const QString& loadFile, const QString& path)
{
    const auto text = storage::readDocument(loadFile.toStdString());
    const auto load = text.ok() ? documents::readLoad(*text) : text.errors();
    if (!load.ok())
        return load.errors();
    schedule::Receipt receipt;
    receipt.id = "00000000-0000-4000-8000-0000000000aa";
    receipt.load = load->value.id;
    for (const schedule::Bundle& bundle : load->value.bundles)
        for (const schedule::LoadedPiece& piece : bundle.pieces) {
            const bool first = receipt.events.empty();
            schedule::ReceiptEvent event;
            event.id = QString("00000000-0000-4000-8000-%1")
                           .arg(receipt.events.size(), 12, 10, QChar('0'))
                           .toStdString();
            event.order = bundle.order;
            event.mark = piece.mark;
            event.found = first ? PieceState::Damaged : PieceState::Received;
            event.count = first ? 1 : piece.count;
            event.at = "2026-12-10T09:30:00Z";
            receipt.events.push_back(event);
        }
    return storage::writeDocument(path.toStdString(), documents::writeReceipt({receipt, {}}));
}

class Day {
public:
    Day(model::Shop& shop, QString folder, QString orders)
        : shop_(shop), folder_(std::move(folder)), orders_(std::move(orders))
    {
    }

    /// Whether everything went well.
    bool work(const QStringList& wanted)
    {
        type();
        const std::vector<std::pair<const char*, std::function<void()>>> acts = {
            {"stock", [this] { stock(); }},      {"order", [this] { orders(); }},
            {"plan", [this] { plan(); }},        {"cut", [this] { cut(); }},
            {"folded", [this] { fold(); }},      {"loaded", [this] { load(); }},
            {"received", [this] { receive(); }}, {"copied", [this] { copy(); }}};
        for (const auto& [name, act] : acts) {
            if (!wanted.isEmpty() && !wanted.contains(name))
                continue;
            act();
            if (shop_.trouble())
                done(name);
        }
        if (shop_.reference()->draft()->open() && shop_.reference()->draft()->text() == typed_)
            std::printf("typed 1\n");
        return well_;
    }

private:
    /// Says how much is done, or what the shop said instead.
    bool done(const char* what, std::int64_t count = 1)
    {
        if (shop_.trouble()) {
            well_ = false;
            std::fprintf(stderr, "%s: %s\n", what, qPrintable(shop_.message()));
            shop_.closeMessage();
            return false;
        }
        std::printf("%s %lld\n", what, static_cast<long long>(count));
        std::fflush(stdout);
        return true;
    }
    /// Pieces that ever came to a state.
    std::int64_t logged(const char* state)
    {
        std::int64_t count = 0;
        shop_.attempt([&] {
            storage::Rows rows =
                shop_.database().query("SELECT SUM(count) FROM piece_events WHERE state = ?", {state});
            if (rows.next())
                count = rows.number(0);
        });
        return count;
    }
    /// A change of a machine that is not kept yet.
    void type()
    {
        model::ReferenceShelf* desk = shop_.reference();
        desk->setActive(true);
        desk->setCurrent("long-folder-up");
        desk->edit();
        typed_ = desk->draft()->text().replace("\"long-folder-up\"", "\"our-folder\"");
        desk->draft()->setText(typed_);
    }
    void stock()
    {
        shop_.stock()->setActive(true);
        if (shop_.stock()->items()->count() == 0)
            shop_.stock()->importStock(
                file(QString::fromStdString(sourceDirectory() + "/tests/command/cases/shop.stock.json")));
        done("stock");
    }
    void orders()
    {
        shop_.arrivals()->setActive(true);
        QList<QUrl> files;
        for (const QFileInfo& order : QDir(orders_).entryInfoList({"*.order.json"}, QDir::Files, QDir::Name))
            files.append(file(order.filePath()));
        shop_.arrivals()->takeFiles(files);
        done("order", files.size());
    }
    void plan()
    {
        shop_.batches()->setActive(true);
        shop_.preferences()->setPlanSeconds(0);
        std::vector<storage::PieceToCut> open;
        if (!shop_.attempt([&] { open = storage::piecesToCut(shop_.database()); }) || open.empty())
            return;
        shop_.batches()->plan();
        while (shop_.planner()->running())
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        done("plan", shop_.batches()->batches()->count());
    }
    void cut()
    {
        shop_.cutting()->setActive(true);
        while (shop_.cutting()->sheets()->count() > 0) {
            shop_.cutting()->tick();
            if (!done("cut", logged("cut")))
                return;
        }
    }
    void fold()
    {
        shop_.folding()->setActive(true);
        while (shop_.folding()->lots()->count() > 0) {
            shop_.folding()->lotFolded();
            if (!done("folded", logged("folded")))
                return;
        }
    }
    void load()
    {
        shop_.loads()->setActive(true);
        if (shop_.loads()->ready()->count() > 0)
            shop_.loads()->makeLoad("truck 1");
        if (shop_.loads()->loads()->count() > 0)
            done("loaded", logged("loaded"));
    }
    void receive()
    {
        shop_.loads()->setActive(true);
        if (shop_.loads()->loads()->count() == 0)
            return;
        const QString list = folder_ + "/load.json", receipt = folder_ + "/receipt.json";
        shop_.loads()->saveLoad(file(list));
        if (!done("list"))
            return;
        if (const auto written = writeReceipt(list, receipt); !written.ok())
            shop_.tellTrouble(written.errors());
        else
            shop_.loads()->takeReceipt(file(receipt));
        done("received", logged("received"));
    }
    void copy()
    {
        shop_.backUp(file(folder_ + "/copy.db"));
        done("copied");
    }

    model::Shop& shop_;
    QString folder_, orders_, typed_;
    bool well_ = true;
};

} // namespace

int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() < 3)
        return 2;
    const QTemporaryDir preferences;
    const auto shop = model::Shop::open(arguments[1] + "/shop.db", preferences.filePath("station.ini"), {});
    if (!shop.ok()) {
        std::fprintf(stderr, "opening: %s\n", shop.errors().front().sentence().c_str());
        return 3;
    }
    return Day(**shop, arguments[1], arguments[2]).work(arguments.mid(3)) ? 0 : 3;
}
