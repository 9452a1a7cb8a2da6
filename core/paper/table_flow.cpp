#include "core/paper/table_flow.h"

#include <algorithm>
#include <numeric>

#include "core/paper/curve_drawing.h"
#include "core/report/theme.h"

namespace ledgerboard::paper {

namespace {

constexpr double kSmallest = 6;
constexpr double kGap = 9;             // between columns
constexpr double kBox = 9;             // to tick
constexpr double kBlank = 15;          // least height of a row with a line to write on
constexpr double kChip = 25;           // width of a chip
constexpr double kMostWhole = 0.5;     // of the width, for headings in one line
constexpr double kMostFigures = 0.72;  // of the width, where words share it

// In how many lines may the heading of a column of figures stand?
enum class Heads { OneLine, TwoLines, ByWord };

// Text of a cell, laid: its lines and the smaller ones below.
struct LaidCell {
    std::vector<Laid> parts;
    double indent = 0;

    [[nodiscard]] double height() const {
        return std::accumulate(parts.begin(), parts.end(), 0.0,
                               [](double sum, const Laid& part) { return sum + part.height(); });
    }
};

class TableFlow {
  public:
    TableFlow(Flow& flow, const Table& table)
        : flow_(flow), pen_(flow.pen()), table_(table), pad_(flow.sheet().pad) {
        setWidths();
    }

    void place() {
        std::vector<LaidCell> head;
        if (table_.hasHead) {
            head = laidHead();
        }
        const double headHeight = table_.hasHead ? heightOf(head) + pad_ : 0;
        const double first = table_.rows.empty() ? 0 : heightOf(laidRow(0)) + 2 * pad_ + headHeight;
        if (first <= flow_.wholeRoom()) {
            flow_.need(first);
        }
        placeHead(head, headHeight);
        for (std::size_t row = 0; row < table_.rows.size(); ++row) {
            placeRow(row, head, headHeight);
        }
        pen_.line(flow_.left(), flow_.y(), flow_.left() + flow_.width(), flow_.y(), 0.5,
                  {report::kLight.rule});
        flow_.down(4);
    }

  private:
    [[nodiscard]] bool isTotal(std::size_t row) const {
        return table_.endsWithTotal && row + 1 == table_.rows.size();
    }

    [[nodiscard]] Style styleOf(std::size_t column, const Cell& cell, bool isBold) const {
        return {size_, isBold || cell.isBold ? Face::Bold : Face::Words, cell.tone,
                table_.columns[column].fit == Fit::Figure ? Side::Right : Side::Left};
    }

    // A heading in as many lines as `heads` allows, broken where that makes it narrowest.
    [[nodiscard]] double headWidth(const std::string& heading, Heads heads) const {
        const auto widthOf = [&](const std::string& words) {
            return pen_.lay(words, headStyle(Side::Right), 0).width();
        };
        double narrowest = widthOf(heading);
        if (heads == Heads::OneLine) {
            return narrowest;
        }
        for (std::size_t at = heading.find(' '); at != std::string::npos;
             at = heading.find(' ', at + 1)) {
            const std::string rest = heading.substr(at + 1);
            narrowest = std::min(
                narrowest,
                std::max(widthOf(heading.substr(0, at)),
                         heads == Heads::TwoLines ? widthOf(rest) : headWidth(rest, heads)));
        }
        return narrowest;
    }

    // What a column of figures needs, at the size as it is.
    [[nodiscard]] double figureWidth(std::size_t column, Heads heads) const {
        double widest = 0;
        for (std::size_t row = 0; row < table_.rows.size(); ++row) {
            const Cell& cell = table_.rows[row][column];
            widest = std::max(widest,
                              pen_.lay(cell.text, styleOf(column, cell, isTotal(row)), 0).width());
        }
        return std::max(widest, headWidth(table_.columns[column].heading, heads)) + 1;
    }

    [[nodiscard]] Style headStyle(Side side) const {
        return {size_ * 0.85, Face::Words, Tone::Pencil, side};
    }

