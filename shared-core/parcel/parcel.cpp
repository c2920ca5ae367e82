#include "parcel/parcel.h"

#include "documents/identity.h"
#include "parcel/zip.h"

#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace lapwright::parcel {

namespace {

constexpr std::string_view orderName = "order.json";
constexpr std::string_view photoFolder = "photos/";
constexpr std::string_view photoEnding = ".jpg";
constexpr std::size_t hashDigits = 64;
/// Local file header and end of central directory (APPNOTE 4.3.7, 4.3.16).
constexpr std::string_view zipBegins = "PK\x03\x04";
constexpr std::string_view zipEnds = "PK\x05\x06";
constexpr std::size_t endRecord = 22;

bool isHash(std::string_view text)
{
    return text.size() == hashDigits && text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

/// The hash in the name of a photo; empty if the name is none.
std::string_view hashIn(std::string_view name)
{
    if (name.size() != photoFolder.size() + hashDigits + photoEnding.size() ||
        name.substr(0, photoFolder.size()) != photoFolder ||
        name.substr(photoFolder.size() + hashDigits) != photoEnding)
        return {};
    const std::string_view hash = name.substr(photoFolder.size(), hashDigits);
    return isHash(hash) ? hash : std::string_view();
}

std::int64_t sizeAllowed(std::string_view name)
{
    if (name == orderName)
        return largestOrder;
    return hashIn(name).empty() ? -1 : largestPicture;
}

Error tooLarge(const std::string& what, std::int64_t most)
{
    return {what, "more than " + std::to_string(most >> 20) + " MiB", "what can be read back"};
}

std::optional<Error> refusal(const Parcel& parcel)
{
    auto total = static_cast<std::int64_t>(parcel.order.size());
    if (total > largestOrder)
        return tooLarge("the order", largestOrder);
    if (parcel.pictures.size() > mostPictures)
        return Error{"the photos", std::to_string(parcel.pictures.size()),
                     "at most " + std::to_string(mostPictures)};
    for (const auto& [hash, bytes] : parcel.pictures) {
        if (static_cast<std::int64_t>(bytes.size()) > largestPicture)
            return tooLarge("photo " + hash, largestPicture);
        if (documents::sha256(bytes) != hash)
            return Error{"photo " + hash, "other bytes than its name says", "the photo that was taken"};
        total += static_cast<std::int64_t>(bytes.size());
    }
    return total > largestWhole ? std::optional(tooLarge("the order with its photos", largestWhole))
                                : std::nullopt;
}

} // namespace

Result<std::string> pack(const Parcel& parcel)
{
    if (auto wrong = refusal(parcel))
        return *std::move(wrong);
    std::vector<ZippedFile> files{{std::string(orderName), parcel.order}};
    for (const auto& [hash, bytes] : parcel.pictures)
        files.push_back({std::string(photoFolder) + hash + std::string(photoEnding), bytes});
    // A JPEG file is compressed already.
    return writeZip(files, [](std::string_view name) { return name == orderName; });
}

Result<Parcel> unpack(std::string_view bytes)
{
    if (bytes.substr(0, zipBegins.size()) != zipBegins)
        return Parcel{std::string(bytes), {}};
    // The order and the folder of the photos stand beside them.
    auto files = readZip(bytes, sizeAllowed, mostPictures + 2, largestWhole);
    if (!files.ok())
        return files.errors();
    Parcel parcel;
    std::set<std::string> names;
    for (ZippedFile& file : *files) {
        if (!names.insert(file.name).second)
            return Error{"the ZIP", "\"" + file.name + "\" twice", "each file once"};
        if (file.name == orderName)
            parcel.order = std::move(file.bytes);
        else if (const std::string hash(hashIn(file.name)); documents::sha256(file.bytes) == hash)
            parcel.pictures.emplace(hash, std::move(file.bytes));
    }
    if (names.count(std::string(orderName)) == 0)
        return Error{"the ZIP", "no order.json", "an order's ZIP as the field app writes it"};
    return parcel;
}

bool endsWhole(std::string_view bytes)
{
    if (bytes.substr(0, zipBegins.size()) == zipBegins)
        return bytes.size() >= endRecord && bytes.substr(bytes.size() - endRecord, zipEnds.size()) == zipEnds;
    const std::size_t last = bytes.find_last_not_of(" \t\r\n");
    return last != std::string_view::npos && bytes[last] == '}';
}

} // namespace lapwright::parcel
