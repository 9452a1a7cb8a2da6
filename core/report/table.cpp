#include "core/report/table.h"

#include <algorithm>
#include <numeric>
#include <optional>

#include "core/model/check.h"

namespace ledgerboard::report {

namespace {

constexpr std::size_t kIndent = 2;         // of the lines of a list after the first
constexpr std::size_t kLongestWhole = 12;  // longer words may be broken before anything else
constexpr std::size_t kNarrowestText = 6;  // no text column is squeezed below this

// How a table is laid out: the width of each column and the spaces between two.
struct Layout {
    std::vector<std::size_t> widths;
    std::size_t gap = 2;

    [[nodiscard]] std::size_t total() const {
        return std::accumulate(widths.begin(), widths.end(), std::size_t{0}) +
               gap * (widths.size() - 1);
    }
};

std::string bold(std::string_view text, const TableStyle& style) {
    return style.bold ? "\x1b[1m" + std::string(text) + "\x1b[0m" : std::string(text);
}

std::string withoutEndSpaces(std::string line) {
    while (!line.empty() && line.back() == ' ') {
        line.pop_back();
    }
    return line;
}

// The same table with every cell safe to show, and without columns that are empty throughout.
Table shownTable(const Table& table, Script script) {
    Table shown;
    shown.rows.resize(table.rows.size());
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        const bool isUsed =
            table.rows.empty() || std::any_of(table.rows.begin(), table.rows.end(),
                                              [c](const auto& row) { return !row.at(c).empty(); });
        if (!isUsed) {
            continue;
        }
        const auto& column = table.columns[c];
        shown.columns.push_back({shownText(column.heading, script), column.isFigure});
        for (std::size_t r = 0; r < table.rows.size(); ++r) {
            shown.rows[r].push_back(shownText(table.rows[r].at(c), script));
        }
    }
    return shown;
}

std::size_t longestWord(std::string_view text) {
    std::size_t longest = 0;
    while (!text.empty()) {
        const auto at = std::min(text.find(' '), text.size());
        longest = std::max(longest, columnsOf(text.substr(0, at)));
        text.remove_prefix(std::min(at + 1, text.size()));
    }
    return longest;
}

// As wide as the widest cell; the heading of figures breaks at its spaces, any other stays whole.
std::vector<std::size_t> naturalWidths(const Table& table) {
    std::vector<std::size_t> widths;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        const Column& column = table.columns[c];
        std::size_t widest =
            column.isFigure ? longestWord(column.heading) : columnsOf(column.heading);
        for (const auto& row : table.rows) {
            widest = std::max(widest, columnsOf(row[c]));
        }
        widths.push_back(std::max<std::size_t>(widest, 1));
    }
    return widths;
}

// The least width of each column: figures as they are, texts as their longest word, or
// kNarrowestText where words may be broken.
std::vector<std::size_t> leastWidths(const Table& table, const std::vector<std::size_t>& natural,
                                     bool breaksWords) {
    std::vector<std::size_t> least = natural;
    for (std::size_t c = 0; c < natural.size(); ++c) {
        const Column& column = table.columns[c];
        if (column.isFigure) {
            continue;
        }
        std::size_t word = kNarrowestText;
        if (!breaksWords) {
            word = longestWord(column.heading);
            for (const auto& row : table.rows) {
                word = std::max(word, std::min(longestWord(row[c]), kLongestWhole));
            }
        }
        least[c] = std::min(natural[c], word);
    }
    return least;
}

// Takes columns from the widest text column until the table fits; false where it cannot.
bool shrinkToFit(std::size_t width, const std::vector<std::size_t>& least, Layout& layout) {
    while (layout.total() > width) {
        std::size_t widest = least.size();
        for (std::size_t c = 0; c < least.size(); ++c) {
            if (layout.widths[c] > least[c] &&
                (widest == least.size() || layout.widths[c] > layout.widths[widest])) {
                widest = c;
            }
        }
        if (widest == least.size()) {
            return false;
        }
        --layout.widths[widest];
    }
    return true;
}

// Two spaces between columns, else one, else words broken too; none where nothing fits.
std::optional<Layout> layoutOf(const Table& table, std::size_t width) {
    struct Way {
        std::size_t gap;
        bool breaksWords;
    };

    const std::vector<std::size_t> natural = naturalWidths(table);
    for (const Way way : {Way{2, false}, Way{1, false}, Way{1, true}}) {
        Layout layout{natural, way.gap};
        if (shrinkToFit(width, leastWidths(table, natural, way.breaksWords), layout)) {
            return layout;
        }
    }
    return std::nullopt;
}

