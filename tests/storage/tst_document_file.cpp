// Guards: a document is read whole or refused with its file, and written whole or not at all; nothing over
// the limit is read, and nothing is written that would not be read back; folders give their documents in a
// fixed sequence.
#include "storage/document_file.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QThread>
#include <QtTest>

#include <sys/resource.h>

#include <atomic>
#include <csignal>
#include <memory>

using namespace lapwright;
using namespace lapwright::storage;

namespace {

/// No file of this program grows beyond so many bytes, as on a disk that is nearly full.
class NoRoomBeyond {
public:
    explicit NoRoomBeyond(rlim_t bytes) : handler_(std::signal(SIGXFSZ, SIG_IGN))
    {
        (void)getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit narrow{bytes, before_.rlim_max};
        (void)setrlimit(RLIMIT_FSIZE, &narrow);
    }
    NoRoomBeyond(const NoRoomBeyond&) = delete;
    NoRoomBeyond& operator=(const NoRoomBeyond&) = delete;
    NoRoomBeyond(NoRoomBeyond&&) = delete;
    NoRoomBeyond& operator=(NoRoomBeyond&&) = delete;
    ~NoRoomBeyond()
    {
        (void)setrlimit(RLIMIT_FSIZE, &before_);
        (void)std::signal(SIGXFSZ, handler_);
    }

private:
    rlimit before_{};
    void (*handler_)(int);
};

} // namespace

class DocumentFileTest : public QObject {
    Q_OBJECT

    QTemporaryDir folder_;

    std::string path(const char* name) { return folder_.filePath(name).toStdString(); }

private slots:
    void whatIsWrittenIsRead()
    {
        const std::string text = std::string("first\0é\r\n", 10) + std::string(3'000'000, 'x');
        QVERIFY(writeDocument(path("a.json"), text).ok());
        QVERIFY(readDocument(path("a.json")).value() == text);
        QVERIFY(writeDocument(path("a.json"), "shorter").ok());
        QCOMPARE(readDocument(path("a.json")).value(), std::string("shorter"));
        QVERIFY(writeDocument(path("a.json"), "").ok());
        QCOMPARE(readDocument(path("a.json")).value(), std::string());
        QCOMPARE(QDir(folder_.path()).entryList(QDir::Files), QStringList{"a.json"});
    }
    void whatDoesNotFitIsRefusedAndTheOldOneStays()
    {
        QVERIFY(writeDocument(path("full.json"), "old").ok());
        // The small one stands in a buffer until it is put in place.
        for (const std::size_t size : {std::size_t{1'000}, std::size_t{100'000}}) {
            const NoRoomBeyond narrow(10);
            QVERIFY(!writeDocument(path("full.json"), std::string(size, 'x')).ok());
            QCOMPARE(readDocument(path("full.json")).value(), std::string("old"));
        }
        QVERIFY(QFile::remove(folder_.filePath("full.json")));
        QVERIFY(QDir(folder_.path()).entryList({"full*"}, QDir::Files).isEmpty());
    }
    void whatCannotBeReadIsNamed()
    {
        const auto missing = readDocument(path("missing.json"));
        QVERIFY(!missing.ok());
        QCOMPARE(missing.errors().front().place, path("missing.json"));
        QCOMPARE(missing.errors().front().expected, std::string("a file that can be read"));
        QCOMPARE(readDocument(folder_.path().toStdString()).errors().front().found, std::string("a folder"));
        QVERIFY(!readDocument("").ok());
    }
    void whatIsTooLargeIsNeitherReadNorWritten()
    {
        QFile large(folder_.filePath("large.json"));
        QVERIFY(large.open(QIODevice::WriteOnly) && large.resize(largestDocument + 1));
        large.close();
        QCOMPARE(readDocument(path("large.json")).errors().front().sentence(),
                 path("large.json") + ": found more than 256 MiB, expected a document of at most 256 MiB");
        QVERIFY(writeDocument(path("kept.json"), "kept").ok());
        const std::string over(static_cast<std::size_t>(largestDocument) + 1, ' ');
        const auto written = writeDocument(path("kept.json"), over);
        QVERIFY(!written.ok());
        QVERIFY(written.errors().front().expected.find("256 MiB") != std::string::npos);
        QCOMPARE(readDocument(path("kept.json")).value(), std::string("kept"));
        QVERIFY(large.remove());
    }
    void whatNeverEndsIsRefused()
    {
        const auto endless = readDocument("/dev/zero");
        QVERIFY(!endless.ok());
        QCOMPARE(endless.errors().front().found, std::string("more than 256 MiB"));
    }
    void aFileReplacedWhileItIsReadIsReadWhole()
    {
        const std::string older(3'000'000, 'o'), newer(2'000'000, 'n');
        QVERIFY(writeDocument(path("replaced.json"), older).ok());
        std::atomic<int> replaced = 0;
        const std::unique_ptr<QThread> writer(QThread::create([&] {
            for (; replaced < 30; ++replaced)
                (void)writeDocument(path("replaced.json"), replaced % 2 == 0 ? newer : older);
        }));
        writer->start();
        int read = 0;
        for (; replaced < 30 || read < 10; ++read) {
            const auto text = readDocument(path("replaced.json"));
            QVERIFY(text.ok() && (*text == older || *text == newer));
        }
        QVERIFY(writer->wait());
    }
    void aPlaceThatCannotBeWrittenIsNamed()
    {
        const auto written = writeDocument(path("nowhere/a.json"), "text");
        QVERIFY(!written.ok());
        QCOMPARE(written.errors().front().place, path("nowhere/a.json"));
        QCOMPARE(written.errors().front().expected, std::string("a place that can be written"));
        QVERIFY(!writeDocument(folder_.path().toStdString(), "text").ok());
    }
    void aFolderGivesItsDocumentsByName()
    {
        QDir(folder_.path()).mkpath("orders/inner.json");
        for (const char* name : {"orders/b.json", "orders/a.json", "orders/.hidden.json", "orders/c.txt"})
            QVERIFY(writeDocument(path(name), "{}").ok());
        QCOMPARE(documentsAt(path("orders"), {".json"}).value(),
                 (std::vector<std::string>{path("orders/a.json"), path("orders/b.json")}));
        QCOMPARE(documentsAt(path("orders/c.txt"), {".json"}).value(),
                 std::vector<std::string>{path("orders/c.txt")});
        QCOMPARE(documentsAt(path("orders"), {".json", ".txt"})->size(), std::size_t{3});
        QCOMPARE(documentsAt("-", {".json"}).value(), std::vector<std::string>{"-"});
        QCOMPARE(documentsAt(path("missing"), {".json"}).value(), std::vector<std::string>{path("missing")});
    }
};

QTEST_GUILESS_MAIN(DocumentFileTest)
#include "tst_document_file.moc"
