// Guards: papers written from the screens say what was chosen: the cost at the shop's own rates or none, one
// label alone, the labels of what lies at the shear; and who did what is shown beside it.
#include "print/pdf_tools.h"
#include "shop_bench.h"
#include "speech/language.h"
#include "storage/lists.h"
#include "storage/shop_state.h"

using namespace lapwright;
using namespace lapwright::tests;

namespace {

/// A shop with one house taken in, and a folder for its papers.
struct Desk {
    QTemporaryDir folder;
    QTemporaryDir papers;
    std::unique_ptr<Shop> shop = openWithStock(folder);

    explicit Desk(const QString& house)
    {
        shop->preferences()->setPerson("Ann");
        shop->arrivals()->setActive(true);
        shop->arrivals()->takeFiles({orderOf(house, folder)});
    }
    [[nodiscard]] QUrl out() const { return QUrl::fromLocalFile(papers.path()); }
    /// The words of a paper written there.
    [[nodiscard]] QString wordsOf(const QString& name) const
    {
        QFile file(papers.filePath(name));
        if (!file.open(QFile::ReadOnly))
            return {};
        return print::PdfFile(file.readAll().toStdString()).texts().join(' ');
    }
    void keepRates(const QString& document) const
    {
        QFile file(folder.filePath("rates.json"));
        QVERIFY(file.open(QFile::WriteOnly) && file.write(document.toUtf8()) > 0 && file.flush());
        shop->reference()->setKind(static_cast<int>(model::ReferenceShelf::Kind::Rates));
        shop->reference()->importFile(QUrl::fromLocalFile(file.fileName()));
        QVERIFY2(shop->reference()->draft()->keep(), qPrintable(shop->message()));
    }
};

QString demoRates()
{
    QFile file(demo("shop.rates.json"));
    return file.open(QFile::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

} // namespace

class TestPapersDesk : public QObject {
    Q_OBJECT

private slots:
    void aConfirmationSaysTheCostAtTheShopsOwnRates()
    {
        const Desk desk("larkfield");
        const QString order = desk.shop->arrivals()->current();
        const auto print = [&] {
            desk.shop->papers()->printOrder(order, desk.out());
            return desk.wordsOf("confirmation.pdf");
        };
        QVERIFY(!print().contains("USD"));
        QVERIFY(!desk.shop->trouble());
        desk.keepRates(demoRates());
        desk.shop->reference()->setActive(true);
        QCOMPARE(desk.shop->reference()->rates()->count(), 3);
        QVERIFY(print().contains("USD"));
        QVERIFY2(!desk.shop->trouble(), qPrintable(desk.shop->message()));
        desk.shop->preferences()->setCostOnConfirmations(false);
        QVERIFY(!print().contains("USD"));
        QVERIFY(!desk.shop->trouble());
    }

    void aMetalWithoutARateIsSaidAndTheRestIsWritten()
    {
        const Desk desk("larkfield");
        desk.keepRates(R"({"format": "lapwright/rates", "version": 1, "currency": "USD", "materials": []})");
        desk.shop->papers()->printOrder(desk.shop->arrivals()->current(), desk.out());
        QVERIFY(desk.shop->trouble());
        QVERIFY2(desk.shop->message().contains("galvanised-steel"), qPrintable(desk.shop->message()));
        QVERIFY(!desk.wordsOf("confirmation.pdf").contains("USD"));
        QVERIFY(!desk.wordsOf("quality-sheet.pdf").isEmpty());
    }

    void ratesAreBegunWithTheMetalsOfTheStock()
    {
        const Desk desk("hollin");
        model::ReferenceShelf* shelf = desk.shop->reference();
        shelf->setActive(true);
        shelf->setKind(static_cast<int>(model::ReferenceShelf::Kind::Rates));
        QCOMPARE(shelf->rates()->count(), 0);
        shelf->edit();
        QVERIFY(shelf->draft()->open());
        QCOMPARE(shelf->draft()->trouble(), QString());
        QVERIFY(shelf->draft()->text().contains("galvanised-steel"));
        QVERIFY(shelf->draft()->keep());
        QVERIFY(shelf->rates()->count() > 0);
    }

    void oneMarkOrOneBundleIsPrintedAlone()
    {
        const Desk desk("hollin");
        Shop* shop = desk.shop.get();
        const model::RowsModel* pieces = shop->arrivals()->preview()->pieces();
        const QString mark = pieces->idAt(1);
        shop->papers()->printMark(shop->arrivals()->current(), mark, desk.out());
        const QString label = desk.wordsOf("piece-label.pdf");
        QVERIFY2(label.contains(mark), qPrintable(label));
        QCOMPARE(label.count("label "), 1);
        QVERIFY2(label.contains(QString("label 2 of %1").arg(pieces->count())), qPrintable(label));

        plan(*shop);
        cutEverything(*shop);
        foldEverything(*shop);
        shop->loads()->setActive(true);
        shop->loads()->makeLoad("truck 1");
        const model::RowsModel* bundles = shop->loads()->bundles();
        QVERIFY(bundles->count() > 1);
        shop->papers()->printBundle(shop->loads()->current(), bundles->idAt(1), desk.out());
        const QString bundle = desk.wordsOf("bundle-label.pdf");
        QCOMPARE(bundle.count("label "), 1);
        QVERIFY2(bundle.contains(QString("label 2 of %1").arg(bundles->count())), qPrintable(bundle));
    }

    void aLabelOfWhatIsNotThereIsSaidAndNotWritten()
    {
        const Desk desk("hollin");
        Shop* shop = desk.shop.get();
        plan(*shop);
        cutEverything(*shop);
        shop->folding()->setActive(true);
        shop->loads()->setActive(true);
        shop->folding()->lotFolded();
        shop->loads()->makeLoad("truck 1");
        const QString first = shop->loads()->current(), bundle = shop->loads()->bundles()->idAt(0);
        shop->papers()->printBundle(first, bundle + "?", desk.out());
        QVERIFY(shop->trouble());
        QVERIFY(QDir(desk.papers.path()).isEmpty());

        foldEverything(*shop);
        shop->loads()->makeLoad("truck 2");
        const QString second = shop->loads()->current();
        QVERIFY(second != first);
        QQmlApplicationEngine engine;
        QQuickWindow* window = windowOf(*shop, engine);
        QVERIFY(window != nullptr);
        // What was chosen of one load or order is not what is chosen of the next.
        QTest::keyClick(window, Qt::Key_6, Qt::ControlModifier);
        QTRY_VERIFY(named(window->contentItem(), "bundleLabel") != nullptr);
        QQuickItem* button = named(window->contentItem(), "bundleLabel");
        QQuickItem* bundles = named(window->contentItem(), "Bundles of the load");
        QVERIFY(!button->property("visible").toBool());
        QVERIFY(
            QMetaObject::invokeMethod(bundles, "chosen", Q_ARG(QString, shop->loads()->bundles()->idAt(0))));
        QVERIFY(button->property("visible").toBool());
        shop->loads()->noteChange();
        QVERIFY(button->property("visible").toBool());
        shop->loads()->setCurrent(first);
        QVERIFY(!button->property("visible").toBool());
        QCOMPARE(bundles->property("current").toString(), QString());
    }

    void whatASheetLeavesIsLabelledAtTheShear()
    {
        const Desk desk("larkfield");
        Shop* shop = desk.shop.get();
        plan(*shop);
        model::CuttingDesk* shear = shop->cutting();
        shear->setActive(true);
        QString leaves;
        for (const model::Row& row : shear->sheets()->rows()) {
            shear->setCurrent(row.id);
            if (!shear->remnants().isEmpty())
                leaves = row.id;
        }
        QVERIFY(!leaves.isEmpty());
        shear->setCurrent(leaves);
        const QString said = shear->remnants();
        QCOMPARE(shear->toLabel()->count(), 0);
        shear->tick();
        QVERIFY(shear->toLabel()->count() > 0);
        for (const model::Row& row : shear->toLabel()->rows())
            QVERIFY2(said.contains(row.title) && said.contains(row.trailing), qPrintable(said));
        // Not cut after all: nothing lies there.
        shear->setCurrent(leaves);
        shear->tick();
        QCOMPARE(shear->toLabel()->count(), 0);
        // They outlive the plan, and are there until somebody says that they are labelled.
        cutEverything(*shop);
        const int remnants = shear->toLabel()->count();
        QVERIFY(remnants > 0);
        const QString first = shear->toLabel()->idAt(0);
        shop->papers()->printRemnants(desk.out());
        const QString words = desk.wordsOf("remnant-labels.pdf");
        QVERIFY2(words.contains(first) && words.contains("remnant"), qPrintable(words));
        shear->labelled();
        QCOMPARE(shear->toLabel()->count(), 0);
        // On the rack its label is printed again.
        shop->papers()->printRemnant(first, desk.out());
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(desk.wordsOf("remnant-labels.pdf").count("label "), 1);
    }

    void whatPeopleCallThemselvesIsNotTranslated()
    {
        speak("es");
        const auto english = qScopeGuard([] { speak("en"); });
        const Desk desk("hollin");
        Shop* shop = desk.shop.get();
        shop->preferences()->setPerson("Bed");
        shop->preferences()->setStation("folder");
        plan(*shop);
        cutEverything(*shop);
        shop->arrivals()->noteChange();
        const QString done = shop->arrivals()->preview()->pieces()->rows().at(0).detail;
        QVERIFY2(done.contains(" por Bed, folder") && done.contains(" cortadas "), qPrintable(done));

        model::ReferenceShelf* shelf = shop->reference();
        desk.keepRates(demoRates().replace("Invented rates.", "Per piece, folded."));
        shelf->setActive(true);
        const model::Row rate = shelf->rates()->rows().at(0);
        QVERIFY2(rate.trailing.contains("por kilogramo"), qPrintable(rate.trailing));
        QVERIFY2(rate.also.startsWith("Desperdicio: ") && !rate.also.contains("Labour"),
                 qPrintable(rate.also));
        QVERIFY2(rate.also.endsWith("Per piece, folded."), qPrintable(rate.also));
        shelf->setKind(static_cast<int>(model::ReferenceShelf::Kind::Machine));
        shelf->setCurrent("long-folder-up");
        QVERIFY2(shelf->note().startsWith("Inventada. "), qPrintable(shelf->note()));
    }

    void whoDidItIsShown()
    {
        const Desk desk("hollin");
        Shop* shop = desk.shop.get();
        shop->preferences()->setStation("folder 2");
        const auto lastOf = [&](int at) {
            shop->arrivals()->noteChange();
            return shop->arrivals()->preview()->pieces()->rows().at(at).detail;
        };
        QVERIFY(!lastOf(0).contains("Ann"));
        plan(*shop);
        cutEverything(*shop);
        QVERIFY2(lastOf(0).contains("cut ") && lastOf(0).contains("by Ann, folder 2"), qPrintable(lastOf(0)));
        shop->preferences()->setPerson("Ben");
        foldEverything(*shop);
        QVERIFY2(lastOf(0).contains("folded ") && lastOf(0).contains("by Ben"), qPrintable(lastOf(0)));
        shop->loads()->setActive(true);
        QVERIFY(shop->loads()->ready()->rows().at(0).detail.contains("by Ben"));
        shop->loads()->makeLoad("truck 1");
        QVERIFY(shop->loads()->bundles()->rows().at(0).detail.contains("loaded "));
    }
};

QTEST_MAIN(TestPapersDesk)
#include "tst_papers_desk.moc"
