// Guards: the picture of every fold step shows gauge setting, angle, face, movement and cautions, off the
// lines, for trim that an operator knows and for made-up profiles on every machine.
#include "drawing/fold_picture.h"
#include "drawing/machine_picture.h"

#include "fold/fold_cases.h"
#include "measure/writing.h"
#include "overlaps.h"
#include "pictures.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::drawing;

namespace {

trim::Profile shape(int which)
{
    using foldcases::closedHem;
    using foldcases::profile;
    switch (which) {
    case 0:
        return profile({{63.5, -63.4}, {50.8, 35}, {25.4, 0}}, {}, closedHem(trim::Side::Right));
    case 1:
        return profile({{60, 90}, {40, -90}, {25, 0}});
    default:
        return profile({{400, -90}, {100, 0}});
    }
}

/// Pictures of all steps of a plan, each checked; the number of steps.
int checkSteps(const trim::Profile& profile, const fold::Machine& machine, const QString& name, bool& good)
{
    const metal::Metal metal = foldcases::steel();
    const Result<trim::FlatPattern> flat = trim::flatPattern(profile, metal, metal.sheets.front());
    const Result<fold::Outcome> outcome = foldcases::plan(profile, machine);
    if (!flat || !outcome || !std::holds_alternative<fold::FoldPlan>(*outcome))
        return 0;
    const auto& plan = std::get<fold::FoldPlan>(*outcome);
    const Result<fold::FoldPictures> pictures =
        fold::FoldPictures::make(profile, *flat, metal, metal.sheets.front(), machine, plan, {});
    if (!pictures)
        return 0;
    for (std::size_t i = 0; i < pictures->stepCount(); ++i) {
        FoldStepPicture picture;
        picture.number = i + 1;
        picture.count = pictures->stepCount();
        picture.profile = name.toStdString();
        picture.machine = machine->name;
        picture.colour = {134, 38, 34};
        const fold::FoldStep& step = plan.steps[i];
        const DisplayList list = foldStepPicture(step, pictures->step(i), picture);
        keepPicture(list, QString("fold-%1-%2").arg(name).arg(i + 1));
        const std::string texts = textsOf(list);
        QString faults = report(faultsOf(list)) + xmlError(toSvg(list));
        if (texts.find(write(step.gaugeSetting, picture.style)) == std::string::npos)
            faults += "no gauge setting; ";
        if (texts.find(step.colourUp ? "colour up" : "colour down") == std::string::npos)
            faults += "no face; ";
        if (step.action != fold::Action::Flatten && texts.find(write(step.foldAngle)) == std::string::npos)
            faults += "no angle; ";
        if (texts.find("keep hands clear") == std::string::npos && texts.find("hands") == std::string::npos)
            faults += "no caution; ";
        picture.framed = false;
        picture.width = Length::millimetres(200);
        picture.height = Length::millimetres(92);
        const DisplayList bare = foldStepPicture(step, pictures->step(i), picture);
        keepPicture(bare, QString("fold-bare-%1-%2").arg(name).arg(i + 1));
        faults += report(faultsOf(bare));
        if (textsOf(bare).find("hands") != std::string::npos)
            faults += "words of the step in a bare picture; ";
        if (!faults.isEmpty()) {
            qWarning("%s step %zu: %s", qPrintable(name), i + 1, qPrintable(faults));
            good = false;
        }
    }
    return static_cast<int>(pictures->stepCount());
}

} // namespace

class TestFoldPicture : public QObject {
    Q_OBJECT

private slots:
    void knownTrim()
    {
        const char* names[] = {"drip", "z", "flashing"};
        bool good = true;
        for (int i = 0; i < 3; ++i)
            QVERIFY2(checkSteps(shape(i), foldcases::machine("long-folder-up"), names[i], good) > 0,
                     names[i]);
        QVERIFY(good);
    }

    void randomProfilesOnEveryMachine()
    {
        std::mt19937 random(5);
        int steps = 0, planned = 0;
        bool good = true;
        const int wanted = qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? 200 : 6;
        for (int i = 0; i < wanted; ++i) {
            const trim::Profile profile = foldcases::randomProfile(random, 5);
            for (const std::string& id : foldcases::machineIds()) {
                const int made =
                    checkSteps(profile, foldcases::machine(id),
                               QString("random%1-%2").arg(i).arg(QString::fromStdString(id)), good);
                steps += made;
                planned += made > 0 ? 1 : 0;
            }
        }
        qInfo("%d steps of %d plans drawn", steps, planned);
        QVERIFY(planned > wanted);
        QVERIFY(good);
    }

    void everyShippedMachine()
    {
        for (const std::string& id : foldcases::machineIds()) {
            const DisplayList list = machinePicture(foldcases::machine(id), {});
            keepPicture(list, QString("machine-%1").arg(QString::fromStdString(id)));
            const QString faults = report(faultsOf(list)) + xmlError(toSvg(list));
            QVERIFY2(faults.isEmpty(), qPrintable(QString::fromStdString(id) + ": " + faults));
            const std::string texts = textsOf(list);
            for (const char* wanted : {"bed", "clamp", "folding beam", "throat", "least leg", "capacity"})
                QVERIFY2(texts.find(wanted) != std::string::npos, wanted);
        }
    }

    void movesLookDifferent()
    {
        std::set<std::size_t> sizes;
        for (const fold::Move move :
             {fold::Move::None, fold::Move::TurnOver, fold::Move::Spin, fold::Move::TurnOverAndSpin}) {
            fold::FoldStep step;
            step.move = move;
            fold::StepPicture section;
            section.before.middle = {{-Length::millimetres(50), Length()},
                                     {Length::millimetres(30), Length()}};
            section.after = section.before;
            const DisplayList list = foldStepPicture(step, section, {});
            sizes.insert(toSvg(list).size());
        }
        QCOMPARE(sizes.size(), std::size_t(4));
    }
};

QTEST_APPLESS_MAIN(TestFoldPicture)
#include "tst_fold_picture.moc"
