// Guards: once a tablet is paired, an order or receipt counts without asking only if a paired tablet signed
// exactly it; whatever else comes waits for a person with the reason, and taking it twice or after pairing
// ends as if it had come well. What the shop loads is signed with a key of its own.
#include "acts/arrivals.h"
#include "acts/identity.h"
#include "acts/loading.h"
#include "acts/receipts.h"
#include "acts/trust.h"
#include "documents/shipped_orders.h"
#include "documents/shop.h"
#include "documents/signature.h"
#include "source_directory.h"
#include "storage/health.h"
#include "storage/lists.h"
#include "storage/piece_events.h"
#include "storage/shop_key.h"
#include "storage/shop_state.h"
#include "storage/tablets.h"

#include <QTemporaryDir>
#include <QtTest>

#include <algorithm>

using namespace lapwright;
using Outcome = storage::Arrival::Outcome;

namespace {

const storage::Stamp stamp{"2026-01-05T08:00:00Z", "desk", "Ann"};

documents::SigningKey keyOf(unsigned char number)
{
    documents::SigningKey::Seed seed{};
    seed.fill(number);
    return documents::SigningKey(seed);
}

std::string digits(const documents::SigningKey& key)
{
    return documents::write(key.publicKey());
}

struct ShopOfADay {
    QTemporaryDir folder;
    storage::Database database =
        storage::Database::open(folder.filePath("shop.db").toStdString(), storage::WhenMissing::Make).value();
    pieces::Catalogue catalogue = texts::shippedCatalogue();

    [[nodiscard]] std::string order(std::int64_t spares = 0) const
    {
        const std::string job =
            texts::read(QString::fromStdString(sourceDirectory() + "/demo/hollin.job.json"));
        site::Job measured = documents::readJob(job)->value;
        measured.spares = spares;
        return documents::writeOrder(texts::orderOf(measured, catalogue));
    }
    [[nodiscard]] storage::Arrival take(const std::string& text, bool accept = false) const
    {
        return acts::receiveOrder(database, catalogue, text, stamp, accept)->arrival.value();
    }
    [[nodiscard]] std::int64_t ordered() const
    {
        return storage::shopCounts(database).of(schedule::PieceState::Ordered);
    }
};

std::string reasonOf(const storage::Arrival& arrival)
{
    return arrival.reasons.empty() ? std::string() : arrival.reasons.front();
}

} // namespace

