#include "documents/machine.h"

#include "documents/codec.h"

namespace lapwright::documents {

/// A corner of an outline is [x, y].
template <>
struct Custom<fold::Point> {
    static void get(const Json& json, fold::Point& point, Reading& reading)
    {
        if (!json.is_array() || json.size() != 2)
            return mismatch(json, "a list of x and y", reading);
        documents::get(json[0], point.x, reading);
        documents::get(json[1], point.y, reading);
    }
    static void put(const fold::Point& point, Writing& out)
    {
        out.text += '[';
        documents::put(point.x, out);
        out.text += ',';
        documents::put(point.y, out);
        out.text += ']';
    }
};

namespace {

constexpr double pascalsInMegapascal = 1e6;

} // namespace

template <class V, Like<fold::BeamFace> T>
void describe(V& fields, T& face)
{
    fields("name", face.name);
    fields("width_mm", face.width);
    fields("body", face.body);
}

static void describe(ReadFields& fields, fold::Capacity& capacity)
{
    fields("metal", capacity.metal);
    fields("thickness_mm", capacity.thickness);
    fields("tensile_strength_mpa", capacity.tensileStrengthPascals);
    capacity.tensileStrengthPascals *= pascalsInMegapascal;
}

static void describe(WriteFields& fields, const fold::Capacity& capacity)
{
    fields("metal", capacity.metal);
    fields("thickness_mm", capacity.thickness);
    fields("tensile_strength_mpa", capacity.tensileStrengthPascals / pascalsInMegapascal);
}

template <class V, Like<fold::BackGauge> T>
void describe(V& fields, T& gauge)
{
    fields("least_mm", gauge.least);
    fields("most_mm", gauge.most);
    fields("finger_height_mm", gauge.fingerHeight);
}

template <class V, Like<fold::MeasuredSpringback> T>
void describe(V& fields, T& measured)
{
    fields("metal", measured.metal);
    fields("gauge", measured.gauge);
    fields("fold_degrees", measured.foldAngle);
    fields("set_degrees", measured.angleToSet);
}

template <class V, Like<fold::DownFolding> T>
void describe(V& fields, T& down)
{
    fields("beam", down.beam);
    fields("largest_fold_angle_degrees", down.largestFoldAngle);
}

template <class V, Like<fold::MachineDescription> T>
void describe(V& fields, T& machine)
{
    fields("id", machine.id);
    fields("name", machine.name);
    fields("note", machine.note, std::string());
    fields("bending_length_mm", machine.bendingLength);
    fields("capacity", machine.capacity);
    fields("bed", machine.bed);
    fields("clamp", machine.clamp);
    fields("largest_fold_angle_degrees", machine.largestFoldAngle);
    fields("clamp_opening_mm", machine.clampOpening);
    fields("throat_mm", machine.throat);
    fields("beam_faces", machine.beamFaces);
    fields("down_folding", machine.downFolding);
    fields("back_gauge", machine.backGauge);
    fields("display_step_mm", machine.displayStep);
    fields("least_leg_mm", machine.leastLeg);
    fields("slides_endways_mm", machine.slidesEndways);
    fields("measured_springback", machine.measuredSpringback, std::vector<fold::MeasuredSpringback>());
    fields("flattens_hems", machine.flattensHems);
    fields("largest_open_hem_mm", machine.largestOpenHem);
}

namespace {

void checkMachine(const fold::MachineDescription& description, Errors& errors)
{
    const Result<fold::Machine> machine = fold::Machine::make(description);
    if (machine)
        return;
    for (const Error& error : machine.errors())
        errors.push_back({"/" + error.place, error.found, error.expected});
}

} // namespace

Result<MachineDocument> readMachine(std::string_view text)
{
    return readDocument<fold::MachineDescription>(text, kinds::machine, checkMachine);
}

std::string writeMachine(const MachineDocument& machine, Layout layout)
{
    return writeDocument(kinds::machine, machine, layout);
}

} // namespace lapwright::documents
