// Guards: the fold ticket says what the person at the folder needs, marks and count, every step's gauge
// setting, angle, face and movement, what to check and how far off it may be, and the cautions; on whole
// pages, with no label on a line.
#include "drawing/fold_ticket.h"
#include "drawing/text.h"
#include "drawing/ticket_page.h"

#include "fold/fold_cases.h"
#include "overlaps.h"
#include "pictures.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::drawing;

namespace {

struct Drawn {
    fold::FoldPlan plan;
    std::vector<DisplayList> pages;
    std::string texts;
};

Drawn draw(const trim::Profile& profile, const char* folder, const QString& name, FoldTicket ticket)
{
    const metal::Metal metal = foldcases::steel();
    const fold::Machine machine = foldcases::machine(folder);
    const trim::FlatPattern flat = *trim::flatPattern(profile, metal, metal.sheets.front());
    const auto outcome = foldcases::plan(profile, machine);
    Drawn drawn{std::get<fold::FoldPlan>(*outcome), {}, {}};
    const auto pictures =
        fold::FoldPictures::make(profile, flat, metal, metal.sheets.front(), machine, drawn.plan, {});
    ticket.job = "Alder Lane 12";
    ticket.metal = "Galvanised steel, 26 ga";
    ticket.thickness = metal.sheets.front().thickness;
    ticket.colour = {134, 38, 34};
    ticket.colourName = "barn red";
    ticket.machine = machine->name;
    ticket.beamFace = machine->beamFaces[drawn.plan.beamFace].name;
    ticket.pieces = {{"E1", 2, Length::feet(10)}, {"E2", 1, Length::feet(6)}};
    ticket.caution = "Lapwright does not control a machine.";
    drawn.pages = foldTicket(profile, flat, drawn.plan, *pictures, ticket);
    int number = 0;
    for (const DisplayList& page : drawn.pages) {
        keepPicture(page, QString("ticket-%1-%2").arg(name).arg(++number));
        drawn.texts += textsOf(page);
    }
    return drawn;
}

Drawn draw(const trim::Profile& profile, const char* folder, const QString& name, const TicketForm& form = {})
{
    FoldTicket ticket;
    ticket.form = form;
    return draw(profile, folder, name, ticket);
}

trim::Profile named(trim::Profile profile, const char* name)
{
    profile.name = name;
    return profile;
}

trim::Profile coping()
{
    return named(foldcases::profile({{25, 35}, {75, -90}, {250, -90}, {75, 35}, {25, 0}},
                                    foldcases::closedHem(trim::Side::Right),
                                    foldcases::closedHem(trim::Side::Right)),
                 "Coping");
}

QString faultsIn(const Drawn& drawn)
{
    QString faults;
    for (const DisplayList& page : drawn.pages) {
        for (const std::string& fault : faultsOf(page))
            faults += QString::fromStdString(fault) + "; ";
        faults += xmlError(toSvg(page));
    }
    return faults;
}

} // namespace

class TestFoldTicket : public QObject {
    Q_OBJECT

private slots:
    void aLongTitleIsWrittenSmallerBeforeItIsCut()
    {
        // As long as a translation makes it, beside the name of a house.
        const std::string title = "Hoja de plegado: esquinero exterior con goter\xC3\xB3n, J7";
        TicketPages pages(title, "Casa Hollin, revision 2", {});
        QVERIFY(textsOf(pages.take({}).front()).find(title) != std::string::npos);
    }

    void aLongTranslationStaysInItsColumn()
    {
        FoldTicket ticket;
        ticket.style.translation = [](lapwright::Phrase phrase) {
            if (const std::size_t at = phrase.text.find(" from the "); at != std::string::npos)
                phrase.text.replace(at, 10, " desde el doblez de un ");
            return phrase;
        };
        const Drawn drawn = draw(coping(), "long-folder-up", "translated", ticket);
        int seen = 0;
        for (const DisplayList& page : drawn.pages)
            for (const Shape& shape : page.shapes)
                if (const auto* text = std::get_if<Text>(&shape);
                    text != nullptr && text->text.find("desde el doblez") != std::string::npos) {
                    QVERIFY(text->at.x + textWidth(text->text, text->size) <= 10.0 + 54.0);
                    ++seen;
                }
        QVERIFY(seen > 0);
    }

