// Gives every file named, and every file of the folders named, to the fuzz target it is linked with, without
// a fuzzer: what once went wrong, and the seeds, as a test.
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

void replay(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    std::fprintf(stderr, "%s\n", path.c_str());
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
}

int replayAll(const std::filesystem::path& folder)
{
    int files = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
        if (entry.is_regular_file()) {
            replay(entry.path());
            ++files;
        }
    return files;
}

} // namespace

int main(int count, char** arguments)
{
    int files = 0;
    for (int i = 1; i < count; ++i)
        if (std::filesystem::is_directory(arguments[i])) {
            files += replayAll(arguments[i]);
        } else {
            replay(arguments[i]);
            ++files;
        }
    std::printf("Totals: %d passed, 0 failed, 0 skipped\n", files);
    return files > 0 ? 0 : 1;
}
