// Guards: what a label's code says comes back as it was; every single wrong character and every swap of
// neighbours is found; the text stays short enough for a small QR code; hostile text costs an error message.
#include "schedule/label_text.h"

#include <QtTest>

#include <random>

using namespace lapwright;
using namespace lapwright::schedule;

namespace {

const std::string alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-./:$";
const std::string anOrder = "5e6c2d10-7b3f-4a52-9c81-000000000001";

LabelText randomLabel(std::mt19937& random)
{
    const auto below = [&](std::uint32_t limit) { return random() % limit; };
    const std::string hex = "0123456789abcdef";
    std::string order;
    for (int i = 0; i < 36; ++i)
        order.push_back(i == 8 || i == 13 || i == 18 || i == 23 ? '-' : hex[below(16)]);
    const auto name = [&] {
        std::string text;
        const auto length = below(12);
        for (std::uint32_t i = 0; i < length; ++i)
            text.push_back(below(4) == 0 ? static_cast<char>(below(255) + 1) : "E3.Sab"[below(6)]);
        return text;
    };
    LabelText label{order, 1, name(), name(), 1};
    label.revision += static_cast<std::int64_t>(below(40));
    label.count += static_cast<std::int64_t>(below(900));
    if (label.mark.empty() && label.bundle.empty())
        label.bundle = "B1";
    return label;
}

} // namespace

class LabelTextTest : public QObject {
    Q_OBJECT
private slots:
    void knownLabels()
    {
        // Worked out apart from this program: the UUID as one number to the base of 32, then the weighted
        // sum.
        const auto piece = labelText({anOrder, 2, "E1.2", "", 1});
        QVERIFY(piece.ok());
        QCOMPARE(*piece, std::string("L1:2YDGPH0YSZ9999S08000000001:2:E1.2::1:O"));
        const auto lower = labelText({anOrder, 1, "S1b.4", "B12", 16});
        QVERIFY(lower.ok());
        QVERIFY(lower->find(":S1$B.4:B12:16:") != std::string::npos);
    }
    void comesBackAsItWas()
    {
        std::mt19937 random(7);
        for (int trial = 0; trial < 2000; ++trial) {
            const LabelText label = randomLabel(random);
            const auto text = labelText(label);
            QVERIFY(text.ok());
            QVERIFY(text->find_first_not_of(alphabet) == std::string::npos);
            const auto read = readLabelText("  " + *text + "\r\n");
            QVERIFY2(read.ok(), text->c_str());
            QVERIFY(*read == label);
        }
    }
    void differentLabelsDiffer()
    {
        const LabelText one{anOrder, 1, "E1.1", "B1", 1};
        for (const LabelText& other :
             {LabelText{anOrder, 2, "E1.1", "B1", 1}, LabelText{anOrder, 1, "E1.2", "B1", 1},
              LabelText{anOrder, 1, "E1.1", "B2", 1}, LabelText{anOrder, 1, "E1.1", "B1", 2},
              LabelText{anOrder, 1, "e1.1", "B1", 1}, LabelText{anOrder, 1, "E1.1:B1", "", 1}})
            QVERIFY(*labelText(one) != *labelText(other));
    }
    void everyWrongCharacterIsFound()
    {
        std::mt19937 random(11);
        for (int trial = 0; trial < 40; ++trial) {
            const std::string right = *labelText(randomLabel(random));
            for (std::size_t at = 0; at < right.size(); ++at)
                for (int byte = 1; byte < 256; ++byte) {
                    std::string wrong = right;
                    wrong[at] = static_cast<char>(byte);
                    if (wrong != right)
                        QVERIFY2(!readLabelText(wrong).ok(), wrong.c_str());
                }
        }
    }
    void everySwapOfNeighboursIsFound()
    {
        std::mt19937 random(13);
        int swaps = 0;
        for (int trial = 0; trial < 500; ++trial) {
            const std::string right = *labelText(randomLabel(random));
            for (std::size_t at = 0; at + 1 < right.size(); ++at) {
                std::string wrong = right;
                std::swap(wrong[at], wrong[at + 1]);
                if (wrong == right)
                    continue;
                ++swaps;
                QVERIFY2(!readLabelText(wrong).ok(), wrong.c_str());
            }
        }
        QVERIFY(swaps > 10'000);
    }
    void isShort()
    {
        // A QR code of version 3 with error correction M, 29 modules wide, holds 61 such characters (ISO/IEC
        // 18004, table 7).
        for (const LabelText& label :
             {LabelText{anOrder, 12, "E12b.34", "", 1}, LabelText{anOrder, 3, "", "B128", 144},
              LabelText{anOrder, 1, "stock.12", "", 1}})
            QVERIFY(labelText(label)->size() <= 61);
    }
    void wrongLabelsAreRefused()
    {
        for (const LabelText& label :
             {LabelText{"not a uuid", 1, "E1", "", 1},
              LabelText{"5E6C2D10-7B3F-4A52-9C81-000000000001", 1, "E1", "", 1},
              LabelText{anOrder, 0, "E1", "", 1}, LabelText{anOrder, 1, "E1", "", 0},
              LabelText{anOrder, 1, "", "", 1}, LabelText{anOrder, 1, std::string(401, 'E'), "", 1}})
            QVERIFY(!labelText(label).ok());
        QCOMPARE(labelText({anOrder, 1, "", "", 1}).errors().front().place, std::string("mark"));
    }
    void hostileTextIsRefused()
    {
        for (const std::string& text :
             {std::string(), std::string("   "), std::string(1'000'000, 'A'),
              std::string("https://example.org"), std::string("L1"), std::string(":::::::"),
              std::string("L1:0:1:E1::1:0"), std::string(40, '0')})
            QVERIFY(!readLabelText(text).ok());
        std::mt19937 random(17);
        for (int trial = 0; trial < 20'000; ++trial) {
            std::string text = "L1:";
            const auto length = random() % 60;
            for (std::uint32_t i = 0; i < length; ++i)
                text.push_back(alphabet[random() % alphabet.size()]);
            const auto read = readLabelText(text);
            if (read.ok())
                QCOMPARE(*labelText(*read), text);
        }
    }
    void saysWhatToDo()
    {
        std::string text = *labelText({anOrder, 1, "E1.1", "", 1});
        text[6] = text[6] == 'A' ? 'B' : 'A';
        QVERIFY(readLabelText(text).errors().front().sentence().find("scan it again") != std::string::npos);
    }
};

QTEST_APPLESS_MAIN(LabelTextTest)
#include "tst_label_text.moc"
