// Guards: no bytes, however chosen, make a reader crash, hang, or yield a value outside its limits; and every
// refusal is itself printable.
#include "measure/characters.h"
#include "measure/reading.h"
#include "measure/rounding.h"

#include <QtTest>

#include <random>
#include <string>

namespace {

using lapwright::Angle;
using lapwright::Length;
using lapwright::Reading;
using lapwright::Slope;

bool isPrintable(const std::string& text)
{
    const auto characters = lapwright::entry::decode(text);
    return characters && lapwright::entry::printable(*characters) == text;
}

template <class T>
bool keepsItsPromises(const Reading<T>& reading)
{
    const int kinds = int(reading.isExact()) + int(reading.isAmbiguous()) + int(reading.isNonsense());
    const std::string told = lapwright::say(reading.problem(), {});
    if (kinds != 1 || reading.isExact() != reading.value().has_value() || reading.isExact() != told.empty())
        return false;
    if (!isPrintable(told) || told.size() > 2'000 || reading.isExact() != reading.result("here").ok())
        return false;
    const auto candidates = reading.candidates();
    if (reading.isAmbiguous() && (candidates.size() < 2 || candidates[0].value == candidates[1].value))
        return false;
    return true;
}

bool holds(const std::string& text)
{
    const auto length = lapwright::readLength(text, {std::nullopt, true});
    const auto feet = lapwright::readLength(text, {lapwright::LengthUnit::FeetInches, false});
    const auto metric = lapwright::readLength(text, {lapwright::LengthUnit::Millimetres, false});
    const auto slope = lapwright::readSlope(text, {});
    const auto angle = lapwright::readAngle(text, {true});
    if (length.isExact()) {
        const double size = lapwright::inMillimetres(magnitude(*length.value()));
        if (size > lapwright::largestMillimetres)
            return false;
    }
    if (angle.isExact() && magnitude(*angle.value()) > Angle::degrees(360.0 + 1e-9))
        return false;
    return keepsItsPromises(length) && keepsItsPromises(feet) && keepsItsPromises(metric) &&
           keepsItsPromises(slope) && keepsItsPromises(angle);
}

QByteArray hex(const std::string& text)
{
    return QByteArray::fromStdString(text).toHex(' ');
}

} // namespace

class ReadingHostileTest : public QObject {
    Q_OBJECT
private slots:
    void everyByteAndEveryPairOfTokens()
    {
        for (int byte = 0; byte < 256; ++byte)
            QVERIFY2(holds(std::string(1, static_cast<char>(byte))),
                     hex(std::string(1, static_cast<char>(byte))));
        const std::string pieces[] = {
            "12", "0",  "028", "999999999999999", "1/2", "⅜", "'", "\"", "°", "-", "/", ":", ",",
            " ",  "mm", "e"};
        int count = 0;
        for (const std::string& a : pieces)
            for (const std::string& b : pieces)
                for (const std::string& c : pieces) {
                    QVERIFY2(holds(a + b + c), hex(a + b + c));
                    ++count;
                }
        qInfo("%d triples of pieces", count);
    }
    void randomBytes()
    {
        std::mt19937_64 random(206);
        std::uniform_int_distribution<int> byte(0, 255), size(0, 80);
        for (int i = 0; i < 1'500; ++i) {
            std::string text(static_cast<std::size_t>(size(random)), '\0');
            for (char& one : text)
                one = static_cast<char>(byte(random));
            QVERIFY2(holds(text), hex(text));
        }
    }
    void damagedEntries()
    {
        const std::string good[] = {"12' 6-3/8\"", "150.375\"",  "3 820,5 mm",   "12′ 6⅜″",
                                    "6 1/2 in 12", "26°33'54\"", "999999999 mm", "12-6-3/8"};
        std::mt19937_64 random(1893);
        std::uniform_int_distribution<int> byte(0, 255), action(0, 2), repeats(1, 5);
        for (int i = 0; i < 3'000; ++i) {
            std::string text = good[static_cast<std::size_t>(i) % std::size(good)];
            for (int damage = repeats(random); damage > 0; --damage) {
                const std::size_t at = std::uniform_int_distribution<std::size_t>(0, text.size() - 1)(random);
                const int what = action(random);
                if (what == 0)
                    text[at] = static_cast<char>(byte(random));
                else if (what == 1 && text.size() > 1)
                    text.erase(at, 1);
                else
                    text.insert(at, text.substr(at));
            }
            QVERIFY2(holds(text), hex(text));
        }
    }
    void longEntriesCostNothing()
    {
        const std::string huge(50'000'000, '7');
        const auto reading = lapwright::readLength(huge, {});
        QVERIFY(reading.isNonsense());
        QVERIFY(lapwright::say(reading.problem(), {}).size() < 400);
        QVERIFY(holds(std::string(64, ' ')) && holds(std::string(64, '-')) && holds(std::string(64, '9')));
        QVERIFY(lapwright::readLength(std::string(63, '0') + "1", {lapwright::LengthUnit::Inches, false})
                    .value() == Length::inches(1));
    }
    void refusalsDoNotRepeatWhatCannotBeShown()
    {
        const auto reading = lapwright::readLength("12\x1b[31m\u202E6", {});
        const std::string told = lapwright::say(reading.problem(), {});
        QVERIFY(reading.isNonsense());
        QVERIFY2(told.find('\x1b') == std::string::npos, told.c_str());
        QVERIFY2(told.find("\u202E") == std::string::npos, told.c_str());
    }
};

QTEST_APPLESS_MAIN(ReadingHostileTest)
#include "tst_reading_hostile.moc"
