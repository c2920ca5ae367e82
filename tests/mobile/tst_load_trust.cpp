// Guards: once a tablet trusts a shop, a load list is counted without asking only if that shop signed exactly
// it; whatever else comes is said with the reason and waits until the crew lead says that it counts; a shop's
// new key, and a key that is trusted no longer, are questioned again. Needs no network.
#include "documents/shop.h"
#include "documents/signature.h"
#include "mobile/field_bench.h"
#include "storage/document_file.h"

using namespace lapwright;
using namespace lapwright::field;

namespace {

documents::SigningKey keyOf(unsigned char number)
{
    documents::SigningKey::Seed seed{};
    seed.fill(number);
    return documents::SigningKey(seed);
}

QString codeOf(const documents::SigningKey& key)
{
    return QString::fromStdString(documents::pairingCode(key.publicKey()));
}

std::string unsignedList(const std::string& id = inventedLoad().id)
{
    schedule::Load load = inventedLoad();
    load.id = id;
    return documents::writeLoad({load, {}});
}

std::string listBy(unsigned char shop, const std::string& id = inventedLoad().id)
{
    return documents::signDocument(unsignedList(id), keyOf(shop)).value();
}

/// A tablet at the truck.
struct AtTheTruck : FieldBench {
    bool open(const std::string& text)
    {
        const QString file = folder.filePath("load.json");
        return storage::writeDocument(file.toStdString(), text).ok() && app->openFile(file);
    }
    DeliveryCheck& delivery() { return *app->delivery(); }
    bool countSomething()
    {
        delivery().take(0);
        return delivery().count(DeliveryCheck::Found::Received, 1, "");
    }
    void trust(unsigned char shop)
    {
        QVERIFY(open(listBy(shop, "00000000-0000-4000-8000-0000000000f" + std::to_string(shop))));
        QVERIFY(delivery().trustSigner());
        QVERIFY(delivery().trustWords().isEmpty());
    }
};

} // namespace

