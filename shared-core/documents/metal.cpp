#include "documents/metal.h"

#include "documents/codec.h"

#include <set>

namespace lapwright::documents {

template <>
struct Words<metal::NeutralAxisRule> {
    using K = metal::NeutralAxisRule;
    static constexpr std::array<std::pair<K, std::string_view>, 2> all{
        {{K::ConstantK, "constant_k"}, {K::Din6935, "din_6935"}}};
};

template <class V, Like<metal::Sheet> T>
void describe(V& fields, T& sheet)
{
    fields("gauge", sheet.gauge);
    fields("thickness_mm", sheet.thickness);
    fields("kilograms_per_square_metre", sheet.kilogramsPerSquareMetre);
    fields("thickness_tolerance_mm", sheet.thicknessTolerance);
}

template <class V, Like<metal::MeasuredDeduction> T>
void describe(V& fields, T& measured)
{
    fields("gauge", measured.gauge);
    fields("fold_angle_degrees", measured.foldAngle);
    fields("inside_radius_mm", measured.insideRadius);
    fields("deduction_mm", measured.deduction);
}

template <class V, Like<metal::Metal> T>
void describe(V& fields, T& metal)
{
    constexpr double usualK = 0.44;
    fields("id", metal.id);
    fields("name", metal.name);
    fields("sheets", metal.sheets);
    fields("elastic_modulus_pa", metal.elasticModulusPascals);
    fields("yield_strength_pa", metal.yieldStrengthPascals);
    fields("tensile_strength_pa", metal.tensileStrengthPascals);
    fields("expansion_per_kelvin", metal.expansionPerKelvin);
    fields("inside_radius_per_thickness", metal.insideRadiusPerThickness);
    fields("neutral_axis", metal.neutralAxis, metal::NeutralAxisRule::ConstantK);
    fields("k", metal.k, usualK);
    fields("measured_deductions", metal.measuredDeductions, {});
    fields("brittle", metal.brittle, false);
    fields("movement_joint_spacing_mm", metal.movementJointSpacing);
    fields("sources", metal.sources, {});
}

namespace {

void checkMetal(const metal::Metal& metal, Errors& errors)
{
    std::set<std::string_view> gauges;
    for (std::size_t index = 0; index < metal.sheets.size(); ++index)
        if (!gauges.insert(metal.sheets[index].gauge).second)
            errors.push_back({"/sheets/" + std::to_string(index) + "/gauge",
                              metal.sheets[index].gauge + " again", "each gauge once"});
}

} // namespace

Result<MetalDocument> readMetal(std::string_view text)
{
    return readDocument<metal::Metal>(text, kinds::metal, checkMetal);
}

std::string writeMetal(const MetalDocument& metal, Layout layout)
{
    return writeDocument(kinds::metal, metal, layout);
}

} // namespace lapwright::documents
