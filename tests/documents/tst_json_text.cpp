// Guards: a text that is no JSON costs an error that says where; bounds on size, depth and number of values;
// numbers and texts are written one way.
#include "documents/json_text.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

std::string firstError(std::string_view text, const Limits& limits = {})
{
    const auto json = parseJson(text, limits);
    return json ? "no error" : json.errors().front().sentence();
}

} // namespace

class JsonTextTest : public QObject {
    Q_OBJECT
private slots:
    void textThatIsNoJson()
    {
        QCOMPARE(
            firstError(""),
            std::string("line 1, column 1: found the end of the text, expected JSON (RFC 8259) in UTF-8"));
        QCOMPARE(firstError("{\"a\":1,\n \"a\":2}").substr(0, 26), std::string("line 2, column 4, /a: foun"));
        for (const char* text : {"{\"a\":NaN}", "{\"a\":Infinity}", "{\"a\":1e999}", "{\"a\":01}", "{a:1}",
                                 "{\"a\":1}x", "{\"a\":\"\\ud800\"}", "{\"a\":\"\xff\"}",
                                 "{\"a\":\"\xc0\xaf\"}", "// no\n{}", "[1,]", "{\"a\":\"\n\"}", "\"open"})
            QVERIFY2(firstError(text).find("expected JSON") != std::string::npos, text);
    }
    void depthSizeAndNumberAreBounded()
    {
        const std::string deep = std::string(1'000'000, '[') + std::string(1'000'000, ']');
        QVERIFY(firstError(deep).find("more than 64 deep") != std::string::npos);
        const std::string allowed = std::string(64, '[') + std::string(64, ']');
        QCOMPARE(firstError(allowed), std::string("no error"));
        QVERIFY(firstError("[" + allowed + "]").find("deep") != std::string::npos);
        Limits few;
        few.values = 5;
        QCOMPARE(firstError("[1,2,3,4]", few), std::string("no error"));
        QVERIFY(firstError("[1,2,3,4,5]", few).find("more than 5 values") != std::string::npos);
        few.bytes = 4;
        QCOMPARE(firstError("[1,2]", few), std::string("found 5 bytes, expected at most 4 bytes"));
    }
    void oneLongTextNumberOrGapIsRefusedUnread_data()
    {
        QTest::addColumn<QByteArray>("open");
        QTest::addColumn<char>("fill");
        QTest::addColumn<QByteArray>("close");
        QTest::addColumn<QString>("place");
        QTest::newRow("text") << QByteArray("{\"a\": 1,\n\"") << 'x' << QByteArray("\": 2}")
                              << "line 2, column 1";
        QTest::newRow("escaped text")
            << QByteArray("[\"") << '\\' << QByteArray("\\\"\"]") << "line 1, column 2";
        QTest::newRow("text without an end") << QByteArray("\"") << '[' << QByteArray() << "line 1, column 1";
        QTest::newRow("number") << QByteArray("[1,") << '1' << QByteArray("]") << "line 1, column 4";
        QTest::newRow("gap") << QByteArray("[1,") << ' ' << QByteArray("2]") << "line 1, column 4";
    }
    void oneLongTextNumberOrGapIsRefusedUnread()
    {
        QFETCH(QByteArray, open);
        QFETCH(char, fill);
        QFETCH(QByteArray, close);
        QFETCH(QString, place);
        const auto text = [&](std::size_t long_) {
            return open.toStdString() + std::string(long_, fill) + close.toStdString();
        };
        constexpr std::size_t hundredsOfMegabytes = 240'000'000;
        QCOMPARE(QString::fromStdString(firstError(text(hundredsOfMegabytes))),
                 place + ": found a text, number or gap of more than 16777216 bytes, expected a shorter one");
        Limits few;
        few.token = 20;
        QVERIFY(firstError(text(16), few).find("more than 20 bytes") == std::string::npos);
        QVERIFY(firstError(text(22), few).find("more than 20 bytes") != std::string::npos);
        QVERIFY(firstError(text(300'000'000)).find("at most 268435456 bytes") != std::string::npos);
    }
    void numbersAreWrittenOneWay_data()
    {
        QTest::addColumn<double>("value");
        QTest::addColumn<QString>("text");
        QTest::newRow("whole") << 12.0 << "12";
        QTest::newRow("negative zero") << -0.0 << "0";
        QTest::newRow("nanometre") << 3819.525001 << "3819.525001";
        QTest::newRow("tenth") << 0.1 << "0.1";
        QTest::newRow("negative") << -0.25 << "-0.25";
        QTest::newRow("tiny") << 1.76e-05 << "0.0000176";
        QTest::newRow("third") << 1.0 / 3.0 << "0.3333333333333333";
        QTest::newRow("huge") << 1e300 << "1e+300";
    }
    void numbersAreWrittenOneWay()
    {
        QFETCH(double, value);
        QFETCH(QString, text);
        std::string written;
        writeJson(Json(value), written);
        QCOMPARE(QString::fromStdString(written), text);
    }
    void textsAreWrittenAsUtf8()
    {
        std::string written;
        writeJsonText("a\"\\\n\x01 é \xff \xed\xa0\x80 \xf0\x9f\x8f\xa0", written);
        QCOMPARE(
            Json::parse(written).get<std::string>(),
            std::string("a\"\\\n\x01 é \xef\xbf\xbd \xef\xbf\xbd\xef\xbf\xbd\xef\xbf\xbd \xf0\x9f\x8f\xa0"));
    }
};

QTEST_APPLESS_MAIN(JsonTextTest)
#include "tst_json_text.moc"
