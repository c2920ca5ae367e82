#include "documents/shop.h"
#include "mobile/field_bench.h"
#include "mobile/label_code.h"
#include "model/photo_file.h"
#include "parcel/parcel.h"
#include "schedule/label_text.h"
#include "storage/document_file.h"

#include <QImage>
#include <QPainter>
#include <QtTest>

using namespace lapwright;
using namespace lapwright::field;

namespace {

/// A picture that no other number gives.
QString pictureOf(const FieldBench& bench, int number, const QSize& size = {400, 300})
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(QColor::fromHsv(number * 37 % 360, 200, 200));
    const QString path = bench.folder.filePath(QString("photo-%1.png").arg(number));
    image.save(path);
    return path;
}

parcel::Parcel parcelAt(const QString& path)
{
    const auto bytes = storage::readDocument(path.toStdString());
    const auto read = bytes.ok() ? parcel::unpack(*bytes) : Result<parcel::Parcel>(bytes.errors());
    return read.ok() ? *read : parcel::Parcel();
}

/// A label's code as a printer makes it, on a photo that was held askew.
QImage labelPhoto(const std::string& text)
{
    const QImage code = codeOf(text, 4, 300, 0xff202020u, 0xffe8e4d8u);
    QImage photo(900, 700, QImage::Format_RGB32);
    photo.fill(QColor("#8a7f70"));
    QPainter painter(&photo);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.translate(450, 350);
    painter.rotate(24);
    painter.drawImage(QRectF(-220, -220, 440, 440), code);
    return photo;
}

} // namespace

/// Guards: photos are kept small and whole, undone like every other act, counted in the order and carried to
/// the shop and to other tablets in one ZIP; a label's code is read off a photo.
class FieldPhotos : public QObject {
    Q_OBJECT

private slots:
    void areMadeSmallerAndUpright();
    void whatIsNoPictureIsRefused();
    void addRetakeRemoveAndUndo();
    void outliveARestart();
    void travelWithTheOrder();
    void aLostPhotoIsSaid();
    void comeToAnotherTablet();
    void areBackedUpAndRestored();
    void aRunTakesItsPhotosAlong();
    void aRenamedChainTakesItsPhotosAlong();
    void namesWithWhatShowsNothingKeepThem();
    void aFolderThatCannotBeWrittenIsSaid();
    void aLabelIsReadFromAPhoto();
};

void FieldPhotos::areMadeSmallerAndUpright()
{
    const FieldBench bench;
    const auto bytes = photoFrom(pictureOf(bench, 1, {4000, 1000}));
    QVERIFY(bytes.ok());
    QCOMPARE(*photoFrom(pictureOf(bench, 1, {4000, 1000})), *bytes);
    const QImage made = QImage::fromData(*bytes, "JPEG");
    QCOMPARE(made.size(), QSize(1600, 400));
    const auto thin = photoFrom(pictureOf(bench, 2, {4000, 1}));
    QCOMPARE(QImage::fromData(*thin, "JPEG").size(), QSize(1600, 1));
    const auto small = photoFrom(pictureOf(bench, 3, {40, 30}));
    QCOMPARE(QImage::fromData(*small, "JPEG").size(), QSize(40, 30));
}

void FieldPhotos::whatIsNoPictureIsRefused()
{
    FieldBench bench;
    bench.house();
    PhotoList& photos = *bench.app->photos();
    photos.showRun("E1");
    const QString path = bench.folder.filePath("no-picture.jpg");
    for (const char* content : {"", "{}", "\xff\xd8\xff\xe0 broken"}) {
        QVERIFY(storage::writeDocument(path.toStdString(), content).ok());
        bench.app->seen();
        QVERIFY(!photos.add(path));
        QVERIFY(!bench.app->message().isEmpty());
    }
    QVERIFY(!photos.add(bench.folder.filePath("missing.jpg")));
    QCOMPARE(photos.count(), 0);
}

void FieldPhotos::addRetakeRemoveAndUndo()
{
    FieldBench bench;
    bench.house();
    PhotoList& photos = *bench.app->photos();
    const QAbstractItemModelTester tester(&photos, QAbstractItemModelTester::FailureReportingMode::QtTest);
    bench.editor().setRun(1);
    photos.showRun(bench.editor().runId());
    QVERIFY(photos.add(pictureOf(bench, 1)));
    QVERIFY(photos.add(pictureOf(bench, 2)));
    QCOMPARE(photos.count(), 2);
    QCOMPARE(bench.editor().photos(), 2);
    const std::string second = bench.editor().job().photos[1].sha256;
    QVERIFY(photos.retake(1, pictureOf(bench, 3)));
    QVERIFY(bench.editor().job().photos[1].sha256 != second);
    QVERIFY(photos.remove(0));
    QCOMPARE(photos.count(), 1);
    photos.showRun("E1");
    QCOMPARE(photos.count(), 0);
    photos.showRun("E2");
    QVERIFY(bench.editor().undo());
    QVERIFY(bench.editor().undo());
    QCOMPARE(bench.editor().job().photos[1].sha256, second);
    QCOMPARE(photos.count(), 2);
    for (int row = 0; row < photos.count(); ++row)
        QVERIFY(!photos.index(row).data(PhotoList::MissingRole).toBool());
}