class LoadTrustTest : public QObject {
    Q_OBJECT
private slots:
    void beforeAShopIsTrustedAnyListCounts()
    {
        AtTheTruck bench;
        QVERIFY(bench.open(unsignedList()));
        QVERIFY(bench.delivery().trustWords().isEmpty());
        QVERIFY(bench.countSomething());
    }
    void theFirstSignedListOffersItsShop()
    {
        AtTheTruck bench;
        QVERIFY(bench.open(listBy(1)));
        QVERIFY(bench.delivery().trustWords().contains(codeOf(keyOf(1))));
        QVERIFY(bench.delivery().isSignerKnown());
        QVERIFY2(bench.countSomething(), "an offer keeps nobody from counting");
        QVERIFY(bench.delivery().trustSigner());
        QVERIFY(bench.delivery().trustWords().isEmpty());
        QCOMPARE(bench.app->settings()->trustedShops(), QStringList{codeOf(keyOf(1))});
        bench.restart();
        QCOMPARE(bench.app->settings()->trustedShops(), QStringList{codeOf(keyOf(1))});
        bench.delivery().refresh();
        QVERIFY(bench.delivery().trustWords().isEmpty());
        QCOMPARE(bench.delivery().received(), 1);
    }
    void aListThatIsNotOfTheShopIsQuestioned_data()
    {
        std::string altered = listBy(1), broken = listBy(1);
        altered.replace(altered.find("White truck"), 5, "Black");
        broken.replace(broken.find("Ed25519"), 7, "plain");
        QTest::addColumn<QByteArray>("list");
        QTest::addColumn<QString>("said");
        QTest::addColumn<bool>("mayBeTrusted");
        QTest::newRow("unsigned") << QByteArray::fromStdString(unsignedList()) << "No shop signed" << false;
        QTest::newRow("altered") << QByteArray::fromStdString(altered) << "changed after" << false;
        QTest::newRow("no signature") << QByteArray::fromStdString(broken) << "is none" << false;
        QTest::newRow("another shop") << QByteArray::fromStdString(listBy(2)) << codeOf(keyOf(2)) << true;
    }
    void aListThatIsNotOfTheShopIsQuestioned()
    {
        QFETCH(QByteArray, list);
        QFETCH(QString, said);
        QFETCH(bool, mayBeTrusted);
        AtTheTruck bench;
        bench.trust(1);
        QVERIFY(bench.open(list.toStdString()));
        QVERIFY2(bench.delivery().trustWords().contains(said), qPrintable(bench.delivery().trustWords()));
        QCOMPARE(bench.delivery().isSignerKnown(), mayBeTrusted);
        QVERIFY(!bench.countSomething());
        QVERIFY(!bench.delivery().countBundle("B1"));
        QCOMPARE(bench.delivery().received(), 0);
        QVERIFY(bench.delivery().acceptList());
        QVERIFY(bench.delivery().trustWords().isEmpty());
        QVERIFY(bench.countSomething());
        bench.restart();
        bench.delivery().setLoad(QString::fromStdString(inventedLoad().id));
        QVERIFY2(bench.countSomething(), "the word of the crew lead is kept");
    }
    void aShopsNewKeyIsComparedAndTheOldOneRefused()
    {
        AtTheTruck bench;
        bench.trust(1);
        QVERIFY(bench.open(listBy(2)));
        QVERIFY(bench.delivery().isQuestioned());
        QVERIFY(bench.delivery().trustSigner());
        QVERIFY(bench.countSomething());
        QVERIFY(bench.app->settings()->refuseShop(codeOf(keyOf(1))));
        QCOMPARE(bench.app->settings()->trustedShops(), QStringList{codeOf(keyOf(2))});
        QVERIFY(bench.open(listBy(1, "00000000-0000-4000-8000-0000000000ee")));
        QVERIFY2(bench.delivery().trustWords().contains("no longer"),
                 qPrintable(bench.delivery().trustWords()));
        QVERIFY(!bench.countSomething());
    }
    void aListPlayedAgainChangesNothing()
    {
        AtTheTruck bench;
        bench.trust(1);
        QVERIFY(bench.open(listBy(1)));
        QVERIFY(bench.countSomething());
        QVERIFY(bench.open(listBy(1)));
        QCOMPARE(bench.delivery().received(), 1);
        schedule::Load other = inventedLoad();
        other.bundles.pop_back();
        QVERIFY2(!bench.open(documents::signDocument(documents::writeLoad({other, {}}), keyOf(1)).value()),
                 "another list under the same identity");
        QCOMPARE(bench.delivery().expected(), 7);
    }
    void theShopsOwnListStandsInForOneThatNeverCounted()
    {
        AtTheTruck bench;
        bench.trust(1);
        std::string altered = listBy(1);
        altered.replace(altered.find("White truck"), 5, "Black");
        QVERIFY(bench.open(altered));
        QVERIFY(bench.delivery().isQuestioned());
        QVERIFY2(bench.open(listBy(1)), "nobody said that the altered one counts");
        QVERIFY(!bench.delivery().isQuestioned());
        QCOMPARE(bench.delivery().truck(), "White truck");
        QCOMPARE(bench.delivery().loads()->choices().front().words, "White truck");
        QVERIFY(bench.countSomething());
        QVERIFY(!bench.open(altered));
    }
    void whatIsAcceptedIsNotTakenAway()
    {
        AtTheTruck bench;
        bench.trust(1);
        std::string altered = listBy(1);
        altered.replace(altered.find("White truck"), 5, "Black");
        QVERIFY(bench.open(altered) && bench.delivery().acceptList());
        QVERIFY(!bench.open(listBy(1)));
        QCOMPARE(bench.delivery().truck(), "Black truck");
    }
    void aShopThatIsTrustedNoLongerIsQuestionedInTheOpenList()
    {
        AtTheTruck bench;
        bench.trust(1);
        QVERIFY(bench.open(listBy(1)));
        QVERIFY(bench.app->settings()->refuseShop(codeOf(keyOf(1))));
        bench.delivery().refresh();
        QVERIFY(bench.delivery().isQuestioned());
        QVERIFY(!bench.countSomething());
    }
    void anotherTabletsReceiptCountsNothingInAQuestionedList()
    {
        AtTheTruck other;
        QVERIFY(other.open(unsignedList()) && other.countSomething());
        const QString receipt = other.delivery().writeReceipt(other.folder.path());
        AtTheTruck bench;
        bench.trust(1);
        QVERIFY(bench.open(unsignedList()));
        QVERIFY(!bench.app->openFile(receipt));
        QCOMPARE(bench.delivery().received(), 0);
        QVERIFY(bench.delivery().acceptList() && bench.app->openFile(receipt));
        QCOMPARE(bench.delivery().received(), 1);
    }
    void aSignedListStandsInForTheSameUnsigned()
    {
        AtTheTruck bench;
        bench.trust(1);
        QVERIFY(bench.open(unsignedList()));
        QVERIFY(bench.delivery().isQuestioned());
        QVERIFY(bench.open(listBy(1)));
        QVERIFY(!bench.delivery().isQuestioned());
        QVERIFY(bench.open(unsignedList()));
        QVERIFY2(!bench.delivery().isQuestioned(), "the signed one is the one that is kept");
    }
};

QTEST_MAIN(LoadTrustTest)
#include "tst_load_trust.moc"
