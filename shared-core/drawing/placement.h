#pragma once

#include "drawing/display_list.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

/// Finds room for labels: every label is tried at a list of places, best first, against everything that is
/// already there.
namespace lapwright::drawing {

/// A label that wants a place near `target`.
struct LabelWish {
    std::string text;
    /// A second, smaller line under it; may be empty.
    std::string below = {};
    double size = 3.0;
    Point target;
    /// Where to try first: directions from the target (any length), best first.
    std::vector<Point> directions;
    /// Clear distance from the target to the label's box at the first try.
    double gap = 1.5;
    /// Further away than this the label gets a line to its target.
    double nearby = 3.0;
    Role role = Role::Label;
    bool bold = false;
    /// A line to the target should come within 60 degrees of this axis, from either end of it.
    std::optional<Point> approach = std::nullopt;
    /// No further from the target than this.
    double reach = 1e6;
    /// Lines this close to the target may be crossed to get at it.
    double ignore = 1.5;
    /// Where nothing else is left, the line to the target may cross others.
    bool mayCrossLines = true;
};

class Placement {
public:
    /// Labels stay inside `area`.
    explicit Placement(Rectangle area);

    /// Nothing may be put on these; labels keep `clearance` from them.
    void block(const Segment& segment);
    /// Labels keep off it; lines may cross it.
    void blockForLabels(const Shape& shape);
    void block(const Box& box);
    /// All lines and texts of a shape. A filled polygon blocks with its outline only.
    void block(const Shape& shape);
    void block(const std::vector<Shape>& shapes);

    /// Room for a box: inside the area, off every line and label.
    [[nodiscard]] bool isFree(const Box& box) const;
    /// The line keeps off labels; if `offLines`, it keeps off other lines too. Within `ignore` of its end a
    /// line may be met.
    [[nodiscard]] bool isFree(const Segment& segment, bool offLines, double ignore = 0.0) const;

    /// Puts a label, with a line to its target where it stands further away, and blocks what it covers. Tries
    /// the wished directions at the gap, then rings around the target up to its reach. Nothing is added
    /// and false is returned if there is no room anywhere.
    bool place(const LabelWish& wish, std::vector<Shape>& onto);

    static constexpr double clearance = 0.6;

private:
    struct Item {
        enum class Kind { Line, CrossableLine, Label } kind = Kind::Line;
        Segment segment; ///< of a line
        Box box;         ///< of a label
    };

    /// Whether `test` holds for any item in the cells that the rectangle touches; may try one twice.
    template <class Test>
    [[nodiscard]] bool anyNear(const Rectangle& where, Test test) const;
    void add(const Item& item, const Rectangle& where);
    [[nodiscard]] std::size_t column(double x) const;
    [[nodiscard]] std::size_t row(double y) const;
    /// How much is asked of a place: first everything, then leaders from anywhere, then across lines.
    enum class Care { Full, AnyApproach, AcrossLines };
    bool tryAt(const LabelWish& wish, const Box& box, Care care, std::vector<Shape>& onto);

    Rectangle area_;
    std::size_t columns_;
    std::size_t rows_;
    std::vector<Item> items_;
    std::vector<std::vector<std::size_t>> cells_;
};

/// Lines that a shape's strokes follow: circles and arcs as chords under 0.05 mm from the curve.
[[nodiscard]] std::vector<Segment> strokes(const Shape& shape);

} // namespace lapwright::drawing
