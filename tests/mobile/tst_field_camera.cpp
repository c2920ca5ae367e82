#include "mobile/hand.h"
#include "mobile/label_code.h"
#include "schedule/label_text.h"

#include <QImage>
#include <QProcess>
#include <QSignalSpy>

#include <algorithm>
#include <memory>

using namespace lapwright;
using namespace lapwright::field;

namespace {

/// The label of the second bundle's piece as it is printed.
QImage labelOfSecondPiece()
{
    const auto text = schedule::labelText({twoBundles().bundles[0].order, 1, "E2.1", "", 1});
    return codeOf(*text, 8, 400);
}

/// A camera that sees the picture of a file.
QUrl cameraBefore(const QTemporaryDir& folder, const QImage& sight)
{
    const QString path = folder.filePath(QString("camera-%1.qml").arg(sight.width()));
    QFile file(path);
    if (!sight.save(folder.filePath(QString("sight-%1.png").arg(sight.width()))) ||
        !file.open(QIODevice::WriteOnly))
        return {};
    file.write(QString(R"(
import QtQuick
import Lapwright.Field

Viewfinder {
    there: true
    seeing: running && sight.status === Image.Ready
    picture: sight
    grain: Qt.size(sight.sourceSize.width, sight.sourceSize.height)

    Image {
        id: sight

        anchors.fill: parent
        source: "sight-%1.png"
    }
}
)")
                   .arg(sight.width())
                   .toUtf8());
    return QUrl::fromLocalFile(path);
}

} // namespace

/// Guards, by taps on the real screens: photos of a run from files and from a camera, which is offered only
/// where there is one; labels read off a photo and by the camera; that a written file can go on from here.
class FieldCamera : public QObject {
    Q_OBJECT

private slots:
    void photosOfARunTravelWithTheOrder();
    void aLabelIsReadFromAPhoto();
    void theCameraTakesPhotosAndReadsLabels();
    void theTabletsOwnCameraLoads();
    void theFileGoesOn();
    void cleanup();
};

void FieldCamera::cleanup()
{
    QCOMPARE(look::MessageCount::warnings(), QStringList());
}

