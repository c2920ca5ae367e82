#pragma once

#include "model/field_app.h"

namespace lapwright::field {

/// A new job with an eave line 40' by 24', closed, with the usual trim. False if any of it is refused.
inline bool measureHouse(FieldApp& app)
{
    JobEditor& editor = *app.editor();
    bool made = editor.newJob("Alder") && editor.startChain("eave");
    editor.entry()->slope()->setText("6");
    for (const char* length : {"40'", "24'", "40'", "24'"}) {
        editor.entry()->length()->setText(length);
        made = made && editor.keepRun();
    }
    made = made && editor.closeChain();
    app.trim()->refresh();
    return made && app.trim()->suggestAll();
}

} // namespace lapwright::field
