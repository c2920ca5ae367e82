#include "draft_form.h"

#include "form_words.h"
#include "row_changes.h"
#include "text.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <utility>

namespace lapwright::model {

namespace {

using documents::FormField;

constexpr lapwright::Length sixtyFourth = lapwright::Length::sixtyFourths(1);

bool sameField(const FormField& one, const FormField& other)
{
    return one.pointer == other.pointer && one.kind == other.kind;
}

/// The member that an error says is missing; nothing where it says something else.
std::optional<std::string> missingMember(const Error& error)
{
    static const std::string missing = "no member \"";
    if (error.found.rfind(missing, 0) != 0 || error.found.back() != '"')
        return std::nullopt;
    return error.found.substr(missing.size(), error.found.size() - missing.size() - 1);
}

/// What was found is the person's own.
QString inWords(const Error& error)
{
    if (missingMember(error) || error.found == "\"\"")
        return DraftForm::tr("has to be given");
    const QString expected = said(error.expected);
    return error.found.empty() ? DraftForm::tr("expected %1").arg(expected)
                               : DraftForm::tr("found %1, expected %2").arg(shown(error.found), expected);
}

/// The field an error is about: a member that is missing is said at the part it is missing from.
QString pointerOf(const Error& error)
{
    const auto missing = missingMember(error);
    return exact(missing ? error.place + '/' + *missing : error.place);
}

/// The field of that pointer; nullptr if there is none.
const FormField* fieldAt(const std::vector<FormField>& fields, const QString& pointer)
{
    const std::string sought = pointer.toStdString();
    const auto found = std::find_if(fields.begin(), fields.end(),
                                    [&](const FormField& field) { return field.pointer == sought; });
    return found == fields.end() ? nullptr : &*found;
}

/// Whether a pointer leads to that part or item or into it, or to one behind it that takes its number.
bool movesWith(const QString& pointer, const FormField& heading)
{
    const QString part = exact(heading.pointer);
    if (pointer == part || pointer.startsWith(part + u'/'))
        return true;
    const QString list = part.section(u'/', 0, -2) + u'/';
    return heading.kind == FormField::Kind::Item && pointer.startsWith(list) &&
           pointer.mid(list.size()).section(u'/', 0, 0).toInt() > part.mid(list.size()).toInt();
}

template <class Word>
QStringList listOf(const std::vector<std::string>& texts, const Word& word)
{
    QStringList list;
    for (const std::string& text : texts)
        list.append(word(text));
    return list;
}

} // namespace

DraftForm::DraftForm(QObject* parent) : QAbstractListModel(parent) {}

int DraftForm::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant DraftForm::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const FormField& field = fields_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case KindRole:
        return static_cast<int>(field.kind);
    case LabelRole:
    case Qt::DisplayRole:
        return field.kind == FormField::Kind::Item ? shown(field.text) : formWord(field.name);
    case HelpRole:
        return saidWhole(field.help);
    case ValueRole:
        return valueOf(field);
    case UnitRole:
        return formUnit(field.name, field.length || field.kind == FormField::Kind::Length, style_);
    case ChoicesRole:
        return listOf(field.choices, [](const std::string& choice) { return shown(choice); });
    case ChoiceWordsRole:
        return choiceWords(field);
    case TroubleRole:
        return troubleOf(field);
    case DepthRole:
        return static_cast<int>(field.depth);
    case GivenRole:
        return field.given;
    case NeededRole:
        return field.required;
    default:
        return {};
    }
}

QHash<int, QByteArray> DraftForm::roleNames() const
{
    return {{KindRole, "kind"},
            {LabelRole, "label"},
            {HelpRole, "help"},
            {ValueRole, "value"},
            {UnitRole, "unit"},
            {ChoicesRole, "choices"},
            {ChoiceWordsRole, "choiceWords"},
            {TroubleRole, "trouble"},
            {DepthRole, "depth"},
            {GivenRole, "given"},
            {NeededRole, "needed"}};
}

QString DraftForm::valueOf(const FormField& field) const
{
    if (const auto typed = unread_.find(exact(field.pointer)); typed != unread_.end())
        return typed->entered;
    if (!field.length || style_.unit == LengthUnit::Millimetres)
        return shown(field.text);
    // What was made in millimetres is no fraction of an inch.
    return field.length->inNanometres() % sixtyFourth.inNanometres() == 0
               ? shown(writeExact(*field.length, style_.unit))
               : tr("%1 mm").arg(shown(field.text));
}

QString DraftForm::troubleOf(const FormField& field) const
{
    const QString pointer = exact(field.pointer);
    const auto typed = unread_.find(pointer);
    return typed != unread_.end() ? typed->why : wrong_.value(pointer);
}

QStringList DraftForm::choiceWords(const FormField& field) const
{
    const auto found = offers_.find(field.pointer);
    if (found == offers_.end())
        return listOf(field.choices, formChoice);
    return listOf(field.choices, [&](const std::string& choice) {
        const auto offered = std::find_if(found->second.begin(), found->second.end(),
                                          [&](const Offered& one) { return one.value == choice; });
        return offered == found->second.end() ? shown(choice) : offered->word;
    });
}

