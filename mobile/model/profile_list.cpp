#include "drawing/profile_picture.h"
#include "model/colours.h"
#include "model/order_model.h"
#include "model/words.h"
#include "speech/spoken.h"

namespace lapwright::field {

namespace {

/// The first run that has the profile, and the trim it was chosen as there.
std::pair<std::string, const site::TrimChoice*> firstOf(const pieces::Order& order, std::size_t profile)
{
    for (const pieces::RunTakeoff& taken : order.runs)
        if (taken.profile == profile)
            for (const site::Chain& chain : order.job.chains)
                for (const site::Run& run : chain.runs)
                    for (const site::TrimChoice& choice : run.trims)
                        if (run.id == taken.run && choice.trim == taken.trim)
                            return {run.id, &choice};
    return {};
}

} // namespace

int ProfileList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant ProfileList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case IdRole:
        return row.id;
    case Qt::DisplayRole:
    case TrimRole:
        return row.trim;
    case GirthRole:
        return row.girth;
    case MaterialRole:
        return row.material;
    case PiecesRole:
        return static_cast<int>(row.pieces);
    case LapRole:
        return row.lap;
    case RunRole:
        return row.run;
    case TemplateRole:
        return row.templateId;
    case ColourRole:
        return row.colour;
    case PictureRole:
        return QVariant::fromValue(row.picture);
    default:
        return {};
    }
}

QHash<int, QByteArray> ProfileList::roleNames() const
{
    return {{IdRole, "profileId"},  {TrimRole, "trimName"},  {GirthRole, "girth"}, {MaterialRole, "material"},
            {PiecesRole, "pieces"}, {LapRole, "lap"},        {RunRole, "run"},     {TemplateRole, "template"},
            {ColourRole, "colour"}, {PictureRole, "picture"}};
}

void ProfileList::show(const pieces::Order& order, const pieces::Catalogue& catalogue, const Style& style)
{
    beginResetModel();
    rows_.clear();
    for (std::size_t i = 0; i < order.profiles.size(); ++i) {
        const pieces::OrderedProfile& profile = order.profiles[i];
        drawing::ProfilePicture wish;
        wish.thickness = profile.thickness;
        wish.colour = colourNamed(profile.material.colour);
        wish.colourName = profile.material.colour;
        wish.girth = profile.girth;
        wish.style = style;
        wish.style.translation = spoken;
        wish.framed = false;
        wish.width = Length::millimetres(96);
        wish.height = Length::millimetres(72);
        const auto metal = catalogue.metals.find(profile.material.metal);
        const auto trim = catalogue.trims.find(profile.profile.trim);
        wish.metal = spoken(metal == catalogue.metals.end() ? profile.material.metal : metal->second.name) +
                     ", " + spokenWhole(profile.material.gauge);
        Row row{field::shown(profile.id),
                named(profile.profile.name),
                field::shown(write(profile.girth, style)),
                field::shown(wish.metal),
                {},
                {},
                exact(profile.profile.trim),
                0,
                QColor(wish.colour.red, wish.colour.green, wish.colour.blue),
                look::Picture(drawing::profilePicture(profile.profile, wish))};
        if (const auto [run, choice] = firstOf(order, i);
            choice != nullptr && trim != catalogue.trims.end()) {
            row.run = exact(run);
            row.lap = field::shown(write(trim::lapOf(trim->second, *choice), style));
        }
        for (const pieces::Piece& piece : order.pieces)
            row.pieces += piece.profile == i ? piece.count : 0;
        rows_.push_back(std::move(row));
    }
    endResetModel();
}

} // namespace lapwright::field
