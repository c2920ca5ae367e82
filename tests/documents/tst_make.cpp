// Guards: the digest of what a piece is changes with all that makes the folded piece another one, so that a
// revision is seen to change it, and with nothing else.
#include "documents/make.h"
#include "shipped_orders.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

const pieces::Order& order()
{
    static const pieces::Order made = [] {
        site::Job job;
        job.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e21";
        job.material = {"galvanised-steel", "24 ga", "Slate"};
        site::Run run;
        run.id = "E1";
        run.lengths = {{Length::feet(30), "30'"}};
        run.slope = Slope::twelfths(6);
        run.end = site::EndKind::Mitre;
        run.trims.emplace_back();
        run.trims.front().trim = "eave-drip-edge";
        site::Chain chain;
        chain.id = "eaves";
        chain.runs = {run, run};
        chain.runs[1].id = "E2";
        chain.runs[1].start = site::EndKind::Mitre;
        chain.runs[1].end = site::EndKind::Free;
        chain.corners = {site::SquareOutside()};
        job.chains = {chain};
        return texts::orderOf(job, texts::shippedCatalogue()).value;
    }();
    return made;
}

using Change = void (*)(pieces::Order&);

} // namespace

Q_DECLARE_METATYPE(Change)

class MakeTest : public QObject {
    Q_OBJECT
private slots:
    void onePerPieceAndTheSameForLikePieces()
    {
        const std::vector<std::string> digests = makeDigests(order());
        QVERIFY(order().pieces.size() >= 4);
        QCOMPARE(digests.size(), order().pieces.size());
        QCOMPARE(digests.front().size(), std::size_t{16});
        pieces::Order twice = order();
        twice.pieces.push_back(twice.pieces.front());
        QCOMPARE(makeDigests(twice).back(), digests.front());
        QVERIFY(digests[1] != digests.front());
    }
    void whatMakesItAnotherPiece_data()
    {
        QTest::addColumn<Change>("change");
        const auto row = [](const char* name, Change change) { QTest::newRow(name) << change; };
        row("length", [](pieces::Order& one) { one.pieces[0].blankLength += Length::nanometres(1); });
        row("along the run", [](pieces::Order& one) { one.pieces[0].length += Length::nanometres(1); });
        row("hand", [](pieces::Order& one) { one.pieces[0].hand = pieces::Hand::Right; });
        row("start", [](pieces::Order& one) { one.pieces[0].start.kind = pieces::PieceEnd::Kind::Closed; });
        row("cut", [](pieces::Order& one) { one.pieces[0].end.cut.push_back(Length::inches(1)); });
        row("turn", [](pieces::Order& one) { one.profiles[0].profile.bends[0].turn += Angle::degrees(1.0); });
        row("leg", [](pieces::Order& one) { one.profiles[0].profile.legs[0].length += Length::inches(1); });
        row("face", [](pieces::Order& one) {
            one.profiles[0].profile.colourFace = trim::opposite(one.profiles[0].profile.colourFace);
        });
        row("colour", [](pieces::Order& one) { one.profiles[0].material.colour = "Ivory"; });
        row("thickness", [](pieces::Order& one) { one.profiles[0].thickness += Length::micrometres(1); });
    }
    void whatMakesItAnotherPiece()
    {
        QFETCH(Change, change);
        pieces::Order changed = order();
        change(changed);
        QVERIFY(makeDigests(changed).front() != makeDigests(order()).front());
    }
    void whatDoesNot()
    {
        pieces::Order other = order();
        other.pieces[0].mark = "X9.1";
        other.pieces[0].run = "X9";
        other.pieces[0].count = 7;
        other.pieces[0].spare = true;
        other.profiles[0].id = "P9";
        other.profiles[0].derivations.clear();
        other.job.name = "Another house";
        QCOMPARE(makeDigests(other), makeDigests(order()));
    }
};

QTEST_APPLESS_MAIN(MakeTest)
#include "tst_make.moc"