void FieldPhotos::outliveARestart()
{
    FieldBench bench;
    bench.house();
    bench.app->photos()->showRun("E3");
    QVERIFY(bench.app->photos()->add(pictureOf(bench, 4)));
    const QString id = bench.editor().jobId();
    bench.restart();
    QVERIFY(bench.editor().openJob(id));
    bench.app->photos()->showRun("E3");
    QCOMPARE(bench.app->photos()->count(), 1);
    const QUrl url = bench.app->photos()->index(0).data(PhotoList::UrlRole).toUrl();
    QCOMPARE(QImage(url.toLocalFile()).size(), QSize(400, 300));
}

void FieldPhotos::travelWithTheOrder()
{
    FieldBench bench;
    bench.house();
    OrderModel& order = *bench.app->order();
    QVERIFY(order.send(bench.folder.path()));
    QVERIFY(order.writtenTo().endsWith("alder-r1.order.json"));
    bench.app->photos()->showRun("E1");
    QVERIFY(bench.app->photos()->add(pictureOf(bench, 1)));
    bench.app->photos()->showFinding("site.run.repeats", "chain Eave line, run E2");
    QVERIFY(bench.app->photos()->add(pictureOf(bench, 2)));
    QVERIFY(bench.app->photos()->add(pictureOf(bench, 2)));
    order.refresh();
    QCOMPARE(order.photos(), 3);
    QCOMPARE(order.changes()->count(), 1);
    QVERIFY(order.send(bench.folder.path()));
    QVERIFY(order.writtenTo().endsWith("alder-r2.order.zip"));
    const parcel::Parcel sent = parcelAt(order.writtenTo());
    const auto read = documents::readOrder(sent.order);
    QVERIFY(read.ok());
    QCOMPARE(read->value.job.photos.size(), std::size_t{3});
    QCOMPARE(read->value.job.photos[1].code, std::string("site.run.repeats"));
    QCOMPARE(sent.pictures.size(), std::size_t{2});
    for (const site::Photo& photo : read->value.job.photos)
        QVERIFY(sent.pictures.count(photo.sha256) == 1);
}

void FieldPhotos::aLostPhotoIsSaid()
{
    FieldBench bench;
    bench.house();
    bench.app->photos()->showRun("E1");
    QVERIFY(bench.app->photos()->add(pictureOf(bench, 1)));
    QVERIFY(QFile::remove(bench.tablet->pictures().pathOf(bench.editor().job().photos[0].sha256)));
    QCOMPARE(bench.app->order()->photosMissing(), 1);
    QVERIFY2(bench.app->order()->send(bench.folder.path()), "an order is not kept back for it");
    QVERIFY(parcelAt(bench.app->order()->writtenTo()).pictures.empty());
    FieldBench other;
    QVERIFY(other.app->openFile(bench.app->order()->writtenTo()));
    QVERIFY(!other.app->message().isEmpty());
}

void FieldPhotos::comeToAnotherTablet()
{
    FieldBench bench;
    bench.house();
    bench.app->photos()->showRun("E1");
    QVERIFY(bench.app->photos()->add(pictureOf(bench, 5)));
    QVERIFY(bench.app->order()->send(bench.folder.path()));
    FieldBench other;
    QVERIFY(other.app->openFile(bench.app->order()->writtenTo()));
    QVERIFY(other.app->message().isEmpty());
    other.app->photos()->showRun("E1");
    QCOMPARE(other.app->photos()->count(), 1);
    QVERIFY(!other.app->photos()->index(0).data(PhotoList::MissingRole).toBool());
}

void FieldPhotos::areBackedUpAndRestored()
{
    FieldBench bench;
    bench.house();
    bench.app->photos()->showRun("E1");
    QVERIFY(bench.app->photos()->add(pictureOf(bench, 6)));
    const std::string hash = bench.editor().job().photos[0].sha256;
    const QString backup = bench.app->backUp(bench.folder.path());
    FieldBench other;
    QVERIFY(!other.app->restore(backup).isEmpty());
    QVERIFY(other.tablet->pictures().read(hash).ok());
}

