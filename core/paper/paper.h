// What stands on a paper that is printed or handed to others, as plain data, from top to bottom?
//
// A paper is made by week_paper.h, draw_paper.h and forms_paper.h from the structures that the
// other renderers show; pdf.h lays it out and computes nothing but places.
//
// Units: shares of a width, 0 to 1; everything else is text. Text is UTF-8 from anywhere: what is
// not UTF-8 shows as a replacement sign.
// Threads: plain values.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/model/date.h"
#include "core/model/percent.h"
#include "core/report/week_page.h"
#include "core/report/week_words.h"

namespace ledgerboard::paper {

enum class Size { Letter, A4 };

enum class Tone { Ink, Pencil, Ochre, Brick };

// The head of a paper: what it is, whose house, and what is said under it.
struct Title {
    std::string text;
    std::string over;   // above it, small; may be empty
    std::string under;  // may be empty
};

struct Heading {
    std::string text;
};

struct Paragraph {
    std::string text;
    bool isSmall = false;
    bool isBold = false;
};

// A sentence in a frame that nobody should pass over.
struct Notice {
    std::string text;
};

// How much of a table's width does a column take? A figure as much as its widest, on one line at
// the right; words share what is left.
enum class Fit { Words, Figure };

struct Column {
    std::string heading;
    Fit fit = Fit::Words;
    double share = 1;  // of what figures leave, against the other columns of words
};

struct Tape {
    model::Percent done;
    std::optional<model::Percent> planned;
};

struct Chip {
    std::string text;
    std::string ground;  // "#RRGGBB"
    std::string ink;
};

struct Cell {
    std::string text;
    std::string under;  // smaller, below the text; may be empty
    bool isBold = false;
    Tone tone = Tone::Ink;
    bool hasBox = false;   // to tick, before the text
    bool isBlank = false;  // a line to write on
    std::optional<Tape> tape;
    std::optional<Chip> chip;
};

// Requires of rows: as many cells as there are columns.
struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
    bool hasHead = true;  // the headings, again on each page it goes on to
    bool endsWithTotal = false;
};

// A JPEG picture and what it shows. One that can't be read is left out.
struct Picture {
    std::string jpeg;
    std::string caption;
};

struct Pictures {
    std::vector<Picture> pictures;
    std::size_t abreast = 3;
    double tallest = 200;  // points
};

// Names with a line to write on behind each, two abreast.
struct Fields {
    std::vector<std::string> names;
};

// Lines to write on, right across.
struct BlankLines {
    int count = 1;
};

// The figures at the head of the week's page, side by side.
struct Figures {
    std::vector<report::HeadFigure> figures;
};

struct LevelPicture {
    report::Level level;
};

struct Curve {
    std::vector<report::CurvePoint> points;
    model::Date today;
};

struct NewPage {};

struct Block;

// Two columns; one below the other where they don't fit on one page together.
struct Beside {
    std::vector<Block> left;
    std::vector<Block> right;
    double leftShare = 0.5;
};

struct Block {
    std::variant<Title, Heading, Paragraph, Notice, Table, Pictures, Fields, BlankLines, Figures,
                 LevelPicture, Curve, NewPage, Beside>
        part;
};

struct Paper {
    std::string title;     // as a PDF reader shows it
    std::string foot;      // at the foot of each page, before "page n of m"
    model::Date day;       // said to be made on; no clock is asked
    bool isClose = false;  // smaller letters and margins, for what is to fit on one sheet
    std::vector<Block> blocks;
};

}  // namespace ledgerboard::paper
