#include "parcel/zip.h"

#include <archive.h>
#include <archive_entry.h>

#include <memory>

namespace lapwright::parcel {

namespace {

/// 1 January 1980, where a ZIP's calendar begins: a parcel carries no clock.
constexpr std::int64_t beginningOfZip = 315'532'800;

la_ssize_t append(archive* /*writer*/, void* out, const void* bytes, size_t count)
{
    static_cast<std::string*>(out)->append(static_cast<const char*>(bytes), count);
    return static_cast<la_ssize_t>(count);
}

bool wrote(archive* writer, const ZippedFile& file, bool deflated)
{
    const std::unique_ptr<archive_entry, void (*)(archive_entry*)> entry(archive_entry_new(),
                                                                         archive_entry_free);
    archive_entry_set_pathname(entry.get(), file.name.c_str());
    archive_entry_set_filetype(entry.get(), AE_IFREG);
    archive_entry_set_perm(entry.get(), 0644);
    archive_entry_set_size(entry.get(), static_cast<la_int64_t>(file.bytes.size()));
    archive_entry_set_mtime(entry.get(), beginningOfZip, 0);
    if (deflated)
        archive_write_zip_set_compression_deflate(writer);
    else
        archive_write_zip_set_compression_store(writer);
    return archive_write_header(writer, entry.get()) == ARCHIVE_OK &&
           archive_write_data(writer, file.bytes.data(), file.bytes.size()) ==
               static_cast<la_ssize_t>(file.bytes.size());
}

} // namespace

Result<std::string> writeZip(const std::vector<ZippedFile>& files, bool (*deflated)(std::string_view name))
{
    std::string zip;
    const std::unique_ptr<archive, int (*)(archive*)> writer(archive_write_new(), archive_write_free);
    bool good = archive_write_set_format_zip(writer.get()) == ARCHIVE_OK &&
                archive_write_set_bytes_per_block(writer.get(), 0) == ARCHIVE_OK &&
                archive_write_open(writer.get(), &zip, nullptr, append, nullptr) == ARCHIVE_OK;
    for (const ZippedFile& file : files)
        good = good && wrote(writer.get(), file, deflated(file.name));
    good = good && archive_write_close(writer.get()) == ARCHIVE_OK;
    if (!good) {
        const char* why = archive_error_string(writer.get());
        return Error{"the ZIP", why == nullptr ? "not written" : why, "a ZIP"};
    }
    return zip;
}

} // namespace lapwright::parcel
