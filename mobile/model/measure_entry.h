#pragma once

#include "measure/angle.h"
#include "measure/reading.h"
#include "site/run.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace lapwright::field {

/// One measure while it is typed on the keypad or a keyboard: a length, a slope or an angle. The text is what
/// the person sees; measure/reading.h says what it means.
class MeasureEntry : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")
    Q_PROPERTY(What what READ what CONSTANT FINAL)
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ empty NOTIFY changed FINAL)
    /// The text means exactly one value.
    Q_PROPERTY(bool exact READ exact NOTIFY changed FINAL)
    /// Why it does not, in words; empty while there is nothing typed.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    /// What it means, written the usual way.
    Q_PROPERTY(QString reading READ reading NOTIFY changed FINAL)
    /// Millimetres without a unit; feet and inches otherwise.
    Q_PROPERTY(bool metric READ metric WRITE setMetric NOTIFY changed FINAL)

public:
    enum class What { Length, Slope, Angle };
    Q_ENUM(What)

    explicit MeasureEntry(What what, QObject* parent = nullptr);

    [[nodiscard]] What what() const { return what_; }
    [[nodiscard]] QString text() const { return text_; }
    void setText(const QString& text);
    [[nodiscard]] bool empty() const { return text_.trimmed().isEmpty(); }
    [[nodiscard]] bool exact() const { return length_ || slope_ || angle_; }
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString reading() const;
    [[nodiscard]] bool metric() const { return metric_; }
    void setMetric(bool metric);
    void setStyle(const Style& style);

    [[nodiscard]] std::optional<Length> length() const { return length_; }
    [[nodiscard]] std::optional<Slope> slope() const { return slope_; }
    [[nodiscard]] std::optional<Angle> angle() const { return angle_; }
    /// The length with its text as typed, a unit added in millimetres so that it stays readable alone.
    [[nodiscard]] std::optional<site::Measured> measured() const;

    /// A digit or the decimal point.
    Q_INVOKABLE void press(const QString& key);
    /// A character from a keyboard, taken as it is.
    Q_INVOKABLE void type(const QString& characters);
    /// What is typed so far is feet.
    Q_INVOKABLE void feet();
    /// What is typed so far is inches.
    Q_INVOKABLE void inches();
    /// So many sixteenths of an inch, in place of a fraction typed before.
    Q_INVOKABLE void sixteenths(int count);
    /// One sixteenth more than the fraction there is.
    Q_INVOKABLE void oneSixteenthMore();
    /// Takes back the last key: a digit, a mark, or a whole fraction.
    Q_INVOKABLE void back();
    Q_INVOKABLE void clear();

signals:
    void changed();

private:
    void read();
    /// Sixteenths in the fraction at the end of the text, and where it begins; nothing if there is none.
    struct Fraction {
        qsizetype start = 0;
        int sixteenths = 0;
    };
    [[nodiscard]] std::optional<Fraction> fraction() const;

    What what_;
    QString text_;
    bool metric_ = false;
    Style style_;
    std::optional<Length> length_;
    std::optional<Slope> slope_;
    std::optional<Angle> angle_;
    Phrase problem_;
};

/// A length typed in one go; nothing, and why, where the text does not mean exactly one.
struct MeasureRead {
    std::optional<site::Measured> measured;
    QString problem;
};
[[nodiscard]] MeasureRead readMeasured(const QString& text, const Style& style);

} // namespace lapwright::field
