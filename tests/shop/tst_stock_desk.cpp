// Guards: an item of stock is put on the racks, changed and taken off on screen, each checked and logged;
// what another station did meanwhile stays done; what a plan waits for keeps its description; a metal the
// shop does not know is refused with those it knows; unknown members stay with their item.
#include "shop_bench.h"
#include "storage/lists.h"
#include "storage/shop_state.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

using namespace lapwright;
using namespace lapwright::tests;
using model::DraftForm;
using model::StockDesk;

namespace {

/// A shop at its stock screen.
struct AtStock {
    std::unique_ptr<Shop> shop;
    StockDesk* desk = nullptr;

    explicit AtStock(std::unique_ptr<Shop> opened) : shop(std::move(opened)), desk(shop->stock())
    {
        desk->setActive(true);
    }

    [[nodiscard]] QModelIndex field(const QString& label) const
    {
        const DraftForm* form = desk->draft()->form();
        return form->index(rowOf(*form, label));
    }
    [[nodiscard]] QString is(const QString& label, DraftForm::Role role = DraftForm::ValueRole) const
    {
        return field(label).data(role).toString();
    }
    void fill(const QString& label, const QString& entered) const
    {
        const QModelIndex at = field(label);
        QVERIFY2(at.isValid(), qPrintable(label));
        desk->draft()->form()->fill(at.row(), entered);
    }
    /// The first item that `isMeant` says yes to is the current one.
    template <class IsMeant>
    bool choose(const IsMeant& isMeant) const
    {
        for (const model::Row& row : desk->items()->rows()) {
            desk->setCurrent(row.id);
            if (isMeant(*desk))
                return true;
        }
        return false;
    }
    /// The last of the log first.
    [[nodiscard]] std::vector<storage::StockEventRow> log() const
    {
        return storage::listStockEvents(shop->database(), "", {}).rows;
    }
    /// The stock as the database keeps it.
    [[nodiscard]] QJsonObject document() const
    {
        return QJsonDocument::fromJson(
                   QByteArray::fromStdString(storage::stockDocument(shop->database()).value_or("{}")))
            .object();
    }
};

bool isSheet(const StockDesk& desk)
{
    return desk.count() > 0;
}

bool isFree(const StockDesk& desk)
{
    return desk.whyNotTakeOff().isEmpty();
}

} // namespace

class TestStockDesk : public QObject {
    Q_OBJECT

private slots:
    void theFirstItemBeginsTheStock()
    {
        const QTemporaryDir folder;
        const AtStock at(open(folder));
        QCOMPARE(at.desk->items()->count(), 0);
        at.desk->addItem();
        model::Draft* draft = at.desk->draft();
        QVERIFY(draft->open());
        // It has no name yet, and nothing else is wrong with it.
        QVERIFY(!draft->trouble().isEmpty() && !at.is("Name or label", DraftForm::TroubleRole).isEmpty());
        at.fill("Name or label", "rack 1");
        at.fill("How many", "12");
        QVERIFY2(draft->keep(), qPrintable(at.shop->message()));
        QCOMPARE(at.desk->items()->count(), 1);
        QCOMPARE(at.desk->current(), QString("rack 1"));
        QCOMPARE(at.desk->count(), 12);
        QCOMPARE(at.log().size(), 1U);
        QCOMPARE(at.log().front().kind, std::string("given"));
        QCOMPARE(at.log().front().count, std::int64_t{12});
        QCOMPARE(at.log().front().stamp.station, at.shop->stamp().station);
        // Alike to the one that was looked at.
        at.desk->addItem();
        QCOMPARE(at.is("Name or label"), QString());
        at.fill("Name or label", "rack 1");
        draft->settle();
        QVERIFY2(at.is("Name or label", DraftForm::TroubleRole).contains("rack 1 again"),
                 qPrintable(draft->trouble()));
        QVERIFY(!draft->keep() && draft->open());
        at.fill("Name or label", "rack 2");
        QVERIFY(draft->keep());
        QCOMPARE(at.desk->items()->count(), 2);
    }

    void whatASearchLeavesOutIsNotActedOn()
    {
        const QTemporaryDir folder;
        const AtStock at(openWithStock(folder));
        QVERIFY(at.choose([](const StockDesk& desk) { return desk.isRemnant(); }));
        const QString remnant = at.desk->current();
        QVERIFY(at.choose(isSheet));
        at.desk->items()->setSearch(remnant);
        QCOMPARE(at.desk->current(), remnant);
        QVERIFY(at.desk->isRemnant());
        at.desk->items()->setSearch("no such item");
        QCOMPARE(at.desk->current(), QString());
        // A panel that is closed stays closed.
        at.desk->items()->setSearch(remnant);
        QCOMPARE(at.desk->current(), QString());
    }

