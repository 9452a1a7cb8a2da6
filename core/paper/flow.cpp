#include "core/paper/flow.h"

#include "core/report/theme.h"

namespace ledgerboard::paper {

namespace {

constexpr double kFootRoom = 110;  // for "Page n of m"

}  // namespace

Flow::Flow(Pen& pen, const Sheet& sheet, std::string foot, std::size_t pages)
    : pen_(pen),
      sheet_(sheet),
      foot_(std::move(foot)),
      pages_(pages),
      left_(sheet.margin),
      width_(sheet.width - 2 * sheet.margin),
      top_(sheet.margin),
      y_(sheet.margin),
      bottom_(sheet.height - sheet.margin - sheet.foot) {}

void Flow::need(double height) {
    constexpr double kHair = 0.01;  // sums of the same heights may differ by less
    if (height > room() + kHair && !isAtTop()) {
        nextPage();
    }
}

void Flow::nextPage() {
    writeFoot();
    pen_.nextPage();
    ++page_;
    y_ = top_;
}

void Flow::writeFoot() {
    const double y = sheet_.height - sheet_.margin - 12;
    const double width = sheet_.width - 2 * sheet_.margin;
    pen_.line(sheet_.margin, y - 4, sheet_.margin + width, y - 4, 0.5, {report::kLight.rule});
    pen_.write(pen_.layLine(foot_, {7.5, Face::Words, Tone::Pencil}, width - kFootRoom),
               sheet_.margin, y);
    pen_.write(pen_.lay("Page " + std::to_string(page_) + " of " + std::to_string(pages_),
                        {7.5, Face::Words, Tone::Pencil, Side::Right}, kFootRoom),
               sheet_.margin + width - kFootRoom, y);
}

}  // namespace ledgerboard::paper
