// Guards: every theme can be read: contrast of every pair of colours that meet on a screen, measured as
// WCAG 2.1 defines it; sizes a gloved finger hits; settings held within limits; every sign drawn, inside its
// grid.
#include "drawing/palette.h"
#include "faces.h"
#include "icon_shapes.h"
#include "paint/inks.h"
#include "theme.h"

#include <QFontMetricsF>
#include <QSignalSpy>
#include <QtTest>

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
