#include "documents/profile_names.h"

#include "documents/json_text.h"

namespace lapwright::documents {

namespace {

using Names = std::vector<std::pair<std::string, std::string>>;

/// Hears an order's JSON go by, up to the end of its profiles.
class Listener {
public:
    // The names are those that nlohmann::json::sax_parse calls.
    bool null() { return true; }
    bool boolean(bool /*value*/) { return true; }
    bool number_integer(Json::number_integer_t /*value*/) { return true; }
    bool number_unsigned(Json::number_unsigned_t /*value*/) { return true; }
    bool number_float(Json::number_float_t /*value*/, const Json::string_t& /*text*/) { return true; }
    bool binary(Json::binary_t& /*value*/) { return true; }
    bool start_object(std::size_t /*size*/)
    {
        ++depth_;
        if (inProfiles_ && depth_ == profileDepth)
            names_.emplace_back();
        return true;
    }
    bool end_object()
    {
        --depth_;
        return true;
    }
    bool start_array(std::size_t /*size*/)
    {
        inProfiles_ = inProfiles_ || (depth_ == orderDepth && key_ == "profiles");
        ++depth_;
        return true;
    }
    bool end_array()
    {
        --depth_;
        ended_ = inProfiles_ && depth_ == orderDepth;
        return !ended_;
    }
    bool key(const Json::string_t& name)
    {
        key_ = name;
        inOwn_ = depth_ == profileDepth ? name == "profile" : inOwn_;
        return true;
    }
    bool string(Json::string_t& value)
    {
        if (!inProfiles_ || names_.empty())
            return true;
        if (depth_ == profileDepth && key_ == "id")
            names_.back().first = std::move(value);
        else if (depth_ == profileDepth + 1 && inOwn_ && key_ == "name")
            names_.back().second = std::move(value);
        return true;
    }
    template <class Exception>
    bool parse_error(std::size_t position, const std::string& /*token*/, const Exception& /*exception*/)
    {
        position_ = position;
        return false;
    }

    /// All profiles were heard.
    [[nodiscard]] bool ended() const { return ended_; }
    [[nodiscard]] std::size_t position() const { return position_; }
    [[nodiscard]] Names take() { return std::move(names_); }

private:
    // {"profiles": [{"id": "P1", "profile": {"name": "Drip edge"}}]}
    static constexpr int orderDepth = 1;
    static constexpr int profileDepth = 3;

    Names names_;
    std::string key_;
    int depth_ = 0;
    bool inProfiles_ = false;
    bool inOwn_ = false; ///< in the member "profile" of one of them
    bool ended_ = false;
    std::size_t position_ = 0;
};

} // namespace

Result<Names> profileNames(std::string_view order)
{
    Listener listener;
    const bool whole = Json::sax_parse(order.begin(), order.end(), &listener);
    if (!whole && !listener.ended())
        return Error{"", "no JSON at character " + std::to_string(listener.position()), "an order"};
    return listener.take();
}

} // namespace lapwright::documents
