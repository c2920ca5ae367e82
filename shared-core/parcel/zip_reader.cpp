#include "parcel/zip.h"

#include <archive.h>
#include <archive_entry.h>

#include <algorithm>
#include <array>
#include <memory>
#include <utility>

namespace lapwright::parcel {

namespace {

const std::string expected = "an order's ZIP as the field app writes it";

using Reader = std::unique_ptr<archive, int (*)(archive*)>;

Error broken(archive* reader)
{
    const char* why = archive_error_string(reader);
    return {"the ZIP", why == nullptr ? "damaged" : why, expected};
}

/// The file that `reader` stands at, or the first thing too much about it.
Result<std::string> bytesOf(archive* reader, const std::string& name, std::int64_t most)
{
    constexpr std::size_t step = 1 << 16;
    std::string bytes;
    std::array<char, step> part{};
    for (;;) {
        const la_ssize_t read = archive_read_data(reader, part.data(), part.size());
        if (read < 0)
            return broken(reader);
        if (read == 0)
            return bytes;
        bytes.append(part.data(), static_cast<std::size_t>(read));
        if (static_cast<std::int64_t>(bytes.size()) > most)
            return Error{name, "more than " + std::to_string(most >> 20) + " MiB", expected};
    }
}

} // namespace

Result<std::vector<ZippedFile>> readZip(std::string_view zip, SizeAllowed sizeAllowed, std::size_t mostFiles,
                                        std::int64_t mostBytes)
{
    const Reader reader(archive_read_new(), archive_read_free);
    archive_read_support_format_zip_seekable(reader.get());
    if (archive_read_open_memory(reader.get(), zip.data(), zip.size()) != ARCHIVE_OK)
        return broken(reader.get());
    std::vector<ZippedFile> files;
    std::int64_t total = 0;
    std::size_t entries = 0;
    archive_entry* entry = nullptr;
    for (;;) {
        const int next = archive_read_next_header(reader.get(), &entry);
        if (next == ARCHIVE_EOF)
            return files;
        if (next != ARCHIVE_OK)
            return broken(reader.get());
        if (++entries > mostFiles)
            return Error{"the ZIP", "more than " + std::to_string(mostFiles) + " files", expected};
        if (archive_entry_filetype(entry) == AE_IFDIR)
            continue;
        const char* given = archive_entry_pathname_utf8(entry);
        const std::string name = given == nullptr ? std::string() : given;
        const std::int64_t allowed = sizeAllowed(name);
        if (allowed < 0 || archive_entry_filetype(entry) != AE_IFREG)
            return Error{"the ZIP", "a file named \"" + name + "\"", expected};
        auto bytes = bytesOf(reader.get(), name, std::min(allowed, mostBytes - total));
        if (!bytes.ok())
            return bytes.errors();
        total += static_cast<std::int64_t>(bytes->size());
        files.push_back({name, *std::move(bytes)});
    }
}

} // namespace lapwright::parcel
