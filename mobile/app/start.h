#pragma once

namespace lapwright::field {

/// The field app from its command line to its end; the process's exit code: 0 done, 1 the self-test found
/// something, 2 wrong use, 3 the database cannot be used.
int run(int argc, char** argv);

} // namespace lapwright::field