void DraftForm::offer(std::vector<FormField>& fields) const
{
    for (FormField& field : fields) {
        const auto found = offers_.find(field.pointer);
        if (found == offers_.end())
            continue;
        field.kind = FormField::Kind::Choice;
        for (const Offered& offered : found->second)
            field.choices.push_back(offered.value);
        if (std::find(field.choices.begin(), field.choices.end(), field.text) == field.choices.end())
            field.choices.insert(field.choices.begin(), field.text);
    }
}

void DraftForm::show(const std::string& schemaFile, const QString& document, const Style& style,
                     const Offers& offers)
{
    const std::string text = document.toStdString();
    const bool otherUnits = style.unit != style_.unit;
    if (text == document_ && schemaFile == schemaFile_ && offers == offers_ && !otherUnits)
        return setStale(false);
    auto fields = documents::formOf(schemaFile, text);
    setStale(!fields.ok());
    if (stale_)
        return;
    document_ = text;
    schemaFile_ = schemaFile;
    style_ = style;
    offers_ = offers;
    offer(*fields);
    put(*std::move(fields));
    if (otherUnits)
        showAgain(0, count() - 1);
}

void DraftForm::setStale(bool stale)
{
    if (stale == std::exchange(stale_, stale))
        return;
    emit staleChanged();
}

void DraftForm::dropUnread()
{
    wrong_.clear();
    forget([](const QString&) { return true; });
}

template <class IsMeant>
void DraftForm::forget(const IsMeant& isMeant)
{
    bool forgot = false;
    for (auto typed = unread_.begin(); typed != unread_.end();) {
        const bool meant = isMeant(typed.key());
        typed = meant ? unread_.erase(typed) : std::next(typed);
        forgot = forgot || meant;
    }
    if (!forgot)
        return;
    showAgain(0, count() - 1);
    emit unreadChanged();
}

void DraftForm::showAgain(int first, int last)
{
    if (first <= last)
        emit dataChanged(index(first), index(last), {ValueRole, UnitRole, TroubleRole});
}

void DraftForm::put(std::vector<FormField> fields)
{
    // Where the document says something else now, that is meant.
    forget([&](const QString& pointer) {
        const FormField *before = fieldAt(fields_, pointer), *after = fieldAt(fields, pointer);
        return before == nullptr || after == nullptr || before->text != after->text;
    });
    const auto [first, gone, come] = look::rowChanges(fields_, fields, sameField);
    if (gone > 0) {
        beginRemoveRows({}, first, first + gone - 1);
        fields_.erase(fields_.begin() + first, fields_.begin() + first + gone);
        endRemoveRows();
    }
    if (come > 0) {
        beginInsertRows({}, first, first + come - 1);
        fields_.insert(fields_.begin() + first, fields.begin() + first, fields.begin() + first + come);
        endInsertRows();
    }
    for (std::size_t at = 0; at < fields.size(); ++at)
        if (!(fields_[at] == fields[at])) {
            fields_[at] = std::move(fields[at]);
            emit dataChanged(index(static_cast<int>(at)), index(static_cast<int>(at)));
        }
    emit countChanged();
}

void DraftForm::setErrors(const std::vector<Error>& errors)
{
    wrong_.clear();
    for (const Error& error : errors)
        wrong_.insert(pointerOf(error), inWords(error));
    showAgain(0, count() - 1);
}

Result<std::string> DraftForm::filled(const FormField& field, const QString& entered) const
{
    const bool empty = entered.trimmed().isEmpty();
    if (field.kind != FormField::Kind::Length || (empty && !field.required))
        return documents::filledIn(document_, field, entered.toStdString());
    const auto length = typedLength(entered, style_, field.pointer);
    if (!length.ok())
        return length.errors();
    return documents::filledIn(document_, field, *length);
}

QString DraftForm::unread() const
{
    const auto isUnread = [this](const FormField& field) { return unread_.contains(exact(field.pointer)); };
    const auto found = std::find_if(fields_.begin(), fields_.end(), isUnread);
    return found == fields_.end() ? QString() : tr("%1: %2").arg(formWord(found->name), troubleOf(*found));
}

void DraftForm::fill(int row, const QString& entered)
{
    if (!takes(row))
        return;
    const FormField field = fields_[static_cast<std::size_t>(row)];
    const auto document = filled(field, entered);
    const bool wasUnread = unread_.remove(exact(field.pointer)) > 0;
    if (!document.ok())
        unread_[exact(field.pointer)] = {entered, inWords(document.errors().front())};
    if (wasUnread || !document.ok()) {
        showAgain(row, row);
        emit unreadChanged();
    }
    if (document.ok())
        emit written(exact(*document));
}

void DraftForm::add(int row)
{
    if (!takes(row))
        return;
    const auto document = documents::withMore(schemaFile_, document_, fields_[static_cast<std::size_t>(row)]);
    if (document.ok())
        emit written(exact(*document));
}

void DraftForm::takeOut(int row)
{
    if (!takes(row))
        return;
    const FormField heading = fields_[static_cast<std::size_t>(row)];
    const auto document = documents::without(document_, heading);
    if (!document.ok())
        return;
    forget([&](const QString& pointer) { return movesWith(pointer, heading); });
    emit written(exact(*document));
}

} // namespace lapwright::model
