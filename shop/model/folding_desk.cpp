#include "folding_desk.h"

#include "acts/fold_words.h"
#include "acts/kept_order.h"
#include "acts/making.h"
#include "acts/shop_stock.h"
#include "acts/words.h"
#include "drawing/fold_picture.h"
#include "shop.h"
#include "storage/piece_events.h"
#include "text.h"

#include <algorithm>
#include <map>
#include <utility>

namespace lapwright::model {

namespace {

using schedule::PieceState;

/// Time between two pictures of a step in motion, milliseconds.
constexpr int frameEvery = 50;

QString lotId(const storage::PieceInState& piece)
{
    return shown(piece.order + "/" + piece.piece.profile);
}

struct Waiting {
    std::int64_t pieces = 0;
    storage::PieceInState first;
};

} // namespace

struct FoldingDesk::Lot {
    pieces::Order order;
    std::size_t profile = 0;
    acts::FoldProgram program;
    std::optional<fold::FoldPictures> pictures;
};

FoldingDesk::FoldingDesk(Shop& shop) : Desk(shop)
{
    motion_.setInterval(frameEvery);
    connect(&motion_, &QTimer::timeout, this, &FoldingDesk::drawMotion);
}

FoldingDesk::~FoldingDesk() = default;

void FoldingDesk::reload()
{
    std::map<QString, Waiting> waiting;
    for (storage::PieceInState& piece : storage::piecesIn(shop().database(), PieceState::Cut)) {
        Waiting& lot = waiting[lotId(piece)];
        lot.pieces += piece.count;
        lot.first = std::move(piece);
    }
    QList<Row> rows;
    for (const storage::OrderSummary& order : storage::currentOrders(shop().database()))
        if (std::any_of(waiting.begin(), waiting.end(),
                        [&](const auto& lot) { return lot.second.first.order == order.id; }))
            for (const pieces::OrderedProfile& profile : profilesOf(order)) {
                const auto lot = waiting.find(shown(order.id + "/" + profile.id));
                if (lot == waiting.end())
                    continue;
                Row row;
                row.id = lot->first;
                row.title = shown(profile.id + "  " + profile.profile.name);
                row.detail = shown(order.jobName) + QStringLiteral(", ") + shop().describe(profile.material);
                row.trailing = counted(lot->second.pieces, "piece");
                row.trailingDetail = shown(order.wantedBy);
                row.swatch = shop().swatchOf(profile.material.colour);
                rows.append(row);
            }
    lots_.setRows(rows);
    if (lots_.indexOf(current_) < 0) {
        current_ = lots_.idAt(0);
        step_ = 0;
    }
    showLot();
}

const std::vector<pieces::OrderedProfile>& FoldingDesk::profilesOf(const storage::OrderSummary& order)
{
    Known& known = profiles_[order.id];
    if (known.revision != order.revision)
        known = {order.revision, acts::keptOrder(shop().database(), order.id).profiles};
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
    motion_.stop();
    lot_.reset();
    refusal_.clear();
    title_.clear();
    material_.clear();
    QList<Row> rows;
    for (const storage::PieceInState& piece : storage::piecesIn(shop().database(), PieceState::Cut)) {
        if (lotId(piece) != current_)
            continue;
        Row row;
        row.id = row.title = shown(piece.piece.mark);
        row.detail = shown(write(piece.piece.length, shop().style()));
        row.trailing = tr("%1 to fold").arg(piece.count);
        rows.append(row);
    }
    marks_.setRows(rows);
    if (marks_.indexOf(currentMark_) < 0)
        currentMark_ = marks_.idAt(0);
    if (!current_.isEmpty())
        planLot();
    draw();
    emit currentChanged();
    emit stepChanged();
}

void FoldingDesk::planLot()
{
    const qsizetype slash = current_.indexOf(u'/');
    auto lot = std::make_unique<Lot>();
    lot->order = acts::keptOrder(shop().database(), current_.left(slash).toStdString());
    const std::string wanted = current_.mid(slash + 1).toStdString();
    const auto found =
        std::find_if(lot->order.profiles.begin(), lot->order.profiles.end(),
                     [&](const pieces::OrderedProfile& profile) { return profile.id == wanted; });
    if (found == lot->order.profiles.end())
        return;
    lot->profile = static_cast<std::size_t>(found - lot->order.profiles.begin());
    title_ = shown(acts::nameOf(lot->order, lot->profile));
    material_ = shop().describe(found->material);
    swatch_ = shop().swatchOf(found->material.colour);
    if (!programs_) {
        const auto stock = acts::standingStock(shop().database());
        auto programs = acts::FoldPrograms::forShop(
            stock.ok() && stock->has_value() ? (*stock)->value.machines : std::vector<std::string>(),
            shop().libraryFolders());
        if (!programs.ok())
            return shop().tellTrouble(programs.errors());
        programs_.emplace(*std::move(programs));
    }
    auto program = programs_->of(lot->order, lot->profile);
    if (!program.ok())
        return shop().tellTrouble(program.errors());
    if (!program->has_value())
        return;
    lot->program = **std::move(program);
    if (lot->program.plan() == nullptr) {
        QStringList lines;
        for (const std::string& line : acts::inWords(lot->program.outcome, shop().style()))
            lines.append(shown(line));
        refusal_ = lines.join(u'\n');
    } else {
        auto pictures = fold::FoldPictures::make(
            found->profile, lot->program.flat, lot->program.stuff.metal, lot->program.stuff.sheet,
            programs_->machines()[lot->program.machine], *lot->program.plan(), {});
        if (!pictures.ok())
            return shop().tellTrouble(pictures.errors());
        lot->pictures.emplace(*std::move(pictures));
    }
    lot_ = std::move(lot);
    step_ = std::min(step_, static_cast<std::size_t>(std::max(0, stepCount() - 1)));
}

const fold::FoldStep* FoldingDesk::step() const
{
    return lot_ && lot_->program.plan() != nullptr && step_ < lot_->program.plan()->steps.size()
               ? &lot_->program.plan()->steps[step_]
               : nullptr;
}

int FoldingDesk::stepCount() const
{
    return lot_ && lot_->program.plan() != nullptr ? static_cast<int>(lot_->program.plan()->steps.size()) : 0;
}

QString FoldingDesk::machine() const
{
    return lot_ && programs_ ? shown(programs_->machines()[lot_->program.machine].description().name)
                             : QString();
}

QString FoldingDesk::position() const
{
    return stepCount() == 0 ? QString() : tr("Step %1 of %2").arg(step_ + 1).arg(stepCount());
}

QString FoldingDesk::action() const
{
    return step() == nullptr ? QString() : shown(drawing::stepAction(*step()));
}

QString FoldingDesk::gauge() const
{
    return step() == nullptr ? QString() : shown(write(step()->gaugeSetting, shop().style()));
}

QString FoldingDesk::angle() const
{
    const fold::FoldStep* at = step();
    if (at == nullptr)
        return {};
    if (at->action == fold::Action::Flatten)
        return at->openGap > Length() ? shown(write(at->openGap, shop().style())) : tr("flat");
    return shown(write(at->angleToSet));
}

QString FoldingDesk::colourSide() const
{
    if (step() == nullptr)
        return {};
    return step()->colourUp ? tr("Colour up") : tr("Colour down");
}

QString FoldingDesk::handling() const
{
    if (step() == nullptr)
        return {};
    switch (step()->move) {
    case fold::Move::None:
        return step_ == 0 ? tr("Lay in") : tr("Push on");
    case fold::Move::TurnOver:
        return tr("Turn over");
    case fold::Move::Spin:
        return tr("Spin end for end");
    case fold::Move::TurnOverAndSpin:
        return tr("Turn over and spin");
    }
    return {};
}

QString FoldingDesk::handlingSign() const
{
    if (step() == nullptr || step()->move == fold::Move::None)
        return QStringLiteral("forward");
    return step()->move == fold::Move::Spin ? QStringLiteral("spin") : QStringLiteral("flip");
}

QString FoldingDesk::cautions() const
{
    const fold::FoldStep* at = step();
    if (at == nullptr)
        return {};
    QStringList lines;
    for (const Phrase& caution : at->cautions)
        lines.append(shown(say(caution, shop().style())));
    return lines.join(u' ');
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
    } else {
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

void FoldingDesk::pieceFolded()
{
    if (currentMark_.isEmpty() || !shop().mayMake())
        return;
    const acts::Which which{current_.left(current_.indexOf(u'/')).toStdString(), currentMark_.toStdString()};
    step_ = 0;
    shop().act([&] {
        const auto done = acts::foldSome(shop().database(), which, 1, shop().stamp());
        if (!done.ok())
            shop().tellTrouble(done.errors());
        else
            shop().tell(tr("One %1 folded").arg(shown(which.mark)));
    });
}

void FoldingDesk::pieceSpoilt()
{
    if (currentMark_.isEmpty() || !shop().mayMake())
        return;
    const acts::Which which{current_.left(current_.indexOf(u'/')).toStdString(), currentMark_.toStdString()};
    step_ = 0;
    shop().act([&] {
        const auto done =
            acts::scrap(shop().database(), which, PieceState::Cut, 1, "spoilt at the folder", shop().stamp());
        if (!done.ok())
            shop().tellTrouble(done.errors());
        else
            shop().tell(tr("One %1 scrapped; it goes into the next plan").arg(shown(which.mark)));
    });
}

void FoldingDesk::lotFolded()
{
    if (!shop().mayMake())
        return;
    const std::string order = current_.left(current_.indexOf(u'/')).toStdString();
    QStringList all;
    for (const Row& row : marks_.rows())
        all.append(row.id);
    step_ = 0;
    shop().act([&] {
        std::int64_t count = 0;
        for (const QString& mark : all) {
            const acts::Moved moved =
                acts::fold(shop().database(), {order, mark.toStdString()}, shop().stamp());
            count += moved.count;
            if (!moved.errors.empty())
                return shop().tellTrouble(moved.errors);
        }
        shop().tell(tr("%1 folded").arg(counted(count, "piece")));
    });
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
        const pieces::OrderedProfile& profile = lot_->order.profiles[lot_->profile];
        drawing::FoldStepPicture picture;
        picture.number = step_ + 1;
        picture.count = static_cast<std::size_t>(stepCount());
        picture.profile = profile.profile.name;
        picture.machine = machine().toStdString();
        picture.style = shop().style();
        picture.colour = shop().colourOf(profile.material.colour);
        picture.colourName = profile.material.colour;
        fold::StepPicture section = lot_->pictures->step(step_);
        if (moving())
            section.after = lot_->pictures->sectionAt(motionAt_).sheet;
        picture_ = look::Picture(drawing::foldStepPicture(*step(), section, picture));
    }
    emit pictureChanged();
}

} // namespace lapwright::model
