// Guards: a list on a screen is told exactly what changed, so that it keeps its place and its choice; a
// search leaves what has every word of it.
#include "rows_model.h"
#include "schedule/label_text.h"

#include <QAbstractItemModelTester>
#include <QRandomGenerator>
#include <QSignalSpy>
#include <QtTest>

using namespace lapwright::model;

namespace {

Row row(const QString& id, const QString& title, const QString& detail = {})
{
    Row made;
    made.id = id;
    made.title = title;
    made.detail = detail;
    return made;
}

QStringList ids(const RowsModel& model)
{
    QStringList list;
    for (int at = 0; at < model.rowCount(); ++at)
        list.append(model.data(model.index(at), RowsModel::IdRole).toString());
    return list;
}

} // namespace

class TestRowsModel : public QObject {
    Q_OBJECT

private slots:
    void anyListBecomesAnyOther()
    {
        RowsModel model;
        const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::QtTest);
        QRandomGenerator random(7);
        for (int round = 0; round < 200; ++round) {
            QList<Row> rows;
            for (int id = 0; id < 12; ++id)
                if (random.bounded(2) == 0)
                    rows.insert(random.bounded(static_cast<int>(rows.size()) + 1),
                                row(QString::number(id), QString::number(random.bounded(3))));
            QStringList wanted;
            for (const Row& one : rows)
                wanted.append(one.id);
            model.setRows(rows);
            QCOMPARE(ids(model), wanted);
            QCOMPARE(model.rows(), rows);
        }
    }

    void onlyWhatChangedIsSaid()
    {
        RowsModel model;
        model.setRows({row("a", "A"), row("b", "B"), row("c", "C")});
        QSignalSpy changed(&model, &RowsModel::dataChanged), inserted(&model, &RowsModel::rowsInserted),
            removed(&model, &RowsModel::rowsRemoved), reset(&model, &RowsModel::modelReset);
        model.setRows({row("a", "A"), row("b", "other"), row("c", "C"), row("d", "D")});
        QCOMPARE(changed.size(), 1);
        QCOMPARE(changed.first().first().toModelIndex().row(), 1);
        QCOMPARE(inserted.size(), 1);
        model.setRows({row("d", "D")});
        QCOMPARE(removed.size(), 1);
        QCOMPARE(reset.size(), 0);
    }

    void aSearchNeedsEveryWord()
    {
        RowsModel model;
        model.setRows({row("1", "E1.2", "Larkfield house"), row("2", "E1.3", "Hollin barn"),
                       row("3", "R1.2", "Larkfield house")});
        model.setSearch("larkfield e1");
        QCOMPARE(ids(model), QStringList{"1"});
        QCOMPARE(model.total(), 3);
        model.setRows({row("4", "E1.9", "Larkfield house"), row("2", "E1.3", "Hollin barn")});
        QCOMPARE(ids(model), QStringList{"4"});
        model.setSearch("");
        QCOMPARE(ids(model), (QStringList{"4", "2"}));
    }

    void aScannedLabelFindsItsMark()
    {
        const std::string order = "0b54c3f4-2d1e-4c3b-9a57-1f0d6a1e7c55";
        const QString id = QString::fromStdString(order);
        RowsModel model;
        model.setRows({row(id + "/E1.2", "E1.2"), row(id + "/E1.3", "E1.3"), row("other/E1.2", "E1.2"),
                       row(id, "Larkfield house")});
        const auto label = lapwright::schedule::labelText({order, 1, "E1.2", "", 1});
        model.setSearch(QString::fromStdString(*label) + '\n');
        QCOMPARE(ids(model), (QStringList{id + "/E1.2", id}));
    }

    void manyLinesComeAndGo()
    {
        RowsModel model;
        const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::QtTest);
        QList<Row> rows;
        for (int line = 0; line < 10'000; ++line)
            rows.append(row(QString::number(line), line % 2 == 0 ? "even" : "odd"));
        model.setRows(rows);
        model.setSearch("odd");
        QCOMPARE(model.count(), 5'000);
        model.setSearch("");
        QCOMPARE(model.rows(), rows);
    }

    void everyRoleIsAnswered()
    {
        RowsModel model;
        Row full{"id", "title", "detail", "trailing", "more", "done", Qt::red, 2, "also", "help"};
        model.setRows({full});
        const QModelIndex at = model.index(0);
        QCOMPARE(model.data(at, RowsModel::TitleRole), QVariant("title"));
        QCOMPARE(model.data(at, RowsModel::DetailRole), QVariant("detail"));
        QCOMPARE(model.data(at, RowsModel::TrailingRole), QVariant("trailing"));
        QCOMPARE(model.data(at, RowsModel::TrailingDetailRole), QVariant("more"));
        QCOMPARE(model.data(at, RowsModel::SignRole), QVariant("done"));
        QCOMPARE(model.data(at, RowsModel::SwatchRole).value<QColor>(), QColor(Qt::red));
        QCOMPARE(model.data(at, RowsModel::WeightRole), QVariant(2));
        QCOMPARE(model.data(at, RowsModel::HelpRole), QVariant("help"));
        QCOMPARE(model.roleNames().size(), 9);
        QVERIFY(!model.data(QModelIndex(), RowsModel::TitleRole).isValid());
    }
};

QTEST_GUILESS_MAIN(TestRowsModel)
#include "tst_rows_model.moc"
