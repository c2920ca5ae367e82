#include "fold/settings.h"

#include "measure/writing.h"

namespace lapwright::fold {

namespace {

class Limits {
public:
    void time(const char* name, std::int64_t value)
    {
        if (value < 0 || value > longestTime)
            fail(name, std::to_string(value) + " ms", "0 to 24 hours");
    }
    void length(const char* name, Length value, Length most)
    {
        if (value < Length() || value > most)
            fail(name, write(value, metric()), "0 to " + write(most, metric()));
    }
    void angle(const std::string& name, Angle value, Angle least)
    {
        if (!(value > least && value < halfTurn)) // also catches what is not a number
            fail(name, write(value), "an angle over " + write(least) + " and below 180°");
    }
    void fail(const std::string& name, const std::string& found, const std::string& expected)
    {
        errors_.push_back({"settings/" + name, found, expected});
    }
    [[nodiscard]] std::vector<Error> take() { return std::move(errors_); }

private:
    static Style metric() { return {LengthUnit::Millimetres, 16, 1}; }

    std::vector<Error> errors_;
};

} // namespace

std::vector<Error> faultsIn(const Settings& settings)
{
    Limits limits;
    const HandlingTimes& times = settings.times;
    limits.time("fold", times.fold);
    limits.time("flatten", times.flatten);
    limits.time("gauge_change", times.gaugeChange);
    limits.time("angle_change", times.angleChange);
    limits.time("turn_over", times.turnOver);
    limits.time("spin", times.spin);
    limits.time("turn_over_and_spin", times.turnOverAndSpin);
    limits.time("lay_in_over", times.layInOver);
    limits.time("slide_endways", times.slideEndways);
    limits.time("per_kilogram", times.perKilogram);
    limits.time("per_metre", times.perMetre);
    limits.time("second_person", times.secondPerson);
    limits.time("beam_face_change", times.beamFaceChange);
    limits.angle("pre_bend", settings.preBend, quarterTurn);
    limits.angle("least_pre_bend", settings.leastPreBend, quarterTurn);
    limits.angle("first_go_step", settings.firstGoStep, Angle::degrees(4.99));
    limits.length("clearance", settings.clearance, Length::millimetres(50));
    limits.length("slides_over", settings.slidesOver, Length::millimetres(50));
    limits.length("flatten_inset", settings.flattenInset, Length::millimetres(50));
    for (const MeasuredSpringback& measured : settings.measuredSpringback)
        limits.angle("springback of " + measured.metal + " " + measured.gauge, measured.angleToSet, Angle());
    return limits.take();
}

} // namespace lapwright::fold
