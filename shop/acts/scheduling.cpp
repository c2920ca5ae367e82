#include "acts/scheduling.h"

#include "acts/fold_programs.h"
#include "acts/kept_order.h"
#include "acts/open_pieces.h"
#include "acts/shop_stock.h"
#include "acts/standing_document.h"
#include "documents/cut.h"
#include "documents/schedule.h"
#include "schedule/batch.h"
#include "schedule/solve.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <algorithm>
#include <map>

namespace lapwright::acts {

namespace {

using FloorDocument = documents::Document<schedule::Floor>;

[[noreturn]] void fail(const std::vector<Error>& errors)
{
    throw storage::StorageFailure(errors.front().sentence());
}

Result<std::optional<schedule::ScheduleRecord>> readKept(const std::optional<std::string>& document)
{
    if (!document)
        return std::optional<schedule::ScheduleRecord>();
    auto schedule = documents::readSchedule(*document);
    if (!schedule.ok())
        return schedule.errorsWithin("schedule in the database");
    return std::optional(std::move(schedule->value));
}

/// The machines of the stock document, or all that are known, with a cutting line.
Result<schedule::Floor> usualFloor(const storage::Database& database,
                                   const std::vector<std::string>& libraryFolders)
{
    const auto stock = standingStock(database);
    if (!stock.ok())
        return stock.errors();
    const auto programs = FoldPrograms::forShop(
        stock->has_value() ? (*stock)->value.machines : std::vector<std::string>(), libraryFolders);
    if (!programs.ok())
        return programs.errors();
    std::vector<std::pair<std::string, std::string>> folders;
    for (const fold::Machine& machine : programs->machines())
        folders.emplace_back(machine->id, machine->name);
    return schedule::usualFloor(folders);
}

Result<schedule::Floor> floorFor(const storage::Database& database, const ScheduleRequest& request,
                                 Scheduled& scheduled)
{
    if (request.floor)
        return request.floor->value;
    const auto standing = standingFloor(database);
    if (!standing.ok())
        return standing.errors();
    if (standing->has_value())
        return (*standing)->value;
    scheduled.usualFloor = true;
    return usualFloor(database, request.libraryFolders);
}

/// The folding machines of the floor as the library describes them, each model once.
Result<std::optional<FoldPrograms>> programsFor(const schedule::Floor& floor,
                                                const std::vector<std::string>& libraryFolders)
{
    std::vector<std::string> models;
    for (const schedule::FloorMachine& machine : floor.machines)
        if (machine.stage == schedule::Stage::Fold &&
            std::find(models.begin(), models.end(), machine.model) == models.end())
            models.push_back(machine.model);
    if (models.empty())
        return std::optional<FoldPrograms>();
    auto programs = FoldPrograms::forShop(models, libraryFolders);
    if (!programs.ok())
        return programs.errorsWithin("floor");
    return std::optional(*std::move(programs));
}

std::vector<schedule::FoldWay> waysOf(const std::vector<FoldProgram>& programs,
                                      const std::vector<fold::Machine>& machines)
{
    std::vector<schedule::FoldWay> ways;
    for (const FoldProgram& program : programs) {
        const fold::FoldPlan& plan = *program.plan();
        const fold::Machine& machine = machines[program.machine];
        ways.push_back({machine->id, schedule::programOf(plan), machine->beamFaces[plan.beamFace].name,
                        schedule::handlingTime(plan)});
    }
    return ways;
}

/// Lots of one order: a profile with pieces that are not folded yet.
void addLots(const pieces::Order& order, const std::optional<FoldPrograms>& programs,
             const std::map<std::string, std::int64_t>& cutAlready, schedule::ShopWork& work)
{
    for (std::size_t profile = 0; profile < order.profiles.size(); ++profile) {
        schedule::LotWork lot;
        lot.order = order.id;
        lot.profile = order.profiles[profile].id;
        lot.name = nameOf(order, profile);
        for (const pieces::Piece& piece : order.pieces)
            if (piece.profile == profile)
                lot.marks.push_back(piece.mark);
        if (lot.marks.empty())
            continue;
        for (const std::string& mark : lot.marks)
            if (const auto cut = cutAlready.find(schedule::blankKey(order.id, mark)); cut != cutAlready.end())
                lot.cutAlready += cut->second;
        if (programs) {
            const auto every = programs->every(order, profile);
            if (!every.ok())
                fail(every.errors());
            lot.ways = waysOf(*every, programs->machines());
        }
        work.lots.push_back(std::move(lot));
    }
}

/// A person's word for the order; at least 1 where pieces are made again, because a crew waits for them.
int priorityOf(const storage::Database& database, const storage::OrderSummary& order)
{
    const int remade = storage::orderCounts(database, order.id).remade > 0 ? 1 : 0;
    return std::max(static_cast<int>(order.priority), remade);
}

/// Orders and lots as the orders arrived.
schedule::ShopWork workIn(const storage::Database& database, const std::optional<FoldPrograms>& programs)
{
    schedule::ShopWork work;
    std::map<std::string, std::int64_t> cutAlready;
    for (const storage::PieceInState& piece : storage::piecesIn(database, schedule::PieceState::Cut))
        cutAlready[schedule::blankKey(piece.order, piece.piece.mark)] += piece.count;
    const OpenPieces open(database, {schedule::PieceState::Ordered, schedule::PieceState::Cut});
    std::vector<storage::OrderSummary> orders = storage::unfinishedOrders(database);
    std::stable_sort(orders.begin(), orders.end(), [](const auto& left, const auto& right) {
        return left.firstReceivedAt < right.firstReceivedAt;
    });
    for (const storage::OrderSummary& summary : orders) {
        if (!open.any(summary.id))
            continue;
        const auto wanted = schedule::readDate(summary.wantedBy);
        work.orders.push_back({summary.id, summary.jobName,
                               wanted.ok() ? std::optional(*wanted) : std::nullopt,
                               priorityOf(database, summary)});
        addLots(open.of(keptOrder(database, summary.id)), programs, cutAlready, work);
    }
    for (const storage::StoredPlan& stored : storage::waitingPlans(database)) {
        const auto plan = documents::readCutPlan(stored.document);
        if (!plan.ok())
            fail(plan.errors());
        work.cuts.push_back({stored.id, stored.material, plan->value.problem.blanks,
                             plan->value.problem.stocks, plan->value.plan.patterns});
    }
    return work;
}

Result<std::vector<schedule::NamedPin>> pinsFor(const ScheduleRequest& request,
                                                const std::optional<std::string>& standing)
{
    if (const auto* all = std::get_if<AllPins>(&request.pins))
        return *all;
    const auto kept = readKept(standing);
    if (!kept.ok())
        return kept.errors();
    auto pins = kept->has_value() ? (*kept)->pins : std::vector<schedule::NamedPin>();
    if (const auto* other = std::get_if<OtherPin>(&request.pins)) {
        std::erase_if(pins, [other](const schedule::NamedPin& pin) { return pin.task == other->task; });
        if (other->pin)
            pins.push_back(*other->pin);
    }
    return pins;
}

/// Keeps the floor that is given. True if that overrules another.
bool keepFloor(const storage::Database& database, const ScheduleRequest& request)
{
    if (!request.floor)
        return false;
    const auto standing = standingFloor(database);
    const bool replaced =
        standing.ok() && standing->has_value() && !((*standing)->value == request.floor->value);
    database.write([&] { storage::saveFloorDocument(database, documents::writeFloor(*request.floor)); });
    return replaced;
}

/// Until the time is over or the caller has enough.
schedule::GoOn goOnFor(const ScheduleRequest& request)
{
    if (!request.timeLimit)
        return request.goOn;
    const auto end = std::chrono::steady_clock::now() + *request.timeLimit;
    return [end, goOn = request.goOn](const schedule::Progress& progress) {
        return (!goOn || goOn(progress)) && std::chrono::steady_clock::now() < end;
    };
}

/// In place of the schedule that stood when this one was begun. False, and nothing is kept, if that is
/// another one now.
bool keep(const storage::Database& database, const schedule::ScheduleRecord& record,
          const std::optional<std::string>& before)
{
    const std::string document = documents::writeSchedule({record, {}}, documents::Layout::Canonical);
    return database.write([&] {
        if (storage::scheduleDocument(database) != before)
            return false;
        storage::saveScheduleDocument(database, document);
        return true;
    });
}

/// Nothing where another station kept a schedule meanwhile. `floorReplaced` is set if the floor that is kept
/// was another.
Result<std::optional<Scheduled>> scheduleOnce(const storage::Database& database,
                                              const ScheduleRequest& request, bool& floorReplaced)
{
    Scheduled scheduled;
    const auto floor = floorFor(database, request, scheduled);
    if (!floor.ok())
        return floor.errors();
    const auto programs = programsFor(*floor, request.libraryFolders);
    if (!programs.ok())
        return programs.errors();
    const auto standing = storage::scheduleDocument(database);
    const auto pins = pinsFor(request, standing);
    if (!pins.ok())
        return pins.errors();
    auto assembly = schedule::assemble(workIn(database, *programs), *floor, request.from, *pins);
    if (!assembly.ok())
        return assembly.errors();
    floorReplaced = keepFloor(database, request) || floorReplaced;
    scheduled.findings = std::move(assembly->findings);
    schedule::ScheduleRecord record;
    record.from = request.from;
    if (assembly->problem) {
        const schedule::Schedule schedule =
            schedule::solve(*assembly->problem, request.settings, goOnFor(request));
        if (!schedule.feasibility.workable())
            throw storage::StorageFailure(
                "a schedule that does not pass its check; this is a fault of the program");
        scheduled.findings.insert(scheduled.findings.end(), schedule.findings.begin(),
                                  schedule.findings.end());
        record = schedule::recordOf(*assembly->problem, schedule, assembly->cuts);
        scheduled.record = record;
    }
    if (!keep(database, record, standing))
        return std::optional<Scheduled>();
    return std::optional(std::move(scheduled));
}

} // namespace

Result<std::optional<schedule::ScheduleRecord>> standingSchedule(const storage::Database& database)
{
    return readKept(storage::scheduleDocument(database));
}

Result<std::optional<FloorDocument>> standingFloor(const storage::Database& database)
{
    return standingDocument(storage::floorDocument(database), documents::readFloor, "floor in the database");
}

Result<FloorDocument> floorInUse(const storage::Database& database,
                                 const std::vector<std::string>& libraryFolders)
{
    auto standing = standingFloor(database);
    if (!standing.ok())
        return standing.errors();
    if (standing->has_value())
        return **std::move(standing);
    auto usual = usualFloor(database, libraryFolders);
    if (!usual.ok())
        return usual.errors();
    return FloorDocument{*std::move(usual), {}};
}

Result<Scheduled> scheduleAll(const storage::Database& database, const ScheduleRequest& request)
{
    constexpr int mostAttempts = 3;
    bool floorReplaced = false;
    for (int attempt = 0; attempt < mostAttempts; ++attempt) {
        auto scheduled = scheduleOnce(database, request, floorReplaced);
        if (!scheduled.ok())
            return scheduled.errors();
        if (scheduled->has_value()) {
            (*scheduled)->floorReplaced = floorReplaced;
            return **std::move(scheduled);
        }
    }
    return Error{"", "another schedule after scheduling than before it", "the same one: schedule again"};
}

} // namespace lapwright::acts