void printRow(const Table& table, const std::vector<std::string>& cells, const Layout& layout,
              bool isStrong, const TableStyle& style, std::string& out) {
    std::vector<std::vector<std::string>> cellLines;
    std::size_t tallest = 1;
    for (std::size_t c = 0; c < cells.size(); ++c) {
        cellLines.push_back(layout.widths[c] >= 2 ? wrapped(cells[c], layout.widths[c])
                                                  : std::vector<std::string>{cells[c]});
        tallest = std::max(tallest, cellLines.back().size());
    }
    for (auto& lines : cellLines) {
        // Headings stand on the rule below them.
        lines.insert(lines.begin(), isStrong ? tallest - lines.size() : 0, "");
    }
    for (std::size_t l = 0; l < tallest; ++l) {
        std::string line;
        for (std::size_t c = 0; c < cells.size(); ++c) {
            const std::string part = l < cellLines[c].size() ? cellLines[c][l] : "";
            line += table.columns[c].isFigure ? paddedLeft(part, layout.widths[c])
                                              : padded(part, layout.widths[c]);
            line += std::string(c + 1 < cells.size() ? layout.gap : 0, ' ');
        }
        line = withoutEndSpaces(std::move(line));
        out += (isStrong ? bold(line, style) : line) + "\n";
    }
}

// One "heading: cell" line for each cell that has something in it.
std::string printAsLists(const Table& table, const TableStyle& style) {
    std::string out;
    for (const auto& row : table.rows) {
        out += out.empty() ? "" : "\n";
        for (std::size_t c = 0; c < row.size(); ++c) {
            if (row[c].empty()) {
                continue;
            }
            std::string indent;
            for (const auto& line :
                 wrapped(table.columns[c].heading + ": " + row[c], style.width - kIndent)) {
                out += indent + line + "\n";
                indent = std::string(kIndent, ' ');
            }
        }
    }
    return out;
}

std::string printHeadingsAlone(const Table& table, const TableStyle& style) {
    std::string headings;
    for (const auto& column : table.columns) {
        headings += (headings.empty() ? "" : ", ") + column.heading;
    }
    std::string out;
    for (const auto& line : wrapped(headings, style.width)) {
        out += line + "\n";
    }
    return out;
}

bool looksLikeFormula(std::string_view cell) {
    return !cell.empty() &&
           std::string_view("=+-@\t\r").find(cell.front()) != std::string_view::npos;
}

std::string csvField(std::string_view cell, bool isFigure) {
    std::string text =
        !isFigure && looksLikeFormula(cell) ? "'" + std::string(cell) : std::string(cell);
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
        return text;
    }
    std::string out = "\"";
    for (const char c : text) {
        out += c == '"' ? "\"\"" : std::string(1, c);
    }
    return out + "\"";
}

}  // namespace

std::string printTable(const Table& table, const TableStyle& style) {
    model::require(style.width >= 20, "a table is printed 20 columns wide at least");
    const Table shown = shownTable(table, style.script);
    if (shown.columns.empty()) {
        return {};
    }
    const auto layout = layoutOf(shown, style.width);
    if (!layout) {
        return shown.rows.empty() ? printHeadingsAlone(shown, style) : printAsLists(shown, style);
    }
    std::string out;
    std::vector<std::string> headings;
    for (const auto& column : shown.columns) {
        headings.push_back(column.heading);
    }
    printRow(shown, headings, *layout, true, style, out);
    std::string rule;
    for (std::size_t k = 0; k < layout->total(); ++k) {
        rule += style.script == Script::Unicode ? "─" : "-";
    }
    out += rule + "\n";
    for (std::size_t r = 0; r < shown.rows.size(); ++r) {
        const bool isTotal = table.endsWithTotal && r + 1 == shown.rows.size() && r > 0;
        out += isTotal ? rule + "\n" : "";
        printRow(shown, shown.rows[r], *layout, isTotal, style, out);
    }
    return out;
}

std::string printCsv(const Table& table) {
    std::string out;
    auto line = [&out, &table](auto&& cellAt) {
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            out += (c == 0 ? "" : ",") + cellAt(c);
        }
        out += "\r\n";
    };
    line([&table](std::size_t c) { return csvField(table.columns[c].heading, false); });
    for (const auto& row : table.rows) {
        line([&](std::size_t c) { return csvField(row.at(c), table.columns[c].isFigure); });
    }
    return out;
}

}  // namespace ledgerboard::report