    // Sets the columns of figures to what they need; returns their sum.
    double setFigureWidths(Heads heads) {
        widths_.assign(table_.columns.size(), 0);
        for (std::size_t k = 0; k < widths_.size(); ++k) {
            widths_[k] = table_.columns[k].fit == Fit::Figure ? figureWidth(k, heads) : 0;
        }
        return std::accumulate(widths_.begin(), widths_.end(), 0.0);
    }

    void setWidths() {
        const std::size_t count = table_.columns.size();
        double shares = 0;
        for (const auto& column : table_.columns) {
            shares += column.fit == Fit::Words ? column.share : 0;
        }
        const double whole = flow_.width() - kGap * static_cast<double>(count - 1);
        const double most = whole * (shares > 0 ? kMostFigures : 1);
        size_ = flow_.sheet().body;
        double figures = setFigureWidths(Heads::OneLine);
        if (figures > whole * kMostWhole) {
            figures = setFigureWidths(Heads::TwoLines);
        }
        if (figures > most) {
            figures = setFigureWidths(Heads::ByWord);
        }
        while (figures > most && size_ > kSmallest) {
            size_ -= 0.5;
            figures = setFigureWidths(Heads::ByWord);
        }
        const double shrink = figures > most ? most / figures : 1;
        for (std::size_t k = 0; k < count; ++k) {
            widths_[k] = table_.columns[k].fit == Fit::Figure
                             ? widths_[k] * shrink
                             : (whole - figures * shrink) * table_.columns[k].share / shares;
        }
        if (shares == 0 && shrink == 1) {  // figures alone: spread over the whole
            for (double& width : widths_) {
                width += (whole - figures) / static_cast<double>(count);
            }
        }
    }

    [[nodiscard]] std::vector<LaidCell> laidHead() const {
        std::vector<LaidCell> head;
        for (std::size_t k = 0; k < table_.columns.size(); ++k) {
            const auto& column = table_.columns[k];
            LaidCell cell;
            cell.parts.push_back(pen_.lay(
                column.heading, headStyle(column.fit == Fit::Figure ? Side::Right : Side::Left),
                widths_[k]));
            head.push_back(std::move(cell));
        }
        return head;
    }

    [[nodiscard]] std::vector<LaidCell> laidRow(std::size_t row) const {
        std::vector<LaidCell> laid;
        for (std::size_t k = 0; k < table_.columns.size(); ++k) {
            const Cell& cell = table_.rows[row][k];
            LaidCell out;
            out.indent = (cell.hasBox ? kBox + 6 : 0) + (cell.chip ? kChip + 6 : 0);
            const double room = std::max(widths_[k] - out.indent, size_);
            if (!cell.text.empty()) {
                out.parts.push_back(pen_.lay(cell.text, styleOf(k, cell, isTotal(row)), room));
            }
            if (!cell.under.empty()) {
                Style style = styleOf(k, cell, false);
                style.size = size_ * 0.85;
                style.face = Face::Words;
                style.tone = Tone::Pencil;
                out.parts.push_back(pen_.lay(cell.under, style, room));
            }
            laid.push_back(std::move(out));
        }
        return laid;
    }

    [[nodiscard]] double heightOf(const std::vector<LaidCell>& cells) const {
        double height = size_;
        for (const auto& cell : cells) {
            height = std::max(height, cell.height());
        }
        return height;
    }

    void placeHead(const std::vector<LaidCell>& head, double height) {
        if (!table_.hasHead) {
            return;
        }
        double x = flow_.left();
        for (std::size_t k = 0; k < head.size(); ++k) {
            const Laid& text = head[k].parts.front();
            pen_.write(text, x, flow_.y() + height - pad_ - text.height());
            x += widths_[k] + kGap;
        }
        flow_.down(height);
    }

