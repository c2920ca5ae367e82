#include "tones.h"

namespace lapwright::look {

namespace {

QColor rgb(QRgb value)
{
    return QColor(value);
}

/// Zinc in daylight, the deep green of weathered copper for what acts, bare copper for where we are.
Tones lightTones()
{
    Tones tones;
    tones.ground = rgb(0xE9ECE8);
    tones.panel = rgb(0xFBFCFA);
    tones.well = rgb(0xFFFFFF);
    tones.rule = rgb(0xCFD6D1);
    tones.edge = rgb(0x74807B);
    tones.ink = rgb(0x15211F);
    tones.inkMuted = rgb(0x4A5854);
    tones.action = rgb(0x0F5C52);
    tones.actionPressed = rgb(0x093F38);
    tones.onAction = rgb(0xFFFFFF);
    tones.quiet = rgb(0xDDE4E0);
    tones.quietPressed = rgb(0xBECAC4);
    tones.selected = rgb(0xCFE4DD);
    tones.onSelected = rgb(0x0A2F2A);
    tones.accent = rgb(0xA24A16);
    tones.focus = rgb(0xA24A16);
    tones.rail = rgb(0x1C2B2A);
    tones.onRail = rgb(0xC9D6D1);
    tones.railSelected = rgb(0x31524B);
    tones.onRailSelected = rgb(0xFFFFFF);
    tones.blocks = rgb(0x890003);
    tones.warns = rgb(0x925C07);
    tones.informs = rgb(0x1F4E79);
    tones.done = rgb(0x1E6233);
    tones.danger = rgb(0x9E1F14);
    tones.onDanger = rgb(0xFFFFFF);
    return tones;
}

Tones darkTones()
{
    Tones tones;
    tones.ground = rgb(0x111717);
    tones.panel = rgb(0x1B2424);
    tones.well = rgb(0x0D1212);
    tones.rule = rgb(0x354242);
    tones.edge = rgb(0x7C8B87);
    tones.ink = rgb(0xEAF0EC);
    tones.inkMuted = rgb(0xA7B6B0);
    tones.action = rgb(0x5EC4AE);
    tones.actionPressed = rgb(0x8CDCCB);
    tones.onAction = rgb(0x07201C);
    tones.quiet = rgb(0x2C3A39);
    tones.quietPressed = rgb(0x45585A);
    tones.selected = rgb(0x24473F);
    tones.onSelected = rgb(0xEAF6F1);
    tones.accent = rgb(0xEFA36C);
    tones.focus = rgb(0xFFB77E);
    tones.rail = rgb(0x0B1010);
    tones.onRail = rgb(0xB4C3BD);
    tones.railSelected = rgb(0x24473F);
    tones.onRailSelected = rgb(0xFFFFFF);
    tones.blocks = rgb(0xF48D76);
    tones.warns = rgb(0xF3C04F);
    tones.informs = rgb(0x8CC4F2);
    tones.done = rgb(0x85D69F);
    tones.danger = rgb(0xFF9A8B);
    tones.onDanger = rgb(0x330703);
    return tones;
}

/// White, black and the darkest of our colours: for a screen in the sun.
Tones sunlightTones()
{
    Tones tones = lightTones();
    tones.ground = rgb(0xFFFFFF);
    tones.panel = rgb(0xFFFFFF);
    tones.rule = rgb(0x6A6A6A);
    tones.edge = rgb(0x000000);
    tones.ink = rgb(0x000000);
    tones.inkMuted = rgb(0x2B2B2B);
    tones.action = rgb(0x00443C);
    tones.actionPressed = rgb(0x000000);
    tones.quiet = rgb(0xE4E8E5);
    tones.quietPressed = rgb(0xB2BDB8);
    tones.selected = rgb(0xBFE0D6);
    tones.onSelected = rgb(0x000000);
    tones.accent = rgb(0x7A2E00);
    tones.focus = rgb(0x7A2E00);
    tones.rail = rgb(0x000000);
    tones.onRail = rgb(0xFFFFFF);
    tones.railSelected = rgb(0xFFFFFF);
    tones.onRailSelected = rgb(0x000000);
    tones.blocks = rgb(0x9A2908);
    tones.warns = rgb(0x4F2300);
    tones.informs = rgb(0x003A6B);
    tones.done = rgb(0x0F5731);
    tones.danger = rgb(0x8A0F04);
    return tones;
}

/// Chalk on dark steel with lamp yellow for what acts: read from across a machine.
Tones shopFloorTones()
{
    Tones tones = darkTones();
    tones.ground = rgb(0x0A0E10);
    tones.panel = rgb(0x161D20);
    tones.well = rgb(0x000000);
    tones.rule = rgb(0x4A575C);
    tones.edge = rgb(0xA9B6BA);
    tones.ink = rgb(0xFFFFFF);
    tones.inkMuted = rgb(0xCBD6D9);
    tones.action = rgb(0xFFC94A);
    tones.actionPressed = rgb(0xFFE3A0);
    tones.onAction = rgb(0x1B1300);
    tones.quiet = rgb(0x263136);
    tones.quietPressed = rgb(0x48585F);
    tones.selected = rgb(0x3A3214);
    tones.onSelected = rgb(0xFFF3D0);
    tones.accent = rgb(0xFFC94A);
    tones.focus = rgb(0xFFFFFF);
    tones.rail = rgb(0x000000);
    tones.onRail = rgb(0xDCE5E7);
    tones.railSelected = rgb(0xFFC94A);
    tones.onRailSelected = rgb(0x1B1300);
    tones.blocks = rgb(0xFDA593);
    tones.warns = rgb(0xFFD166);
    tones.informs = rgb(0xA5D5FA);
    tones.done = rgb(0x96EFC1);
    tones.danger = rgb(0xFFA799);
    tones.onDanger = rgb(0x2B0400);
    return tones;
}

} // namespace

Tones tonesOf(Scheme scheme)
{
    switch (scheme) {
    case Scheme::Light:
        return lightTones();
    case Scheme::Dark:
        return darkTones();
    case Scheme::Sunlight:
        return sunlightTones();
    case Scheme::ShopFloor:
        return shopFloorTones();
    }
    return lightTones();
}

} // namespace lapwright::look
