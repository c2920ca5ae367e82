#pragma once

#include "documents/extras.h"
#include "fold/machine.h"
#include "measure/result.h"

#include <string>
#include <string_view>

namespace lapwright::documents {

using MachineDocument = Document<fold::MachineDescription>;

/// A folding machine (lapwright/machine). Errors: those of openDocument and of fold::Machine::make, which
/// therefore accepts every description read here.
[[nodiscard]] Result<MachineDocument> readMachine(std::string_view text);
[[nodiscard]] std::string writeMachine(const MachineDocument& machine, Layout layout = Layout::Readable);

} // namespace lapwright::documents
