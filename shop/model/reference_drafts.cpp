#include "reference_drafts.h"

#include "acts/shop_library.h"
#include "documents/envelope.h"
#include "documents/machine.h"
#include "documents/rates.h"
#include "documents/rules.h"
#include "documents/schedule.h"
#include "documents/trim.h"
#include "drawing/machine_picture.h"
#include "example_trim.h"
#include "shop.h"
#include "storage/shop_state.h"

namespace lapwright::model {

namespace {

using Kind = ReferenceShelf::Kind;

/// One that is read by `read` and drawn by `draw`, in the shop's style.
template <class Read, class Draw>
DraftSubject drawn(Shop& shop, const documents::Kind& kind, const Read& read, const Draw& draw)
{
    DraftSubject subject;
    subject.schemaFile = kind.schemaFile;
    subject.draw = [&shop, read, draw](const std::string& text) -> Result<drawing::DisplayList> {
        const auto document = read(text);
        if (!document.ok())
            return document.errors();
        return draw(document->value, shop.style());
    };
    return subject;
}

drawing::DisplayList machinePicture(const fold::MachineDescription& description, const Style& style)
{
    drawing::MachinePicture picture;
    picture.style = style;
    // A description that is read is one that makes a machine.
    return drawing::machinePicture(fold::Machine::make(description).value(), picture);
}

drawing::DisplayList trimPicture(const trim::Template& trim, const Style& style)
{
    return drawExample(trim, style).value_or(drawing::DisplayList());
}

constexpr auto noPicture = [](const auto& /*value*/, const Style& /*style*/) {
    return drawing::DisplayList();
};

auto keptInLibrary(storage::LibraryKind library, Shop& shop)
{
    return [library, &shop](const std::string& text) -> std::vector<Error> {
        const auto added = acts::addToLibrary(library, text, shop.libraryFolders());
        if (!added.ok())
            return added.errors();
        shop.rereadLibrary();
        return {};
    };
}

template <class Read, class Write, class Save>
auto keptInDatabase(Shop& shop, const Read& read, const Write& write, const Save& save)
{
    return [&shop, read, write, save](const std::string& text) -> std::vector<Error> {
        const auto document = read(text);
        if (!document.ok())
            return document.errors();
        shop.database().write([&] { save(shop.database(), write(*document, documents::Layout::Readable)); });
        return {};
    };
}

DraftSubject subjectOf(Kind kind, Shop& shop)
{
    using namespace documents;
    switch (kind) {
    case Kind::Machine:
        return drawn(shop, kinds::machine, readMachine, machinePicture);
    case Kind::Trim:
        return drawn(shop, kinds::trim, readTrim, trimPicture);
    case Kind::Rules:
        return drawn(shop, kinds::rules, readRules, noPicture);
    case Kind::Floor: {
        DraftSubject floor = drawn(shop, kinds::floor, readFloor, noPicture);
        floor.save = keptInDatabase(shop, readFloor, writeFloor, storage::saveFloorDocument);
        return floor;
    }
    case Kind::Rates:
        break;
    }
    DraftSubject rates = drawn(shop, kinds::rates, readRates, noPicture);
    rates.save = keptInDatabase(shop, readRates, writeRates, storage::saveRatesDocument);
    return rates;
}

} // namespace

std::optional<storage::LibraryKind> libraryKind(Kind kind)
{
    switch (kind) {
    case Kind::Machine:
        return storage::LibraryKind::Machines;
    case Kind::Trim:
        return storage::LibraryKind::Trims;
    case Kind::Rules:
        return storage::LibraryKind::RuleSets;
    case Kind::Floor:
    case Kind::Rates:
        break;
    }
    return std::nullopt;
}

DraftSubject referenceDraft(Kind kind, const QString& title, Shop& shop)
{
    DraftSubject subject = subjectOf(kind, shop);
    subject.title = title;
    if (const auto library = libraryKind(kind))
        subject.save = keptInLibrary(*library, shop);
    return subject;
}

} // namespace lapwright::model
