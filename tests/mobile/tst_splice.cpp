#include "store/connection.h"
#include "store/splice.h"

#include <QtTest>

#include <algorithm>

#include <random>

using namespace lapwright::store;

/// Guards: the journal's idea of a change. Any two texts are told apart by one splice, which makes the second
/// of the first and, reversed, the first of the second.
class Splices : public QObject {
    Q_OBJECT

private slots:
    void byHand();
    void anyTwoTexts();
    void refusesAnotherText();
};

void Splices::byHand()
{
    QCOMPARE(spliceBetween("abcd", "abXd"), (Splice{2, "c", "X"}));
    QCOMPARE(spliceBetween("", "new"), (Splice{0, "", "new"}));
    QCOMPARE(spliceBetween("aa", "aaa"), (Splice{2, "", "a"}));
    QVERIFY(spliceBetween("same", "same").empty());
    // Half of a two-byte character changes: the splice cuts inside it, which is why documents are bytes.
    QCOMPARE(spliceBetween("\xc3\xa4", "\xc3\xb6"), (Splice{1, "\xa4", "\xb6"}));
}

void Splices::anyTwoTexts()
{
    std::mt19937 random(20261125);
    const auto letter = [&random] { return static_cast<char>('a' + random() % 3); };
    for (int round = 0; round < 20'000; ++round) {
        std::string before(random() % 12, ' '), after(random() % 12, ' ');
        std::generate(before.begin(), before.end(), letter);
        std::generate(after.begin(), after.end(), letter);
        const Splice splice = spliceBetween(before, after);
        QCOMPARE(spliced(before, splice), after);
        QCOMPARE(spliced(after, splice.reversed()), before);
    }
}

void Splices::refusesAnotherText()
{
    QVERIFY_EXCEPTION_THROWN((void)spliced("abcd", {2, "x", "y"}), StoreFailure);
    QVERIFY_EXCEPTION_THROWN((void)spliced("ab", {9, "", "y"}), StoreFailure);
}

QTEST_APPLESS_MAIN(Splices)
#include "tst_splice.moc"
