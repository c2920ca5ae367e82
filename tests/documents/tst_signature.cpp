/// Guards: signatures are Ed25519 as RFC 8032 has it; a document changed in anything but its layout is told
/// from the one that was signed; what carries no signature, or no sound one, says so.
#include "documents/identity.h"
#include "documents/job.h"
#include "documents/signature.h"

#include <QtTest>

#include <string>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

QByteArray bytesOf(const char* digits)
{
    return QByteArray::fromHex(digits);
}

SigningKey::Seed seedOf(const QByteArray& bytes)
{
    SigningKey::Seed seed{};
    std::copy(bytes.begin(), bytes.end(), seed.begin());
    return seed;
}

const char* const document = R"({"format": "lapwright/load", "version": 1, "program": "0.1.0",
  "id": "4f8c2c1e-7a55-4d0e-9a51-6f0c6d6b8a10", "truck": "truck 1", "made_at": "2026-05-04T10:00:00Z",
  "bundles": [], "painted": {"by": "hand", "times": 2}})";

std::string signedBy(const SigningKey& key)
{
    const auto text = signDocument(document, key);
    return text.ok() ? *text : std::string();
}

std::string signatureBy(const std::string& key)
{
    return "{\"algorithm\": \"Ed25519\", \"key\": \"" + key + "\"}";
}

std::string withOneChange(std::string text, const std::string& from, const std::string& to)
{
    const std::size_t at = text.find(from);
    return at == std::string::npos ? std::string() : text.replace(at, from.size(), to);
}

} // namespace

class SignatureTest : public QObject {
    Q_OBJECT
private slots:
    void publishedVectors_data()
    {
        QTest::addColumn<QByteArray>("secret");
        QTest::addColumn<QByteArray>("key");
        QTest::addColumn<QByteArray>("message");
        QTest::addColumn<QByteArray>("signature");
        QTest::newRow("RFC 8032 7.1, test 1")
            << bytesOf("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")
            << bytesOf("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a") << QByteArray()
            << bytesOf(
                   "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39"
                   "701cf9b46bd25bf5f0595bbe24655141438e7a100b");
        QTest::newRow("RFC 8032 7.1, test 2")
            << bytesOf("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb")
            << bytesOf("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c") << bytesOf("72")
            << bytesOf(
                   "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f36"
                   "13d0f11d8c387b2eaeb4302aeeb00d291612bb0c00");
    }
    void publishedVectors()
    {
        QFETCH(QByteArray, secret);
        QFETCH(QByteArray, key);
        QFETCH(QByteArray, message);
        QFETCH(QByteArray, signature);
        const SigningKey signing(seedOf(secret));
        QCOMPARE(write(signing.publicKey()), key.toHex().toStdString());
        const auto made = signing.sign(message.toStdString());
        QVERIFY(std::equal(
            made.begin(), made.end(), signature.begin(), signature.end(),
            [](unsigned char left, char right) { return left == static_cast<unsigned char>(right); }));
        QVERIFY(holds(made, message.toStdString(), signing.publicKey()));
        QVERIFY(!holds(made, message.toStdString() + "x", signing.publicKey()));
    }

