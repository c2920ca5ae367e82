#pragma once

#include <QCommandLineParser>

#include <nlohmann/json.hpp>

#include <string>

namespace lapwright::command {

/// What a subcommand did, one result after the other: a line for people at once, or with --json all of them
/// as one array when it is done.
class Results {
public:
    explicit Results(const QCommandLineParser& options) : asJson_(options.isSet("json")) {}

    /// `line` and `value` say the same.
    void add(const std::string& line, nlohmann::json value);
    /// A line for people that says there is nothing: as JSON that is the empty array.
    void nothing(const std::string& line) const;
    /// Prints what --json asked for. Call once, at the end.
    void finish() const;

private:
    bool asJson_;
    nlohmann::json values_ = nlohmann::json::array();
};

} // namespace lapwright::command
