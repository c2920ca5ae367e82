#include "acts/catalogue.h"

#include "documents/machine.h"
#include "storage/library.h"

namespace lapwright::acts {

Result<std::vector<fold::Machine>> loadMachines(const std::vector<std::string>& shopFolders)
{
    const auto files = storage::libraryFiles(storage::LibraryKind::Machines, shopFolders);
    if (!files.ok())
        return files.errors();
    std::vector<fold::Machine> machines;
    for (const storage::LibraryFile& file : *files) {
        const auto description = documents::readMachine(file.text);
        if (!description.ok())
            return description.errorsWithin(file.name);
        auto machine = fold::Machine::make(description->value);
        if (!machine.ok())
            return machine.errorsWithin(file.name);
        machines.push_back(*std::move(machine));
    }
    return machines;
}

Result<std::size_t> machineNamed(const std::vector<fold::Machine>& machines, const std::string& id,
                                 const std::string& place)
{
    std::string known;
    for (std::size_t index = 0; index < machines.size(); ++index) {
        if (machines[index]->id == id)
            return index;
        known += (known.empty() ? "" : ", ") + machines[index]->id;
    }
    return Error{place, id.empty() ? "nothing" : id, "one of " + known};
}

} // namespace lapwright::acts