    void aSignedDocumentHoldsInAnyLayout()
    {
        const SigningKey key(seedOf(QByteArray(32, 'a')));
        const std::string text = signedBy(key);
        QVERIFY(!text.empty());
        for (const std::string& same : {text, Json::parse(text).dump(), Json::parse(text).dump(3)}) {
            const auto check = checkSignature(same);
            QVERIFY(check.ok());
            QVERIFY(check->holds);
            QCOMPARE(check->key, std::optional(key.publicKey()));
        }
        QCOMPARE(Json::parse(text)["painted"]["times"], Json(2));
        const auto again = signDocument(text, key);
        QVERIFY(again.ok());
        QCOMPARE(*again, text);
    }
    void anyChangeIsSeen_data()
    {
        QTest::addColumn<std::string>("from");
        QTest::addColumn<std::string>("to");
        QTest::newRow("a value") << std::string("truck 1") << std::string("truck 2");
        QTest::newRow("a number") << std::string("\"times\": 2") << std::string("\"times\": 3");
        QTest::newRow("a member's name") << std::string("painted") << std::string("printed");
        QTest::newRow("a member more")
            << std::string("\"bundles\": []") << std::string("\"bundles\": [], \"more\": 1");
        QTest::newRow("the version") << std::string("\"version\": 1") << std::string("\"version\": 2");
        QTest::newRow("the program") << std::string("0.1.0") << std::string("0.1.1");
    }
    void anyChangeIsSeen()
    {
        QFETCH(std::string, from);
        QFETCH(std::string, to);
        const std::string text = withOneChange(signedBy(SigningKey(seedOf(QByteArray(32, 'b')))), from, to);
        QVERIFY(!text.empty());
        const auto check = checkSignature(text);
        QVERIFY(check.ok());
        QVERIFY(check->key.has_value());
        QVERIFY(!check->holds);
    }
    void anotherKeyCannotTakeTheNameOfOne()
    {
        const SigningKey tablet(seedOf(QByteArray(32, 'c'))), forger(seedOf(QByteArray(32, 'd')));
        const std::string text =
            withOneChange(signedBy(forger), write(forger.publicKey()), write(tablet.publicKey()));
        const auto check = checkSignature(text);
        QVERIFY(check.ok());
        QCOMPARE(check->key, std::optional(tablet.publicKey()));
        QVERIFY(!check->holds);
    }
    void whatIsNotSigned()
    {
        const auto check = checkSignature(document);
        QVERIFY(check.ok());
        QVERIFY(!check->key);
        QVERIFY(!check->holds);
    }
    void brokenSignaturesAreNamed_data()
    {
        QTest::addColumn<std::string>("signature");
        QTest::addColumn<std::string>("place");
        QTest::newRow("a text") << std::string("\"yes\"") << std::string("/signature");
        QTest::newRow("another algorithm")
            << std::string(R"({"algorithm": "none", "key": "", "value": ""})") << std::string("/signature");
        QTest::newRow("a short key") << std::string(R"({"algorithm": "Ed25519", "key": "ab", "value": ""})")
                                     << std::string("/signature/key");
        QTest::newRow("no value") << signatureBy(std::string(64, '0')) << std::string("/signature/value");
        QTest::newRow("capitals") << signatureBy(std::string(64, 'A')) << std::string("/signature/key");
    }
    void brokenSignaturesAreNamed()
    {
        QFETCH(std::string, signature);
        QFETCH(std::string, place);
        const auto check =
            checkSignature("{\"format\": \"lapwright/load\", \"signature\": " + signature + "}");
        QVERIFY(!check.ok());
        QCOMPARE(check.errors().front().place, place);
        QVERIFY(!checkSignature("[]").ok());
        QVERIFY(!checkSignature("{").ok());
        QVERIFY(!signDocument(R"({"version": 1})", SigningKey(seedOf(QByteArray(32, 'e')))).ok());
    }
    void keysReadBack()
    {
        const PublicKey key = SigningKey(seedOf(QByteArray(32, 'f'))).publicKey();
        const auto read = readPublicKey(write(key));
        QVERIFY(read.ok());
        QVERIFY(*read == key);
    }
    /// Each letter of the code is five bits of the digest, computed here from its hexadecimal digits.
    void pairingCodesAreTheDigest()
    {
        const PublicKey key = SigningKey(seedOf(QByteArray(32, 'g'))).publicKey();
        const QByteArray digest = QCryptographicHash::hash(
            QByteArray(reinterpret_cast<const char*>(key.bytes.data()), 32), QCryptographicHash::Sha256);
        QString bits;
        for (const char byte : digest)
            bits += QString::number(static_cast<unsigned char>(byte), 2).rightJustified(8, '0');
        QString code;
        for (int letter = 0; letter < 12; ++letter) {
            if (letter == 4 || letter == 8)
                code += '-';
            code += QString("0123456789ABCDEFGHJKMNPQRSTVWXYZ").at(bits.mid(letter * 5, 5).toInt(nullptr, 2));
        }
        QCOMPARE(QString::fromStdString(pairingCode(key)), code);
    }
};

QTEST_APPLESS_MAIN(SignatureTest)
#include "tst_signature.moc"