    void placeRow(std::size_t row, const std::vector<LaidCell>& head, double headHeight) {
        const std::vector<LaidCell> cells = laidRow(row);
        double height = heightOf(cells) + 2 * pad_;
        for (const Cell& cell : table_.rows[row]) {
            height = cell.isBlank ? std::max(height, kBlank + 2 * pad_) : height;
        }
        const auto again = [&] {
            flow_.nextPage();
            placeHead(head, headHeight);
        };
        if (height > flow_.room() && !flow_.isAtTop() &&
            (height <= flow_.wholeRoom() - headHeight || flow_.room() < 4 * size_)) {
            again();
        }
        pen_.line(flow_.left(), flow_.y(), flow_.left() + flow_.width(), flow_.y(),
                  isTotal(row) ? 1.1 : 0.5,
                  {isTotal(row) ? report::kLight.ink : report::kLight.rule});
        drawExtras(row, height);
        std::vector<std::size_t> from(cells.size(), 0);
        while (!writeLines(cells, from, height)) {
            again();
            height = size_;
        }
    }

    // As many lines of each cell as the sheet has room for; true once all are written. `least` is
    // how far down it goes even where there is less to write.
    bool writeLines(const std::vector<LaidCell>& cells, std::vector<std::size_t>& from,
                    double least) {
        const double room = flow_.room() - 2 * pad_;
        double lowest = 0;
        bool isAll = true;
        double x = flow_.left();
        for (std::size_t k = 0; k < cells.size(); ++k) {
            double down = 0;
            std::size_t line = 0;
            bool isFull = false;
            for (const Laid& part : cells[k].parts) {
                for (std::size_t own = 0; own < part.lines() && !isFull; ++own, ++line) {
                    if (line < from[k]) {
                        continue;
                    }
                    isFull = down > 0 && down + part.step() > room;
                    if (isFull) {
                        break;
                    }
                    pen_.write(part, own, x + cells[k].indent, flow_.y() + pad_ + down);
                    down += part.step();
                    from[k] = line + 1;
                }
            }
            isAll = isAll && !isFull;
            lowest = std::max(lowest, down);
            x += widths_[k] + kGap;
        }
        flow_.down(isAll ? std::max(lowest + 2 * pad_, std::min(least, flow_.room()))
                         : lowest + 2 * pad_);
        return isAll;
    }

    void drawExtras(std::size_t row, double height) {
        double x = flow_.left();
        for (std::size_t k = 0; k < table_.columns.size(); ++k) {
            const Cell& cell = table_.rows[row][k];
            const double top = flow_.y() + pad_;
            if (cell.hasBox) {
                pen_.frame(x + 0.5, top + 1.5, kBox, kBox, 0.9, {report::kLight.ink});
            }
            if (cell.isBlank) {
                pen_.line(x, flow_.y() + std::min(height, flow_.room()) - 1.2, x + widths_[k],
                          flow_.y() + std::min(height, flow_.room()) - 1.2, 0.7,
                          {report::kLight.ink});
            }
            if (cell.chip) {
                pen_.fill(x, top, kChip, 11.5, {cell.chip->ground}, 2);
                const Laid text = pen_.layLine(cell.chip->text,
                                               {7.5, Face::Bold, Tone::Ink, Side::Middle}, kChip);
                pen_.writeIn({cell.chip->ink}, text, x, top + 0.7);
            }
            if (cell.tape) {
                drawTape(pen_, *cell.tape, {x, top + 1, widths_[k], 8.5});
            }
            x += widths_[k] + kGap;
        }
    }

    Flow& flow_;
    Pen& pen_;
    const Table& table_;
    double pad_;
    double size_ = 0;
    std::vector<double> widths_;
};

}  // namespace

void placeTable(Flow& flow, const Table& table) {
    if (!table.columns.empty()) {
        TableFlow(flow, table).place();
    }
}

Table beginningOf(const Table& table) {
    Table beginning = table;
    beginning.rows.resize(std::min<std::size_t>(table.rows.size(), 1));
    return beginning;
}

}  // namespace ledgerboard::paper