/// Seen in the design of it: the next run of that number would have had the photos of the one removed.
void FieldPhotos::aRunTakesItsPhotosAlong()
{
    FieldBench bench;
    bench.house();
    bench.app->photos()->showRun("E4");
    QVERIFY(bench.app->photos()->add(pictureOf(bench, 7)));
    bench.editor().setRun(3);
    QVERIFY(bench.editor().removeRun());
    QVERIFY(bench.editor().job().photos.empty());
    QVERIFY(bench.editor().undo());
    QCOMPARE(bench.editor().job().photos.size(), std::size_t{1});
}

/// Seen: they stayed with the old name, and a chain that was given it had them.
void FieldPhotos::aRenamedChainTakesItsPhotosAlong()
{
    FieldBench bench;
    bench.house();
    const QString old = bench.editor().chainName();
    bench.app->photos()->showFinding("site.run.repeats", "chain " + old + ", run E2");
    QVERIFY(bench.app->photos()->add(pictureOf(bench, 7)));
    QVERIFY(bench.editor().renameChain("Street side"));
    QCOMPARE(bench.editor().job().photos[0].place, std::string("chain Street side, run E2"));
    QVERIFY(bench.editor().startChain("ridge"));
    QVERIFY(bench.editor().renameChain("Street side"));
    QCOMPARE(bench.editor().chainName(), "Street side 2");
    QCOMPARE(bench.editor().job().photos[0].place, std::string("chain Street side, run E2"));
}

/// Seen: the photo was kept under the name as the screen shows it, which no run and no chain has.
void FieldPhotos::namesWithWhatShowsNothingKeepThem()
{
    FieldBench bench;
    bench.house();
    QVERIFY(bench.editor().act("run.change", "named elsewhere", [](site::Job& job) {
        job.chains[0].name = "Eave\u202E line";
        job.chains[0].runs[1].id = "E\u200B2";
        job.chains[0].runs[1].lengths.clear();
    }));
    bench.editor().setRun(1);
    QCOMPARE(bench.editor().runId(), "E 2");
    PhotoList& photos = *bench.app->photos();
    photos.showRun(bench.editor().runKey());
    QVERIFY(photos.add(pictureOf(bench, 7)));
    QCOMPARE(bench.editor().photos(), 1);

    CheckList& check = *bench.app->check();
    check.refresh();
    int row = 0;
    while (row < check.rowCount() && !check.index(row).data(CheckList::PlaceRole).toString().contains("E 2"))
        ++row;
    QVERIFY(row < check.rowCount());
    check.showPhotos(row, &photos);
    QVERIFY(photos.add(pictureOf(bench, 8)));
    check.refresh();
    QCOMPARE(check.index(row).data(CheckList::PhotosRole).toInt(), 1);

    QVERIFY(bench.editor().renameChain("Street side"));
    check.refresh();
    QCOMPARE(check.index(row).data(CheckList::PhotosRole).toInt(), 1);
    QVERIFY(bench.editor().removeRun());
    QVERIFY(bench.editor().job().photos.empty());
}

void FieldPhotos::aFolderThatCannotBeWrittenIsSaid()
{
    FieldBench bench;
    bench.house();
    // A file where the folder would be: also for root, whom no permission stops.
    QVERIFY(storage::writeDocument(bench.tablet->pictures().folder().toStdString(), "in the way").ok());
    bench.app->photos()->showRun("E1");
    QVERIFY(!bench.app->photos()->add(pictureOf(bench, 8)));
    QVERIFY(!bench.app->message().isEmpty());
    QVERIFY(bench.editor().job().photos.empty());
}

void FieldPhotos::aLabelIsReadFromAPhoto()
{
    FieldBench bench;
    const QString path = bench.folder.filePath("load.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({inventedLoad(), {}})).ok());
    DeliveryCheck& delivery = *bench.app->delivery();
    QVERIFY(delivery.openFile(path));
    const QString photo = bench.folder.filePath("label.jpg");
    const auto text = schedule::labelText({inventedLoad().bundles[0].order, 1, "E1.2", "", 1});
    QVERIFY(labelPhoto(*text).save(photo));
    QCOMPARE(delivery.rowOnPicture(photo), 1);
    QVERIFY(bench.app->message().isEmpty());
    const auto stranger = schedule::labelText({"00000000-0000-4000-8000-00000000eeee", 1, "E1.2", "", 1});
    QVERIFY(labelPhoto(*stranger).save(photo));
    QCOMPARE(delivery.rowOnPicture(photo), -1);
    QVERIFY(!bench.app->message().isEmpty());
    bench.app->seen();
    QCOMPARE(delivery.rowOnPicture(pictureOf(bench, 9)), -1);
    QVERIFY(!bench.app->message().isEmpty());
}

QTEST_MAIN(FieldPhotos)
#include "tst_field_photos.moc"
