// Guards: every theme can be read: contrast of every pair of colours that meet on a screen, measured as
// WCAG 2.1 defines it; what findings and states are told by differs for those who do not see red or green;
// sizes a gloved finger hits; settings held within limits; every sign drawn, inside its grid.
#include "drawing/palette.h"
#include "faces.h"
#include "icon_shapes.h"
#include "paint/inks.h"
#include "theme.h"

#include <QFontMetricsF>
#include <QSignalSpy>
#include <QtTest>

#include <algorithm>
#include <array>
#include <cmath>

using namespace lapwright;
using look::Theme;
using look::Tones;

namespace {

drawing::Colour plain(const QColor& colour)
{
    return {static_cast<std::uint8_t>(colour.red()), static_cast<std::uint8_t>(colour.green()),
            static_cast<std::uint8_t>(colour.blue())};
}

double contrast(const QColor& one, const QColor& other)
{
    return drawing::contrastOf(plain(one), plain(other));
}

struct Pair {
    const char* what;
    QColor front;
    QColor behind;
};

std::vector<Pair> textPairs(const Tones& tones)
{
    return {{"ink on ground", tones.ink, tones.ground},
            {"ink on panel", tones.ink, tones.panel},
            {"ink on well", tones.ink, tones.well},
            {"ink on quiet", tones.ink, tones.quiet},
            {"ink on quietPressed", tones.ink, tones.quietPressed},
            {"inkMuted on ground", tones.inkMuted, tones.ground},
            {"inkMuted on panel", tones.inkMuted, tones.panel},
            {"inkMuted on well", tones.inkMuted, tones.well},
            {"action on panel", tones.action, tones.panel},
            {"onAction on action", tones.onAction, tones.action},
            {"onAction on actionPressed", tones.onAction, tones.actionPressed},
            {"onSelected on selected", tones.onSelected, tones.selected},
            {"onRail on rail", tones.onRail, tones.rail},
            {"onRailSelected on railSelected", tones.onRailSelected, tones.railSelected},
            {"panel on accent", tones.panel, tones.accent},
            {"blocks on panel", tones.blocks, tones.panel},
            {"blocks on ground", tones.blocks, tones.ground},
            {"warns on panel", tones.warns, tones.panel},
            {"informs on panel", tones.informs, tones.panel},
            {"done on panel", tones.done, tones.panel},
            {"onDanger on danger", tones.onDanger, tones.danger}};
}

std::vector<Pair> edgePairs(const Tones& tones)
{
    return {{"edge on ground", tones.edge, tones.ground},  {"edge on panel", tones.edge, tones.panel},
            {"edge on well", tones.edge, tones.well},      {"focus on ground", tones.focus, tones.ground},
            {"focus on panel", tones.focus, tones.panel},  {"accent on panel", tones.accent, tones.panel},
            {"action on panel", tones.action, tones.panel}};
}

using Matrix = std::array<std::array<double, 3>, 3>;

/// What reaches somebody without one kind of cones, on linear sRGB: G. M. Machado, M. M. Oliveira, L. A. F.
/// Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Transactions on
/// Visualization and Computer Graphics 15 (2009), severity 1.0; the numbers from memory.
constexpr Matrix everyCone = {{{1.0, 0.0, 0.0}, {0.0, 1.0, 0.0}, {0.0, 0.0, 1.0}}};
constexpr Matrix protanopia = {
    {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix deuteranopia = {
    {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};

using Triple = std::array<double, 3>;

Triple times(const Matrix& matrix, const Triple& vector)
{
    Triple result{};
    for (std::size_t row = 0; row < 3; ++row)
        for (std::size_t column = 0; column < 3; ++column)
            result[row] += matrix[row][column] * vector[column];
    return result;
}

/// IEC 61966-2-1.
double linear(double component)
{
    return component <= 0.04045 ? component / 12.92 : std::pow((component + 0.055) / 1.055, 2.4);
}

/// CIE 1976 L*a*b* of a colour as such eyes have it; white point D65 (ISO/CIE 11664-4).
Triple seenBy(const Matrix& eyes, const QColor& colour)
{
    Triple seen = times(eyes, {linear(colour.redF()), linear(colour.greenF()), linear(colour.blueF())});
    for (double& component : seen)
        component = std::clamp(component, 0.0, 1.0);
    constexpr Matrix toXyz = {{{0.4124564, 0.3575761, 0.1804375},
                               {0.2126729, 0.7151522, 0.0721750},
                               {0.0193339, 0.1191920, 0.9503041}}};
    Triple xyz = times(toXyz, seen);
    constexpr Triple white = {0.95047, 1.0, 1.08883};
    for (std::size_t i = 0; i < 3; ++i) {
        const double share = xyz[i] / white[i];
        xyz[i] = share > 0.008856 ? std::cbrt(share) : 7.787 * share + 16.0 / 116.0;
    }
    return {116.0 * xyz[1] - 16.0, 500.0 * (xyz[0] - xyz[1]), 200.0 * (xyz[1] - xyz[2])};
}

/// CIE 1976 colour difference; about 2.3 is just seen (M. Mahy, L. Van Eycken, A. Oosterlinck, 1994).
double difference(const Triple& one, const Triple& other)
{
    return std::hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}

} // namespace

class TestTheme : public QObject {
    Q_OBJECT

private slots:
    void everyPairCanBeRead_data()
    {
        QTest::addColumn<int>("scheme");
        QTest::addColumn<double>("least");
        // WCAG 2.1: 1.4.3 asks 4.5:1 of text, 1.4.6 asks 7:1.
        QTest::newRow("light") << static_cast<int>(look::Scheme::Light) << 4.5;
        QTest::newRow("dark") << static_cast<int>(look::Scheme::Dark) << 4.5;
        QTest::newRow("sunlight") << static_cast<int>(look::Scheme::Sunlight) << 7.0;
        QTest::newRow("shop floor") << static_cast<int>(look::Scheme::ShopFloor) << 7.0;
    }

    void everyPairCanBeRead()
    {
        QFETCH(int, scheme);
        QFETCH(double, least);
        const Tones tones = look::tonesOf(static_cast<look::Scheme>(scheme));
        for (const Pair& pair : textPairs(tones)) {
            const double found = contrast(pair.front, pair.behind);
            QVERIFY2(found >= least, qPrintable(QStringLiteral("%1: %2").arg(pair.what).arg(found)));
        }
        // 1.4.11 asks 3:1 of what shows a control and its state.
        for (const Pair& pair : edgePairs(tones)) {
            const double found = contrast(pair.front, pair.behind);
            QVERIFY2(found >= 3.0, qPrintable(QStringLiteral("%1: %2").arg(pair.what).arg(found)));
        }
    }

    void statesAreToldApartByWhoDoesNotSeeRedOrGreen_data() { everyPairCanBeRead_data(); }

    void statesAreToldApartByWhoDoesNotSeeRedOrGreen()
    {
        QFETCH(int, scheme);
        const Tones tones = look::tonesOf(static_cast<look::Scheme>(scheme));
        const std::array states = {tones.blocks, tones.warns, tones.informs, tones.done};
        // Six times what is just seen: at a glance, on a small sign. Common practice, no source.
        constexpr double least = 14.0;
        for (const Matrix& eyes : {everyCone, protanopia, deuteranopia})
            for (std::size_t one = 0; one < states.size(); ++one)
                for (std::size_t other = one + 1; other < states.size(); ++other) {
                    const double found = difference(seenBy(eyes, states[one]), seenBy(eyes, states[other]));
                    QVERIFY2(found >= least,
                             qPrintable(QStringLiteral("%1, %2: %3").arg(one).arg(other).arg(found)));
                }
    }

    void settingsAreHeldAndAnnounced()
    {
        Theme theme;
        QSignalSpy spy(&theme, &Theme::changed);
        theme.setTextFactor(9.0);
        QCOMPARE(theme.textFactor(), 2.0);
        theme.setTextFactor(0.1);
        QCOMPARE(theme.textFactor(), 0.8);
        theme.setScheme(Theme::Scheme::Sunlight);
        theme.setScheme(Theme::Scheme::Sunlight);
        QCOMPARE(spy.size(), 3);
        QCOMPARE(theme.ink(), look::tonesOf(look::Scheme::Sunlight).ink);
    }

    void theFaceIsProportional()
    {
        look::prepareFaces();
        const QFontMetricsF metrics(QGuiApplication::font());
        QVERIFY(metrics.horizontalAdvance("iiii") < 0.7 * metrics.horizontalAdvance("MMMM"));
    }

    void fingersGetRoom()
    {
        Theme theme;
        QVERIFY(theme.touch());
        QCOMPARE(theme.target(), 64);
        QVERIFY(theme.keypadKey() >= 80);
        theme.setTextFactor(2.0);
        QVERIFY(theme.target() >= 64);
        theme.setTouch(false);
        QVERIFY(theme.target() > theme.bodyText() * 3 / 2);
    }

    void everySignIsDrawnInsideItsGrid()
    {
        QVERIFY(look::iconNames().size() > 40);
        for (const QString& name : look::iconNames()) {
            const QRectF bounds = look::iconPath(name).boundingRect();
            QVERIFY2(bounds.width() > 1.0 && bounds.height() + bounds.width() > 10.0, qPrintable(name));
            QVERIFY2(bounds.left() > 0.5 && bounds.top() > 0.5 && bounds.right() < 23.5 &&
                         bounds.bottom() < 23.5,
                     qPrintable(name));
        }
        QVERIFY(look::iconPath("no such sign").isEmpty());
    }
};

QTEST_MAIN(TestTheme)
#include "tst_theme.moc"
