// Guards: the desktop knows an order by its name and by what is in it, and opens it with the shop's program.
#include "source_directory.h"

#include <QDir>
#include <QMimeDatabase>
#include <QSettings>
#include <QTemporaryDir>
#include <QtTest>

namespace {

const QString orderType = QStringLiteral("application/x-lapwright-order+json");

QString inApp(const QString& file)
{
    return QString::fromStdString(sourceDirectory()) + "/shop/app/" + file;
}

QString write(const QTemporaryDir& folder, const QString& name, const QByteArray& text)
{
    QFile file(folder.filePath(name));
    if (!file.open(QFile::WriteOnly) || file.write(text) != text.size())
        qFatal("cannot write %s", qPrintable(file.fileName()));
    return file.fileName();
}

} // namespace

class TestDesktop : public QObject {
    Q_OBJECT

private slots:
    void anOrderIsKnownByNameAndByWhatIsInIt()
    {
        const QTemporaryDir data, folder;
        qputenv("XDG_DATA_HOME", data.path().toUtf8());
        QVERIFY(QDir(data.path()).mkpath("mime/packages"));
        QVERIFY(
            QFile::copy(inApp("lapwright-order.xml"), data.filePath("mime/packages/lapwright-order.xml")));
        const QMimeDatabase types;
        const QByteArray order = "{\n  \"format\": \"lapwright/order\",\n  \"version\": 1\n}";
        QCOMPARE(types.mimeTypeForFile(write(folder, "larkfield.order.json", "{}")).name(), orderType);
        QCOMPARE(types.mimeTypeForFile(write(folder, "sent-by-mail", order)).name(), orderType);
        QVERIFY(types.mimeTypeForFile(write(folder, "other.txt", "words")).name() != orderType);
    }

    void theEntryOpensIt()
    {
        QSettings entry(inApp("lapwright-shop.desktop"), QSettings::IniFormat);
        entry.beginGroup("Desktop Entry");
        // The list ends in a semicolon, which this reader takes for the end of the line.
        QCOMPARE(entry.value("MimeType").toString(), orderType);
        QCOMPARE(entry.value("Exec").toString(), QString("lapwright-shop %F"));
        QVERIFY(QFile::exists(inApp(entry.value("Icon").toString() + ".svg")));
    }
};

QTEST_GUILESS_MAIN(TestDesktop)
#include "tst_desktop.moc"
