// Where on which sheet does what comes next stand?
//
// A flow goes down the sheets with a pen. Lifted, it only measures. Used by pdf.cpp and
// table_flow.cpp. Units: points.
#pragma once

#include <string>

#include "core/paper/pen.h"

namespace ledgerboard::paper {

struct Sheet {
    double width = 0;
    double height = 0;
    double margin = 45;
    double foot = 26;   // kept free above the margin for the foot
    double body = 9.5;  // size of ordinary letters
    double pad = 2.6;   // above and below a row of a table
};

class Flow {
  public:
    // `pages` is what the foot says; 0 while it isn't known. Requires: pen and sheet outlive it.
    Flow(Pen& pen, const Sheet& sheet, std::string foot, std::size_t pages);

    [[nodiscard]] Pen& pen() { return pen_; }

    [[nodiscard]] const Sheet& sheet() const { return sheet_; }

    // Of the column that is filled now.
    [[nodiscard]] double left() const { return left_; }

    [[nodiscard]] double width() const { return width_; }

    [[nodiscard]] double y() const { return y_; }

    // What is left of the sheet.
    [[nodiscard]] double room() const { return bottom_ - y_; }

    // Of an empty sheet.
    [[nodiscard]] double wholeRoom() const {
        return sheet_.height - sheet_.foot - 2 * sheet_.margin;
    }

    [[nodiscard]] bool isAtTop() const { return y_ <= top_; }

    void down(double by) { y_ += by; }

    // A gap, but not at the top of a sheet.
    void gap(double by) { y_ += isAtTop() ? 0 : by; }

    // The next sheet, where less than `height` is left and a new one has more.
    void need(double height);
    void nextPage();

    // The last foot.
    void end() { writeFoot(); }

    [[nodiscard]] std::size_t page() const { return page_; }

    // How high is what `fill` puts down, in a column of `width`, were there no end of the sheet?
    template <class Fill>
    [[nodiscard]] double measured(double width, const Fill& fill) {
        const Flow kept = *this;
        const bool wasUp = pen_.isUp();
        pen_.lift(true);
        width_ = width;
        top_ = y_ = 0;
        bottom_ = kEndless;
        fill();
        const double height = y_;
        restore(kept);
        pen_.lift(wasUp);
        return height;
    }

    // `fill` in a column of the sheet from where the flow is; comes back to the whole width, at the
    // same height. Returns where the column ended.
    template <class Fill>
    double inColumn(double left, double width, const Fill& fill) {
        const Flow kept = *this;
        left_ = left;
        width_ = width;
        top_ = y_;  // what begins a column begins it as it begins a sheet
        fill();
        const double ended = y_;
        restore(kept);
        return ended;
    }

    void moveTo(double y) { y_ = y; }

  private:
    static constexpr double kEndless = 1e9;

    void writeFoot();

    void restore(const Flow& kept) {
        left_ = kept.left_;
        width_ = kept.width_;
        top_ = kept.top_;
        y_ = kept.y_;
        bottom_ = kept.bottom_;
        page_ = kept.page_;
    }

    Pen& pen_;
    const Sheet& sheet_;
    std::string foot_;
    std::size_t pages_ = 0;
    std::size_t page_ = 1;
    double left_ = 0;
    double width_ = 0;
    double top_ = 0;
    double y_ = 0;
    double bottom_ = 0;
};

}  // namespace ledgerboard::paper
