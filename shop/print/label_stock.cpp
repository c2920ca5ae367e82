#include "print/label.h"

namespace lapwright::print {

namespace {

constexpr Length tenthsOfMillimetre(std::int64_t count)
{
    return Length::nanometres(count * 100'000);
}

LabelStock roll(const char* name, Length width, Length height)
{
    return {name, width, height, 1, 1, Length(), Length(), width, height, width, height};
}

} // namespace

const LabelStock& roll100By50()
{
    static const LabelStock stock = roll("100x50", Length::millimetres(100), Length::millimetres(50));
    return stock;
}

const LabelStock& roll4By2()
{
    static const LabelStock stock = roll("4x2", Length::inches(4), Length::inches(2));
    return stock;
}

const LabelStock& letterSheetOf10()
{
    static const LabelStock stock = {"sheet of 10, Letter",
                                     Length::inches(17) / 2,
                                     Length::inches(11),
                                     2,
                                     5,
                                     Length::inches(5) / 32,
                                     Length::inches(1) / 2,
                                     Length::inches(4),
                                     Length::inches(2),
                                     Length::inches(67) / 16,
                                     Length::inches(2)};
    return stock;
}

const LabelStock& a4SheetOf14()
{
    static const LabelStock stock = {"sheet of 14, A4",
                                     Length::millimetres(210),
                                     Length::millimetres(297),
                                     2,
                                     7,
                                     tenthsOfMillimetre(46),
                                     tenthsOfMillimetre(151),
                                     tenthsOfMillimetre(991),
                                     tenthsOfMillimetre(381),
                                     tenthsOfMillimetre(1017),
                                     tenthsOfMillimetre(381)};
    return stock;
}

} // namespace lapwright::print
