#include "folding_desk.h"

#include "acts/fold_words.h"
#include "acts/kept_order.h"
#include "drawing/fold_picture.h"
#include "lot_id.h"
#include "shop.h"
#include "step_words.h"
#include "storage/shop_state.h"
#include "text.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace lapwright::model {

namespace {

using schedule::PieceState;

/// Time between two pictures of a step in motion, milliseconds.
constexpr int frameEvery = 50;

/// What of one profile of an order is to be folded.
struct Waiting {
    std::int64_t count = 0;
    site::Material material;
};

} // namespace

struct FoldingDesk::Lot {
    QString id;
    std::int64_t revision = 0;
    pieces::Order order;
    std::size_t profile = 0;
    std::optional<acts::FoldProgram> program; ///< missing: it could not be planned
    std::optional<fold::FoldPictures> pictures;

    [[nodiscard]] const pieces::OrderedProfile& ordered() const { return order.profiles[profile]; }
};

FoldingDesk::FoldingDesk(Shop& shop) : Desk(shop)
{
    motion_.setInterval(frameEvery);
    connect(&motion_, &QTimer::timeout, this, &FoldingDesk::drawMotion);
}

FoldingDesk::~FoldingDesk() = default;

void FoldingDesk::reload()
{
    cut_ = storage::piecesIn(shop().database(), PieceState::Cut);
    std::map<QString, Waiting> waiting;
    std::set<std::string> orders;
    for (const storage::PieceInState& piece : cut_) {
        Waiting& lot = waiting[lotId(piece.order, piece.piece.profile)];
        lot.material = {piece.piece.metal, piece.piece.gauge, piece.piece.colour};
        lot.count += piece.count;
        orders.insert(piece.order);
    }
    std::erase_if(profiles_, [&orders](const auto& known) { return orders.count(known.first) == 0; });
    QList<Row> rows;
    for (const storage::OrderSummary& order : storage::unfinishedOrders(shop().database())) {
        if (orders.count(order.id) == 0)
            continue;
        for (const auto& [profile, name] : profilesOf(order)) {
            const auto lot = waiting.find(lotId(order.id, profile));
            if (lot == waiting.end())
                continue;
            Row row;
            row.id = lot->first;
            row.title = shown(profile + "  ") + said(name);
            row.detail = shown(order.jobName) + QStringLiteral(", ") + shop().describe(lot->second.material);
            row.trailing = counted(lot->second.count, "piece");
            row.trailingDetail = dayWords(order.wantedBy);
            row.swatch = shop().swatchOf(lot->second.material.colour);
            rows.append(row);
        }
    }
    lots_.setRows(rows);
    if (lots_.indexOf(current_) < 0) {
        current_ = lots_.idAt(0);
        step_ = 0;
    }
    showLot();
}

const FoldingDesk::ProfileNames& FoldingDesk::profilesOf(const storage::OrderSummary& order)
{
    Known& known = profiles_[order.id];
    if (known.revision != order.revision)
        known = {order.revision, acts::keptProfileNames(shop().database(), order.id)};
    return known.profiles;
}

void FoldingDesk::setCurrent(const QString& lot)
{
    if (lot == current_)
        return;
    current_ = lot;
    step_ = 0;
    shop().attempt([this] { showLot(); });
}

void FoldingDesk::setCurrentMark(const QString& mark)
{
    if (mark == currentMark_)
        return;
    currentMark_ = mark;
    emit stepChanged();
}

void FoldingDesk::showLot()
{
    QList<Row> rows;
    for (const storage::PieceInState& piece : cut_) {
        if (lotId(piece.order, piece.piece.profile) != current_)
            continue;
        Row row;
        row.id = exact(piece.piece.mark);
        row.title = shown(piece.piece.mark);
        row.detail = shown(write(piece.piece.length, shop().style()));
        row.trailing = tr("%1 to fold").arg(piece.count);
        rows.append(row);
    }
    marks_.setRows(rows);
    if (marks_.indexOf(currentMark_) < 0)
        currentMark_ = marks_.idAt(0);
    planLot();
    draw();
    emit currentChanged();
    emit stepChanged();
}

void FoldingDesk::planLot()
{
    const std::string order = orderOf(current_);
    const auto revision = storage::currentRevision(shop().database(), order);
    if (lot_ && lot_->program && lot_->id == current_ && revision == lot_->revision && machinesStand())
        return;
    motion_.stop();
    lot_.reset();
    if (!revision)
        return;
    auto lot = std::make_unique<Lot>();
    lot->id = current_;
    lot->revision = *revision;
    lot->order = acts::keptOrder(shop().database(), order);
    const std::string wanted = profileOf(current_);
    const auto found =
        std::find_if(lot->order.profiles.begin(), lot->order.profiles.end(),
                     [&](const pieces::OrderedProfile& profile) { return profile.id == wanted; });
    if (found == lot->order.profiles.end())
        return;
    lot->profile = static_cast<std::size_t>(found - lot->order.profiles.begin());
    lot_ = std::move(lot);
    planSteps();
    step_ = std::min(step_, static_cast<std::size_t>(std::max(0, stepCount() - 1)));
}

bool FoldingDesk::machinesStand() const
{
    return machines_ == shop().machines() && library_ == shop().libraryVersion();
}

Result<bool> FoldingDesk::makePrograms()
{
    if (programs_ && machinesStand())
        return true;
    programs_.reset();
    machines_ = shop().machines();
    library_ = shop().libraryVersion();
    auto programs = acts::FoldPrograms::forShop(machines_, shop().libraryFolders());
    if (!programs.ok())
        return programs.errors();
    programs_.emplace(*std::move(programs));
    return true;
}

