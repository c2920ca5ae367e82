#include "model/measure_entry.h"

#include "model/words.h"

#include <QRegularExpression>

#include <numeric>

namespace lapwright::field {

namespace {

constexpr int sixteenthsInInch = 16;

QString written(int sixteenths)
{
    const int shared = std::gcd(sixteenths, sixteenthsInInch);
    return QString("%1/%2").arg(sixteenths / shared).arg(sixteenthsInInch / shared);
}

} // namespace

MeasureEntry::MeasureEntry(What what, QObject* parent) : QObject(parent), what_(what) {}

void MeasureEntry::setText(const QString& text)
{
    if (text == text_)
        return;
    text_ = text;
    read();
}

void MeasureEntry::setMetric(bool metric)
{
    if (metric == metric_)
        return;
    metric_ = metric;
    read();
}

void MeasureEntry::setStyle(const Style& style)
{
    style_ = style;
    metric_ = style.unit == LengthUnit::Millimetres;
    read();
}

void MeasureEntry::read()
{
    length_.reset();
    slope_.reset();
    angle_.reset();
    problem_ = {};
    const std::string typed = kept(text_.trimmed());
    if (!typed.empty()) {
        if (what_ == What::Length) {
            const LengthField field{metric_ ? LengthUnit::Millimetres : LengthUnit::FeetInches, false};
            const Reading<Length> reading = readLength(typed, field);
            length_ = reading.value();
            problem_ = reading.problem();
        } else if (what_ == What::Slope) {
            const Reading<Slope> reading = readSlope(typed, {SlopeUnit::RiseInTwelve});
            slope_ = reading.value();
            problem_ = reading.problem();
        } else {
            const Reading<Angle> reading = readAngle(typed, {});
            angle_ = reading.value();
            problem_ = reading.problem();
        }
    }
    emit changed();
}

QString MeasureEntry::problem() const
{
    return said(problem_, style_);
}

QString MeasureEntry::reading() const
{
    if (length_)
        return shown(write(*length_, style_));
    if (slope_)
        return slopeWords(*slope_);
    if (angle_)
        return shown(write(*angle_));
    return {};
}

std::optional<site::Measured> MeasureEntry::measured() const
{
    if (!length_)
        return std::nullopt;
    const std::string typed = kept(text_.simplified());
    const bool readableAlone = readLength(typed, {}).value() == length_;
    return site::Measured{*length_, readableAlone ? typed : typed + (metric_ ? " mm" : "")};
}

std::optional<MeasureEntry::Fraction> MeasureEntry::fraction() const
{
    static const QRegularExpression atEnd("(\\d+)/(\\d+)\"?$");
    const QRegularExpressionMatch match = atEnd.match(text_);
    const int denominator = match.captured(2).toInt();
    if (!match.hasMatch() || denominator == 0 || sixteenthsInInch % denominator != 0)
        return std::nullopt;
    return Fraction{match.capturedStart(), match.captured(1).toInt() * (sixteenthsInInch / denominator)};
}

void MeasureEntry::press(const QString& key)
{
    // Nothing follows a fraction or an inch mark; a tap there is a slip of the glove.
    if (what_ == What::Length && (fraction() || text_.endsWith('"')))
        return;
    if (key == "." && text_.section(' ', -1).contains('.'))
        return;
    setText(text_ + key);
}

void MeasureEntry::type(const QString& characters)
{
    setText(text_ + characters);
}

void MeasureEntry::feet()
{
    if (what_ == What::Length && !text_.isEmpty() && text_.back().isDigit() && !text_.contains('\''))
        setText(text_ + "' ");
}

void MeasureEntry::inches()
{
    if (what_ == What::Length && !text_.isEmpty() && text_.back().isDigit())
        setText(text_ + "\"");
}

void MeasureEntry::sixteenths(int count)
{
    if (what_ != What::Length)
        return;
    const auto there = fraction();
    QString whole = (there ? text_.left(there->start) : text_).trimmed();
    if (whole.endsWith('"'))
        whole.chop(1);
    if (count % sixteenthsInInch != 0)
        whole += (whole.isEmpty() ? "" : " ") + written(count);
    setText(whole);
}

void MeasureEntry::oneSixteenthMore()
{
    const auto there = fraction();
    sixteenths(((there ? there->sixteenths : 0) + 1) % sixteenthsInInch);
}

void MeasureEntry::back()
{
    if (const auto there = fraction()) {
        const QString whole = text_.left(there->start).trimmed();
        setText(whole.endsWith('\'') ? whole + " " : whole);
    } else if (text_.endsWith("' ")) {
        setText(text_.chopped(2));
    } else {
        setText(text_.chopped(1));
    }
}

void MeasureEntry::clear()
{
    setText({});
}

MeasureRead readMeasured(const QString& text, const Style& style)
{
    MeasureEntry entry(MeasureEntry::What::Length);
    entry.setStyle(style);
    entry.setText(text);
    return {entry.measured(), entry.problem()};
}

} // namespace lapwright::field
