#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace lapwright {

/// Why outside data could not be used: where it stands, what was found there, what was expected.
struct Error {
    /// Path into the data, outermost first: a file name, then a JSON pointer or the name of a part.
    std::string place;
    std::string found;
    std::string expected;

    /// The same error seen from one level further out; errors collect their trail as they rise.
    [[nodiscard]] Error within(const std::string& outer) const
    {
        return {place.empty() ? outer : outer + (place.front() == '/' ? "" : ": ") + place, found, expected};
    }
    /// One line for a person: "job.json/chains/0/name: found 12, expected a text".
    [[nodiscard]] std::string sentence() const
    {
        std::string line = place.empty() ? std::string() : place + ": ";
        if (!found.empty())
            line += "found " + found + (expected.empty() ? "" : ", ");
        if (!expected.empty())
            line += "expected " + expected;
        return line;
    }

    friend bool operator==(const Error&, const Error&) = default;
};

/// Either a value or the errors that kept it from being made; never both, never neither.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value)
        : state_(std::in_place_index<0>, std::move(value)) {} // NOLINT(google-explicit-constructor)
    Result(Error error) : state_(std::in_place_index<1>, 1, std::move(error)) {}
    /// Precondition: `errors` is not empty.
    Result(std::vector<Error> errors) : state_(std::in_place_index<1>, std::move(errors)) {}

    [[nodiscard]] bool ok() const { return state_.index() == 0; }
    explicit operator bool() const { return ok(); }

    /// Precondition: ok(). (std::get throws otherwise: reading a value that is not there is a bug.)
    [[nodiscard]] const T& value() const& { return std::get<0>(state_); }
    [[nodiscard]] T& value() & { return std::get<0>(state_); }
    [[nodiscard]] T&& value() && { return std::get<0>(std::move(state_)); }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    T&& operator*() && { return std::move(*this).value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

    /// Precondition: !ok().
    [[nodiscard]] const std::vector<Error>& errors() const { return std::get<1>(state_); }
    /// All errors, each seen from `outer`. Precondition: !ok().
    [[nodiscard]] std::vector<Error> errorsWithin(const std::string& outer) const
    {
        std::vector<Error> lifted;
        for (const Error& error : errors())
            lifted.push_back(error.within(outer));
        return lifted;
    }

private:
    std::variant<T, std::vector<Error>> state_;
};

} // namespace lapwright
