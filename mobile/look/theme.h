#pragma once

#include "tones.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace lapwright::look {

/// Colours, sizes and letters of every screen, by meaning. Sizes are device-independent pixels. The
/// application sets scheme, text size, handedness and touch; everything else follows.
class Theme : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

    Q_PROPERTY(Scheme scheme READ scheme WRITE setScheme NOTIFY changed FINAL)
    Q_PROPERTY(double textFactor READ textFactor WRITE setTextFactor NOTIFY changed FINAL)
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY changed FINAL)
    /// Fingers and gloves rather than a mouse: decides how tall controls are.
    Q_PROPERTY(bool touch READ touch WRITE setTouch NOTIFY changed FINAL)

    Q_PROPERTY(QColor ground READ ground NOTIFY changed FINAL)
    Q_PROPERTY(QColor panel READ panel NOTIFY changed FINAL)
    Q_PROPERTY(QColor well READ well NOTIFY changed FINAL)
    Q_PROPERTY(QColor rule READ rule NOTIFY changed FINAL)
    Q_PROPERTY(QColor edge READ edge NOTIFY changed FINAL)
    Q_PROPERTY(QColor ink READ ink NOTIFY changed FINAL)
    Q_PROPERTY(QColor inkMuted READ inkMuted NOTIFY changed FINAL)
    Q_PROPERTY(QColor action READ action NOTIFY changed FINAL)
    Q_PROPERTY(QColor actionPressed READ actionPressed NOTIFY changed FINAL)
    Q_PROPERTY(QColor onAction READ onAction NOTIFY changed FINAL)
    Q_PROPERTY(QColor quiet READ quiet NOTIFY changed FINAL)
    Q_PROPERTY(QColor quietPressed READ quietPressed NOTIFY changed FINAL)
    Q_PROPERTY(QColor selected READ selected NOTIFY changed FINAL)
    Q_PROPERTY(QColor onSelected READ onSelected NOTIFY changed FINAL)
    Q_PROPERTY(QColor accent READ accent NOTIFY changed FINAL)
    Q_PROPERTY(QColor focus READ focus NOTIFY changed FINAL)
    Q_PROPERTY(QColor rail READ rail NOTIFY changed FINAL)
    Q_PROPERTY(QColor onRail READ onRail NOTIFY changed FINAL)
    Q_PROPERTY(QColor railSelected READ railSelected NOTIFY changed FINAL)
    Q_PROPERTY(QColor onRailSelected READ onRailSelected NOTIFY changed FINAL)
    Q_PROPERTY(QColor blocks READ blocks NOTIFY changed FINAL)
    Q_PROPERTY(QColor warns READ warns NOTIFY changed FINAL)
    Q_PROPERTY(QColor informs READ informs NOTIFY changed FINAL)
    Q_PROPERTY(QColor done READ done NOTIFY changed FINAL)
    Q_PROPERTY(QColor danger READ danger NOTIFY changed FINAL)
    Q_PROPERTY(QColor onDanger READ onDanger NOTIFY changed FINAL)

    Q_PROPERTY(int tight READ tight CONSTANT FINAL)
    Q_PROPERTY(int gap READ gap CONSTANT FINAL)
    Q_PROPERTY(int space READ space CONSTANT FINAL)
    Q_PROPERTY(int wide READ wide CONSTANT FINAL)
    Q_PROPERTY(int huge READ huge CONSTANT FINAL)
    /// The smallest thing a gloved finger is asked to hit, whatever `touch` says.
    Q_PROPERTY(int touchTarget READ touchTarget CONSTANT FINAL)
    Q_PROPERTY(int keypadKey READ keypadKey CONSTANT FINAL)
    /// Height of buttons, fields and rows: touchTarget for fingers, less at a desk.
    Q_PROPERTY(int target READ target NOTIFY changed FINAL)
    Q_PROPERTY(int iconSize READ iconSize NOTIFY changed FINAL)
    /// Width of outlines: heavier in the sun and across the shop.
    Q_PROPERTY(int outline READ outline NOTIFY changed FINAL)
    /// The 45 degree cut at a corner of what can be pressed or stands out: our end cut.
    Q_PROPERTY(int notch READ notch NOTIFY changed FINAL)

    Q_PROPERTY(QString family READ family CONSTANT FINAL)
    Q_PROPERTY(int smallText READ smallText NOTIFY changed FINAL)
    Q_PROPERTY(int bodyText READ bodyText NOTIFY changed FINAL)
    Q_PROPERTY(int headingText READ headingText NOTIFY changed FINAL)
    Q_PROPERTY(int titleText READ titleText NOTIFY changed FINAL)
    Q_PROPERTY(int displayText READ displayText NOTIFY changed FINAL)
    /// A number to be read from across a machine.
    Q_PROPERTY(int figureText READ figureText NOTIFY changed FINAL)

