#include "order_preview.h"

#include "acts/words.h"
#include "done_words.h"
#include "drawing/plan_picture.h"
#include "drawing/profile_picture.h"
#include "pieces/summary.h"
#include "print/words.h"
#include "shop.h"
#include "storage/finding_help.h"
#include "text.h"

#include <algorithm>
#include <utility>

namespace lapwright::model {

namespace {

look::Picture planOf(const pieces::Order& order, const Style& style)
{
    drawing::PlanPicture picture;
    picture.style = style;
    picture.marks = pieces::marksByRun(order);
    return look::Picture(drawing::planPicture(order.job, picture));
}

std::int64_t piecesFrom(const pieces::Order& order, std::size_t profile)
{
    std::int64_t count = 0;
    for (const pieces::Piece& piece : order.pieces)
        count += piece.profile == profile ? piece.count : 0;
    return count;
}

QString handOf(pieces::Hand hand)
{
    if (hand == pieces::Hand::None)
        return {};
    return hand == pieces::Hand::Left ? OrderPreview::tr("left hand") : OrderPreview::tr("right hand");
}

} // namespace

QList<Row> rowsOf(const rules::Findings& findings, const Style& style)
{
    QList<Row> rows;
    for (const rules::Finding& finding : findings) {
        Row row;
        row.id = QString::number(rows.size());
        row.weight = static_cast<int>(finding.weight);
        row.detail = said(finding.place);
        row.title = shown(say(finding.statement, style));
        const std::string remedy = say(finding.remedy, style);
        if (!remedy.empty())
            row.title += u' ' + shown(remedy);
        if (finding.clause)
            row.trailing = shown(finding.clause->number + ", " + finding.clause->edition);
        if (const auto help = storage::helpFor(finding.code))
            row.help = said(help->reason) + u' ' + said(help->remedy);
        rows.append(row);
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const Row& one, const Row& other) { return one.weight > other.weight; });
    return rows;
}

OrderPreview::OrderPreview(Shop& shop)
    : QObject(&shop), shop_(shop), order_(std::make_shared<const lapwright::pieces::Order>())
{
}

void OrderPreview::clear()
{
    show(std::make_shared<const lapwright::pieces::Order>(), {});
}

void OrderPreview::show(std::shared_ptr<const lapwright::pieces::Order> order, const rules::Findings& told,
                        const std::map<std::string, acts::Done>& done)
{
    const bool same = order->id == order_->id;
    order_ = std::move(order);
    const Style style = shop_.style();
    plan_ = empty() ? look::Picture() : planOf(*order_, style);
    QList<Row> profiles, pieces;
    for (std::size_t at = 0; at < order_->profiles.size(); ++at) {
        const pieces::OrderedProfile& profile = order_->profiles[at];
        Row row{exact(profile.id),
                shown(profile.id + "  ") + said(profile.profile.name),
                shop_.describe(profile.material),
                counted(piecesFrom(*order_, at), "piece"),
                tr("girth %1").arg(shown(write(profile.girth, style))),
                {},
                shop_.swatchOf(profile.material.colour),
                -1};
        profiles.append(row);
    }
    for (const pieces::Piece& piece : order_->pieces) {
        const pieces::OrderedProfile& profile = order_->profiles[piece.profile];
        Row row;
        row.id = exact(piece.mark);
        row.title = shown(piece.mark);
        row.detail =
            said(profile.profile.name) +
            (piece.hand == pieces::Hand::None ? QString() : QStringLiteral(", ") + handOf(piece.hand));
        if (const auto last = done.find(piece.mark); last != done.end())
            row.detail += behind(last->second);
        row.trailing = shown(write(piece.length, style));
        row.trailingDetail = counted(piece.count, "piece");
        pieces.append(row);
    }
    rules::Findings all = told;
    all.insert(all.end(), order_->findings.begin(), order_->findings.end());
    profiles_.setRows(profiles);
    pieces_.setRows(pieces);
    findings_.setRows(rowsOf(all, style));
    if (!same || profiles_.indexOf(currentProfile_) < 0)
        currentProfile_ = profiles_.idAt(0);
    drawProfile();
    emit changed();
}

QString OrderPreview::title() const
{
    return shown(order_->job.name);
}

QString OrderPreview::subtitle() const
{
    if (empty())
        return {};
    QStringList parts = {shown(order_->job.customer), shown(order_->job.address),
                         tr("revision %1").arg(order_->revision)};
    if (!order_->job.wantedBy.empty())
        parts.append(tr("wanted by %1").arg(dayWords(order_->job.wantedBy)));
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

void OrderPreview::setCurrentProfile(const QString& id)
{
    if (id == currentProfile_)
        return;
    currentProfile_ = id;
    drawProfile();
}

void OrderPreview::drawProfile()
{
    profile_ = look::Picture();
    for (const pieces::OrderedProfile& profile : order_->profiles) {
        if (exact(profile.id) != currentProfile_)
            continue;
        drawing::ProfilePicture picture;
        picture.thickness = profile.thickness;
        picture.metal = print::metalInWords(profile.material);
        picture.colour = shop_.colourOf(profile.material.colour);
        picture.colourName = profile.material.colour;
        picture.girth = profile.girth;
        picture.style = shop_.style();
        profile_ = look::Picture(drawing::profilePicture(profile.profile, picture));
    }
    emit profileChanged();
}

} // namespace lapwright::model
