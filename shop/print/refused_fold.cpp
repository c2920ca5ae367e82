#include "print/refused_fold.h"

#include "print/words.h"
#include "speech/spoken.h"

namespace lapwright::print {

Sheet refusedFold(const pieces::Order& order, std::size_t profile, const std::vector<std::string>& reasons,
                  const drawing::DisplayList& section, const Printing& printing)
{
    const pieces::OrderedProfile& refused = order.profiles[profile];
    Sheet sheet;
    sheet.title = spoken("Cannot be folded here");
    sheet.subject = refused.id + "  " + spoken(refused.profile.name);
    sheet.foot = footOf(order.job.name, order.revision, printing);
    std::string marks;
    std::int64_t count = 0;
    for (const pieces::Piece& piece : order.pieces)
        if (piece.profile == profile) {
            marks += (marks.empty() ? "" : ", ") + piece.mark;
            count += piece.count;
        }
    for (const std::string& reason : reasons)
        sheet.add(Paragraph{reason, Tone::Caution});
    sheet.add(
        Paragraph{spoken(counted(count, "piece")) + " " + spoken("of") + " " + order.job.name + ": " + marks,
                  Tone::Strong});
    sheet.add(Picture{section});
    return sheet;
}

} // namespace lapwright::print