class TrustTest : public QObject {
    Q_OBJECT
private slots:
    void beforeATabletIsPairedAnyOrderIsTaken()
    {
        const ShopOfADay shop;
        QCOMPARE(shop.take(documents::signDocument(shop.order(), keyOf(1)).value()).outcome, Outcome::Taken);
        QCOMPARE(shop.take(shop.order()).outcome, Outcome::AlreadyHere);
    }
    void anOrderChangedOnItsWayWaits()
    {
        const ShopOfADay shop;
        std::string text = documents::signDocument(shop.order(), keyOf(1)).value();
        const std::string customer = documents::readOrder(text)->value.job.customer;
        text.replace(text.find(customer), 1, "X");
        const storage::Arrival arrival = shop.take(text);
        QCOMPARE(arrival.outcome, Outcome::Waits);
        QCOMPARE(reasonOf(arrival), std::string("it was changed after a tablet signed it"));
        QCOMPARE(shop.ordered(), 0);
        QCOMPARE(shop.take(text, true).outcome, Outcome::Taken);
    }
    void onlyAPairedTabletIsTrusted()
    {
        const ShopOfADay shop;
        storage::pairTablet(shop.database, digits(keyOf(1)), "Ann's tablet", stamp);
        QCOMPARE(reasonOf(shop.take(shop.order())), std::string("no tablet signed it"));
        const std::string byAnother = documents::signDocument(shop.order(), keyOf(2)).value();
        const std::string code = documents::pairingCode(keyOf(2).publicKey());
        QVERIFY(reasonOf(shop.take(byAnother)).find(code) != std::string::npos);
        QCOMPARE(shop.ordered(), 0);
        QCOMPARE(shop.take(documents::signDocument(shop.order(), keyOf(1)).value()).outcome, Outcome::Taken);
        QVERIFY(shop.ordered() > 0);
    }
    void theCodeOfAWaitingOrderPairsItsTablet()
    {
        const ShopOfADay shop;
        storage::pairTablet(shop.database, digits(keyOf(1)), "Ann's tablet", stamp);
        const std::string byAnother = documents::signDocument(shop.order(), keyOf(2)).value();
        QCOMPARE(shop.take(byAnother).outcome, Outcome::Waits);
        std::string typed = documents::pairingCode(keyOf(2).publicKey());
        std::transform(typed.begin(), typed.end(), typed.begin(), [](char letter) {
            return letter == '-' ? ' ' : static_cast<char>(std::tolower(letter));
        });
        const auto key = acts::keyNamed(shop.database, typed);
        QVERIFY(key.ok() && *key == keyOf(2).publicKey());
        QVERIFY(!acts::keyNamed(shop.database, "0000-0000-0000").ok());
        storage::pairTablet(shop.database, documents::write(*key), "Bo's tablet", stamp);
        QCOMPARE(shop.take(byAnother).outcome, Outcome::Taken);
        QVERIFY(storage::waitingDocuments(shop.database).empty());
    }
    void aLostTabletIsTrustedNoLonger()
    {
        const ShopOfADay shop;
        const std::string key = digits(keyOf(1));
        storage::pairTablet(shop.database, key, "Ann's tablet", stamp);
        QVERIFY(storage::revokeTablet(shop.database, key, stamp));
        QVERIFY(!storage::revokeTablet(shop.database, key, stamp));
        const std::string order = documents::signDocument(shop.order(), keyOf(1)).value();
        QVERIFY(reasonOf(shop.take(order)).find("trusted no longer") != std::string::npos);
        storage::pairTablet(shop.database, key, "Ann's tablet, found", stamp);
        QCOMPARE(shop.take(order).outcome, Outcome::Taken);
    }
    void aSignatureMakesNoOtherRevision()
    {
        const ShopOfADay shop;
        const auto plain = documents::readOrder(shop.order());
        const auto signedOrder =
            documents::readOrder(documents::signDocument(shop.order(), keyOf(1)).value());
        QCOMPARE(documents::revisionHash(*signedOrder), documents::revisionHash(*plain));
        QVERIFY(documents::writeOrder(*signedOrder).find("signature") == std::string::npos);
        QVERIFY(documents::revisionHash(*documents::readOrder(shop.order(2))) !=
                documents::revisionHash(*plain));
    }
    void aReceiptThatIsNotTrustedIsNotTaken()
    {
        const ShopOfADay shop;
        schedule::Load load;
        load.id = acts::newUuid();
        load.madeAt = stamp.at;
        QVERIFY(shop.database.write([&] {
            return storage::saveLoad(shop.database, load.id, documents::writeLoad({load, {}}), stamp);
        }));
        schedule::Receipt receipt;
        receipt.id = acts::newUuid();
        receipt.load = load.id;
        const std::string text = documents::writeReceipt({receipt, {}});
        storage::pairTablet(shop.database, digits(keyOf(1)), "Ann's tablet", stamp);
        QVERIFY(acts::takeReceipt(shop.database, text, stamp, false)->doubt.has_value());
        QVERIFY(
            !acts::takeReceipt(shop.database, documents::signDocument(text, keyOf(1)).value(), stamp, false)
                 ->doubt.has_value());
        QVERIFY(!acts::takeReceipt(shop.database, text, stamp, true)->doubt.has_value());
    }
    void theShopSignsItsLoadsWithOneKey()
    {
        const ShopOfADay shop;
        const auto ownKey = [&shop] {
            return shop.database.write([&] { return storage::shopKey(shop.database).publicKey(); });
        };
        const documents::PublicKey first = ownKey();
        QVERIFY(ownKey() == first);
        QCOMPARE(shop.take(shop.order()).outcome, Outcome::Taken);
        makeSomething(shop);
        const auto load = acts::makeLoad(shop.database, "truck", stamp);
        QVERIFY(load);
        const std::string text = storage::loadDocument(shop.database, load->id).value();
        QVERIFY(documents::readLoad(text)->value == *load);
        const auto signature = documents::checkSignature(text);
        QVERIFY(signature->holds && *signature->key == first);
        shop.database.write([&] { storage::renewShopKey(shop.database); });
        QVERIFY(!(ownKey() == first));
        QVERIFY(storage::examine(shop.database).sound());
    }

private:
    /// Some pieces are cut and folded.
    static void makeSomething(const ShopOfADay& shop)
    {
        const auto ordered = storage::piecesIn(shop.database, schedule::PieceState::Ordered);
        shop.database.write([&] {
            for (const schedule::PieceState state :
                 {schedule::PieceState::Cut, schedule::PieceState::Folded}) {
                const storage::PieceInState& piece = ordered.front();
                QVERIFY(storage::logEvent(shop.database,
                                          {acts::newUuid(),
                                           piece.order,
                                           piece.piece.mark,
                                           {schedule::PieceEvent::Kind::Advance, state, piece.count},
                                           ""},
                                          stamp)
                            .ok());
            }
        });
    }
};

QTEST_GUILESS_MAIN(TrustTest)
#include "tst_trust.moc"
