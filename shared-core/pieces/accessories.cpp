#include "pieces/accessories.h"

#include "pieces/counts.h"

#include <utility>

namespace lapwright::pieces {

namespace {

class Counting {
public:
    explicit Counting(const AccessoryWork& counted) : all(counted), work(*counted.work), made(*counted.made)
    {
        const std::int64_t seams = work.trim->installation.courseHeadLap ? 0 : made.count() - 1;
        laps = work.lap > Length() ? seams : 0;
        openJoints = seams - laps;
        const bool atStart = work.start.end.kind == PieceEnd::Kind::Mitre && !all.startCornerCounted;
        corners = (atStart ? 1 : 0) + (work.end.end.kind == PieceEnd::Kind::Mitre ? 1 : 0);
    }

    std::vector<Accessory> count()
    {
        fasteners();
        cleats();
        sealant();
        add("corner tab", corners, {"corner tabs: {count}, one behind each mitre", {{"count", corners}}}, {});
        endCaps();
        add("backup plate", openJoints,
            {"{count} backup plates: one behind each open joint, lapping the piece on either side by at least "
             "{lap}",
             {{"count", openJoints}, {"lap", Length::inches(4)}}},
            "UFGS 07600 3.1.15");
        movementJoints();
        return std::move(accessories);
    }

private:
    void add(const char* name, std::int64_t number, Phrase statement, std::string source, Length length = {},
             std::vector<Derivation> because = {})
    {
        if (number > 0)
            accessories.push_back({name,
                                   work.run->id,
                                   work.trim->id,
                                   number,
                                   length,
                                   {std::move(statement), std::move(source), std::move(because)}});
    }

    void fasteners()
    {
        const trim::Installation& how = work.trim->installation;
        if (!how.fastenerSpacing || *how.fastenerSpacing <= Length())
            return;
        const bool courses = how.courseHeadLap.has_value();
        const Length along = courses ? made.pieces.front().length : work.measured;
        const std::int64_t each = fastenerCount(along, *how.fastenerSpacing, how.fastenerRows);
        const std::int64_t number = courses ? each * made.count() : each;
        Phrase statement{
            how.fastenerRows == 1
                ? "{count} fasteners, at most {spacing} apart on {length}, both ends too"
                : "{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too",
            {{"count", number},
             {"rows", how.fastenerRows},
             {"spacing", *how.fastenerSpacing},
             {"length", along}}};
        if (courses) {
            statement.text += ", for each of {pieces} pieces";
            statement.values.emplace_back("pieces", made.count());
        }
        add("fastener", number, std::move(statement), how.fixingRule);
    }

    void cleats()
    {
        const trim::Installation& how = work.trim->installation;
        if (!how.cleatSpacing || *how.cleatSpacing <= Length() || how.courseHeadLap)
            return;
        const std::int64_t number = fastenerCount(work.measured, *how.cleatSpacing, how.cleatRows);
        add("cleat", number,
            {"{count} cleats in {rows} rows, at most {spacing} apart on {length}, both ends too; each of the same "
             "metal, nailed twice and folded back over the nails",
             {{"count", number},
              {"rows", how.cleatRows},
              {"spacing", *how.cleatSpacing},
              {"length", work.measured}}},
            how.fixingRule);
    }

    void sealant()
    {
        const std::int64_t beads = laps + corners;
        if (!work.trim->installation.sealedLaps || beads < 1)
            return;
        add("sealant", beads,
            {"sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})",
             {{"beads", beads}, {"girth", all.girth}, {"laps", laps}, {"corners", corners}}},
            {}, all.girth * beads);
    }

    void endCaps()
    {
        if (work.trim->installation.closedEnd != Length())
            return;
        const auto closed = [](const RunEnd& end) { return end.end.kind == PieceEnd::Kind::Closed ? 1 : 0; };
        const std::int64_t caps = closed(work.start) + closed(work.end);
        add("end cap", caps, {"end caps: {count}, one at each closed end", {{"count", caps}}}, {});
    }

    void movementJoints()
    {
        if (!all.jointInterval || work.trim->installation.courseHeadLap)
            return;
        const Length interval = all.jointInterval->length;
        const std::int64_t joints = movementJointCount(work.measured, interval);
        if (joints < 1)
            return;
        const Length apart = work.measured / (joints + 1);
        add(movementJointName, joints,
            {"{count} movement joints, {apart} apart: on {length} one at the end of every whole {interval}, one "
             "more where the last would stand further than half of it from the end, spaced evenly",
             {{"count", joints}, {"apart", apart}, {"length", work.measured}, {"interval", interval}}},
            all.jointInterval->clause, {}, {explainMovement(*all.metal, apart)});
    }

    const AccessoryWork& all;
    const RunWork& work;
    const RunPieces& made;
    std::int64_t laps = 0;
    std::int64_t openJoints = 0;
    std::int64_t corners = 0;
    std::vector<Accessory> accessories;
};

} // namespace

std::vector<Accessory> accessoriesOf(const AccessoryWork& work)
{
    return Counting(work).count();
}

} // namespace lapwright::pieces
