// Guards: the code by which tablets know the shop stands in Settings, the same at every station, in letters
// and as a QR code that a camera reads in every theme; looking at it changes nothing, and a new key shows at
// once.
#include "documents/signature.h"
#include "paint/painter.h"
#include "shop_bench.h"
#include "storage/shop_key.h"

#include <QImage>
#include <QPainter>

#include <ZXing/ReadBarcode.h>

using namespace lapwright;
using namespace lapwright::tests;

namespace {

/// What a camera makes of the picture on that ground.
QString read(const look::Picture& picture, paint::Ground ground)
{
    QImage seen(200, 200, QImage::Format_Grayscale8);
    seen.fill(Qt::black);
    QPainter painter(&seen);
    painter.setRenderHint(QPainter::Antialiasing);
    paint::paint(painter, picture.list(), QRectF(5.0, 5.0, 187.0, 187.0), ground);
    painter.end();
    const ZXing::ImageView view(seen.constBits(), seen.width(), seen.height(), ZXing::ImageFormat::Lum,
                                static_cast<int>(seen.bytesPerLine()));
    return QString::fromStdWString(ZXing::ReadBarcode(view).text());
}

} // namespace

class TestShopCode : public QObject {
    Q_OBJECT

private slots:
    void theCodeIsTheShopsAndIsRead()
    {
        const QTemporaryDir folder;
        const auto office = open(folder, "office"), machine = open(folder, "machine");
        QVERIFY(office->code()->code().isEmpty() && office->code()->picture().empty());
        office->code()->setActive(true);
        const auto key = storage::shopPublicKey(office->database());
        QVERIFY(key.has_value());
        QCOMPARE(office->code()->code(), QString::fromStdString(documents::pairingCode(*key)));
        for (const paint::Ground ground :
             {paint::Ground::Paper, paint::Ground::Dark, paint::Ground::HighContrast})
            QCOMPARE(read(office->code()->picture(), ground), office->code()->code());

        machine->preferences()->setDuty(model::Preferences::Duty::Viewer);
        const std::int64_t before = machine->database().dataVersion();
        machine->code()->setActive(true);
        QCOMPARE(machine->code()->code(), office->code()->code());
        QCOMPARE(machine->database().dataVersion(), before);
    }

    void aNewKeyShowsAtOnce()
    {
        const QTemporaryDir folder;
        const auto office = open(folder, "office"), machine = open(folder, "machine");
        office->code()->setActive(true);
        const QString before = office->code()->code();
        machine->database().write([&] { storage::renewShopKey(machine->database()); });
        QTRY_VERIFY(office->code()->code() != before);
        QCOMPARE(read(office->code()->picture(), paint::Ground::Dark), office->code()->code());
    }
};

QTEST_MAIN(TestShopCode)
#include "tst_shop_code.moc"
