#include "library_draft.h"

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
#include "text.h"

namespace lapwright::model {

namespace {

/// Milliseconds without a key before what is written is judged: half a number is no mistake.
constexpr int pauseOfTyping = 300;

const documents::Kind& documentOf(LibraryDraft::Kind kind)
{
    switch (kind) {
    case LibraryDraft::Kind::Machine:
        return documents::kinds::machine;
    case LibraryDraft::Kind::Trim:
        return documents::kinds::trim;
    case LibraryDraft::Kind::Rules:
        return documents::kinds::rules;
    case LibraryDraft::Kind::Floor:
        return documents::kinds::floor;
    case LibraryDraft::Kind::Rates:
        break;
    }
    return documents::kinds::rates;
}

/// The picture of a document, if it has one.
template <class Document, class Draw>
Result<drawing::DisplayList> drawnFrom(const Result<Document>& document, const Draw& draw)
{
    if (!document.ok())
        return document.errors();
    return draw(document->value);
}

} // namespace

std::optional<storage::LibraryKind> libraryKind(LibraryDraft::Kind kind)
{
    switch (kind) {
    case LibraryDraft::Kind::Machine:
        return storage::LibraryKind::Machines;
    case LibraryDraft::Kind::Trim:
        return storage::LibraryKind::Trims;
    case LibraryDraft::Kind::Rules:
        return storage::LibraryKind::RuleSets;
    case LibraryDraft::Kind::Floor:
    case LibraryDraft::Kind::Rates:
        break;
    }
    return std::nullopt;
}

LibraryDraft::LibraryDraft(Shop& shop) : QObject(&shop), shop_(shop)
{
    pause_.setSingleShot(true);
    pause_.setInterval(pauseOfTyping);
    connect(&pause_, &QTimer::timeout, this, &LibraryDraft::judge);
    connect(&form_, &DraftForm::written, this, &LibraryDraft::setText);
    connect(&form_, &DraftForm::unreadChanged, this, &LibraryDraft::judged);
    connect(shop.preferences(), &Preferences::changed, this, [this] {
        if (open_)
            showForm(); // perhaps in other units
    });
}

QString LibraryDraft::trouble() const
{
    QStringList lines = {form_.unread(), trouble_};
    lines.removeAll(QString());
    return lines.join(u'\n');
}

void LibraryDraft::begin(Kind kind, const QString& title, const QString& text)
{
    open_ = true;
    kind_ = kind;
    title_ = title;
    text_ = text;
    picture_ = look::Picture();
    showForm();
    judge();
    emit opened();
    emit textChanged();
}

void LibraryDraft::setText(const QString& text)
{
    if (text == text_)
        return;
    text_ = text;
    showForm();
    pause_.start();
    emit textChanged();
}

void LibraryDraft::showForm()
{
    form_.show(std::string(documentOf(kind_).schemaFile), text_, shop_.style());
}

void LibraryDraft::judge()
{
    const auto made = drawn();
    trouble_ = made.ok() ? QString() : shown(made.errors());
    form_.setErrors(made.ok() ? std::vector<Error>() : made.errors());
    if (made.ok())
        picture_ = made->shapes.empty() ? look::Picture() : look::Picture(*made);
    emit judged();
}

Result<drawing::DisplayList> LibraryDraft::drawn() const
{
    const std::string text = text_.toStdString();
    const auto nothing = [](const auto&) { return drawing::DisplayList(); };
    switch (kind_) {
    case Kind::Machine:
        return drawnFrom(documents::readMachine(text), [this](const fold::MachineDescription& description) {
            drawing::MachinePicture picture;
            picture.style = shop_.style();
            // A description that is read is one that makes a machine.
            return drawing::machinePicture(fold::Machine::make(description).value(), picture);
        });
    case Kind::Trim:
        return drawnFrom(documents::readTrim(text), [this](const trim::Template& trim) {
            return drawExample(trim, shop_.style()).value_or(drawing::DisplayList());
        });
    case Kind::Rules:
        return drawnFrom(documents::readRules(text), nothing);
    case Kind::Floor:
        return drawnFrom(documents::readFloor(text), nothing);
    case Kind::Rates:
        return drawnFrom(documents::readRates(text), nothing);
    }
    return drawing::DisplayList();
}

template <class Document, class Write, class Save>
Result<bool> LibraryDraft::saveRead(const Result<Document>& read, const Write& write, const Save& save) const
{
    if (!read.ok())
        return read.errors();
    shop_.database().write([&] { save(shop_.database(), write(*read, documents::Layout::Readable)); });
    return true;
}

Result<bool> LibraryDraft::save() const
{
    const std::string text = text_.toStdString();
    if (const auto library = libraryKind(kind_)) {
        const auto added = acts::addToLibrary(*library, text, shop_.libraryFolders());
        if (!added.ok())
            return added.errors();
        return true;
    }
    if (kind_ == Kind::Floor)
        return saveRead(documents::readFloor(text), documents::writeFloor, storage::saveFloorDocument);
    return saveRead(documents::readRates(text), documents::writeRates, storage::saveRatesDocument);
}

bool LibraryDraft::keep()
{
    if (!open_ || !shop_.letsPlan())
        return false;
    if (const QString unread = form_.unread(); !unread.isEmpty()) {
        shop_.tellTrouble(unread);
        return false;
    }
    bool saved = false;
    shop_.act([&] {
        const auto done = save();
        if (!done.ok())
            return shop_.tellTrouble(done.errors());
        saved = true;
        shop_.rereadLibrary();
        shop_.tell(tr("%1 is kept as it stands now").arg(title_));
    });
    if (saved) {
        leave();
        emit kept();
    }
    return saved;
}

void LibraryDraft::leave()
{
    pause_.stop();
    open_ = false;
    text_.clear();
    trouble_.clear();
    picture_ = look::Picture();
    form_.dropUnread(); // its fields stay until the next document: a screen may still show them
    emit opened();
    emit textChanged();
    emit judged();
}

} // namespace lapwright::model
