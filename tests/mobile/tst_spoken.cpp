// Guards that what the core says reaches people in Spanish: whole sentences, sentences put together from
// parts, names among the values, slopes, and that what people wrote themselves stays as it is.

#include "documents/job.h"
#include "drawing/profile_picture.h"
#include "model/sample_house.h"
#include "model/words.h"
#include "pieces/why.h"
#include "speech/days.h"
#include "speech/language.h"
#include "speech/spoken.h"

#include <QLocale>
#include <QtTest>

#include <set>
#include <string>
#include <variant>

using namespace lapwright;
using namespace lapwright::field;

class Spoken : public QObject {
    Q_OBJECT

private slots:
    void onlyWhatThereIsIsSpoken()
    {
        for (const char* known : {"", "en", "es"})
            QVERIFY2(!whyNotSpoken(known), known);
        for (const char* unknown : {"fr", "english", "nowhere.qm"})
            QVERIFY2(whyNotSpoken(unknown).has_value(), unknown);
    }
    void initTestCase() { speak("es"); }
    void cleanupTestCase() { speak("en"); }

    void sentencesWithTheirValues()
    {
        const Phrase phrase{"this {kind} has no length", {{"kind", std::string("slope change")}}};
        QCOMPARE(said(phrase, {}), QString("Este tramo (cambio de pendiente) no tiene largo"));
    }

    void sentencesPutTogether()
    {
        QCOMPARE(said({"likely: {feet} feet misread on the tape", {{"feet", std::int64_t{2}}}}, {}),
                 QString("Probablemente: 2 pies mal leídos en la cinta"));
        QCOMPARE(said({"{entered}: found {found} at character {position}, expected a number",
                       {{"entered", std::string("12 x")},
                        {"found", std::string("x")},
                        {"position", std::int64_t{4}}}},
                      {}),
                 QString("12 x: se encontró x en el carácter 4, se esperaba un número"));
        QCOMPARE(said({"in installing order: {count1} of {length1}, then {count2} of {length2}",
                       {{"count1", std::int64_t{3}},
                        {"length1", Length::inches(120)},
                        {"count2", std::int64_t{1}},
                        {"length2", Length::inches(96)}}},
                      {}),
                 QString("En orden de colocación: 3 de 10' 0\", luego 1 de 8' 0\""));
        QCOMPARE(
            said(
                {"{leg} {length}, as the trim has it, rounded up to a multiple of {step}; at least {least} by {rule}",
                 {{"leg", std::string("Face")},
                  {"length", Length::inches(2)},
                  {"step", Length::inches(1)},
                  {"least", Length::inches(1)},
                  {"rule", std::string("IRC R905.2.8.5")}}},
                {}),
            QString("Cara 2\", como lo trae la moldura, redondeado hacia arriba a un múltiplo de 1\"; por lo "
                    "menos 1\" según IRC R905.2.8.5"));
    }

    void placesAndNames()
    {
        QCOMPARE(named("chain C1, run E3, Eave drip edge"), QString("Cadena C1, tramo E3, Goterón de alero"));
        QCOMPARE(said({"measure {names} again", {{"names", std::string("corner E1 to E2 with E4")}}}, {}),
                 QString("Mida otra vez esquina E1 a E2 con E4"));
        QCOMPARE(kindWords(site::RunKind::Valley), QString("Limahoya"));
    }

    void whatTheShopPutsTogether()
    {
        QCOMPARE(
            spoken(std::string("12 of sheet S4x10, proven least, 3.2 % waste, 1 slitter setup")),
            std::string(
                "12 de la hoja S4x10, probado que es lo mínimo, 3.2 % desperdicio, 1 ajuste de la cortadora"));
        QCOMPARE(spoken(std::string("Thu 10 Dec 07:30")), std::string("jue 10 dic 07:30"));
        QCOMPARE(spoken(std::string("gap 1/8\" from the folded leg")),
                 std::string("abertura 1/8\" desde el ala doblada"));
        QCOMPARE(spoken(counted(3, "piece")), std::string("3 piezas"));
        QCOMPARE(spoken(Error{"/key", "\"\"", "a text that is not empty"}.sentence()),
                 std::string("/key: se encontró \"\", se esperaba un texto que no esté vacío"));
    }

    void aReadersLanguageIsPartOfTheStyle()
    {
        Style style;
        const Phrase phrase{
            "The piece is {length} long, the machine folds {most}: {over} too long.",
            {{"length", Length::inches(140)}, {"most", Length::inches(126)}, {"over", Length::inches(14)}}};
        QVERIFY(say(phrase, style).rfind("The piece is", 0) == 0);
        style.translation = spoken;
        QCOMPARE(say(phrase, style),
                 std::string("La pieza mide 11' 8\" de largo y la máquina dobla 10' 6\": sobran 1' 2\"."));
        QCOMPARE(translated("Cut ticket", style), std::string("Hoja de corte"));
    }

    void slopesAndDays()
    {
        QCOMPARE(slopeWords(Slope::twelfths(6)), QString("6 en 12"));
        QCOMPARE(dayWords("2026-12-10"), QString("10 dic 2026"));
        QCOMPARE(dayWords("soon"), QString("soon"));
    }

    void whatPeopleWroteStays()
    {
        const Phrase phrase{"the reason given for going on is left behind with the run's old name: {reason}",
                            {{"reason", std::string("the ridge and the valley are new")}}};
        QVERIFY(said(phrase, {}).endsWith(": the ridge and the valley are new"));
        drawing::ProfilePicture picture;
        picture.colourName = "Copper";
        picture.style.translation = spoken;
        trim::Profile flat;
        flat.legs = {{"flange", Length::inches(4)}};
        std::set<std::string> texts;
        for (const drawing::Shape& shape : drawing::profilePicture(flat, picture).shapes)
            if (const auto* line = std::get_if<drawing::Text>(&shape))
                texts.insert(line->text);
        QVERIFY(texts.contains("color: Copper"));
    }

    void englishIsLeftAlone()
    {
        speak("en");
        QCOMPARE(named("chain C1, run E3"), QString("Chain C1, run E3"));
        QCOMPARE(dayWords("2026-12-10"), QString("10 Dec 2026"));
        speak("es");
    }
};

QTEST_GUILESS_MAIN(Spoken)
#include "tst_spoken.moc"
