// How are rows shown: as a table that fits the terminal, or as a CSV file?
//
// The same Table feeds both. Cells are text as people read it; a column says whether its cells are
// figures, which stand at the right.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/report/plain_text.h"

namespace ledgerboard::report {

struct Column {
    std::string heading;
    bool isFigure = false;
};

struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<std::string>> rows;  // each as long as columns
    bool endsWithTotal = false;  // the last row adds up the others: a rule stands before it
};

// Where it is shown. `bold` is for a terminal that knows it; the headings use it.
struct TableStyle {
    std::size_t width = 80;  // columns of the terminal
    Script script = Script::Unicode;
    bool bold = false;
};

// The table in lines no wider than style.width, each ended by a line break: headings, a rule, the
// rows. Where it is too wide, the widest text columns give way first and their cells wrap within
// the column; then the space between columns, last the words themselves. Figures stay whole, and
// their headings break at spaces only. Where even so there is no room, each row is printed as a
// list of "heading: cell" lines instead, rows parted by an empty line. Columns that are empty in
// every row are left out where there are rows. No rows: the headings and the rule. No columns:
// empty.
// Requires: each row as long as columns; style.width >= 20.
[[nodiscard]] std::string printTable(const Table& table, const TableStyle& style);

// As CSV (RFC 4180: fields with a comma, a quote or a line break in double quotes, quotes doubled,
// lines ended by CR LF), in UTF-8 without a byte-order mark, headings first, every column present.
// A text cell that a spreadsheet would take for a formula (it begins with = + - @, a tab or a
// carriage return) gets an apostrophe in front, which whoever reads the file back takes off again;
// figures are left as they are.
[[nodiscard]] std::string printCsv(const Table& table);

}  // namespace ledgerboard::report
