#include "measure/rounding.h"
#include "trim/profile_checks.h"
#include "trim/template.h"

#include <algorithm>
#include <cmath>

namespace lapwright::trim {

namespace {

const char* nameOf(AngleMeasure measure)
{
    switch (measure) {
    case AngleMeasure::Slope:
        return "slope";
    case AngleMeasure::OtherSlope:
        return "other slope";
    case AngleMeasure::WallTurn:
        return "turn of the wall";
    case AngleMeasure::CreaseTurn:
        return "turn of the crease";
    }
    return "";
}

/// "{coefficient1} × {measure1} {value1}" with its sign, and the values for it. `isFirst`: nothing stands
/// before it.
template <class Value>
void addTerm(Phrase& phrase, std::size_t number, double coefficient, const std::string& measure, Value value,
             bool isFirst)
{
    const std::string index = std::to_string(number);
    const bool negative = coefficient < 0.0;
    phrase.text += isFirst ? (negative ? "−" : "") : (negative ? " − " : " + ");
    if (std::abs(coefficient) != 1.0) {
        phrase.text += "{coefficient" + index + "} × ";
        phrase.values.emplace_back("coefficient" + index, std::abs(coefficient));
    }
    phrase.text += "{measure" + index + "} {value" + index + "}";
    phrase.values.emplace_back("measure" + index, measure);
    phrase.values.emplace_back("value" + index, value);
}

/// "slope 26.57° is 6 in 12" for the angles that roofs are spoken of so; nothing for the others.
std::optional<Derivation> explainSlope(AngleMeasure measure, Angle angle)
{
    if (measure != AngleMeasure::Slope && measure != AngleMeasure::OtherSlope)
        return std::nullopt;
    return Derivation{{"{slope} {angle} is {rise} in 12",
                       {{"slope", nameOf(measure)},
                        {"angle", angle},
                        {"rise", std::round(std::tan(angle.inRadians()) * 1'200.0) / 100.0}}},
                      "",
                      {}};
}

class Resolver {
public:
    Resolver(const Template& trim, const Site& site) : trim_(trim), site_(site) {}

    Resolution resolve()
    {
        checkForm();
        takeMeasures();
        if (!rules::anyBlocks(result_.findings)) {
            makeProfile();
            checkNames();
        }
        if (!rules::anyBlocks(result_.findings)) {
            placeAnchor();
            for (rules::Finding& finding : checkFoldable(profile_, site_.thickness))
                result_.findings.push_back(std::move(finding));
        }
        if (!rules::anyBlocks(result_.findings))
            result_.profile = std::move(profile_);
        return std::move(result_);
    }

private:
    void block(const std::string& code, const std::string& place, Phrase statement, Phrase remedy = {})
    {
        result_.findings.push_back(blocking(code, place, std::move(statement), std::move(remedy)));
    }

    void contradiction(const std::string& place, const std::string& what)
    {
        block("trim.template", place,
              {"The trim {trim} contradicts itself: {what}", {{"trim", trim_.id}, {"what", what}}},
              {"Correct the file of this trim", {}});
    }

    void checkForm()
    {
        if (trim_.legs.empty() || trim_.bends.size() + 1 != trim_.legs.size())
            contradiction("bends", "it needs one bend between each two legs");
        if (trim_.anchorPoint > trim_.legs.size())
            contradiction("anchor", "its anchor is beyond its last leg");
        const auto checkTerms = [this](const std::string& place, const LengthExpression& expression) {
            for (const auto& term : expression.terms)
                if (std::none_of(
                        trim_.measures.begin(), trim_.measures.end(),
                        [&term](const MeasureDeclaration& measure) { return measure.name == term.second; }))
                    contradiction(place,
                                  "it uses the measure " + term.second + ", which it does not declare");
        };
        for (const LegTemplate& leg : trim_.legs)
            checkTerms(leg.name, leg.length);
        checkTerms("anchor", trim_.anchorX);
        checkTerms("anchor", trim_.anchorY);
    }

    void takeMeasures()
    {
        for (const MeasureDeclaration& measure : trim_.measures) {
            const auto given = site_.measures.find(measure.name);
            if (given == site_.measures.end() && !measure.byDefault) {
                block("trim.measure.missing", measure.name,
                      {"{measure} is not given", {{"measure", measure.label}}},
                      {"Measure it: {least} to {most}", {{"least", measure.least}, {"most", measure.most}}});
                continue;
            }
            const Length value = given == site_.measures.end() ? *measure.byDefault : given->second;
            if (value < measure.least || value > measure.most)
                block("trim.measure.range", measure.name,
                      {"{measure} is {value}; {trim} takes {least} to {most}",
                       {{"measure", measure.label},
                        {"value", value},
                        {"trim", trim_.name},
                        {"least", measure.least},
                        {"most", measure.most}}},
                      {"Measure it again, or choose another trim", {}});
            measures_[measure.name] = value;
            labels_[measure.name] = measure.label;
            measureDerivations_[measure.name] = {{given == site_.measures.end()
                                                      ? "{measure} {value}, by default"
                                                      : "{measure} {value}, as measured",
                                                  {{"measure", measure.label}, {"value", value}}},
                                                 "",
                                                 {}};
        }
    }

    void checkNames()
    {
        const auto inform = [this](const std::string& code, const std::string& name, const char* what) {
            result_.findings.push_back({rules::Weight::Warns,
                                        code,
                                        name,
                                        {what, {{"trim", trim_.name}, {"name", name}}},
                                        {"Check the name; the value is not used", {}},
                                        std::nullopt});
        };
        for (const auto& measure : site_.measures)
            if (measures_.find(measure.first) == measures_.end())
                inform("trim.measure.unknown", measure.first, "{trim} has no measure {name}");
        for (const auto& leg : site_.legs)
            if (std::none_of(trim_.legs.begin(), trim_.legs.end(),
                             [&leg](const LegTemplate& known) { return known.name == leg.first; }))
                inform("trim.leg.unknown", leg.first, "{trim} has no leg {name}");
    }

    [[nodiscard]] Length valueOf(const LengthExpression& expression) const
    {
        Length value = expression.constant;
        for (const auto& [coefficient, measure] : expression.terms)
            value += scaled(measures_.at(measure), coefficient);
        return value;
    }

    /// Nothing, with a finding, if the run does not supply an angle.
    std::optional<Angle> valueOf(const AngleExpression& expression, const std::string& place)
    {
        Angle value = expression.constant;
        bool complete = true;
        for (const auto& [coefficient, measure] : expression.terms) {
            const auto given = site_.angles.find(measure);
            if (given == site_.angles.end() || !std::isfinite(given->second.inRadians())) {
                complete = false;
                block("trim.angle.missing", place,
                      {"{trim} needs the {angle}", {{"trim", trim_.name}, {"angle", nameOf(measure)}}},
                      {"Enter it with the run", {}});
                continue;
            }
            value += given->second * coefficient;
        }
        return complete ? std::optional(value) : std::nullopt;
    }

    void makeProfile()
    {
        profile_.trim = trim_.id;
        profile_.name = trim_.name;
        profile_.colourFace = trim_.colourFace;
        profile_.startHem = hemFrom(trim_.startHem);
        profile_.endHem = hemFrom(trim_.endHem);
        for (const LegTemplate& leg : trim_.legs)
            makeLeg(leg);
        for (std::size_t bend = 0; bend < trim_.bends.size(); ++bend)
            makeBend(bend);
        profile_.firstDirection = valueOf(trim_.firstDirection, "first direction").value_or(Angle());
    }

    [[nodiscard]] std::optional<Hem> hemFrom(const std::optional<HemTemplate>& hem) const
    {
        if (!hem)
            return std::nullopt;
        const Length own = hem->kind == HemKind::Closed ? Length() : site_.insideRadius;
        return Hem{hem->kind, hem->flat, hem->side, hem->insideRadius.value_or(own)};
    }

    void makeLeg(const LegTemplate& leg)
    {
        const auto byHand = site_.legs.find(leg.name);
        Derivation derivation;
        Length length;
        if (byHand != site_.legs.end()) {
            length = byHand->second;
            derivation.statement = {"{leg} {length}, set by hand", {{"leg", leg.label}, {"length", length}}};
        } else {
            length = valueOf(leg.length);
            if (leg.roundUpTo)
                length = roundUp(length, *leg.roundUpTo);
            derivation = explainLeg(leg, length);
        }
        profile_.legs.push_back({leg.name, length});
        result_.legDerivations.push_back(std::move(derivation));
        if (length < leg.least)
            limit("trim.leg.short", leg, "{leg} is {length}, shorter than {limit}", length, leg.least);
        if (length > leg.most)
            limit("trim.leg.long", leg, "{leg} is {length}, longer than {limit}", length, leg.most);
    }

    void limit(const char* code, const LegTemplate& leg, const char* text, Length length, Length bound)
    {
        rules::Finding finding{rules::Weight::Warns,
                               code,
                               leg.name,
                               {text, {{"leg", leg.label}, {"length", length}, {"limit", bound}}},
                               {"Change the leg, or give the reason", {}},
                               std::nullopt};
        if (!leg.rule.empty() && length < bound) // it sets the least, not the most
            finding.clause = rules::ClauseReference{leg.rule, "", leg.source};
        result_.findings.push_back(std::move(finding));
    }

    [[nodiscard]] Derivation explainLeg(const LegTemplate& leg, Length length) const
    {
        const bool hasConstant = leg.length.constant != Length();
        const bool fixed = leg.length.terms.empty();
        Derivation derivation{{fixed         ? "{leg} {length}, as the trim has it"
                               : hasConstant ? "{leg} {length} = {constant}"
                                             : "{leg} {length} = ",
                               {{"leg", leg.label}, {"length", length}, {"constant", leg.length.constant}}},
                              leg.source,
                              {}};
        std::size_t number = 0;
        for (const auto& [coefficient, measure] : leg.length.terms) {
            ++number;
            addTerm(derivation.statement, number, coefficient, labels_.at(measure), measures_.at(measure),
                    number == 1 && !hasConstant);
            derivation.because.push_back(measureDerivations_.at(measure));
        }
        if (leg.roundUpTo) {
            derivation.statement.text += ", rounded up to a multiple of {step}";
            derivation.statement.values.emplace_back("step", *leg.roundUpTo);
        }
        if (!leg.rule.empty()) {
            derivation.statement.text += "; at least {least} by {rule}";
            derivation.statement.values.emplace_back("least", leg.least);
            derivation.statement.values.emplace_back("rule", leg.rule);
        }
        return derivation;
    }

    [[nodiscard]] Derivation explainBend(std::size_t index, Angle turn) const
    {
        const BendTemplate& bend = trim_.bends[index];
        const bool fixed = bend.turn.terms.empty(), hasConstant = bend.turn.constant != Angle();
        Derivation derivation{
            {"bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; ",
             {{"number", static_cast<std::int64_t>(index + 1)},
              {"before", trim_.legs[index].label},
              {"after", trim_.legs[index + 1].label},
              {"fold", magnitude(turn)},
              {"included", halfTurn - magnitude(turn)},
              {"turn", turn},
              {"constant", bend.turn.constant}}},
            bend.source,
            {}};
        derivation.statement.text += fixed         ? "the trim has it so"
                                     : hasConstant ? "turn {turn} = {constant}"
                                                   : "turn {turn} = ";
        std::size_t number = 0;
        for (const auto& [coefficient, measure] : bend.turn.terms) {
            const Angle angle = site_.angles.at(measure);
            ++number;
            addTerm(derivation.statement, number, coefficient, nameOf(measure), angle,
                    number == 1 && !hasConstant);
            if (std::optional<Derivation> slope = explainSlope(measure, angle))
                derivation.because.push_back(*std::move(slope));
        }
        return derivation;
    }

    void makeBend(std::size_t index)
    {
        const BendTemplate& bend = trim_.bends[index];
        const std::string place = "bend after " + trim_.legs[index].name;
        const std::optional<Angle> turn = valueOf(bend.turn, place);
        if (!turn)
            return;
        profile_.bends.push_back({*turn, bend.insideRadius.value_or(site_.insideRadius)});
        result_.bendDerivations.push_back(explainBend(index, *turn));
        const Angle slack = Angle::degrees(1e-6); // limits are meant inclusive, angles are not exact
        if (*turn < bend.least - slack || *turn > bend.most + slack)
            block("trim.angle.range", place,
                  {"The bend after {leg} would turn {turn}; {trim} takes {least} to {most}",
                   {{"leg", trim_.legs[index].label},
                    {"turn", *turn},
                    {"trim", trim_.name},
                    {"least", bend.least},
                    {"most", bend.most}}},
                  {"Check the slopes and corners of the run, or choose another trim", {}});
        else if (magnitude(*turn) < leastTurn)
            block("trim.bend.flat", place,
                  {"The bend after {leg} would turn only {turn}: there is nothing to fold",
                   {{"leg", trim_.legs[index].label}, {"turn", *turn}}},
                  {"Check the slopes and corners of the run, or choose another trim", {}});
    }

    /// Moves the path so that its anchor point stands where the template says.
    void placeAnchor()
    {
        profile_.startX = valueOf(trim_.anchorX);
        profile_.startY = valueOf(trim_.anchorY);
        double heading = profile_.firstDirection.inRadians();
        for (std::size_t leg = 0; leg < trim_.anchorPoint; ++leg) {
            profile_.startX -= scaled(profile_.legs[leg].length, std::cos(heading));
            profile_.startY -= scaled(profile_.legs[leg].length, std::sin(heading));
            if (leg < profile_.bends.size())
                heading += profile_.bends[leg].turn.inRadians();
        }
    }

    const Template& trim_;
    const Site& site_;
    std::map<std::string, Length> measures_;
    std::map<std::string, std::string> labels_;
    std::map<std::string, Derivation> measureDerivations_;
    Profile profile_;
    Resolution result_;
};

} // namespace

Resolution resolve(const Template& trim, const Site& site)
{
    return Resolver(trim, site).resolve();
}

} // namespace lapwright::trim
