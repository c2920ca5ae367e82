#pragma once

#include "command.h"
#include "drawing/display_list.h"
#include "print/label.h"
#include "print/layout.h"
#include "print/paper.h"
#include "schedule/cost_rates.h"
#include "schedule/stock.h"
#include "ticket_folder.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::command {

/// Everything that all papers of one print share.
struct Paperwork {
    print::Printing printing;
    std::string madeAt; ///< ISO 8601, UTC: what each PDF says of itself
    const print::LabelStock* labels = nullptr;
    std::optional<schedule::CostRates> rates;
    Style style;
};

/// --paper, --labels and --rates.
[[nodiscard]] QList<QCommandLineOption> paperOptions();
/// What those options ask for, at this moment. Letter for those who measure in feet or inches, A4 for the
/// others, unless told. Errors: a paper or label stock that is not known, rates that cannot be read.
[[nodiscard]] Result<Paperwork> paperworkOf(const QCommandLineParser& options,
                                            const schedule::ShopStock& stock);

/// Writes the pages as "KIND-NN.pdf"; nothing where there are none.
void writePdf(TicketFolder& folder, const Paperwork& work, const std::string& kind, int number,
              const std::string& title, const std::vector<print::Page>& pages);
void writePdf(TicketFolder& folder, const Paperwork& work, const std::string& kind, int number,
              const print::Sheet& sheet);

} // namespace lapwright::command
