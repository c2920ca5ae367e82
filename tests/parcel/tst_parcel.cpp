/// Guards: an order with its photos comes out of its ZIP as it went in; whatever else stands in a ZIP,
/// however large it claims or turns out to be, costs an error and nothing more; a photo altered on the way is
/// missing, not shown.
#include "documents/identity.h"
#include "parcel/parcel.h"
#include "parcel/photos.h"
#include "parcel/zip.h"

#include <QtTest>

#include <cstdint>
#include <string>

using namespace lapwright;
using namespace lapwright::parcel;

namespace {

Parcel withPhotos()
{
    Parcel parcel{"{\"format\": \"lapwright/order\"}", {}};
    for (const char* bytes : {"first photo", "second photo", ""})
        parcel.pictures.emplace(documents::sha256(bytes), bytes);
    return parcel;
}

std::string photoName(const std::string& bytes)
{
    return "photos/" + documents::sha256(bytes) + ".jpg";
}

/// CRC-32 as ISO 3309 has it, bit by bit.
std::uint32_t crc32(const std::string& bytes)
{
    std::uint32_t crc = 0xffffffffu;
    for (const char byte : bytes) {
        crc ^= static_cast<unsigned char>(byte);
        for (int bit = 0; bit < 8; ++bit)
            crc = (crc >> 1) ^ ((crc & 1u) != 0 ? 0xedb88320u : 0u);
    }
    return ~crc;
}

std::string little(std::uint32_t value, int bytes)
{
    std::string text;
    for (int byte = 0; byte < bytes; ++byte)
        text += static_cast<char>(value >> (8 * byte) & 0xff);
    return text;
}

/// A ZIP of stored files written by hand (APPNOTE 4.3.7, 4.3.12, 4.3.16), under any names.
std::string zipOf(const std::vector<ZippedFile>& files)
{
    std::string zip, directory;
    for (const ZippedFile& file : files) {
        const std::string common = little(0, 2) + little(0, 2) + little(0, 2) + little(33, 2) +
                                   little(crc32(file.bytes), 4) +
                                   little(static_cast<std::uint32_t>(file.bytes.size()), 4) +
                                   little(static_cast<std::uint32_t>(file.bytes.size()), 4) +
                                   little(static_cast<std::uint32_t>(file.name.size()), 2) + little(0, 2);
        directory += "PK\x01\x02" + little(20, 2) + little(20, 2) + common + little(0, 2) + little(0, 2) +
                     little(0, 2) + little(0, 4) + little(static_cast<std::uint32_t>(zip.size()), 4) +
                     file.name;
        zip += "PK\x03\x04" + little(20, 2) + common + file.name + file.bytes;
    }
    const auto count = static_cast<std::uint32_t>(files.size());
    return zip + directory + "PK\x05\x06" + little(0, 4) + little(count, 2) + little(count, 2) +
           little(static_cast<std::uint32_t>(directory.size()), 4) +
           little(static_cast<std::uint32_t>(zip.size()), 4) + little(0, 2);
}

bool deflateAll(std::string_view /*name*/)
{
    return true;
}

} // namespace

class ParcelTest : public QObject {
    Q_OBJECT

private slots:
    void comesOutAsItWentIn();
    void aPlainDocumentIsAParcelWithoutPhotos();
    void aZipMadeElsewhereIsRead();
    void otherNamesAreRefused_data();
    void otherNamesAreRefused();
    void aNameTwiceIsRefused();
    void aBombCostsAnError();
    void tooManyFilesAreRefused();
    void anAlteredPhotoIsMissing();
    void noByteChangedDoesHarm();
    void whatCannotBeReadBackIsNotWritten();
    void aCopyBrokenOffIsTold();
};

void ParcelTest::comesOutAsItWentIn()
{
    const auto zip = pack(withPhotos());
    QVERIFY(zip.ok());
    QCOMPARE(*pack(withPhotos()), *zip);
    const auto read = unpack(*zip);
    QVERIFY2(read.ok(), read.ok() ? "" : read.errors().front().sentence().c_str());
    QVERIFY(*read == withPhotos());
}

void ParcelTest::aPlainDocumentIsAParcelWithoutPhotos()
{
    const auto read = unpack("{\"plain\": 1}");
    QVERIFY(read.ok());
    QCOMPARE(read->order, std::string("{\"plain\": 1}"));
    QVERIFY(read->pictures.empty());
    site::Job job;
    job.photos = {{documents::sha256("photo"), "run E3", ""}};
    const rules::Findings missing = missingPhotos(job, *read);
    QCOMPARE(missing.size(), std::size_t{1});
    QCOMPARE(missing[0].place, std::string("run E3"));
    QVERIFY(missing[0].weight == rules::Weight::Warns);
    QVERIFY(missingPhotos(job, {"", {{documents::sha256("photo"), "photo"}}}).empty());
}

