#include "model/plan_model.h"

#include "measure/rounding.h"
#include "model/words.h"
#include "speech/spoken.h"

#include <algorithm>
#include <utility>

namespace lapwright::field {

namespace {

/// Half a gloved finger tip on the screen: half of the 10 mm that touch targets have.
constexpr double fingerMillimetres = 6.0;
constexpr double leastPage = 30.0;
constexpr double mostPage = 2000.0;

} // namespace

void PlanModel::setPage(double widthMillimetres, double heightMillimetres)
{
    const Length width = nearestFromMillimetres(std::clamp(widthMillimetres, leastPage, mostPage));
    const Length height = nearestFromMillimetres(std::clamp(heightMillimetres, leastPage, mostPage));
    if (width == wish_.width && height == wish_.height)
        return;
    wish_.width = width;
    wish_.height = height;
    draw();
}

int PlanModel::runAt(QPointF page, double zoom) const
{
    const auto run = drawing::runAt(sketch_, {page.x(), page.y()}, fingerMillimetres / std::max(zoom, 1.0));
    return run ? static_cast<int>(*run) : -1;
}

void PlanModel::show(std::shared_ptr<const site::Chain> chain, const site::ClosureReport& report,
                     std::optional<std::size_t> chosen, const Style& style,
                     std::map<std::string, std::string> marks)
{
    if (chain == chain_ && chosen == wish_.chosen && sameStyle(style, wish_.style) && marks == wish_.marks)
        return;
    chain_ = std::move(chain);
    report_ = report;
    wish_.chosen = chosen;
    wish_.style = style;
    wish_.style.translation = spoken;
    wish_.marks = std::move(marks);
    draw();
}

void PlanModel::clear()
{
    show(nullptr, {}, std::nullopt, wish_.style);
}

void PlanModel::draw()
{
    sketch_ = chain_ ? drawing::planSketch(*chain_, report_, wish_) : drawing::PlanSketch();
    picture_ = sketch_.runs.empty() ? look::Picture() : look::Picture(sketch_.list);
    emit changed();
}

} // namespace lapwright::field
