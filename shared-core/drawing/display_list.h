#pragma once

#include "drawing/geometry.h"
#include "measure/length.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// Pictures as one list of simple shapes on paper. Whoever shows them (SVG here, the screens, the printer)
/// only has to know these few shapes. Coordinates are millimetres on the page from its upper left corner, y
/// down.
namespace lapwright::drawing {

/// An opaque colour, 0 to 255 each.
struct Colour {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;

    friend bool operator==(const Colour&, const Colour&) = default;
};

/// What a shape means. Its colours follow from that (palette.h), and a reader may leave a layer out.
enum class Role {
    Sheet,        ///< metal in section
    ColouredFace, ///< the band along the painted face
    Dimension,
    AngleMark,
    Leader,
    Label,
    Title,
    Note,
    Caution,
    Machine,
    MovingBeam,
    Gauge,
    Movement, ///< turn over, spin, swing of the beam
    Run,
    Corner,
    Misclosure,
    Compass,
    Stock,
    Strip,
    Blank,
    Remnant,
    Waste
};

enum class Dash { Solid, Dashed, Dotted, DashDot };
enum class Hatch { None, Rising, Crossed, Dotted };

struct Stroke {
    double width = 0.25;
    Dash dash = Dash::Solid;
    /// The role's line colour if not given.
    std::optional<Colour> colour;

    friend bool operator==(const Stroke&, const Stroke&) = default;
};

/// The ground and a hatch over it; either may be missing.
struct Fill {
    bool ground = true;
    /// The role's fill colour if not given.
    std::optional<Colour> colour;
    Hatch hatch = Hatch::None;

    friend bool operator==(const Fill&, const Fill&) = default;
};

/// A line through two points or more; closed it is a polygon.
struct Path {
    Role role = Role::Sheet;
    std::vector<Point> points;
    bool closed = false;
    std::optional<Stroke> stroke;
    std::optional<Fill> fill;
};

struct Circle {
    Role role = Role::Dimension;
    Point centre;
    double radius = 0.0;
    std::optional<Stroke> stroke;
    std::optional<Fill> fill;
};

/// Part of a circle. Angles in radians as seen on the page: from +x towards −y (counter-clockwise to the
/// eye).
struct Arc {
    Role role = Role::AngleMark;
    Point centre;
    double radius = 0.0;
    double start = 0.0;
    double sweep = 0.0;
    Stroke stroke;
};

enum class Anchor { Start, Middle, End };

/// One line of text; `at` is on its base line.
struct Text {
    Role role = Role::Label;
    std::string text;
    Point at;
    double size = 3.0; ///< em size in millimetres
    Anchor anchor = Anchor::Start;
    bool bold = false;
    double rotation = 0.0; ///< radians, counter-clockwise to the eye, about `at`
};

using Shape = std::variant<Path, Circle, Arc, Text>;

/// A picture. Shapes are painted in their order.
struct DisplayList {
    Length width;
    Length height;
    std::string title;       ///< for people who cannot see the picture
    std::string description; ///< what it shows, in words
    std::vector<Shape> shapes;
};

} // namespace lapwright::drawing
