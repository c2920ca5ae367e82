#include "step_words.h"

#include "folding_desk.h"
#include "text.h"

#include <QStringList>

namespace lapwright::model {

QString angleInWords(const fold::FoldStep& step, const Style& style)
{
    if (step.action != fold::Action::Flatten)
        return shown(write(step.angleToSet));
    return step.openGap > Length() ? shown(write(step.openGap, style)) : FoldingDesk::tr("flat");
}

QString handlingInWords(const fold::FoldStep& step, bool first)
{
    switch (step.move) {
    case fold::Move::None:
        return first ? FoldingDesk::tr("Lay in") : FoldingDesk::tr("Push on");
    case fold::Move::TurnOver:
        return FoldingDesk::tr("Turn over");
    case fold::Move::Spin:
        return FoldingDesk::tr("Spin end for end");
    case fold::Move::TurnOverAndSpin:
        return FoldingDesk::tr("Turn over and spin");
    }
    return {};
}

QString signOfHandling(const fold::FoldStep& step)
{
    if (step.move == fold::Move::None)
        return QStringLiteral("forward");
    return step.move == fold::Move::Spin ? QStringLiteral("spin") : QStringLiteral("flip");
}

QString cautionsInWords(const fold::FoldStep& step, const Style& style)
{
    QStringList lines;
    for (const Phrase& caution : step.cautions)
        lines.append(shown(say(caution, style)));
    return lines.join(u' ');
}

} // namespace lapwright::model