public:
    /// look::Scheme for QML, value for value.
    enum class Scheme { Light, Dark, Sunlight, ShopFloor };
    Q_ENUM(Scheme)

    explicit Theme(QObject* parent = nullptr);

    [[nodiscard]] Scheme scheme() const { return scheme_; }
    void setScheme(Scheme scheme);
    [[nodiscard]] double textFactor() const { return textFactor_; }
    /// Held between 0.8 and 2.
    void setTextFactor(double factor);
    [[nodiscard]] bool leftHanded() const { return leftHanded_; }
    void setLeftHanded(bool leftHanded);
    [[nodiscard]] bool touch() const { return touch_; }
    void setTouch(bool touch);

    /// The parts that say something, for a screen reader.
    Q_INVOKABLE [[nodiscard]] QString spoken(const QStringList& parts, const QString& separator) const;

    [[nodiscard]] QColor ground() const { return tones_.ground; }
    [[nodiscard]] QColor panel() const { return tones_.panel; }
    [[nodiscard]] QColor well() const { return tones_.well; }
    [[nodiscard]] QColor rule() const { return tones_.rule; }
    [[nodiscard]] QColor edge() const { return tones_.edge; }
    [[nodiscard]] QColor ink() const { return tones_.ink; }
    [[nodiscard]] QColor inkMuted() const { return tones_.inkMuted; }
    [[nodiscard]] QColor action() const { return tones_.action; }
    [[nodiscard]] QColor actionPressed() const { return tones_.actionPressed; }
    [[nodiscard]] QColor onAction() const { return tones_.onAction; }
    [[nodiscard]] QColor quiet() const { return tones_.quiet; }
    [[nodiscard]] QColor quietPressed() const { return tones_.quietPressed; }
    [[nodiscard]] QColor selected() const { return tones_.selected; }
    [[nodiscard]] QColor onSelected() const { return tones_.onSelected; }
    [[nodiscard]] QColor accent() const { return tones_.accent; }
    [[nodiscard]] QColor focus() const { return tones_.focus; }
    [[nodiscard]] QColor rail() const { return tones_.rail; }
    [[nodiscard]] QColor onRail() const { return tones_.onRail; }
    [[nodiscard]] QColor railSelected() const { return tones_.railSelected; }
    [[nodiscard]] QColor onRailSelected() const { return tones_.onRailSelected; }
    [[nodiscard]] QColor blocks() const { return tones_.blocks; }
    [[nodiscard]] QColor warns() const { return tones_.warns; }
    [[nodiscard]] QColor informs() const { return tones_.informs; }
    [[nodiscard]] QColor done() const { return tones_.done; }
    [[nodiscard]] QColor danger() const { return tones_.danger; }
    [[nodiscard]] QColor onDanger() const { return tones_.onDanger; }

    [[nodiscard]] int tight() const { return 4; }
    [[nodiscard]] int gap() const { return 8; }
    [[nodiscard]] int space() const { return 16; }
    [[nodiscard]] int wide() const { return 24; }
    [[nodiscard]] int huge() const { return 40; }
    [[nodiscard]] int touchTarget() const { return 64; }
    [[nodiscard]] int keypadKey() const { return 84; }
    [[nodiscard]] int target() const;
    [[nodiscard]] int iconSize() const { return touch_ ? 28 : 20; }
    [[nodiscard]] int outline() const;
    [[nodiscard]] int notch() const { return touch_ ? 12 : 8; }

    [[nodiscard]] QString family() const { return family_; }
    [[nodiscard]] int smallText() const { return sized(touch_ ? 14 : 12); }
    [[nodiscard]] int bodyText() const { return sized(touch_ ? 17 : 14); }
    [[nodiscard]] int headingText() const { return sized(touch_ ? 21 : 17); }
    [[nodiscard]] int titleText() const { return sized(touch_ ? 28 : 22); }
    [[nodiscard]] int displayText() const { return sized(touch_ ? 44 : 34); }
    [[nodiscard]] int figureText() const { return sized(96); }

signals:
    void changed();

private:
    [[nodiscard]] int sized(int pixels) const;

    Scheme scheme_ = Scheme::Light;
    Tones tones_ = tonesOf(look::Scheme::Light);
    double textFactor_ = 1.0;
    bool leftHanded_ = false;
    bool touch_ = true;
    QString family_;
};

} // namespace lapwright::look
