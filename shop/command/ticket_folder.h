#pragma once

#include <set>
#include <string>

namespace lapwright::command {

/// The folder tickets, drawings and lists are written to. File names are made here from a kind and numbers:
/// no name from a document reaches the disk.
class TicketFolder {
public:
    explicit TicketFolder(std::string path) : path_(std::move(path)) {}

    /// Writes "KIND-NN.ENDING", or with `part` "KIND-NN-PART.ENDING". Throws storage::StorageFailure when the
    /// file cannot be written.
    void write(const std::string& kind, int number, const std::string& ending, const std::string& text,
               const std::string& part = "");
    /// Writes "KIND.ENDING".
    void write(const std::string& kind, const std::string& ending, const std::string& text);

    [[nodiscard]] int count() const { return count_; }

    /// Removes tickets of an earlier print that this one did not write again: files named as this class names
    /// them, nothing else.
    void removeStale() const;

private:
    void writeFile(const std::string& name, const std::string& text);

    std::string path_;
    int count_ = 0;
    std::set<std::string> written_;
};

/// What every paper that goes to a machine says below its steps.
[[nodiscard]] const std::string& cautionsAtTheMachine();

} // namespace lapwright::command
