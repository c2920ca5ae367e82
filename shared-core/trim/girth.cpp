#include "trim/girth.h"

#include "measure/rounding.h"
#include "trim/unfolded.h"

#include <algorithm>
#include <cmath>

namespace lapwright::trim {

namespace {

constexpr const char* allowanceSource = "Kalpakjian and Schmid, Manufacturing Engineering and Technology, "
                                        "6th edition in SI units, p. 418, eq. 16.2";
constexpr const char* dinSource = "DIN 6935:2011-10";

constexpr Angle sameFoldAngle = Angle::degrees(0.05);
constexpr Length sameRadius = Length::micrometres(5);

bool isHalfTurn(Angle foldAngle)
{
    return foldAngle > halfTurn - Angle::degrees(1e-9);
}

const metal::MeasuredDeduction* findMeasured(const metal::Metal& metal, const metal::Sheet& sheet,
                                             Angle foldAngle, Length insideRadius)
{
    for (const metal::MeasuredDeduction& measured : metal.measuredDeductions)
        if (measured.gauge == sheet.gauge && magnitude(measured.foldAngle - foldAngle) <= sameFoldAngle &&
            magnitude(measured.insideRadius - insideRadius) <= sameRadius)
            return &measured;
    return nullptr;
}

std::string lineName(const BendLine& line)
{
    switch (line.kind) {
    case BendLine::Kind::StartHem:
        return "start hem edge";
    case BendLine::Kind::EndHem:
        return "end hem edge";
    case BendLine::Kind::Bend:
        break;
    }
    return "bend " + std::to_string(line.bend + 1);
}

Derivation explainK(const metal::Metal& metal, Length insideRadius, Length thickness)
{
    const double k = neutralAxisK(metal, insideRadius, thickness);
    if (metal.neutralAxis == metal::NeutralAxisRule::Din6935)
        return {{"K {k} = half of k = 0.65 + 0.5 log10(inside radius / thickness), from 0 to 1", {{"k", k}}},
                dinSource,
                {}};
    return {{"K {k} is kept with the metal {metal}", {{"k", k}, {"metal", metal.name}}},
            metal::sourceOf(metal, "k"),
            {}};
}

Derivation explainDeduction(const BendLine& line, const metal::Metal& metal, const metal::Sheet& sheet)
{
    const Angle fold = magnitude(line.turn);
    if (findMeasured(metal, sheet, fold, line.insideRadius) != nullptr)
        return {{"{line}, {angle}: takes up {deduction}, measured in the shop for {gauge}",
                 {{"line", lineName(line)},
                  {"angle", fold},
                  {"deduction", writeFine(line.deduction)},
                  {"gauge", sheet.gauge}}},
                "the shop's own table",
                {}};
    const double k = neutralAxisK(metal, line.insideRadius, sheet.thickness);
    Derivation derivation{
        {line.insideRadius == Length()
             ? "{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}"
             : "{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − "
               "allowance {allowance}",
         {{"line", lineName(line)},
          {"angle", fold},
          {"radius", writeFine(line.insideRadius)},
          {"deduction", writeFine(line.deduction)},
          {"setback", writeFine(outsideSetback(fold, line.insideRadius, sheet.thickness))},
          {"allowance", writeFine(bendAllowance(fold, line.insideRadius, sheet.thickness, k))}}},
        "",
        {}};
    if (metal.neutralAxis == metal::NeutralAxisRule::Din6935)
        derivation.because.push_back(explainK(metal, line.insideRadius, sheet.thickness));
    return derivation;
}

/// What all bends of the girth share: the formulas, the sheet, and a constant K.
void addFormulas(const metal::Metal& metal, const metal::Sheet& sheet, std::vector<Derivation>& because)
{
    because.push_back(
        {{"setback = tan(half the fold angle) × (inside radius + thickness); of a hem's edge inside "
          "radius + thickness",
          {}},
         "",
         {}});
    because.push_back(
        {{"allowance = fold angle in radians × (inside radius + K × thickness)", {}}, allowanceSource, {}});
    because.push_back(
        {{"thickness {thickness}: {gauge} {metal}",
          {{"thickness", writeFine(sheet.thickness)}, {"gauge", sheet.gauge}, {"metal", metal.name}}},
         "",
         {}});
    if (metal.neutralAxis == metal::NeutralAxisRule::ConstantK)
        because.push_back(explainK(metal, Length(), sheet.thickness));
}

Derivation explainGirth(const Unfolded& flat, Length girth, const metal::Metal& metal,
                        const metal::Sheet& sheet)
{
    Length legs, hems, deductions;
    for (const UnfoldedPart& part : flat.parts)
        legs += part.length;
    const auto startsWith = [&](BendLine::Kind kind) {
        return std::any_of(flat.lines.begin(), flat.lines.end(),
                           [kind](const BendLine& line) { return line.kind == kind; });
    };
    if (startsWith(BendLine::Kind::StartHem))
        hems += flat.parts.front().length;
    if (startsWith(BendLine::Kind::EndHem))
        hems += flat.parts.back().length;
    legs -= hems;
    Derivation girthDerivation;
    bool byFormula = false;
    for (const BendLine& line : flat.lines) {
        deductions += line.deduction;
        byFormula = byFormula || !findMeasured(metal, sheet, magnitude(line.turn), line.insideRadius);
        girthDerivation.because.push_back(explainDeduction(line, metal, sheet));
    }
    if (byFormula)
        addFormulas(metal, sheet, girthDerivation.because);
    girthDerivation.statement = {
        "girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the "
        "bends take up {deductions}",
        {{"girth", girth},
         {"fine", writeFine(girth)},
         {"legs", legs},
         {"hems", hems},
         {"deductions", writeFine(deductions)}}};
    return girthDerivation;
}

} // namespace

Length ownInsideRadius(const metal::Metal& metal, const metal::Sheet& sheet)
{
    return scaled(sheet.thickness, metal.insideRadiusPerThickness);
}

Length bendAllowance(Angle foldAngle, Length insideRadius, Length thickness, double k)
{
    return nearestFromMillimetres(foldAngle.inRadians() *
                                  (inMillimetres(insideRadius) + k * inMillimetres(thickness)));
}

Length outsideSetback(Angle foldAngle, Length insideRadius, Length thickness)
{
    if (isHalfTurn(foldAngle))
        return insideRadius + thickness;
    return nearestFromMillimetres(std::min(
        std::tan(foldAngle.inRadians() / 2.0) * inMillimetres(insideRadius + thickness), largestMillimetres));
}

double neutralAxisK(const metal::Metal& metal, Length insideRadius, Length thickness)
{
    if (metal.neutralAxis == metal::NeutralAxisRule::ConstantK)
        return metal.k;
    if (insideRadius <= Length())
        return 0.0;
    const double k = 0.65 + 0.5 * std::log10(inMillimetres(insideRadius) / inMillimetres(thickness));
    return std::clamp(k, 0.0, 1.0) / 2.0;
}

Length bendDeduction(const metal::Metal& metal, const metal::Sheet& sheet, Angle foldAngle,
                     Length insideRadius)
{
    if (const metal::MeasuredDeduction* measured = findMeasured(metal, sheet, foldAngle, insideRadius))
        return measured->deduction;
    const double k = neutralAxisK(metal, insideRadius, sheet.thickness);
    return 2 * outsideSetback(foldAngle, insideRadius, sheet.thickness) -
           bendAllowance(foldAngle, insideRadius, sheet.thickness, k);
}

Result<FlatPattern> flatPattern(const Profile& profile, const metal::Metal& metal, const metal::Sheet& sheet)
{
    Result<Unfolded> unfolded = unfold(profile, sheet.thickness);
    if (!unfolded)
        return unfolded.errors();
    Unfolded flat = std::move(unfolded).value();
    // Half of a bend's deduction is taken from each of its two parts, so its middle stands at the outside
    // lengths so far less all deductions so far and half its own.
    Length reached;
    for (std::size_t index = 0; index < flat.lines.size(); ++index) {
        BendLine& line = flat.lines[index];
        line.deduction = bendDeduction(metal, sheet, magnitude(line.turn), line.insideRadius);
        reached += flat.parts[index].length;
        line.position = reached - line.deduction / 2;
        reached -= line.deduction;
    }
    const Length girth = reached + flat.parts.back().length;
    Derivation derivation = explainGirth(flat, girth, metal, sheet);
    return FlatPattern{girth, std::move(flat.lines), std::move(derivation)};
}

} // namespace lapwright::trim
