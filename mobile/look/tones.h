#pragma once

#include <QColor>

namespace lapwright::look {

/// The colours of one theme, by what they mean on a screen. Pairs that carry text keep at least 4.5:1
/// (WCAG 2.1, 1.4.3), in sunlight and on the shop floor 7:1; edges of controls and the focus ring 3:1
/// (1.4.11). What tells the weight and state of things apart, blocks, warns, informs and done, stays apart
/// for who does not see red or green.
struct Tones {
    QColor ground; ///< behind everything
    QColor panel;  ///< what stands on the ground: rows, cards, bars
    QColor well;   ///< where something is typed
    QColor rule;   ///< lines that only divide
    QColor edge;   ///< outlines of controls
    QColor ink;
    QColor inkMuted;
    QColor action; ///< the one thing to press next
    QColor actionPressed;
    QColor onAction;
    QColor quiet; ///< other buttons
    QColor quietPressed;
    QColor selected;
    QColor onSelected;
    QColor accent; ///< copper: where we are, what is chosen
    QColor focus;
    QColor rail;
    QColor onRail;
    QColor railSelected;
    QColor onRailSelected;
    QColor blocks; ///< text and sign of a finding that blocks, on panel
    QColor warns;
    QColor informs;
    QColor done;
    QColor danger; ///< ground of a button that scraps or deletes
    QColor onDanger;
};

enum class Scheme { Light, Dark, Sunlight, ShopFloor };

[[nodiscard]] Tones tonesOf(Scheme scheme);

} // namespace lapwright::look