void FieldCamera::photosOfARunTravelWithTheOrder()
{
    Hand hand;
    QImage photo(640, 480, QImage::Format_RGB32);
    photo.fill(Qt::darkCyan);
    QVERIFY(photo.save(hand.folder.filePath("chimney.jpg")));
    photo.fill(Qt::darkYellow);
    QVERIFY(photo.save(hand.folder.filePath("gutter.jpg")));
    QVERIFY(hand.app.openSample());
    hand.window->setProperty("place", "house");
    QVERIFY(
        hand.tapAll({"E2, *", "Photos: none", "Add a photo", "chimney.jpg*", "Add a photo", "gutter.jpg*"}));
    QTRY_COMPARE(hand.app.editor()->photos(), 2);
    QVERIFY(hand.tapAll({"Photo 1", "Another in its place", "gutter.jpg*", "Remove the photo"}));
    QTRY_COMPARE(hand.app.editor()->photos(), 1);
    QVERIFY(hand.tapAll(
        {"Close the photos", "Check*", "Photos of *", "Add a photo", "chimney.jpg*", "Close the photos"}));
    QCOMPARE(hand.app.editor()->job().photos.size(), std::size_t{2});
    QVERIFY(hand.tapAll({"Order", "Send the order", "Write sample-house-r1.order.zip here"}));
    QTRY_VERIFY(hand.app.order()->isSent());

    QProcess shop;
    shop.start(LAPWRIGHT_PROGRAM,
               {"receive", "--json", hand.app.order()->writtenTo(), "--db", hand.folder.filePath("shop.db")});
    QVERIFY(shop.waitForFinished(60'000));
    const QByteArray said = shop.readAllStandardOutput() + shop.readAllStandardError();
    QVERIFY2(shop.exitCode() == 0 && said.contains("\"photos\": 2") && !said.contains("did not come"),
             said.constData());
}

void FieldCamera::aLabelIsReadFromAPhoto()
{
    Hand hand;
    const QString path = hand.folder.filePath("truck.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({twoBundles(), {}})).ok());
    QVERIFY(labelOfSecondPiece().save(hand.folder.filePath("label.png")));
    QVERIFY(hand.tapAll(
        {"Delivery", "Open a load list", "truck.json*", "Read a label from a photo", "label.png*"}));
    QTRY_VERIFY(hand.app.delivery()->hasInHand());
    QVERIFY(hand.app.delivery()->placeWords().startsWith("E2.1 "));
    QVERIFY(hand.tap("Came"));
    QCOMPARE(hand.app.delivery()->received(), 1);
}

void FieldCamera::theCameraTakesPhotosAndReadsLabels()
{
    Hand hand;
    QImage gable(640, 480, QImage::Format_RGB32);
    gable.fill(Qt::darkCyan);
    QVERIFY(hand.app.openSample());
    hand.window->setProperty("place", "house");
    QVERIFY(hand.tapAll({"E2, *", "Photos: none"}));
    QVERIFY(hand.find("Add a photo") != nullptr);
    QVERIFY2(hand.find("Take a photo") == nullptr, "no camera, no button");
    QVERIFY(hand.tap("Close the photos"));
    hand.app.setViewfinder(cameraBefore(hand.folder, gable));
    QVERIFY(
        hand.tapAll({"Photos: none", "Take a photo", "Close the camera", "Take a photo", "Take the photo"}));
    QTRY_COMPARE(hand.app.editor()->photos(), 1);
    const std::string hash = hand.app.editor()->job().photos[0].sha256;
    const QImage kept(hand.tablet.pictures().pathOf(hash));
    QCOMPARE(kept.size(), gable.size());
    QVERIFY(QColor(kept.pixel(320, 240)).blue() > 100);
    QVERIFY(hand.tapAll({"Another in its place", "Take the photo"}));
    QTRY_VERIFY(hand.find("Take the photo") == nullptr);
    QCOMPARE(hand.app.editor()->photos(), 1);

    const QString path = hand.folder.filePath("truck.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({twoBundles(), {}})).ok());
    hand.app.setViewfinder(cameraBefore(hand.folder, labelOfSecondPiece()));
    QVERIFY(hand.tapAll(
        {"Close the photos", "Delivery", "Open a load list", "truck.json*", "Scan a label with the camera"}));
    QTRY_VERIFY(hand.app.delivery()->hasInHand());
    QVERIFY(hand.app.delivery()->placeWords().startsWith("E2.1 "));
    QVERIFY(hand.tap("Came"));
    QCOMPARE(hand.app.delivery()->received(), 1);
}

/// What QtMultimedia says of a machine without sound or cameras is no fault of the screen: only QML is
/// listened to.
void FieldCamera::theTabletsOwnCameraLoads()
{
    QQmlEngine engine;
    const QStringList folders = engine.importPathList();
    if (std::none_of(folders.begin(), folders.end(),
                     [](const QString& folder) { return QFile::exists(folder + "/QtMultimedia/qmldir"); }))
        QSKIP("QtMultimedia is not installed here");
    engine.addImportPath("qrc:/qt/qml");
    const QSignalSpy warnings(&engine, &QQmlEngine::warnings);
    QQmlComponent view(&engine, QUrl("qrc:/qt/qml/Lapwright/Field/CameraView.qml"));
    const std::unique_ptr<QObject> camera(view.create());
    QVERIFY2(camera != nullptr, qPrintable(view.errorString()));
    QVERIFY(camera->property("there").isValid());
    QVERIFY2(!camera->property("seeing").toBool(), "nobody looks yet");
    QCOMPARE(warnings.count(), 0);
}

void FieldCamera::theFileGoesOn()
{
    Hand hand;
    QStringList shown;
    hand.app.setHandingOn({HandingOn::Way::ShowFolder, [&shown](const QString& path) {
                               shown << path;
                               return true;
                           }});
    QVERIFY(hand.app.openSample());
    hand.window->setProperty("place", "order");
    QVERIFY(hand.find("Show the folder") == nullptr);
    QVERIFY(hand.tapAll({"Send the order", "Write sample-house-r1.order.json here", "Show the folder"}));
    QCOMPARE(shown, QStringList{hand.app.order()->writtenTo()});
    hand.app.setHandingOn({HandingOn::Way::Share, [](const QString&) { return false; }});
    QVERIFY(hand.tap("Share the file"));
    QVERIFY(hand.app.message().contains("sample-house-r1.order.json"));
}

QTEST_MAIN(FieldCamera)
#include "tst_field_camera.moc"
