#include "fold_tickets.h"

#include "acts/fold_words.h"
#include "acts/words.h"
#include "command.h"
#include "drawing/svg.h"
#include "fold/picture.h"
#include "print/refused_fold.h"
#include "storage/database.h"

namespace lapwright::command {

namespace {

/// The pieces of an order that are folded from one profile: how many, and their marks.
std::string piecesOf(const pieces::Order& order, std::size_t profile)
{
    std::string marks;
    std::int64_t count = 0;
    for (const pieces::Piece& piece : order.pieces) {
        if (piece.profile != profile)
            continue;
        marks += (marks.empty() ? "" : ", ") + piece.mark +
                 (piece.count > 1 ? " x" + std::to_string(piece.count) : "");
        count += piece.count;
    }
    return counted(count, "piece") + ": " + marks;
}

/// The ticket as text stays English.
std::vector<std::string> inEnglish(const fold::Outcome& outcome, const Pictures& pictures)
{
    Style style = pictures.style();
    style.translation = nullptr;
    return acts::inWords(outcome, style, pictures.angles());
}

} // namespace

void FoldTickets::print(const pieces::Order& order)
{
    for (std::size_t profile = 0; profile < order.profiles.size(); ++profile) {
        const auto program = programs_.of(order, profile);
        if (!program.ok())
            throw storage::StorageFailure(program.errors().front().sentence());
        if (program->has_value())
            print(order, profile, **program);
    }
}

void FoldTickets::print(const pieces::Order& order, std::size_t index, const acts::FoldProgram& program)
{
    const pieces::OrderedProfile& profile = order.profiles[index];
    ++number_;
    std::string text = "FOLD TICKET  " + acts::nameOf(order, index) + "\n" +
                       acts::describe(profile.material) + ", girth " +
                       lapwright::write(profile.girth, pictures_.style()) + "\n" + piecesOf(order, index) +
                       "\nlongest " + lapwright::write(program.longest, pictures_.style()) + "\n\n";
    for (const std::string& line : inEnglish(program.outcome, pictures_))
        text += line + "\n";
    folder_.write("fold", number_, "txt", text + "\n" + cautionsAtTheMachine());
    if (program.plan() != nullptr) {
        draw(order, index, program);
        return;
    }
    const drawing::DisplayList section = pictures_.profile(profile, program.stuff.metal);
    folder_.write("fold", number_, "svg", drawing::toSvg(section), "profile");
    writePdf(folder_, work_, "fold", number_,
             print::refusedFold(order, index,
                                acts::inWords(program.outcome, pictures_.style(), pictures_.angles()),
                                section, work_.printing));
    allFold_ = false;
    tell("BLOCKS  " + acts::nameOf(order, index) + ": no machine of the shop can fold it");
}

void FoldTickets::draw(const pieces::Order& order, std::size_t index, const acts::FoldProgram& program)
{
    const fold::Machine& machine = programs_.machines()[program.machine];
    const auto pictures =
        fold::FoldPictures::make(order.profiles[index].profile, program.flat, program.stuff.metal,
                                 program.stuff.sheet, machine, *program.plan(), {});
    if (!pictures.ok())
        throw storage::StorageFailure(pictures.errors().front().sentence());
    const auto drawn = pictures_.foldTicket(order, index, program, machine, *pictures, work_.printing);
    std::vector<print::Page> pages;
    for (const drawing::DisplayList& page : drawn) {
        pages.push_back({page, {}});
        folder_.write("fold", number_, "svg", drawing::toSvg(page), "page-" + std::to_string(pages.size()));
    }
    writePdf(folder_, work_, "fold", number_, "Fold ticket, " + acts::nameOf(order, index), pages);
}

} // namespace lapwright::command
