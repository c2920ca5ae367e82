#include "cutting/settings.h"

namespace lapwright::cutting {

const std::vector<SettingRecord>& settingRecords()
{
    static const std::vector<SettingRecord> records = {
        {"time_limit", "Time limit", "How long to look for a better plan; a legal plan is there at once",
         "ms", 10, 3'600'000, 20'000},
        {"work_limit", "Work limit", "The same limit counted in steps, for plans that repeat exactly",
         "steps", 0, 1'000'000'000, 20'000},
        {"seed", "Seed", "Another number tries the equal choices in another order", "", 0,
         9'007'199'254'740'991, 1},
        {"threads", "Threads", "Processor cores used; the plan does not depend on it", "", 1, 64, 1},
        {"fewer_setups", "Fewer setups", "At the same metal, look for fewer slitter setups", "", 0, 1, 1},
        {"due_first", "Due first", "Give what is due earlier the best plan it can have alone", "", 0, 1, 1},
    };
    return records;
}

} // namespace lapwright::cutting
