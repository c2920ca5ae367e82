#include "documents/json_text.h"

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

namespace lapwright::documents {
namespace {

/// Builds the value from the parser's events and stops at the first thing that is not allowed.
class Builder {
public:
    explicit Builder(const Limits& limits) : limits_(limits) {}

    bool null() { return put(nullptr); }
    bool boolean(bool value) { return put(value); }
    bool number_integer(Json::number_integer_t value) { return put(value); }
    bool number_unsigned(Json::number_unsigned_t value) { return put(value); }
    bool number_float(Json::number_float_t value, const Json::string_t& /*text*/) { return put(value); }
    bool string(Json::string_t& value) { return put(std::move(value)); }
    bool binary(Json::binary_t& /*value*/) { return refuse("binary data", "a JSON value"); }
    bool start_object(std::size_t /*size*/) { return open(Json::object()); }
    bool start_array(std::size_t /*size*/) { return open(Json::array()); }
    bool end_object() { return close(); }
    bool end_array() { return close(); }

    bool key(Json::string_t& name)
    {
        Json& object = *open_.back();
        const auto [place, added] = object.get_ref<Json::object_t&>().emplace(name, nullptr);
        members_.back() = {&place->first, &place->second};
        if (!added)
            return refuse("a second member of this name", "each member once");
        return true;
    }
    template <class Exception>
    bool parse_error(std::size_t position, const std::string& token, const Exception& /*exception*/)
    {
        position_ = position;
        return refuse(found(token), "JSON (RFC 8259) in UTF-8");
    }

    [[nodiscard]] Json take() { return std::move(root_); }
    [[nodiscard]] bool hasPosition() const { return position_ != unknown; }
    [[nodiscard]] std::size_t position() const { return position_; }
    [[nodiscard]] const Error& error() const { return error_; }

private:
    static constexpr std::size_t unknown = static_cast<std::size_t>(-1);
    struct Member {
        const std::string* name = nullptr;
        Json* value = nullptr;
    };

    static std::string found(const std::string& token)
    {
        if (token.empty())
            return "the end of the text";
        std::string shown;
        for (char letter : token.substr(token.size() - std::min<std::size_t>(token.size(), 24)))
            shown += letter >= ' ' && letter < '\x7f' ? letter : '?';
        return "\"" + shown + "\"";
    }
    template <class Value>
    bool put(Value&& value)
    {
        if (++values_ > limits_.values)
            return refuse("more than " + std::to_string(limits_.values) + " values", "fewer");
        if (open_.empty())
            root_ = std::forward<Value>(value);
        else
            add(std::forward<Value>(value));
        return true;
    }
    template <class Value>
    Json* add(Value&& value)
    {
        if (open_.empty())
            return &(root_ = std::forward<Value>(value));
        Json& top = *open_.back();
        if (top.is_array()) {
            top.get_ref<Json::array_t&>().emplace_back(std::forward<Value>(value));
            return &top.back();
        }
        return &(*members_.back().value = std::forward<Value>(value));
    }
    bool open(Json value)
    {
        if (++values_ > limits_.values)
            return refuse("more than " + std::to_string(limits_.values) + " values", "fewer");
        if (open_.size() >= limits_.depth)
            return refuse("values more than " + std::to_string(limits_.depth) + " deep",
                          "a flatter document");
        open_.push_back(add(std::move(value)));
        members_.emplace_back();
        return true;
    }
    bool close()
    {
        open_.pop_back();
        members_.pop_back();
        return true;
    }
    bool refuse(std::string what, std::string expected)
    {
        std::string pointer;
        for (std::size_t level = 0; level < open_.size(); ++level) {
            if (open_[level]->is_array()) {
                const std::size_t size = open_[level]->size();
                const bool inside = level + 1 < open_.size();
                pointer += "/" + std::to_string(inside ? size - 1 : size);
            } else if (members_[level].name != nullptr) {
                pointer += "/" + pointerStep(*members_[level].name);
            }
        }
        error_ = {pointer, std::move(what), std::move(expected)};
        return false;
    }

    Limits limits_;
    Json root_;
    std::vector<Json*> open_;
    std::vector<Member> members_; ///< beside open_: the member being read
    std::size_t values_ = 0;
    std::size_t position_ = unknown;
    Error error_;
};

std::string lineAndColumn(std::string_view text, std::size_t position)
{
    const std::string_view before = text.substr(0, std::min(position == 0 ? 0 : position - 1, text.size()));
    const auto lines = std::count(before.begin(), before.end(), '\n');
    const std::size_t start = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    return "line " + std::to_string(lines + 1) + ", column " + std::to_string(before.size() - start + 1);
}

/// Where the first text, number or stretch of white space starts that is longer than `most` bytes.
std::optional<std::size_t> longToken(std::string_view text, std::size_t most)
{
    std::size_t start = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const std::size_t opened = at;
        if (text[at] == '"') {
            start = opened;
            for (++at; at < text.size() && text[at] != '"'; ++at)
                at += text[at] == '\\' ? 1 : 0;
        }
        if (std::min(at, text.size()) - start > most)
            return start;
        if (opened != at || std::string_view("[]{},:").find(text[at]) != std::string_view::npos)
            start = at + 1;
    }
    return std::nullopt;
}

/// Where the reading stopped: the parser hands out the text through this iterator, which counts.
class Counted {
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    Counted(const char* at, const char** furthest) : at_(at), furthest_(furthest) {}
    reference operator*() const { return *at_; }
    Counted& operator++()
    {
        ++at_;
        *furthest_ = at_;
        return *this;
    }
    friend bool operator==(const Counted& left, const Counted& right) { return left.at_ == right.at_; }

private:
    const char* at_;
    const char** furthest_;
};

} // namespace

std::string pointerStep(std::string_view name)
{
    constexpr std::size_t most = 60;
    std::string step;
    for (char letter : name.substr(0, most)) {
        if (letter == '~')
            step += "~0";
        else if (letter == '/')
            step += "~1";
        else
            step += letter >= '\0' && letter < ' ' ? '?' : letter;
    }
    return name.size() > most ? step + "..." : step;
}

Result<Json> parseJson(std::string_view text, const Limits& limits)
{
    if (text.size() > limits.bytes)
        return Error{"", std::to_string(text.size()) + " bytes",
                     "at most " + std::to_string(limits.bytes) + " bytes"};
    if (text.size() > limits.token)
        if (const auto start = longToken(text, limits.token))
            return Error{lineAndColumn(text, *start + 1),
                         "a text, number or gap of more than " + std::to_string(limits.token) + " bytes",
                         "a shorter one"};
    Builder builder(limits);
    const char* const begin = text.data();
    const char* const end = begin + text.size();
    const char* furthest = begin;
    const bool read = Json::sax_parse(Counted(begin, &furthest), Counted(end, &furthest), &builder,
                                      Json::input_format_t::json, true);
    if (read)
        return builder.take();
    const std::size_t position =
        builder.hasPosition() ? builder.position() : static_cast<std::size_t>(furthest - begin);
    Error error = builder.error();
    error.place = lineAndColumn(text, position) + (error.place.empty() ? "" : ", " + error.place);
    return error;
}

} // namespace lapwright::documents
