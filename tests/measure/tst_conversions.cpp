// Guards: conversions agree with an outside program, GNU units (https://www.gnu.org/software/units/), run
// here.
#include "measure/reading.h"
#include "measure/rounding.h"

#include <QProcess>
#include <QStandardPaths>
#include <QtTest>

#include <cmath>

using lapwright::Length;

class ConversionsTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase()
    {
        if (QStandardPaths::findExecutable("units").isEmpty())
            QSKIP("the program units is not installed");
    }
    void lengths_data()
    {
        QTest::addColumn<QString>("entered");
        QTest::addColumn<QString>("forUnits");
        QTest::addRow("feet, inches, fraction") << "12' 6 3/8\""
                                                << "12 ft + 6 in + 3|8 in";
        QTest::addRow("decimal feet") << "12.53125'"
                                      << "12.53125 ft";
        QTest::addRow("sixty-fourths") << "199' 11 63/64\""
                                       << "199 ft + 11 in + 63|64 in";
        QTest::addRow("thickness") << "0.0179\""
                                   << "0.0179 in";
        QTest::addRow("metres") << "3,82 m"
                                << "3.82 m";
        QTest::addRow("centimetres") << "382 cm"
                                     << "382 cm";
    }
    void lengths()
    {
        QFETCH(QString, entered);
        QFETCH(QString, forUnits);
        const auto read = lapwright::readLength(entered.toStdString(), {}).value();
        QVERIFY(read.has_value());
        QCOMPARE(static_cast<double>(read->inNanometres()), std::round(converted(forUnits, "nm")));
        QVERIFY(std::abs(lapwright::inFeet(*read) - converted(forUnits, "ft")) < 1e-9);
        QVERIFY(std::abs(lapwright::inInches(*read) - converted(forUnits, "in")) < 1e-9);
    }
    void angles()
    {
        const auto read = lapwright::readAngle("26°33'54\"", {}).value();
        QVERIFY(read.has_value());
        const double radians = converted("26 degree + 33 arcmin + 54 arcsec", "radian");
        QVERIFY(std::abs(read->inRadians() - radians) < 1e-12);
    }

private:
    static double converted(const QString& from, const QString& to)
    {
        QProcess units;
        units.start("units", {"--terse", "--digits", "15", from, to});
        if (!units.waitForFinished(10'000) || units.exitCode() != 0)
            return std::nan("");
        return QString::fromUtf8(units.readAllStandardOutput()).trimmed().toDouble();
    }
};

QTEST_GUILESS_MAIN(ConversionsTest)
#include "tst_conversions.moc"