    void saysEverything()
    {
        const Drawn drawn = draw(coping(), "long-folder-up", "coping");
        for (const fold::FoldStep& step : drawn.plan.steps) {
            QVERIFY(drawn.texts.find(write(step.gaugeSetting, {})) != std::string::npos);
            QVERIFY(drawn.texts.find(writeExact(step.gaugeSetting, LengthUnit::Millimetres)) !=
                    std::string::npos);
        }
        for (const char* wanted : {"3 pieces",         "E1: 2 of 10' 0\"", "E2: 1 of 6' 0\"",
                                   "Alder Lane 12",    "barn red",         "Long folder, up only",
                                   "beam face 25 mm",  "within 1/16\"",    "angles within 1\xC2\xB0",
                                   "colour up",        "colour down",      "turn over",
                                   "lift 9/16\"",      "Pre-bend hem up",  "Flatten the hem",
                                   "keep hands clear", "wear gloves",      "Lift by",
                                   "Step 8 of 8",      "page 1 of"})
            QVERIFY2(drawn.texts.find(wanted) != std::string::npos, wanted);
        QVERIFY2(faultsIn(drawn).isEmpty(), qPrintable(faultsIn(drawn)));
        for (const DisplayList& page : drawn.pages) {
            QCOMPARE(page.width, Length::millimetres(210));
            QCOMPARE(page.height, Length::millimetres(297));
            QVERIFY(!page.description.empty());
        }
    }

    void standsOnOtherPaper()
    {
        // Letter, 8.5 × 11 in, is lower than A4: still two steps on a page.
        const TicketForm letter{Length::inches(17) / 2, Length::inches(11),
                                "revision 2, printed 2026-11-25 14:05"};
        const Drawn drawn = draw(coping(), "long-folder-up", "coping-letter", letter);
        QVERIFY2(faultsIn(drawn).isEmpty(), qPrintable(faultsIn(drawn)));
        QVERIFY(drawn.pages.size() <= 2 + (drawn.plan.steps.size() + 1) / 2);
        for (const DisplayList& page : drawn.pages) {
            QCOMPARE(page.width, letter.width);
            QCOMPARE(page.height, letter.height);
            QVERIFY(textsOf(page).find(letter.foot + "\n") != std::string::npos);
        }
        QVERIFY(drawn.texts.find("Lapwright does not control a machine.") != std::string::npos);
    }

    void knownAndRandomTrimStaysReadable()
    {
        const trim::Profile drip =
            named(foldcases::profile({{50.8, -90}, {38.1, 35}, {38.1, 0}}, {},
                                     foldcases::closedHem(trim::Side::Right)),
                  "Drip edge with a name that is much longer than the room there is for it on the page");
        QVERIFY2(faultsIn(draw(drip, "hand-brake-8", "drip")).isEmpty(),
                 qPrintable(faultsIn(draw(drip, "hand-brake-8", "drip"))));
        std::mt19937 random(3);
        int planned = 0;
        for (int i = 0; i < (qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? 60 : 6); ++i) {
            const trim::Profile profile = foldcases::ribbed(random, 2 + i);
            if (!std::holds_alternative<fold::FoldPlan>(
                    *foldcases::plan(profile, foldcases::machine("long-folder-up-down"))))
                continue;
            ++planned;
            const QString faults =
                faultsIn(draw(named(profile, "Ribs"), "long-folder-up-down", QString("ribs%1").arg(i)));
            QVERIFY2(faults.isEmpty(), qPrintable(QString::number(i) + ": " + faults));
        }
        QVERIFY(planned > 3);
    }
};

QTEST_APPLESS_MAIN(TestFoldTicket)
#include "tst_fold_ticket.moc"
