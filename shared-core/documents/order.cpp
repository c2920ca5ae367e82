#include "documents/order.h"

#include "documents/describe_order.h"
#include "documents/identity.h"

#include <set>

namespace lapwright::documents {
namespace {

class OrderCheck {
public:
    OrderCheck(const pieces::Order& order, Errors& errors) : order_(order), errors_(errors) {}

    void check()
    {
        const std::size_t before = errors_.size();
        checkJob(order_.job, errors_);
        liftErrors(errors_, before, "job");
        if ((order_.revision == 1) != order_.previousHash.empty())
            report("/previous_hash", order_.previousHash.empty() ? "none" : "a hash",
                   order_.revision == 1 ? "none on the first revision" : "the hash of the revision before");
        checkProfiles();
        checkRuns();
        checkPieces();
    }

private:
    void report(std::string place, std::string found, std::string expected)
    {
        constexpr std::size_t most = 20;
        if (errors_.size() < most)
            errors_.push_back({std::move(place), std::move(found), std::move(expected)});
    }
    [[nodiscard]] static std::string at(const char* list, std::size_t index, const char* member)
    {
        return std::string("/") + list + "/" + std::to_string(index) + "/" + member;
    }
    void checkProfileIndex(std::size_t profile, const char* list, std::size_t index)
    {
        if (profile >= order_.profiles.size())
            report(at(list, index, "profile"), std::to_string(profile),
                   "the position of a profile, counted from 0; there are " +
                       std::to_string(order_.profiles.size()));
    }

    void checkProfiles()
    {
        std::set<std::string_view> ids;
        for (std::size_t index = 0; index < order_.profiles.size(); ++index) {
            if (!ids.insert(order_.profiles[index].id).second)
                report(at("profiles", index, "id"), "an id used before", "an id of its own for each profile");
            checkProfile(order_.profiles[index].profile, at("profiles", index, "profile"), errors_);
        }
    }
    void checkRuns()
    {
        for (std::size_t index = 0; index < order_.runs.size(); ++index) {
            const pieces::RunTakeoff& run = order_.runs[index];
            checkProfileIndex(run.profile, "runs", index);
            if (run.firstPiece > order_.pieces.size() ||
                run.pieceCount > order_.pieces.size() - run.firstPiece)
                report(at("runs", index, "piece_count"), std::to_string(run.pieceCount),
                       "pieces that are there; there are " + std::to_string(order_.pieces.size()));
        }
    }
    void checkPieces()
    {
        std::set<std::string_view> marks;
        for (std::size_t index = 0; index < order_.pieces.size(); ++index) {
            checkProfileIndex(order_.pieces[index].profile, "pieces", index);
            if (!marks.insert(order_.pieces[index].mark).second)
                report(at("pieces", index, "mark"), "a mark used before", "a mark of its own for each piece");
        }
    }

    const pieces::Order& order_;
    Errors& errors_;
};

std::string formulasIn(const Extras& extras)
{
    std::string text;
    if (const auto found = extras.members.find(formulasMember); found != extras.members.end())
        writeJson(found->second, text);
    return text;
}

FormulaBook bookFor(const Extras& extras)
{
    const auto found = extras.members.find(formulasMember);
    return found == extras.members.end() ? FormulaBook() : FormulaBook(found->second);
}

} // namespace

void checkProfile(const trim::Profile& profile, const std::string& place, Errors& errors)
{
    if (profile.bends.size() + 1 != profile.legs.size())
        errors.push_back({place + "/bends", std::to_string(profile.bends.size()) + " bends",
                          "one between each two of " + std::to_string(profile.legs.size()) + " legs"});
}

Result<OrderDocument> readOrder(std::string_view text)
{
    const Result<Json> members = openDocument(text, kinds::order);
    if (!members)
        return members.errors();
    Reading reading;
    FormulaReader formulas(*members, reading.errors);
    reading.formulas = &formulas;
    FormulaBook book;
    Writing again;
    again.formulas = &book;
    auto order = takeDocument<pieces::Order>(
        *members, [](const pieces::Order& read, Errors& errors) { OrderCheck(read, errors).check(); },
        std::move(reading), std::move(again));
    // A list of formulas that says no more and no less than we would make again.
    if (order && formulasIn(order->extras) == book.written())
        order->extras.members.erase(formulasMember);
    return order;
}

std::string writeOrder(const OrderDocument& order, Layout layout)
{
    FormulaBook book = bookFor(order.extras);
    Writing out;
    out.formulas = &book;
    WriteFields fields(out);
    describe(fields, order.value);
    const std::string formulas = book.written();
    Members members = fields.members();
    members.emplace(formulasMember, formulas);
    return closeDocument(kinds::order, members, order.extras, layout);
}

std::string revisionHash(const OrderDocument& order)
{
    return sha256(writeOrder(order, Layout::Canonical));
}

OrderDocument nextRevision(const OrderDocument& order)
{
    OrderDocument next = order;
    next.value.revision += 1;
    next.value.previousHash = revisionHash(order);
    return next;
}

} // namespace lapwright::documents
