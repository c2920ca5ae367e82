#include "documents/schedule.h"

#include "documents/describe_time.h"

namespace lapwright::documents {

void Custom<schedule::Shift>::get(const Json& json, schedule::Shift& shift, Reading& reading)
{
    if (!json.is_string())
        return mismatch(json, "hours like \"07:00-12:00\"", reading);
    const auto& text = json.get_ref<const std::string&>();
    const std::size_t dash = text.find('-');
    const auto from = schedule::readTimeOfDay(text.substr(0, dash));
    const auto to = schedule::readTimeOfDay(dash == std::string::npos ? "" : text.substr(dash + 1));
    if (!from.ok() || !to.ok())
        return mismatch(json, "hours like \"07:00-12:00\"", reading);
    shift = {*from, *to};
}

void Custom<schedule::Shift>::put(const schedule::Shift& shift, Writing& out)
{
    documents::put(schedule::writeTimeOfDay(shift.from) + "-" + schedule::writeTimeOfDay(shift.to), out);
}

void timeOfDay(ReadFields& fields, const char* name, schedule::Duration& value, schedule::Duration usual)
{
    std::optional<std::string> text;
    fields(name, text);
    value = usual;
    if (!text)
        return;
    const auto time = schedule::readTimeOfDay(*text);
    if (time.ok())
        value = *time;
    else
        fields.errors().push_back(time.errors().front().within(std::string("/") + name));
}

void timeOfDay(WriteFields& fields, const char* name, schedule::Duration value, schedule::Duration usual)
{
    if (value != usual)
        fields(name, schedule::writeTimeOfDay(value));
}

template <class V, Like<schedule::Rates> T>
void describe(V& fields, T& rates)
{
    fields("sheet_seconds", rates.sheet);
    fields("slit_seconds", rates.slit);
    fields("crosscut_seconds", rates.crosscut);
    fields("fold_percent", rates.foldPercent);
    fields("piece_seconds", rates.piece);
}

template <class V, Like<schedule::SetupTimes> T>
void describe(V& fields, T& setups)
{
    const schedule::SetupTimes usual;
    fields("coil_change_seconds", setups.coilChange, usual.coilChange);
    fields("rack_change_seconds", setups.rackChange, usual.rackChange);
    fields("slitter_setup_seconds", setups.slitterSetup, usual.slitterSetup);
    fields("program_change_seconds", setups.programChange, usual.programChange);
    fields("beam_face_change_seconds", setups.beamFaceChange, usual.beamFaceChange);
}

template <class V, Like<schedule::FloorMachine> T>
void describe(V& fields, T& machine)
{
    fields("id", machine.id);
    fields("name", machine.name);
    fields("stage", machine.stage);
    fields("model", machine.model, std::string());
    fields("longest_mm", machine.longest);
    fields("widest_mm", machine.widest);
    fields("sheets", machine.sheets, true);
    fields("coils", machine.coils, true);
    fields("hours", machine.hours);
    fields("measured", machine.measured, schedule::Rates());
}

template <class V, Like<schedule::Floor> T>
void describe(V& fields, T& floor)
{
    fields("name", floor.name, std::string());
    fields("hours", floor.hours);
    fields("machines", floor.machines);
    fields("setups", floor.setups, schedule::SetupTimes());
    fields("rates", floor.rates, schedule::Rates());
    fields("lateness_weights", floor.latenessWeights, schedule::Floor().latenessWeights);
    timeOfDay(fields, "truck_leaves", floor.truckLeaves, schedule::Floor().truckLeaves);
    fields("transfer_pieces", floor.transferPieces);
    fields("coil_widths_apart", floor.coilWidthsApart, false);
}

template <class V, Like<schedule::RecordedMachine> T>
void describe(V& fields, T& machine)
{
    fields("id", machine.id);
    fields("name", machine.name);
    fields("stage", machine.stage);
    fields("worked", machine.worked);
}

template <class V, Like<schedule::CutOf> T>
void describe(V& fields, T& cut)
{
    fields("plan", cut.plan);
    fields("pattern", cut.pattern);
}

template <class V, Like<schedule::RecordedTask> T>
void describe(V& fields, T& task)
{
    fields("key", task.key);
    fields("name", task.name);
    fields("machine", task.machine);
    fields("units", task.units);
    fields("order", task.order);
    fields("cut", task.cut);
    fields("fitting", task.fitting, std::string());
    fields("setting", task.setting, std::string());
    fields("setup_from", task.setupFrom);
    fields("start", task.start);
    fields("end", task.end);
    fields("due", task.due);
    fields("pinned", task.pinned, false);
    fields("late", task.late, std::string());
}

template <class V, Like<schedule::RecordedDelivery> T>
void describe(V& fields, T& delivery)
{
    fields("order", delivery.order);
    fields("name", delivery.name);
    fields("due", delivery.due);
    fields("done", delivery.done);
    fields("weight", delivery.weight);
}

template <class V, Like<schedule::RecordedScore> T>
void describe(V& fields, T& score)
{
    fields("makespan_seconds", score.makespan);
    fields("weighted_lateness_seconds", score.weightedLateness);
    fields("late_deliveries", score.lateDeliveries);
    fields("fittings", score.fittings);
    fields("settings", score.settings);
    fields("making_ready_seconds", score.makingReady);
}

template <class V, Like<schedule::NamedPin> T>
void describe(V& fields, T& pin)
{
    fields("task", pin.task);
    fields("machine", pin.machine);
    fields("start", pin.start);
    fields("after", pin.after);
}

template <class V, Like<schedule::ScheduleRecord> T>
void describe(V& fields, T& schedule)
{
    fields("from", schedule.from);
    fields("machines", schedule.machines);
    fields("tasks", schedule.tasks);
    fields("deliveries", schedule.deliveries);
    fields("pins", schedule.pins, {});
    fields("score", schedule.score);
    fields("makespan_bound_seconds", schedule.makespanBound);
    fields("weighted_lateness_bound_seconds", schedule.weightedLatenessBound);
    fields("proven_best", schedule.provenBest, false);
    fields("method", schedule.method, std::string());
    fields("first_come", schedule.firstCome);
    fields("shortest_first", schedule.shortest);
}

Result<Document<schedule::Floor>> readFloor(std::string_view text)
{
    return readDocument<schedule::Floor>(text, kinds::floor,
                                         [](const schedule::Floor& floor, Errors& errors) {
                                             for (Error& error : schedule::faultsOf(floor))
                                                 errors.push_back(std::move(error));
                                         });
}

std::string writeFloor(const Document<schedule::Floor>& floor, Layout layout)
{
    return writeDocument(kinds::floor, floor, layout);
}

Result<Document<schedule::ScheduleRecord>> readSchedule(std::string_view text)
{
    return readDocument<schedule::ScheduleRecord>(text, kinds::schedule,
                                                  [](const schedule::ScheduleRecord& record, Errors& errors) {
                                                      for (Error& error : schedule::faultsOf(record))
                                                          errors.push_back(std::move(error));
                                                  });
}

std::string writeSchedule(const Document<schedule::ScheduleRecord>& schedule, Layout layout)
{
    return writeDocument(kinds::schedule, schedule, layout);
}

} // namespace lapwright::documents
