#include "reference_shelf.h"

#include "acts/catalogue.h"
#include "drawing/machine_picture.h"
#include "drawing/profile_picture.h"
#include "shop.h"
#include "text.h"

#include <cmath>

namespace lapwright::model {

namespace {

/// What a run at 6 in 12 with square corners supplies, to draw a trim by; measures without a default a
/// quarter up their range.
trim::Site exampleSite(const trim::Template& trim)
{
    using trim::AngleMeasure;
    const Angle slope = Slope::twelfths(6).angle();
    const site::RunKind kind = trim.suits.empty() ? site::RunKind::Eave : trim.suits.front();
    const double flat = std::cos(slope.inRadians());
    // Two equal planes over a square corner: cos(crease) = cos² θ.
    const Angle crease = Angle::radians(std::acos(flat * flat));
    trim::Site made;
    made.angles[AngleMeasure::Slope] = slope;
    made.angles[AngleMeasure::OtherSlope] =
        kind == site::RunKind::SlopeChange ? Slope::twelfths(12).angle() : slope;
    made.angles[AngleMeasure::CreaseTurn] = kind == site::RunKind::Hip ? -crease : crease;
    made.angles[AngleMeasure::WallTurn] = kind == site::RunKind::InsideCorner ? -quarterTurn : quarterTurn;
    for (const trim::MeasureDeclaration& measure : trim.measures)
        if (!measure.byDefault)
            made.measures[measure.name] = measure.least + (measure.most - measure.least) / 4;
    return made;
}

} // namespace

ReferenceShelf::ReferenceShelf(Shop& shop) : Desk(shop) {}

void ReferenceShelf::reload()
{
    QList<Row> machines, trims, rules;
    const auto known = acts::loadMachines(shop().libraryFolders());
    if (!known.ok())
        shop().tellTrouble(known.errors());
    else
        for (const fold::Machine& machine : *known) {
            Row row;
            row.id = shown(machine->id);
            row.title = shown(machine->name);
            row.detail = shown(machine->note);
            row.trailing = tr("folds %1").arg(shown(write(machine->bendingLength, shop().style())));
            machines.append(row);
        }
    for (const auto& [id, trim] : shop().catalogue().trims) {
        Row row;
        row.id = shown(id);
        row.title = shown(trim.name);
        row.detail = counted(static_cast<std::int64_t>(trim.legs.size()), "leg");
        trims.append(row);
    }
    for (const auto& [id, set] : shop().catalogue().ruleSets)
        for (const rules::Clause& clause : set.clauses) {
            Row row;
            row.id = shown(id) + u'#' + QString::number(rules.size());
            row.title = shown(clause.statement);
            row.detail = shown(clause.source);
            row.trailing = shown(clause.number);
            row.trailingDetail = shown(clause.edition);
            row.weight = static_cast<int>(clause.weight);
            rules.append(row);
        }
    machines_.setRows(machines);
    trims_.setRows(trims);
    rules_.setRows(rules);
    if (machines_.indexOf(currentMachine_) < 0)
        currentMachine_ = machines_.idAt(0);
    if (trims_.indexOf(currentTrim_) < 0)
        currentTrim_ = trims_.idAt(0);
    drawMachine();
    drawTrim();
}

void ReferenceShelf::setCurrentMachine(const QString& id)
{
    if (id == currentMachine_)
        return;
    currentMachine_ = id;
    drawMachine();
}

void ReferenceShelf::setCurrentTrim(const QString& id)
{
    if (id == currentTrim_)
        return;
    currentTrim_ = id;
    drawTrim();
}

void ReferenceShelf::drawMachine()
{
    machine_ = look::Picture();
    const auto known = acts::loadMachines(shop().libraryFolders());
    if (known.ok())
        for (const fold::Machine& machine : *known)
            if (shown(machine->id) == currentMachine_) {
                drawing::MachinePicture picture;
                picture.style = shop().style();
                machine_ = look::Picture(drawing::machinePicture(machine, picture));
            }
    emit machineChanged();
}

void ReferenceShelf::drawTrim()
{
    trim_ = look::Picture();
    trimNote_.clear();
    const auto found = shop().catalogue().trims.find(currentTrim_.toStdString());
    if (found != shop().catalogue().trims.end()) {
        trimNote_ = shown(found->second.note);
        const trim::Resolution made = trim::resolve(found->second, exampleSite(found->second));
        if (made.profile) {
            drawing::ProfilePicture picture;
            picture.thickness = Length::thousandths(24);
            picture.colour = {74, 106, 128};
            picture.style = shop().style();
            trim_ = look::Picture(drawing::profilePicture(*made.profile, picture));
        }
    }
    emit trimChanged();
}

} // namespace lapwright::model
