#pragma once

#include "drawing/display_list.h"

#include <string>
#include <variant>
#include <vector>

/// What stands on a paper, before anybody knows where: blocks from top to bottom.
namespace lapwright::print {

/// Opens a part of the sheet.
struct Heading {
    std::string text;
};

enum class Tone { Plain, Strong, Faint, Caution };

struct Paragraph {
    std::string text;
    Tone tone = Tone::Plain;
};

/// Names with their values, two beside each other.
struct Fact {
    std::string name;
    std::string value;
};
struct Facts {
    std::vector<Fact> facts;
};

enum class Align { Left, Middle, Right };

struct Column {
    std::string title;
    /// Millimetres; 0 takes its share of what the others leave.
    double width = 0.0;
    Align align = Align::Left;
    double share = 1.0;
};

/// What a cell holds: text, a box to tick before it, or a frame to write in.
struct Cell {
    std::string text;
    Tone tone = Tone::Plain;
    enum class Kind { Text, Tick, Frame } kind = Kind::Text;
};

struct Row {
    std::vector<Cell> cells;
};

/// Rows under a band with a title, or without one. Rows of one group stay together where they can.
struct Group {
    std::string title;
    std::string note; ///< at the right end of the band
    std::vector<Row> rows;
};

/// Every row has a cell for each column.
struct Table {
    std::vector<Column> columns;
    std::vector<Group> groups;
    /// Rows are at least so high, millimetres: room to write by hand.
    double leastRowHeight = 6.0;
    /// Never goes on to the next page unless it is higher than one.
    bool together = false;
};

/// A picture at its own size; one that is larger than a page is made smaller.
struct Picture {
    drawing::DisplayList list;
};

/// A picture with a table to its right, never on two pages; the table below it where no page holds them so.
struct Beside {
    Picture picture;
    Table table;
};

/// Lines to sign on, each with what it is for below it.
struct Signatures {
    std::vector<std::string> captions;
};

struct Block {
    std::variant<Heading, Paragraph, Facts, Table, Picture, Beside, Signatures> content;
    /// Stands on the page where the next block begins.
    bool withNext = false;
};

/// One paper of one page or more.
struct Sheet {
    std::string title;   ///< "Load list", at the head of every page
    std::string subject; ///< "Larkfield House", beside it
    std::string foot;    ///< at the foot of every page: footOf()
    std::vector<Block> blocks;

    /// Headings always stand with what they open.
    void add(Heading heading) { blocks.push_back({std::move(heading), true}); }
    template <class Content>
    void add(Content content, bool withNext = false)
    {
        blocks.push_back({std::move(content), withNext});
    }
};

} // namespace lapwright::print