void ParcelTest::aZipMadeElsewhereIsRead()
{
    const auto read = unpack(zipOf({{"order.json", "{}"}, {"photos/", ""}, {photoName("a"), "a"}}));
    QVERIFY2(read.ok(), read.ok() ? "" : read.errors().front().sentence().c_str());
    QCOMPARE(read->pictures.size(), std::size_t{1});
}

void ParcelTest::otherNamesAreRefused_data()
{
    QTest::addColumn<QByteArray>("name");
    const QByteArray hash(64, 'a');
    for (const QByteArray& name :
         {QByteArray("../x"), QByteArray("/etc/passwd"), QByteArray("ORDER.JSON"), QByteArray("./order.json"),
          QByteArray("photos/../../x.jpg"), QByteArray("photos\\x.jpg"), QByteArray("C:\\x.jpg"),
          QByteArray(""), QByteArray("photos/" + hash + ".png"), QByteArray("photos/" + hash + "a.jpg"),
          QByteArray("photos/" + hash.toUpper() + ".jpg"), QByteArray("x\0order.json", 12),
          QByteArray("\xff\xfe.json")})
        QTest::newRow(name.toPercentEncoding().constData()) << name;
}

void ParcelTest::otherNamesAreRefused()
{
    QFETCH(QByteArray, name);
    const auto read = unpack(zipOf({{"order.json", "{}"}, {name.toStdString(), "harm"}}));
    QVERIFY(!read.ok());
}

void ParcelTest::aNameTwiceIsRefused()
{
    const auto read = unpack(zipOf({{"order.json", "{}"}, {"order.json", "{\"other\": 1}"}}));
    QVERIFY(!read.ok());
    QVERIFY(read.errors().front().found.find("twice") != std::string::npos);
    QVERIFY2(!unpack(zipOf({{photoName("a"), "a"}})).ok(), "an order there must be");
}

void ParcelTest::aBombCostsAnError()
{
    const auto bomb =
        writeZip({{"order.json", std::string(static_cast<std::size_t>(largestOrder) + 1, ' ')}}, deflateAll);
    QVERIFY(bomb.ok());
    QVERIFY2(bomb->size() < std::size_t{1} << 20, "it is small as it lies there");
    const auto read = unpack(*bomb);
    QVERIFY(!read.ok());
    QVERIFY(read.errors().front().found.find("64 MiB") != std::string::npos);
    // The same, and both of its sizes say ten bytes: still no more than what is allowed is taken out.
    std::string lying = *bomb;
    const std::size_t directory = lying.rfind("PK\x01\x02");
    lying.replace(directory + 24, 4, little(10, 4));
    lying.replace(22, 4, little(10, 4));
    const auto lied = unpack(lying);
    QVERIFY(!lied.ok() || lied->order.size() <= static_cast<std::size_t>(largestOrder));
}

void ParcelTest::tooManyFilesAreRefused()
{
    std::vector<ZippedFile> files{{"order.json", "{}"}};
    for (std::size_t i = 0; i < mostPictures + 2; ++i)
        files.push_back({"photos/", ""});
    QVERIFY(!unpack(zipOf(files)).ok());
}

void ParcelTest::anAlteredPhotoIsMissing()
{
    const auto read = unpack(zipOf({{"order.json", "{}"}, {photoName("the roof"), "another roof"}}));
    QVERIFY(read.ok());
    QVERIFY(read->pictures.empty());
}

void ParcelTest::noByteChangedDoesHarm()
{
    const std::string zip = *pack(withPhotos());
    int refused = 0;
    for (std::size_t at = 4; at < zip.size(); ++at) {
        std::string changed = zip;
        changed[at] = static_cast<char>(~changed[at]);
        const auto read = unpack(changed);
        refused += read.ok() ? 0 : 1;
        if (read.ok())
            for (const auto& [hash, bytes] : read->pictures)
                QCOMPARE(documents::sha256(bytes), hash);
        (void)unpack(std::string_view(zip).substr(0, at));
    }
    QVERIFY(refused > 0);
}

void ParcelTest::whatCannotBeReadBackIsNotWritten()
{
    Parcel parcel = withPhotos();
    parcel.pictures.begin()->second += " altered";
    QVERIFY(!pack(parcel).ok());
    const std::string large(static_cast<std::size_t>(largestPicture) + 1, 'x');
    QVERIFY(!pack({"{}", {{documents::sha256(large), large}}}).ok());
}

void ParcelTest::aCopyBrokenOffIsTold()
{
    const std::string zip = *pack(withPhotos());
    QVERIFY(endsWhole(zip));
    QVERIFY(!endsWhole(zip.substr(0, zip.size() - 1)));
    QVERIFY(!endsWhole(zip.substr(0, 40)));
    QVERIFY(endsWhole("{\"a\": 1}\n"));
    QVERIFY(!endsWhole("{\"a\": "));
    QVERIFY(!endsWhole(""));
}

QTEST_MAIN(ParcelTest)
#include "tst_parcel.moc"