void FoldingDesk::planSteps()
{
    const auto made = makePrograms();
    if (!made.ok())
        return shop().tellTrouble(made.errors());
    auto program = programs_->of(lot_->order, lot_->profile);
    if (!program.ok())
        return shop().tellTrouble(program.errors());
    lot_->program = *std::move(program);
    if (plan() == nullptr)
        return;
    auto pictures = fold::FoldPictures::make(lot_->ordered().profile, lot_->program->flat,
                                             lot_->program->stuff.metal, lot_->program->stuff.sheet,
                                             programs_->machines()[lot_->program->machine], *plan(), {});
    if (!pictures.ok())
        return shop().tellTrouble(pictures.errors());
    lot_->pictures.emplace(*std::move(pictures));
}

QString FoldingDesk::title() const
{
    return lot_ ? tr("%1, %2").arg(shown(lot_->order.job.name),
                                   shown(lot_->ordered().id + " ") + said(lot_->ordered().profile.name))
                : QString();
}

QString FoldingDesk::material() const
{
    return lot_ ? shop().describe(lot_->ordered().material) : QString();
}

QColor FoldingDesk::swatch() const
{
    return lot_ ? shop().swatchOf(lot_->ordered().material.colour) : QColor(Qt::transparent);
}

QString FoldingDesk::refusal() const
{
    if (!lot_ || !lot_->program || plan() != nullptr)
        return {};
    QStringList lines;
    for (const std::string& line : acts::inWords(lot_->program->outcome, shop().style()))
        lines.append(shown(line));
    return lines.join(u'\n');
}

const fold::FoldPlan* FoldingDesk::plan() const
{
    return lot_ && lot_->program ? lot_->program->plan() : nullptr;
}

const fold::FoldStep* FoldingDesk::step() const
{
    return plan() != nullptr && step_ < plan()->steps.size() ? &plan()->steps[step_] : nullptr;
}

int FoldingDesk::stepCount() const
{
    return plan() == nullptr ? 0 : static_cast<int>(plan()->steps.size());
}

QString FoldingDesk::machine() const
{
    return lot_ && lot_->program && programs_
               ? said(programs_->machines()[lot_->program->machine].description().name)
               : QString();
}

QString FoldingDesk::position() const
{
    return stepCount() == 0 ? QString() : tr("Step %1 of %2").arg(step_ + 1).arg(stepCount());
}

QString FoldingDesk::action() const
{
    return step() == nullptr ? QString() : said(drawing::stepAction(*step()));
}

QString FoldingDesk::gauge() const
{
    return step() == nullptr ? QString() : shown(write(step()->gaugeSetting, shop().style()));
}

QString FoldingDesk::angle() const
{
    return step() == nullptr ? QString() : angleInWords(*step(), shop().style());
}

QString FoldingDesk::colourSide() const
{
    if (step() == nullptr)
        return {};
    return step()->colourUp ? tr("Colour up") : tr("Colour down");
}

QString FoldingDesk::handling() const
{
    return step() == nullptr ? QString() : handlingInWords(*step(), step_ == 0);
}

QString FoldingDesk::handlingSign() const
{
    return step() == nullptr ? QString() : signOfHandling(*step());
}

QString FoldingDesk::cautions() const
{
    return step() == nullptr ? QString() : cautionsInWords(*step(), shop().style());
}

QString FoldingDesk::counter() const
{
    const int at = marks_.indexOf(currentMark_);
    return at < 0 ? QString() : marks_.rows()[at].trailing;
}

void FoldingDesk::next()
{
    if (step_ + 1 < static_cast<std::size_t>(stepCount())) {
        ++step_;
        motion_.stop();
        draw();
        emit stepChanged();
    } else if (stepCount() > 0) {
        pieceFolded();
    }
}

void FoldingDesk::back()
{
    if (step_ == 0)
        return;
    --step_;
    motion_.stop();
    draw();
    emit stepChanged();
}

void FoldingDesk::startAgain()
{
    step_ = 0;
    motion_.stop();
}

void FoldingDesk::move()
{
    if (moving()) {
        motion_.stop();
        draw();
    } else if (lot_ && lot_->pictures) {
        motionAt_ = 0;
        while (motionAt_ < lot_->pictures->milliseconds() &&
               lot_->pictures->sectionAt(motionAt_).step < step_)
            motionAt_ += frameEvery;
        motion_.start();
    }
    emit pictureChanged();
}

void FoldingDesk::drawMotion()
{
    motionAt_ += frameEvery;
    if (!lot_ || !lot_->pictures || motionAt_ > lot_->pictures->milliseconds() ||
        lot_->pictures->sectionAt(motionAt_).step != step_)
        motion_.stop();
    draw();
}

void FoldingDesk::draw()
{
    picture_ = look::Picture();
    if (lot_ && lot_->pictures && step() != nullptr) {
        const pieces::OrderedProfile& profile = lot_->ordered();
        drawing::FoldStepPicture picture;
        picture.number = step_ + 1;
        picture.count = static_cast<std::size_t>(stepCount());
        picture.profile = profile.profile.name;
        picture.machine = machine().toStdString();
        picture.style = shop().style();
        picture.colour = shop().colourOf(profile.material.colour);
        picture.colourName = profile.material.colour;
        picture.framed = false;
        picture.width = Length::millimetres(200);
        picture.height = Length::millimetres(92);
        fold::StepPicture section = lot_->pictures->step(step_);
        if (moving())
            section.after = lot_->pictures->sectionAt(motionAt_).sheet;
        picture_ = look::Picture(drawing::foldStepPicture(*step(), section, picture));
    }
    emit pictureChanged();
}

} // namespace lapwright::model
