// Guards: reference data is changed field by field in the reader's own units, drawn and judged with each
// change, each finding at its field; what cannot be read is neither written nor forgotten; the list keeps its
// place.
#include "shop_bench.h"
#include "speech/language.h"

#include <QAbstractItemModelTester>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

using namespace lapwright;
using namespace lapwright::tests;
using model::DraftForm;

namespace {

/// A machine of the library, opened to be changed.
struct Open {
    QTemporaryDir folder, library;
    std::unique_ptr<Shop> shop = open(folder, "station", {library.path().toStdString()});
    model::Draft* draft = shop->reference()->draft();
    DraftForm* form = draft->form();
    QAbstractItemModelTester tester{form, QAbstractItemModelTester::FailureReportingMode::Fatal};

    explicit Open(model::ReferenceShelf::Kind kind = model::ReferenceShelf::Kind::Machine,
                  const QString& id = "long-folder-up")
    {
        shop->reference()->setActive(true);
        shop->reference()->setKind(static_cast<int>(kind));
        shop->reference()->setCurrent(id);
        shop->reference()->edit();
    }
    [[nodiscard]] int row(const QString& label) const { return rowOf(*form, label); }
    [[nodiscard]] QString is(int row, DraftForm::Role role) const
    {
        return form->data(form->index(row), role).toString();
    }
};

/// How many of its fields a list shows: those that have a label.
qsizetype shownIn(const QQuickItem* list)
{
    const auto items = list->property("contentItem").value<QQuickItem*>()->childItems();
    return std::count_if(items.begin(), items.end(), [](const QQuickItem* item) {
        return item->isVisible() && item->height() > 0 && !item->property("label").toString().isEmpty();
    });
}

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
        const Open at(model::ReferenceShelf::Kind::Trim, "eave-drip-edge-square-cut");
        QVERIFY2(at.draft->trouble().isEmpty() && !at.draft->picture().empty(),
                 qPrintable(at.draft->trouble()));
        const int rows = at.form->count();
        QSignalSpy judged(at.draft, &model::Draft::judged);
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
        at.draft->settle();
        QCOMPARE(at.is(at.row("Presses hems"), DraftForm::ValueRole), QString("false"));
        // What is no document any more leaves the fields as they were.
        const int rows = at.form->count();
        at.draft->setText(text.left(40));
        at.draft->settle();
        QCOMPARE(at.form->count(), rows);
    }

    void noFieldWritesOverATextThatIsNoDocument()
    {
        const Open at(model::ReferenceShelf::Kind::Trim, "eave-drip-edge-square-cut");
        const QString whole = at.draft->text(), broken = whole.left(whole.size() / 2) + "typed with care";
        QVERIFY(!at.form->stale());
        at.draft->setText(broken);
        at.draft->settle();
        QVERIFY(at.form->stale());
        at.form->fill(at.row("What it is called"), "Another name");
        at.form->add(at.row("Legs"));
        at.form->takeOut(at.row("3"));
        QCOMPARE(at.draft->text(), broken);
        // Mended to what it was, it can be filled in again.
        at.draft->setText(whole);
        QVERIFY(at.form->stale()); // not while somebody types
        QTRY_VERIFY(!at.form->stale());
        at.form->add(at.row("Legs"));
        QVERIFY(at.draft->text() != whole);
    }

    void whatWasTypedIsStillThereWhenTheFieldComesBack()
    {
        const Open at;
        const int length = at.row("Bending length");
        const QString before = at.is(length, DraftForm::ValueRole);
        QVERIFY(at.draft->trouble().isEmpty());
        QSignalSpy judged(at.draft, &model::Draft::judged);
        at.form->fill(length, "ten feet or so");
        QCOMPARE(at.is(length, DraftForm::ValueRole), QString("ten feet or so"));
        QVERIFY2(at.draft->trouble().contains("Bending length"), qPrintable(at.draft->trouble()));
        QCOMPARE(judged.size(), 1);
        at.form->fill(length, before);
        QCOMPARE(at.is(length, DraftForm::ValueRole), before);
        QVERIFY2(at.draft->trouble().isEmpty(), qPrintable(at.draft->trouble()));
        QCOMPARE(judged.size(), 2);
    }

    void theTextMayMendWhatAFieldCouldNotRead()
    {
        const Open at;
        at.form->fill(at.row("Bending length"), "ten feet or so");
        at.form->fill(at.row("Clamp opening"), "a hand wide");
        QJsonObject machine = QJsonDocument::fromJson(at.draft->text().toUtf8()).object();
        machine["bending_length_mm"] = 3000.0;
        at.draft->setText(QString::fromUtf8(QJsonDocument(machine).toJson()));
        at.draft->settle();
        QVERIFY(at.is(at.row("Bending length"), DraftForm::TroubleRole).isEmpty());
        QCOMPARE(at.is(at.row("Clamp opening"), DraftForm::ValueRole), QString("a hand wide"));
        QVERIFY(!at.draft->keep());
        machine["clamp_opening_mm"] = 120.0;
        at.draft->setText(QString::fromUtf8(QJsonDocument(machine).toJson()));
        QVERIFY2(at.draft->keep(), qPrintable(at.shop->message()));
    }

    void anItemTakenOutForgetsWhatCouldNotBeReadOfItAlone()
    {
        const Open at(model::ReferenceShelf::Kind::Trim, "eave-drip-edge-square-cut");
        const int atLeg = at.row("3  Kick");
        QVERIFY(atLeg >= 0);
        const auto numberBehind = [&](int row) {
            while (at.is(row, DraftForm::LabelRole) != "Millimetres")
                ++row;
            return row;
        };
        const int first = numberBehind(at.row("Legs")), kick = numberBehind(atLeg);
        at.form->fill(first, "some");
        at.form->fill(kick, "a little");
        QCOMPARE(at.is(kick, DraftForm::ValueRole), QString("a little"));
        QSignalSpy changed(at.form, &DraftForm::dataChanged);
        at.form->takeOut(atLeg);
        QCOMPARE(at.is(first, DraftForm::ValueRole), QString("some"));
        QVERIFY2(at.draft->trouble().contains("Millimetres"), qPrintable(at.draft->trouble()));
        QVERIFY(!changed.isEmpty());
        at.form->fill(first, "50");
        QVERIFY2(at.form->unread().isEmpty(), qPrintable(at.form->unread()));
    }

    void helpChoicesAndReasonsAreSaidInTheLanguageThatIsSpoken()
    {
        const auto side = [](const Open& at) {
            const QModelIndex place = at.form->index(at.row(QCoreApplication::translate("Form", "Side")));
            const auto codes = at.form->data(place, DraftForm::ChoicesRole).toStringList();
            const auto words = at.form->data(place, DraftForm::ChoiceWordsRole).toStringList();
            return qMakePair(codes.join(' '), words.join(' '));
        };
        const Open english(model::ReferenceShelf::Kind::Trim, "eave-drip-edge-square-cut");
        QCOMPARE(side(english), qMakePair(QString("left right"), QString("Left Right")));
        speak("es");
        const auto again = qScopeGuard([] { speak("en"); });
        const Open at(model::ReferenceShelf::Kind::Trim, "eave-drip-edge-square-cut");
        QCOMPARE(side(at), qMakePair(QString("left right"), QString("Izquierda Derecha")));
        const int legs = at.row(QCoreApplication::translate("Form", "Legs"));
        QCOMPARE(at.is(legs, DraftForm::HelpRole), QString("Partes planas en el orden del recorrido."));
        const int turn = at.row(QCoreApplication::translate("Form", "Degrees"));
        at.form->fill(turn, "steep");
        QVERIFY2(at.is(turn, DraftForm::TroubleRole).contains(QString::fromUtf8("un número como")),
                 qPrintable(at.is(turn, DraftForm::TroubleRole)));
    }

    void otherUnitsAreSeenInEveryField()
    {
        const Open at;
        QSignalSpy changed(at.form, &DraftForm::dataChanged);
        at.shop->preferences()->setMillimetres(true);
        QVERIFY(!changed.isEmpty());
        QVERIFY(!at.is(at.row("Bending length"), DraftForm::ValueRole).contains('\''));
    }

    void theFieldsShowOnTheScreen()
    {
        const QTemporaryDir folder, library;
        const AtWindow at(open(folder, "station", {library.path().toStdString()}));
        QVERIFY(at.window != nullptr);
        at.go(Qt::Key_9);
        for (const auto kind : {model::ReferenceShelf::Kind::Machine, model::ReferenceShelf::Kind::Trim,
                                model::ReferenceShelf::Kind::Rules, model::ReferenceShelf::Kind::Floor,
                                model::ReferenceShelf::Kind::Rates}) {
            at.shop->reference()->setKind(static_cast<int>(kind));
            at.shop->reference()->edit();
            QVERIFY(at.shop->reference()->draft()->open());
            QTRY_VERIFY(named(at.window->contentItem(), "fields") != nullptr);
            const QQuickItem* fields = named(at.window->contentItem(), "fields");
            QTRY_VERIFY(shownIn(fields) > 1);
            at.window->grabWindow();
            at.shop->reference()->draft()->leave();
            QTest::qWait(1); // the fields leave the screen
        }
    }
};

QTEST_MAIN(TestDraftForm)
#include "tst_draft_form.moc"