    void metalAndGaugeAreThoseTheShopKnows()
    {
        const QTemporaryDir folder;
        const AtStock at(openWithStock(folder));
        QVERIFY(at.choose(isSheet));
        at.desk->changeItem();
        const QModelIndex metal = at.field("Metal");
        QCOMPARE(metal.data(DraftForm::KindRole).toInt(), static_cast<int>(DraftForm::Choice));
        const QStringList metals = metal.data(DraftForm::ChoicesRole).toStringList();
        QCOMPARE(static_cast<std::size_t>(metals.size()), at.shop->catalogue().metals.size());
        QVERIFY(metals.contains(at.is("Metal")) && metals.contains("copper"));
        QVERIFY(metal.data(DraftForm::ChoiceWordsRole).toStringList().contains("Copper"));
        QVERIFY(!at.field("Gauge").data(DraftForm::ChoicesRole).toStringList().contains("16 oz"));
        at.fill("Metal", "copper");
        at.desk->draft()->settle();
        QVERIFY(at.field("Gauge").data(DraftForm::ChoicesRole).toStringList().contains("16 oz"));
        // The gauge is that of another metal still.
        QVERIFY2(at.is("Gauge", DraftForm::TroubleRole).contains("16 oz"),
                 qPrintable(at.is("Gauge", DraftForm::TroubleRole)));
        QVERIFY(!at.desk->draft()->keep());
        at.fill("Gauge", "16 oz");
        QVERIFY2(at.desk->draft()->keep(), qPrintable(at.shop->message()));
        QString text = at.desk->draft()->text();
        at.desk->changeItem();
        text = at.desk->draft()->text();
        at.desk->draft()->setText(text.replace("\"copper\"", "\"tin foil\""));
        QVERIFY(!at.desk->draft()->keep());
        QVERIFY2(at.shop->message().contains("tin foil") && at.shop->message().contains("copper"),
                 qPrintable(at.shop->message()));
    }

    void anItemIsChangedInItsPlaceAndKeepsWhatThisProgramDoesNotKnow()
    {
        const QTemporaryDir folder;
        const AtStock at(openWithStock(folder));
        QVERIFY(at.choose(isSheet));
        const QString key = at.desk->current();
        const int count = at.desk->count();
        at.desk->changeItem();
        QString text = at.desk->draft()->text();
        at.desk->draft()->setText(text.replace("{\n", "{\n  \"shelf\": \"north wall\",\n"));
        at.desk->draft()->settle();
        at.fill("Width", "50");
        at.fill("Name or label", "rack of fifties");
        QVERIFY2(at.desk->draft()->keep(), qPrintable(at.shop->message()));
        QCOMPARE(at.desk->current(), QString("rack of fifties"));
        QCOMPARE(at.desk->count(), count);
        QVERIFY(at.desk->items()->indexOf(key) < 0);
        const auto log = at.log();
        QCOMPARE(log.at(0).kind + log.at(1).kind, std::string("givengone"));
        QCOMPARE(log.at(1).key, key.toStdString());
        const auto shelf = [&] {
            for (const QJsonValue& item : at.document()["items"].toArray())
                if (item["key"] == "rack of fifties")
                    return item["shelf"].toString();
            return QString("no such item");
        };
        QCOMPARE(shelf(), QString("north wall"));
        at.desk->changeItem();
        QVERIFY(at.desk->draft()->text().contains("north wall"));
        at.desk->draft()->leave();
        // Whatever happens to those before it.
        QVERIFY(at.choose(
            [](const StockDesk& desk) { return isFree(desk) && desk.current() != "rack of fifties"; }));
        at.desk->takeOff();
        QVERIFY2(!at.shop->trouble(), qPrintable(at.shop->message()));
        QCOMPARE(shelf(), QString("north wall"));
    }

    void whatAnotherStationDidMeanwhileStaysDone()
    {
        const QTemporaryDir folder;
        const AtStock at(openWithStock(folder));
        const AtStock other(open(folder, "other"));
        QVERIFY(at.choose(isSheet));
        at.desk->changeItem();
        const int before = at.desk->count();
        other.desk->setCurrent(at.desk->current());
        other.desk->setCount(before - 1);
        QVERIFY2(!other.shop->trouble(), qPrintable(other.shop->message()));
        other.desk->addItem();
        other.fill("Name or label", "theirs");
        QVERIFY(other.desk->draft()->keep());
        at.fill("Cost", "6100");
        QVERIFY2(at.desk->draft()->keep(), qPrintable(at.shop->message()));
        QCOMPARE(at.desk->count(), before - 1);
        QVERIFY(at.desk->items()->indexOf("theirs") >= 0);
        // Both say how many there are: the second looks again, and what was typed stays.
        at.desk->changeItem();
        other.desk->setCurrent(at.desk->current());
        other.desk->setCount(before - 2);
        at.fill("How many", "40");
        QVERIFY(!at.desk->draft()->keep() && at.desk->draft()->open());
        QVERIFY2(at.shop->message().contains("in the meantime"), qPrintable(at.shop->message()));
        QVERIFY(at.desk->draft()->text().contains("40"));
        at.desk->draft()->leave();
        QCOMPARE(at.desk->count(), before - 2);
    }

