// Any text that a scanner may read off a label: refused with what to do about it, or read, and then written
// again as the same text.
#include "must.h"
#include "schedule/label_text.h"

#include <cstdint>
#include <string>
#include <string_view>

using namespace lapwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string text(reinterpret_cast<const char*>(data), size);
    const auto label = schedule::readLabelText(text);
    if (!label.ok()) {
        must(!label.errors().empty() && !label.errors().front().expected.empty(),
             "a refusal says what to do");
        return 0;
    }
    const auto written = schedule::labelText(*label);
    must(written.ok() && text.find(*written) != std::string::npos, "what was read is written as it was");
    return 0;
}
