// Guards: a picture shown, zoomed and panned never leaves the view and always says where on its page a point
// is.
#include "picture_canvas.h"

#include <QSignalSpy>
#include <QtTest>

using namespace lapwright;
using look::Picture;
using look::PictureCanvas;

namespace {

Picture picture(int width, int height)
{
    drawing::DisplayList list;
    list.width = Length::millimetres(width);
    list.height = Length::millimetres(height);
    list.title = "A picture";
    return Picture(std::move(list));
}

} // namespace

class TestPictureCanvas : public QObject {
    Q_OBJECT

private slots:
    void theWholePageFits()
    {
        PictureCanvas canvas;
        canvas.setSize(QSizeF(400, 200));
        canvas.setPicture(picture(100, 100));
        QCOMPARE(canvas.toPage(QPointF(100, 0)), QPointF(0, 0));
        QCOMPARE(canvas.toPage(QPointF(300, 200)), QPointF(100, 100));
    }

    void zoomKeepsWhatIsUnderTheFinger()
    {
        PictureCanvas canvas;
        canvas.setSize(QSizeF(200, 200));
        canvas.setPicture(picture(100, 100));
        const QPointF under = canvas.toPage(QPointF(50, 150));
        canvas.zoomAt(QPointF(50, 150), 4.0);
        QCOMPARE(canvas.zoom(), 4.0);
        QCOMPARE(canvas.toPage(QPointF(50, 150)), under);
    }

    void thePageStaysInView()
    {
        PictureCanvas canvas;
        canvas.setSize(QSizeF(200, 200));
        canvas.setPicture(picture(100, 100));
        canvas.zoomAt(QPointF(100, 100), 2.0);
        canvas.pan(QPointF(1e6, -1e6));
        QCOMPARE(canvas.toPage(QPointF(0, 200)), QPointF(0, 100));
        canvas.zoomAt(QPointF(0, 0), 0.001);
        QCOMPARE(canvas.zoom(), 1.0);
        QCOMPARE(canvas.toPage(QPointF(0, 0)), QPointF(0, 0));
    }

    void aPictureOfTheSameSizeKeepsThePlace()
    {
        PictureCanvas canvas;
        canvas.setSize(QSizeF(200, 200));
        canvas.setPicture(picture(100, 100));
        canvas.zoomAt(QPointF(10, 10), 3.0);
        canvas.setPicture(picture(100, 100));
        QCOMPARE(canvas.zoom(), 3.0);
        canvas.setPicture(picture(200, 100));
        QCOMPARE(canvas.zoom(), 1.0);
    }

    void anEmptyPictureIsHarmless()
    {
        PictureCanvas canvas;
        QSignalSpy spy(&canvas, &PictureCanvas::pictureChanged);
        canvas.setPicture(Picture());
        QCOMPARE(spy.size(), 0);
        canvas.zoomAt(QPointF(1, 1), 2.0);
        canvas.pan(QPointF(5, 5));
        QVERIFY(Picture().title().isEmpty());
    }
};

QTEST_MAIN(TestPictureCanvas)
#include "tst_picture_canvas.moc"
