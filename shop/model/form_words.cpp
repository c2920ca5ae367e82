#include "form_words.h"

#include "text.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

namespace lapwright::model {

namespace {

struct Word {
    std::string_view name;
    const char* label;
};

/// Members by name, so that they can be searched.
constexpr std::array words = std::to_array<Word>({
    {"anchor_point", QT_TRANSLATE_NOOP("Form", "Point that is placed")},
    {"anchor_x", QT_TRANSLATE_NOOP("Form", "Its place across")},
    {"anchor_y", QT_TRANSLATE_NOOP("Form", "Its place up")},
    {"applies", QT_TRANSLATE_NOOP("Form", "Where it applies")},
    {"back_gauge", QT_TRANSLATE_NOOP("Form", "Back gauge")},
    {"beam", QT_TRANSLATE_NOOP("Form", "Beam")},
    {"beam_face_change_seconds", QT_TRANSLATE_NOOP("Form", "Another beam face")},
    {"beam_faces", QT_TRANSLATE_NOOP("Form", "Beam inserts")},
    {"bed", QT_TRANSLATE_NOOP("Form", "Bed, corners")},
    {"bending_length_mm", QT_TRANSLATE_NOOP("Form", "Bending length")},
    {"bends", QT_TRANSLATE_NOOP("Form", "Bends")},
    {"body", QT_TRANSLATE_NOOP("Form", "Body, corners")},
    {"capacity", QT_TRANSLATE_NOOP("Form", "Capacity")},
    {"caution", QT_TRANSLATE_NOOP("Form", "Caution")},
    {"cents_per_kilogram", QT_TRANSLATE_NOOP("Form", "Cents a kilogram")},
    {"cents_per_square_metre", QT_TRANSLATE_NOOP("Form", "Cents a square metre")},
    {"clamp", QT_TRANSLATE_NOOP("Form", "Clamp, corners")},
    {"clamp_opening_mm", QT_TRANSLATE_NOOP("Form", "Clamp opening")},
    {"clauses", QT_TRANSLATE_NOOP("Form", "Clauses")},
    {"cleat_rows", QT_TRANSLATE_NOOP("Form", "Rows of cleats")},
    {"cleat_spacing_mm", QT_TRANSLATE_NOOP("Form", "Cleats apart")},
    {"closed_end_mm", QT_TRANSLATE_NOOP("Form", "Closed end")},
    {"coefficient", QT_TRANSLATE_NOOP("Form", "Times")},
    {"coil_change_seconds", QT_TRANSLATE_NOOP("Form", "Another coil")},
    {"coil_widths_apart", QT_TRANSLATE_NOOP("Form", "Coil widths planned apart")},
    {"coils", QT_TRANSLATE_NOOP("Form", "Takes coils")},
    {"colour", QT_TRANSLATE_NOOP("Form", "Colour")},
    {"colour_face", QT_TRANSLATE_NOOP("Form", "Side of the colour")},
    {"constant_degrees", QT_TRANSLATE_NOOP("Form", "Degrees")},
    {"constant_mm", QT_TRANSLATE_NOOP("Form", "Millimetres")},
    {"cost", QT_TRANSLATE_NOOP("Form", "Cost")},
    {"count", QT_TRANSLATE_NOOP("Form", "How many")},
    {"course_head_lap_mm", QT_TRANSLATE_NOOP("Form", "Head lap of a course")},
    {"crosscut_seconds", QT_TRANSLATE_NOOP("Form", "A crosscut")},
    {"currency", QT_TRANSLATE_NOOP("Form", "Currency")},
    {"date", QT_TRANSLATE_NOOP("Form", "Date")},
    {"default_mm", QT_TRANSLATE_NOOP("Form", "Usually")},
    {"demands", QT_TRANSLATE_NOOP("Form", "What it demands")},
    {"display_step_mm", QT_TRANSLATE_NOOP("Form", "Step of the display")},
    {"down_folding", QT_TRANSLATE_NOOP("Form", "Folding down")},
    {"edition", QT_TRANSLATE_NOOP("Form", "Edition")},
    {"end_hem", QT_TRANSLATE_NOOP("Form", "Hem at the outer end")},
    {"exceptions", QT_TRANSLATE_NOOP("Form", "Other hours")},
    {"fact", QT_TRANSLATE_NOOP("Form", "Fact")},
    {"fastener_rows", QT_TRANSLATE_NOOP("Form", "Rows of fasteners")},
    {"fastener_spacing_mm", QT_TRANSLATE_NOOP("Form", "Fasteners apart")},
    {"finger_height_mm", QT_TRANSLATE_NOOP("Form", "Height of the fingers")},
    {"first_direction", QT_TRANSLATE_NOOP("Form", "Direction of the first leg")},
    {"fixing_rule", QT_TRANSLATE_NOOP("Form", "Rule for the fixing")},
    {"flat_mm", QT_TRANSLATE_NOOP("Form", "Flat")},
    {"flattens_hems", QT_TRANSLATE_NOOP("Form", "Presses hems")},
    {"fold_degrees", QT_TRANSLATE_NOOP("Form", "Fold angle left")},
    {"fold_percent", QT_TRANSLATE_NOOP("Form", "Folding, of the planned time")},
    {"friday", QT_TRANSLATE_NOOP("Form", "Friday")},
    {"gauge", QT_TRANSLATE_NOOP("Form", "Gauge")},
    {"handed", QT_TRANSLATE_NOOP("Form", "Left and right differ")},
    {"hours", QT_TRANSLATE_NOOP("Form", "Hours")},
    {"id", QT_TRANSLATE_NOOP("Form", "Short name")},
    {"inside_radius_mm", QT_TRANSLATE_NOOP("Form", "Inside radius")},
    {"installation", QT_TRANSLATE_NOOP("Form", "Installation")},
    {"is", QT_TRANSLATE_NOOP("Form", "Is")},
    {"key", QT_TRANSLATE_NOOP("Form", "Name or label")},
    {"kind", QT_TRANSLATE_NOOP("Form", "Kind")},
    {"label", QT_TRANSLATE_NOOP("Form", "What it is called")},
    {"labour_cents_per_hour", QT_TRANSLATE_NOOP("Form", "Labour, cents an hour")},
    {"labour_minutes", QT_TRANSLATE_NOOP("Form", "Minutes of labour")},
    {"lap_mm", QT_TRANSLATE_NOOP("Form", "Lap")},
    {"lap_rule", QT_TRANSLATE_NOOP("Form", "Rule for the lap")},
    {"largest_fold_angle_degrees", QT_TRANSLATE_NOOP("Form", "Largest fold angle")},
    {"largest_open_hem_mm", QT_TRANSLATE_NOOP("Form", "Widest open hem")},
    {"lateness_weights", QT_TRANSLATE_NOOP("Form", "What lateness counts, by priority")},
    {"least_degrees", QT_TRANSLATE_NOOP("Form", "At least")},
    {"least_leg_mm", QT_TRANSLATE_NOOP("Form", "Shortest leg")},
    {"least_mm", QT_TRANSLATE_NOOP("Form", "At least")},
    {"legs", QT_TRANSLATE_NOOP("Form", "Legs")},
    {"length", QT_TRANSLATE_NOOP("Form", "Length")},
    {"length_mm", QT_TRANSLATE_NOOP("Form", "Length")},
    {"longest_crosscut_mm", QT_TRANSLATE_NOOP("Form", "Longest crosscut")},
    {"longest_mm", QT_TRANSLATE_NOOP("Form", "Longest")},
    {"machines", QT_TRANSLATE_NOOP("Form", "Machines")},
    {"material", QT_TRANSLATE_NOOP("Form", "Material")},
    {"materials", QT_TRANSLATE_NOOP("Form", "Metals")},
    {"measure", QT_TRANSLATE_NOOP("Form", "Measure")},
    {"measured", QT_TRANSLATE_NOOP("Form", "Measured here")},
    {"measured_springback", QT_TRANSLATE_NOOP("Form", "Springback measured here")},
    {"measures", QT_TRANSLATE_NOOP("Form", "Measures it asks for")},
    {"metal", QT_TRANSLATE_NOOP("Form", "Metal")},
    {"mitre_clearance_mm", QT_TRANSLATE_NOOP("Form", "Clearance at a mitre")},
    {"model", QT_TRANSLATE_NOOP("Form", "Model in the library")},
    {"monday", QT_TRANSLATE_NOOP("Form", "Monday")},
    {"most_degrees", QT_TRANSLATE_NOOP("Form", "At most")},
    {"most_mm", QT_TRANSLATE_NOOP("Form", "At most")},
    {"name", QT_TRANSLATE_NOOP("Form", "Name")},
    {"note", QT_TRANSLATE_NOOP("Form", "Note")},
    {"number", QT_TRANSLATE_NOOP("Form", "Number")},
    {"per_bend", QT_TRANSLATE_NOOP("Form", "For a bend")},
    {"per_order", QT_TRANSLATE_NOOP("Form", "For an order")},
    {"per_piece", QT_TRANSLATE_NOOP("Form", "For a piece")},
    {"per_profile", QT_TRANSLATE_NOOP("Form", "For a profile")},
    {"piece_seconds", QT_TRANSLATE_NOOP("Form", "A blank taken up and laid aside")},
    {"plus", QT_TRANSLATE_NOOP("Form", "Plus")},
    {"program_change_seconds", QT_TRANSLATE_NOOP("Form", "Another program")},
    {"rack_change_seconds", QT_TRANSLATE_NOOP("Form", "Another rack")},
    {"rates", QT_TRANSLATE_NOOP("Form", "Times it takes")},
    {"reason", QT_TRANSLATE_NOOP("Form", "Reason")},
    {"remedy", QT_TRANSLATE_NOOP("Form", "Remedy")},
    {"rise", QT_TRANSLATE_NOOP("Form", "Rise")},
    {"round_up_to_mm", QT_TRANSLATE_NOOP("Form", "Rounded up to")},
    {"rule", QT_TRANSLATE_NOOP("Form", "Rule")},
    {"run", QT_TRANSLATE_NOOP("Form", "Run")},
    {"saturday", QT_TRANSLATE_NOOP("Form", "Saturday")},
    {"sealed_laps", QT_TRANSLATE_NOOP("Form", "Laps are sealed")},
    {"set_degrees", QT_TRANSLATE_NOOP("Form", "Angle to set")},
    {"setups", QT_TRANSLATE_NOOP("Form", "Making ready")},
    {"sheet_seconds", QT_TRANSLATE_NOOP("Form", "A sheet laid in and taken away")},
    {"sheets", QT_TRANSLATE_NOOP("Form", "Takes sheets")},
    {"shifts", QT_TRANSLATE_NOOP("Form", "Shifts")},
    {"side", QT_TRANSLATE_NOOP("Form", "Side")},
    {"slides_endways_mm", QT_TRANSLATE_NOOP("Form", "Slides in endways")},
    {"slit_seconds", QT_TRANSLATE_NOOP("Form", "A slit")},
    {"slitter_setup_seconds", QT_TRANSLATE_NOOP("Form", "The slitter set")},
    {"source", QT_TRANSLATE_NOOP("Form", "Source")},
    {"stage", QT_TRANSLATE_NOOP("Form", "Stage")},
    {"start_hem", QT_TRANSLATE_NOOP("Form", "Hem at the inner end")},
    {"statement", QT_TRANSLATE_NOOP("Form", "What it says")},
    {"suits", QT_TRANSLATE_NOOP("Form", "Suits")},
    {"sunday", QT_TRANSLATE_NOOP("Form", "Sunday")},
    {"tax_hundredths_of_percent", QT_TRANSLATE_NOOP("Form", "Tax, hundredths of a percent")},
    {"tensile_strength_mpa", QT_TRANSLATE_NOOP("Form", "Tensile strength")},
    {"thickness_mm", QT_TRANSLATE_NOOP("Form", "Thickness")},
    {"throat_mm", QT_TRANSLATE_NOOP("Form", "Throat")},
    {"thursday", QT_TRANSLATE_NOOP("Form", "Thursday")},
    {"transfer_pieces", QT_TRANSLATE_NOOP("Form", "Pieces moved on together")},
    {"truck_leaves", QT_TRANSLATE_NOOP("Form", "The truck leaves at")},
    {"tuesday", QT_TRANSLATE_NOOP("Form", "Tuesday")},
    {"turn", QT_TRANSLATE_NOOP("Form", "Turn")},
    {"turn_up_mm", QT_TRANSLATE_NOOP("Form", "Turn-up")},
    {"value", QT_TRANSLATE_NOOP("Form", "Value")},
    {"values", QT_TRANSLATE_NOOP("Form", "Values")},
    {"waste_percent", QT_TRANSLATE_NOOP("Form", "Waste")},
    {"wednesday", QT_TRANSLATE_NOOP("Form", "Wednesday")},
    {"weight", QT_TRANSLATE_NOOP("Form", "Weight")},
    {"widest_mm", QT_TRANSLATE_NOOP("Form", "Widest")},
    {"width_mm", QT_TRANSLATE_NOOP("Form", "Width")},
    {"wrap_tab_mm", QT_TRANSLATE_NOOP("Form", "Wrap tab")},
});

/// Values of members, in the same way.
constexpr std::array choices = std::to_array<Word>({
    {"at_least", QT_TRANSLATE_NOOP("Form", "At least")},
    {"at_most", QT_TRANSLATE_NOOP("Form", "At most")},
    {"blocks", QT_TRANSLATE_NOOP("Form", "Blocks")},
    {"closed", QT_TRANSLATE_NOOP("Form", "Closed")},
    {"coil", QT_TRANSLATE_NOOP("Form", "Coil")},
    {"crease_turn", QT_TRANSLATE_NOOP("Form", "Turn of the crease")},
    {"cut", QT_TRANSLATE_NOOP("Form", "Cutting")},
    {"equal", QT_TRANSLATE_NOOP("Form", "Equal to")},
    {"fold", QT_TRANSLATE_NOOP("Form", "Folding")},
    {"greater", QT_TRANSLATE_NOOP("Form", "More than")},
    {"in", QT_TRANSLATE_NOOP("Form", "One of")},
    {"informs", QT_TRANSLATE_NOOP("Form", "Informs")},
    {"left", QT_TRANSLATE_NOOP("Form", "Left")},
    {"less", QT_TRANSLATE_NOOP("Form", "Less than")},
    {"not_equal", QT_TRANSLATE_NOOP("Form", "Not equal to")},
    {"open", QT_TRANSLATE_NOOP("Form", "Open")},
    {"other_slope", QT_TRANSLATE_NOOP("Form", "Slope of the other plane")},
    {"remnant", QT_TRANSLATE_NOOP("Form", "Remnant")},
    {"right", QT_TRANSLATE_NOOP("Form", "Right")},
    {"sheet", QT_TRANSLATE_NOOP("Form", "Sheets")},
    {"slope", QT_TRANSLATE_NOOP("Form", "Slope of the run's plane")},
    {"teardrop", QT_TRANSLATE_NOOP("Form", "Teardrop")},
    {"wall_turn", QT_TRANSLATE_NOOP("Form", "Turn of the wall")},
    {"warns", QT_TRANSLATE_NOOP("Form", "Warns")},
});

/// A name that a later schema adds stays, with spaces.
template <std::size_t Count>
QString wordFor(const std::array<Word, Count>& known, const std::string& sought)
{
    const auto* found =
        std::lower_bound(known.begin(), known.end(), sought,
                         [](const Word& word, std::string_view name) { return word.name < name; });
    if (found != known.end() && found->name == sought)
        return QCoreApplication::translate("Form", found->label);
    QString plain = shown(sought).replace(u'_', u' ');
    if (!plain.isEmpty())
        plain[0] = plain[0].toUpper();
    return plain;
}

bool endsWith(std::string_view text, std::string_view end)
{
    return text.size() > end.size() && text.substr(text.size() - end.size()) == end;
}

} // namespace

QString formWord(const std::string& member)
{
    return wordFor(words, member);
}

QString formChoice(const std::string& value)
{
    return wordFor(choices, value);
}

QString formUnit(const std::string& member, bool length, const Style& style)
{
    // Feet and inches carry their marks.
    if (endsWith(member, "_mm"))
        return length && style.unit != LengthUnit::Millimetres ? QString() : QStringLiteral("mm");
    if (endsWith(member, "_degrees"))
        return QStringLiteral("°");
    if (endsWith(member, "_seconds"))
        return QStringLiteral("s");
    if (endsWith(member, "_percent"))
        return QStringLiteral("%");
    return endsWith(member, "_mpa") ? QStringLiteral("MPa") : QString();
}

} // namespace lapwright::model