    void whatAPlanWaitsForKeepsItsDescription()
    {
        const QTemporaryDir folder;
        const AtStock at(openWithStock(folder));
        at.shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*at.shop);
        QVERIFY(at.choose([](const StockDesk& desk) { return !desk.isRemnant() && !isFree(desk); }));
        at.desk->takeOff();
        QVERIFY2(at.shop->trouble() && at.shop->message().contains("in the plan that waits for"),
                 qPrintable(at.shop->message()));
        at.desk->changeItem();
        at.fill("Width", "50");
        QVERIFY(!at.desk->draft()->keep());
        QVERIFY2(at.shop->message().contains("in the plan that waits for"), qPrintable(at.shop->message()));
        at.desk->draft()->leave();
        at.desk->changeItem();
        at.fill("How many", "500");
        QVERIFY2(at.desk->draft()->keep(), qPrintable(at.shop->message()));
        QCOMPARE(at.desk->count(), 500);
    }

    void aCoilIsMeasuredAndTakenOff()
    {
        const QTemporaryDir folder;
        const AtStock at(openWithStock(folder));
        at.desk->addItem();
        at.fill("Name or label", "coil 17");
        at.fill("Kind", "coil");
        at.fill("Length", "500'");
        QVERIFY2(at.desk->draft()->keep(), qPrintable(at.shop->message()));
        QCOMPARE(at.desk->lengthLeft(), QString("500' 0\""));
        QCOMPARE(at.desk->count(), -1);
        QVERIFY(!at.desk->setLengthLeft("a good bit").isEmpty());
        QCOMPARE(at.desk->setLengthLeft("412' 6"), QString());
        QCOMPARE(at.desk->lengthLeft(), QString("412' 6\""));
        QCOMPARE(at.log().front().length, -Length::inches(87 * 12 + 6));
        at.desk->takeOff();
        QCOMPARE(at.desk->items()->indexOf("coil 17"), -1);
        QCOMPARE(at.log().front().kind, std::string("gone"));
        QCOMPARE(at.log().front().length, Length::inches(412 * 12 + 6));
    }

    void aNameThatHoldsWhatShowsNothingIsFound()
    {
        const QTemporaryDir folder;
        const AtStock at(openWithStock(folder));
        const std::string key = "rack\xE2\x80\x8E 5"; // U+200E
        std::string stock = storage::stockDocument(at.shop->database()).value();
        stock.replace(stock.find("B-48"), 4, key);
        at.shop->database().write([&] { storage::saveStockDocument(at.shop->database(), stock); });
        at.shop->noteChange();
        QVERIFY(at.choose([&](const StockDesk& desk) { return desk.current().toStdString() == key; }));
        QVERIFY(!at.desk->title().contains(QChar(0x200E)));
        at.desk->setCount(3);
        QVERIFY2(!at.shop->trouble(), qPrintable(at.shop->message()));
        QCOMPARE(at.desk->count(), 3);
    }

    void aViewerChangesNothing()
    {
        const QTemporaryDir folder;
        const AtStock at(openWithStock(folder));
        QVERIFY(at.choose(isSheet));
        const QJsonObject before = at.document();
        at.shop->preferences()->setDuty(model::Preferences::Duty::Viewer);
        at.desk->addItem();
        at.desk->changeItem();
        QVERIFY(!at.desk->draft()->open() && at.shop->trouble());
        at.desk->takeOff();
        QCOMPARE(at.document(), before);
    }

    void theFieldsShowOnTheScreen()
    {
        const QTemporaryDir folder;
        const AtWindow at(openWithStock(folder));
        QVERIFY(at.window != nullptr);
        at.go(Qt::Key_8);
        QTRY_VERIFY(at.shop->stock()->active());
        at.shop->stock()->changeItem();
        QVERIFY(at.shop->stock()->draft()->open());
        QTRY_VERIFY(named(at.window->contentItem(), "fields") != nullptr);
        at.window->grabWindow();
        QQuickItem* screen = at.window->contentItem();
        QVERIFY(showing(screen, "Keep it") != nullptr && showing(screen, "New item") == nullptr);
        at.shop->stock()->draft()->leave();
        QTest::qWait(1); // the fields leave the screen
        QVERIFY(showing(screen, "Keep it") == nullptr && showing(screen, "New item") != nullptr);
    }
};

QTEST_MAIN(TestStockDesk)
#include "tst_stock_desk.moc"
