#include "model/sample_house.h"

#include "pieces/summary.h"
#include "site/editing.h"

#include <QCoreApplication>

#include <string>
#include <utility>
#include <vector>

namespace lapwright::field {

namespace {

using site::RunKind;

site::Measured feet(std::int64_t whole, std::int64_t inches = 0)
{
    std::string entered = std::to_string(whole) + "'";
    if (inches != 0)
        entered += " " + std::to_string(inches) + "\"";
    return {Length::feet(whole) + Length::inches(inches), std::move(entered)};
}

site::Run run(RunKind kind, site::Measured length, const char* trim)
{
    site::Run made;
    made.kind = kind;
    made.lengths = {std::move(length)};
    made.slope = Slope::twelfths(6);
    if (trim != nullptr) {
        site::TrimChoice choice;
        choice.trim = trim;
        made.trims.push_back(std::move(choice));
    }
    return made;
}

void addLine(site::Job& job, const QString& name, RunKind kind, site::Measured length, const char* trim)
{
    site::Run only = run(kind, std::move(length), trim);
    only.otherSlope = Slope::twelfths(6);
    const std::size_t chain = site::addChain(job, name.toStdString());
    site::addRun(job, chain, std::move(only), site::SquareOutside{});
}

} // namespace

site::Job sampleHouse()
{
    site::Job job;
    job.material = {"galvanised-steel", "24 ga", "Slate"};
    job.ruleSets = {"irc-flashing"};
    const std::size_t eave =
        site::addChain(job, QCoreApplication::translate("SampleHouse", "Eave line").toStdString());
    const site::Corner outside = site::SquareOutside{}, inside = site::SquareInside{};
    const char* drip = "eave-drip-edge";
    site::addRun(job, eave, run(RunKind::Eave, feet(44), drip), outside);
    site::addRun(job, eave, run(RunKind::Eave, feet(28), drip), outside);
    site::addRun(job, eave, run(RunKind::Eave, feet(24), drip), outside);
    site::addRun(job, eave, run(RunKind::Eave, feet(12, 6), drip), inside);
    site::addRun(job, eave, run(RunKind::Eave, feet(20), drip), outside);
    site::addRun(job, eave, run(RunKind::Eave, feet(40, 6), drip), outside);
    site::closeChain(job, eave, outside);
    addLine(job, QCoreApplication::translate("SampleHouse", "Main ridge"), RunKind::Ridge, feet(16),
            "ridge-cap");
    addLine(job, QCoreApplication::translate("SampleHouse", "Hip, south-west"), RunKind::Hip, feet(21),
            "hip-cap");
    addLine(job, QCoreApplication::translate("SampleHouse", "Valley"), RunKind::Valley, feet(15), nullptr);
    return job;
}

schedule::Load sampleLoad(const pieces::Order& order)
{
    std::vector<schedule::ReadyPiece> ready;
    for (const pieces::Piece& piece : order.pieces) {
        const pieces::OrderedProfile& profile = order.profiles[piece.profile];
        ready.push_back({order.id,
                         order.job.name,
                         profile.material,
                         {piece.mark, piece.count, piece.run, profile.id, piece.blankLength},
                         pieces::kilogramsEach(order, piece)});
    }
    schedule::Load load;
    load.truck = "White truck";
    load.bundles = schedule::bundle(ready, {});
    return load;
}

} // namespace lapwright::field
