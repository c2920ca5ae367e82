#pragma once

#include "measure/angle.h"
#include "measure/length.h"

#include <cstdint>
#include <cstring>
#include <string>

namespace lapwright::pieces {

/// A key for hash tables: equal only if all that was added to it is equal, bit for bit.
class ByteKey {
public:
    ByteKey& add(const std::string& text)
    {
        add(static_cast<std::int64_t>(text.size()));
        bytes_ += text;
        return *this;
    }
    ByteKey& add(std::int64_t value) { return addBytes(&value, sizeof value); }
    ByteKey& add(Length value) { return add(value.inNanometres()); }
    ByteKey& add(Angle value)
    {
        // −0 and 0 are one angle.
        const double radians = value.inRadians() + 0.0;
        return addBytes(&radians, sizeof radians);
    }

    [[nodiscard]] const std::string& bytes() const { return bytes_; }

private:
    ByteKey& addBytes(const void* data, std::size_t size)
    {
        const std::size_t at = bytes_.size();
        bytes_.resize(at + size);
        std::memcpy(bytes_.data() + at, data, size);
        return *this;
    }

    std::string bytes_;
};

} // namespace lapwright::pieces
