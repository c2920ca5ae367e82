#include "results.h"

#include "command.h"

namespace lapwright::command {

void Results::add(const std::string& line, nlohmann::json value)
{
    if (asJson_)
        values_.push_back(std::move(value));
    else
        print(line);
}

void Results::nothing(const std::string& line) const
{
    if (!asJson_)
        print(line);
}

void Results::finish() const
{
    if (asJson_)
        printDocument(values_.dump(2));
}

} // namespace lapwright::command
