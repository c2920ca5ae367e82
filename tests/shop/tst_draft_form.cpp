// Guards: reference data is changed field by field in the reader's own units, drawn and judged with each
// change, each finding at its field; what cannot be read is neither written nor forgotten; the list keeps its
// place.
#include "shop_bench.h"

#include <QAbstractItemModelTester>

using namespace lapwright;
using namespace lapwright::tests;
using model::DraftForm;

namespace {

/// A machine of the library, opened to be changed.
struct Open {
    QTemporaryDir folder, library;
    std::unique_ptr<Shop> shop = open(folder, "station", {library.path().toStdString()});
    model::LibraryDraft* draft = shop->reference()->draft();
    DraftForm* form = draft->form();
    QAbstractItemModelTester tester{form, QAbstractItemModelTester::FailureReportingMode::Fatal};

    explicit Open(model::LibraryDraft::Kind kind = model::LibraryDraft::Kind::Machine,
                  const QString& id = "long-folder-up")
    {
        shop->reference()->setActive(true);
        shop->reference()->setKind(static_cast<int>(kind));
        shop->reference()->setCurrent(id);
        shop->reference()->edit();
    }
    /// The first field or heading of that name; -1 if there is none.
    [[nodiscard]] int row(const QString& label) const
    {
        for (int at = 0; at < form->count(); ++at)
            if (is(at, DraftForm::LabelRole) == label)
                return at;
        return -1;
    }
    [[nodiscard]] QString is(int row, DraftForm::Role role) const
    {
        return form->data(form->index(row), role).toString();
    }
};

} // namespace

class TestDraftForm : public QObject {
    Q_OBJECT

private slots:
    void aLengthIsTypedAsItsReaderWritesLengths()
    {
        const Open at;
        const int length = at.row("Bending length");
        QVERIFY(length >= 0);
        QVERIFY2(at.is(length, DraftForm::ValueRole).contains('\''),
                 qPrintable(at.is(length, DraftForm::ValueRole)));
        const look::Picture before = at.draft->picture();
        at.form->fill(length, "11' 3 1/2");
        QVERIFY(at.draft->text().contains("\"bending_length_mm\": 3441.7"));
        QCOMPARE(at.is(length, DraftForm::ValueRole), QString("11' 3 1/2\""));
        at.shop->preferences()->setMillimetres(true);
        at.form->fill(length, "3500");
        QCOMPARE(at.is(length, DraftForm::ValueRole), QString("3500"));
        QCOMPARE(at.is(length, DraftForm::UnitRole), QString("mm"));
        QVERIFY2(at.draft->keep(), qPrintable(at.shop->message()));
        QVERIFY(at.shop->reference()->machines()->rows().at(0).detail.contains("mm"));
    }

    void whatCannotBeReadStaysInItsFieldAndNothingIsKeptWithoutIt()
    {
        const Open at;
        const int length = at.row("Bending length");
        const QString text = at.draft->text();
        at.form->fill(length, "ten feet or so");
        QCOMPARE(at.draft->text(), text);
        QVERIFY(!at.is(length, DraftForm::TroubleRole).isEmpty());
        QVERIFY(!at.draft->keep());
        QVERIFY2(at.shop->message().contains("Bending length"), qPrintable(at.shop->message()));
        at.form->fill(length, "10'");
        QVERIFY(at.is(length, DraftForm::TroubleRole).isEmpty());
        QVERIFY2(at.draft->keep(), qPrintable(at.shop->message()));
    }

    void aFindingStandsAtItsField()
    {
        const Open at;
        const int opening = at.row("Clamp opening");
        at.form->fill(opening, "0");
        QTRY_VERIFY(!at.draft->trouble().isEmpty());
        QVERIFY(!at.is(opening, DraftForm::TroubleRole).isEmpty());
        QVERIFY(at.is(at.row("Bending length"), DraftForm::TroubleRole).isEmpty());
        at.form->fill(opening, "4");
        QTRY_VERIFY(at.draft->trouble().isEmpty());
        QVERIFY(at.is(opening, DraftForm::TroubleRole).isEmpty());
    }

    void aTrimIsDrawnWithEachChangeAndAPartMoreOrLess()
    {
        const Open at(model::LibraryDraft::Kind::Trim, "eave-drip-edge-square-cut");
        QVERIFY2(at.draft->trouble().isEmpty() && !at.draft->picture().empty(),
                 qPrintable(at.draft->trouble()));
        const int rows = at.form->count();
        QSignalSpy judged(at.draft, &model::LibraryDraft::judged);
        const int legs = at.row("Legs");
        QVERIFY(legs >= 0);
        at.form->add(legs);
        QVERIFY(at.form->count() > rows);
        // A leg more needs a bend more.
        QTRY_VERIFY(!at.draft->trouble().isEmpty());
        at.form->add(at.row("Bends"));
        QTRY_VERIFY2(at.draft->trouble().isEmpty(), qPrintable(at.draft->trouble()));
        QVERIFY(judged.size() >= 2 && !at.draft->picture().empty());
        const int last = at.row("4  Kick");
        QVERIFY(last >= 0);
        at.form->takeOut(last);
        at.form->takeOut(at.row("3"));
        QCOMPARE(at.form->count(), rows);
    }

    void theTextSaysTheSameAsTheFields()
    {
        const Open at;
        QString text = at.draft->text();
        at.draft->setText(text.replace("\"flattens_hems\": true", "\"flattens_hems\": false"));
        QCOMPARE(at.is(at.row("Presses hems"), DraftForm::ValueRole), QString("false"));
        // What is no document any more leaves the fields as they were.
        const int rows = at.form->count();
        at.draft->setText(text.left(40));
        QCOMPARE(at.form->count(), rows);
    }

    void theFieldsShowOnTheScreen()
    {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("qrc:")));
        const QTemporaryDir folder, library;
        const auto shop = open(folder, "station", {library.path().toStdString()});
        QQmlApplicationEngine engine;
        QQuickWindow* window = windowOf(*shop, engine);
        QVERIFY(window != nullptr);
        QTest::keyClick(window, Qt::Key_9, Qt::ControlModifier);
        for (const auto kind : {model::LibraryDraft::Kind::Machine, model::LibraryDraft::Kind::Trim,
                                model::LibraryDraft::Kind::Rules, model::LibraryDraft::Kind::Floor,
                                model::LibraryDraft::Kind::Rates}) {
            shop->reference()->setKind(static_cast<int>(kind));
            shop->reference()->edit();
            QVERIFY(shop->reference()->draft()->open());
            QTRY_VERIFY(named(window->contentItem(), "Fields") != nullptr ||
                        shop->reference()->draft()->form()->count() > 0);
            window->grabWindow();
            shop->reference()->draft()->leave();
            QTest::qWait(1); // the fields leave the screen
        }
    }
};

QTEST_MAIN(TestDraftForm)
#include "tst_draft_form.moc"
