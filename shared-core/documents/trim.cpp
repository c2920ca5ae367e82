#include "documents/trim.h"

#include "documents/describe_profile.h"
#include "documents/describe_site.h"

#include <set>

namespace lapwright::documents {

template <>
struct Words<trim::AngleMeasure> {
    using K = trim::AngleMeasure;
    static constexpr std::array<std::pair<K, std::string_view>, 4> all{{{K::Slope, "slope"},
                                                                        {K::OtherSlope, "other_slope"},
                                                                        {K::WallTurn, "wall_turn"},
                                                                        {K::CreaseTurn, "crease_turn"}}};
};

using LengthTerm = std::pair<double, std::string>;
using AngleTerm = std::pair<double, trim::AngleMeasure>;

template <class V, class T>
requires(Like<T, LengthTerm> || Like<T, AngleTerm>) void describe(V& fields, T& term)
{
    fields("coefficient", term.first);
    fields("measure", term.second);
}

template <class V, Like<trim::LengthExpression> T>
void describe(V& fields, T& expression)
{
    fields("constant_mm", expression.constant, Length());
    fields("plus", expression.terms, {});
}

template <class V, Like<trim::AngleExpression> T>
void describe(V& fields, T& expression)
{
    fields("constant_degrees", expression.constant, Angle());
    fields("plus", expression.terms, {});
}

template <class V, Like<trim::MeasureDeclaration> T>
void describe(V& fields, T& measure)
{
    fields("name", measure.name);
    fields("label", measure.label);
    fields("default_mm", measure.byDefault);
    fields("least_mm", measure.least);
    fields("most_mm", measure.most);
}

template <class V, Like<trim::LegTemplate> T>
void describe(V& fields, T& leg)
{
    fields("name", leg.name);
    fields("label", leg.label);
    fields("length", leg.length);
    fields("least_mm", leg.least);
    fields("most_mm", leg.most);
    fields("round_up_to_mm", leg.roundUpTo);
    fields("rule", leg.rule, std::string());
    fields("source", leg.source, std::string());
}

template <class V, Like<trim::BendTemplate> T>
void describe(V& fields, T& bend)
{
    fields("turn", bend.turn);
    fields("least_degrees", bend.least);
    fields("most_degrees", bend.most);
    fields("inside_radius_mm", bend.insideRadius);
    fields("source", bend.source, std::string());
}

template <class V, Like<trim::HemTemplate> T>
void describe(V& fields, T& hem)
{
    fields("kind", hem.kind);
    fields("flat_mm", hem.flat);
    fields("side", hem.side);
    fields("inside_radius_mm", hem.insideRadius);
}

template <class V, Like<trim::Installation> T>
void describe(V& fields, T& installation)
{
    fields("lap_mm", installation.lap, Length());
    fields("lap_rule", installation.lapRule, std::string());
    fields("mitre_clearance_mm", installation.mitreClearance, Length());
    fields("wrap_tab_mm", installation.wrapTab, Length());
    fields("closed_end_mm", installation.closedEnd, Length());
    fields("turn_up_mm", installation.turnUp, Length());
    fields("fastener_spacing_mm", installation.fastenerSpacing);
    fields("fastener_rows", installation.fastenerRows, std::int64_t{1});
    fields("fixing_rule", installation.fixingRule, std::string());
    fields("cleat_spacing_mm", installation.cleatSpacing);
    fields("cleat_rows", installation.cleatRows, std::int64_t{1});
    fields("sealed_laps", installation.sealedLaps, false);
    fields("course_head_lap_mm", installation.courseHeadLap);
}

template <class V, Like<trim::Template> T>
void describe(V& fields, T& trim)
{
    fields("id", trim.id);
    fields("name", trim.name);
    fields("note", trim.note, std::string());
    fields("suits", trim.suits);
    fields.orEmpty("measures", trim.measures);
    fields("legs", trim.legs);
    fields("bends", trim.bends);
    fields("start_hem", trim.startHem);
    fields("end_hem", trim.endHem);
    fields("colour_face", trim.colourFace);
    fields.orEmpty("first_direction", trim.firstDirection);
    fields("anchor_point", trim.anchorPoint, std::size_t{0});
    fields.orEmpty("anchor_x", trim.anchorX);
    fields.orEmpty("anchor_y", trim.anchorY);
    fields.orEmpty("installation", trim.installation);
    fields("handed", trim.handed, false);
}

namespace {

class TrimCheck {
public:
    TrimCheck(const trim::Template& trim, Errors& errors) : trim_(trim), errors_(errors) {}

    void check()
    {
        if (trim_.bends.size() + 1 != trim_.legs.size())
            report("/bends", std::to_string(trim_.bends.size()) + " bends",
                   "one between each two of " + std::to_string(trim_.legs.size()) + " legs");
        if (trim_.anchorPoint > trim_.legs.size())
            report("/anchor_point", std::to_string(trim_.anchorPoint),
                   "at most the number of legs, " + std::to_string(trim_.legs.size()));
        for (std::size_t index = 0; index < trim_.measures.size(); ++index)
            checkNamed(trim_.measures[index], declared_, "/measures/" + std::to_string(index));
        std::set<std::string_view> legs;
        for (std::size_t index = 0; index < trim_.legs.size(); ++index) {
            const std::string place = "/legs/" + std::to_string(index);
            checkNamed(trim_.legs[index], legs, place);
            checkExpression(trim_.legs[index].length, place + "/length");
        }
        for (std::size_t index = 0; index < trim_.bends.size(); ++index)
            if (trim_.bends[index].most < trim_.bends[index].least)
                report("/bends/" + std::to_string(index) + "/least_degrees", "more than most_degrees",
                       "at most most_degrees");
        checkExpression(trim_.anchorX, "/anchor_x");
        checkExpression(trim_.anchorY, "/anchor_y");
    }

private:
    void report(std::string place, std::string found, std::string expected)
    {
        errors_.push_back({std::move(place), std::move(found), std::move(expected)});
    }
    template <class Named>
    void checkNamed(const Named& named, std::set<std::string_view>& names, const std::string& place)
    {
        if (!names.insert(named.name).second)
            report(place + "/name", named.name + " again", "each name once");
        if (named.most < named.least)
            report(place + "/least_mm", "more than most_mm", "at most most_mm");
    }
    void checkExpression(const trim::LengthExpression& expression, const std::string& place)
    {
        for (std::size_t index = 0; index < expression.terms.size(); ++index)
            if (declared_.count(expression.terms[index].second) == 0)
                report(place + "/plus/" + std::to_string(index) + "/measure", expression.terms[index].second,
                       "a measure declared in measures");
    }

    const trim::Template& trim_;
    Errors& errors_;
    std::set<std::string_view> declared_;
};

} // namespace

Result<TrimDocument> readTrim(std::string_view text)
{
    return readDocument<trim::Template>(text, kinds::trim, [](const trim::Template& trim, Errors& errors) {
        TrimCheck(trim, errors).check();
    });
}

std::string writeTrim(const TrimDocument& trim, Layout layout)
{
    return writeDocument(kinds::trim, trim, layout);
}

} // namespace lapwright::documents
