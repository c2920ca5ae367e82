// Any text typed into a field: one exact value, several readings, or a sentence why not; a value written out
// reads back as itself.
#include "measure/reading.h"
#include "measure/writing.h"
#include "must.h"

#include <cstdint>
#include <string>
#include <string_view>

using namespace lapwright;

namespace {

template <class T>
void sound(const Reading<T>& reading)
{
    if (!reading.isExact())
        must(!say(reading.problem(), {}).empty(), "no value has a reason");
    if (reading.isAmbiguous())
        must(reading.candidates().size() >= 2, "ambiguous means two readings or more");
}

void lengths(std::string_view text)
{
    for (const auto unit : {std::optional<LengthUnit>(), std::optional(LengthUnit::Inches),
                            std::optional(LengthUnit::FeetInches), std::optional(LengthUnit::Millimetres)}) {
        const auto reading = readLength(text, {unit, true});
        sound(reading);
        if (!reading.isExact())
            continue;
        const std::string written = write(*reading.value(), Style{});
        const auto back = readLength(written, {LengthUnit::FeetInches, true});
        must(back.isExact(), "what is shown can be read");
        must(write(*back.value(), Style{}) == written, "as what is shown");
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    lengths(text);
    sound(readSlope(text, {}));
    sound(readSlope(text, {SlopeUnit::Degrees}));
    sound(readAngle(text, {true}));
    return 0;
}
