// Guards: every control loads in every theme without one warning and paints something. LAPWRIGHT_PICTURES=DIR
// keeps the pictures, to be looked at.
#include "drawing/profile_picture.h"
#include "faces.h"
#include "icon.h"
#include "icon_shapes.h"
#include "picture.h"
#include "source_directory.h"
#include "theme.h"

#include <QDir>
#include <QImage>
#include <QPainter>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickView>
#include <QtTest>

#include <set>

using namespace lapwright;
using look::Theme;

namespace {

look::Picture dripEdge()
{
    trim::Profile profile;
    profile.legs = {{"deck", Length::millimetres(60)},
                    {"face", Length::millimetres(45)},
                    {"kick", Length::millimetres(12)}};
    profile.bends = {{Angle::degrees(-90), Length::millimetres(1)},
                     {Angle::degrees(45), Length::millimetres(1)}};
    drawing::ProfilePicture wanted;
    wanted.thickness = Length::nanometres(550'000);
    wanted.colour = {74, 106, 128};
    wanted.colourName = "slate blue";
    return look::Picture(drawing::profilePicture(profile, wanted));
}

void keep(const QImage& image, const QString& name)
{
    const QString folder = qEnvironmentVariable("LAPWRIGHT_PICTURES");
    if (!folder.isEmpty())
        QVERIFY(image.save(QDir(folder).filePath(name + ".png")));
}

} // namespace

class Gallery : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { look::prepareFaces(); }

    void everyThemePaintsEveryControl_data()
    {
        QTest::addColumn<Theme::Scheme>("scheme");
        QTest::addColumn<bool>("touch");
        QTest::newRow("light") << Theme::Scheme::Light << true;
        QTest::newRow("dark") << Theme::Scheme::Dark << true;
        QTest::newRow("sunlight") << Theme::Scheme::Sunlight << true;
        QTest::newRow("shop-floor") << Theme::Scheme::ShopFloor << true;
        QTest::newRow("light-desk") << Theme::Scheme::Light << false;
    }

    void everyThemePaintsEveryControl()
    {
        QFETCH(Theme::Scheme, scheme);
        QFETCH(bool, touch);
        QTest::failOnWarning(QRegularExpression(QStringLiteral(".")));
        QQuickView view;
        view.engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
        view.setInitialProperties({{"shown", QVariant::fromValue(dripEdge())}});
        view.setSource(
            QUrl::fromLocalFile(QString::fromStdString(sourceDirectory() + "/tests/look/Gallery.qml")));
        QVERIFY(view.rootObject() != nullptr);
        auto* theme = view.engine()->singletonInstance<Theme*>(qmlTypeId("Lapwright.Look", 1, 0, "Theme"));
        QVERIFY(theme != nullptr);
        theme->setScheme(scheme);
        theme->setTouch(touch);
        view.show();
        QVERIFY(QTest::qWaitForWindowExposed(&view));
        const QImage image = view.grabWindow();
        std::set<QRgb> colours;
        for (int y = 0; y < image.height(); y += 3)
            for (int x = 0; x < image.width(); x += 3)
                colours.insert(image.pixel(x, y));
        for (const QColor& tone :
             {theme->ground(), theme->panel(), theme->action(), theme->accent(), theme->rail()})
            QVERIFY2(colours.count(tone.rgb()) == 1, qPrintable(tone.name()));
        keep(image, QStringLiteral("look-") + QTest::currentDataTag());
    }

    void everySign()
    {
        const QStringList names = look::iconNames();
        constexpr int columns = 10, cell = 96;
        QImage sheet(columns * cell, static_cast<int>((names.size() / columns + 1) * cell),
                     QImage::Format_RGB32);
        sheet.fill(Qt::white);
        QPainter painter(&sheet);
        for (int at = 0; at < names.size(); ++at) {
            look::Icon icon;
            icon.setSize(QSizeF(48, 48));
            icon.setName(names[at]);
            painter.save();
            painter.translate((at % columns) * cell + 24, (at / columns) * cell + 12);
            painter.drawText(QPointF(-12, 72), names[at]);
            icon.paint(&painter);
            painter.restore();
        }
        painter.end();
        keep(sheet, QStringLiteral("look-signs"));
    }
};

QTEST_MAIN(Gallery)
#include "gallery.moc"
