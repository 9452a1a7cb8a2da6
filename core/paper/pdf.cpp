#include "core/paper/pdf.h"

#include <algorithm>

#include "core/paper/curve_drawing.h"
#include "core/paper/flow.h"
#include "core/paper/table_flow.h"
#include "core/report/theme.h"

namespace ledgerboard::paper {

namespace {

constexpr double kColumnGap = 20;
constexpr double kWriteRoom = 22;  // to write by hand above a line
constexpr double kCaption = 7.5;
constexpr double kLeast = 90;  // of something longer than a sheet, to begin at the foot of one

Sheet sheetOf(Size size, bool isClose) {
    // US Letter 8.5 x 11 inches; A4 210 x 297 mm (ISO 216), to a hundredth of a point.
    Sheet sheet = size == Size::Letter ? Sheet{612, 792} : Sheet{595.28, 841.89};
    if (isClose) {
        sheet.margin = 34;
        sheet.foot = 20;
        sheet.body = 8.5;
        sheet.pad = 1.6;
    }
    return sheet;
}

// Puts blocks down. One operator() for each kind of block.
class Placer {
  public:
    explicit Placer(Flow& flow) : flow_(flow), pen_(flow.pen()) {}

    void place(const std::vector<Block>& blocks) {
        for (std::size_t k = 0; k < blocks.size(); ++k) {
            if (std::holds_alternative<Heading>(blocks[k].part)) {
                const double height = headingWith(blocks, k);
                flow_.need(height <= flow_.wholeRoom() ? height : kLeast);
            }
            std::visit(*this, blocks[k].part);
        }
    }

    void operator()(const Title& title) {
        if (!title.over.empty()) {
            text(title.over, {11, Face::Slab, Tone::Ochre});
        }
        text(title.text, {19, Face::Slab, Tone::Ink});
        text(title.under, {9, Face::Words, Tone::Pencil});
        flow_.down(8);
    }

    void operator()(const Heading& heading) {
        flow_.gap(10);
        text(heading.text, {12, Face::Slab, Tone::Ink});
        flow_.down(2);
    }

    void operator()(const Paragraph& paragraph) {
        text(paragraph.text, {paragraph.isSmall ? 8.0 : flow_.sheet().body,
                              paragraph.isBold ? Face::Bold : Face::Words,
                              paragraph.isSmall ? Tone::Pencil : Tone::Ink});
        flow_.down(3);
    }

    void operator()(const Notice& notice) {
        constexpr double kPad = 7;
        const Laid laid =
            pen_.lay(notice.text, {9.5, Face::Bold, Tone::Ink}, flow_.width() - 2 * kPad);
        flow_.gap(4);
        flow_.need(laid.height() + 2 * kPad);
        pen_.frame(flow_.left(), flow_.y(), flow_.width(), laid.height() + 2 * kPad, 1,
                   {report::kLight.ink});
        pen_.write(laid, flow_.left() + kPad, flow_.y() + kPad);
        flow_.down(laid.height() + 2 * kPad + 8);
    }

    void operator()(const Table& table) { placeTable(flow_, table); }

    void operator()(const Pictures& pictures);
    void operator()(const Fields& fields);

    void operator()(const BlankLines& lines) {
        for (int k = 0; k < lines.count; ++k) {
            flow_.need(kWriteRoom);
            flow_.down(kWriteRoom);
            writeLine(flow_.left(), flow_.width());
        }
        flow_.down(4);
    }

    void operator()(const Figures& figures);

    void operator()(const LevelPicture& level) {
        flow_.need(20);
        drawLevel(pen_, level.level, {flow_.left(), flow_.y(), flow_.width(), 16});
        flow_.down(19);
    }

    void operator()(const Curve& curve) {
        constexpr double kHeight = 150;
        if (hasCurve(curve)) {
            flow_.need(kHeight);
            drawCurve(pen_, curve, {flow_.left(), flow_.y(), flow_.width(), kHeight});
            flow_.down(kHeight + 4);
        }
    }

    void operator()(const NewPage& /*unused*/) {
        if (!flow_.isAtTop()) {
            flow_.nextPage();
        }
    }

    void operator()(const Beside& beside);

  private:
    // Lines down the sheets; nothing for no text.
    void text(const std::string& words, const Style& style) {
        if (words.empty()) {
            return;
        }
        const Laid laid = pen_.lay(words, style, flow_.width());
        for (std::size_t k = 0; k < laid.lines(); ++k) {
            flow_.need(laid.step());
            pen_.write(laid, k, flow_.left(), flow_.y());
            flow_.down(laid.step());
        }
    }

    void writeLine(double x, double width) {
        pen_.line(x, flow_.y(), x + width, flow_.y(), 0.7, {report::kLight.ink});
    }

    // A heading and the beginning of what it is of, which must not be parted.
    double headingWith(const std::vector<Block>& blocks, std::size_t at) {
        return flow_.measured(flow_.width(), [&] {
            std::visit(*this, blocks[at].part);
            flow_.down(10);
            if (at + 1 == blocks.size()) {
                return;
            }
            const auto& next = blocks[at + 1].part;
            if (const auto* table = std::get_if<Table>(&next)) {
                placeTable(flow_, beginningOf(*table));
            } else if (const auto* pictures = std::get_if<Pictures>(&next)) {
                Pictures first = *pictures;
                first.pictures.resize(std::min(first.pictures.size(), first.abreast));
                (*this)(first);
            } else if (std::holds_alternative<Paragraph>(next)) {
                flow_.down(24);
            } else if (!std::holds_alternative<NewPage>(next) &&
                       !std::holds_alternative<Beside>(next)) {
                std::visit(*this, next);
            }
        });
    }

    Flow& flow_;
    Pen& pen_;
};

// A picture with its pixels, and how high it is in its row.
struct Shown {
    const Picture* picture = nullptr;
    Pixels pixels;
};

void Placer::operator()(const Pictures& pictures) {
    std::vector<Shown> shown;
    for (const auto& picture : pictures.pictures) {
        if (const auto pixels = pixelsOf(picture.jpeg)) {
            shown.push_back({&picture, *pixels});
        }
    }
    constexpr double kBetween = 12;
    const auto abreast = static_cast<double>(pictures.abreast);
    const double width = (flow_.width() - kBetween * (abreast - 1)) / abreast;
    for (std::size_t from = 0; from < shown.size(); from += pictures.abreast) {
        const std::size_t to = std::min(shown.size(), from + pictures.abreast);
        std::vector<Laid> captions;
        double tallest = 0;
        double words = 0;
        for (std::size_t k = from; k < to; ++k) {
            const Pixels& pixels = shown[k].pixels;
            tallest =
                std::max(tallest, std::min(pictures.tallest, width * pixels.down / pixels.across));
            captions.push_back(
                pen_.lay(shown[k].picture->caption, {kCaption, Face::Words, Tone::Pencil}, width));
            words = std::max(words, std::min(captions.back().height(), 5 * captions.back().step()));
        }
        flow_.need(tallest + words + 12);
        for (std::size_t k = from; k < to; ++k) {
            const Pixels& pixels = shown[k].pixels;
            const double x = flow_.left() + static_cast<double>(k - from) * (width + kBetween);
            const double scale = std::min(width / pixels.across, pictures.tallest / pixels.down);
            pen_.picture(shown[k].picture->jpeg, pixels.across, pixels.down, x, flow_.y(),
                         pixels.across * scale, pixels.down * scale);
            const Laid& caption = captions[k - from];
            for (std::size_t line = 0; line < std::min<std::size_t>(caption.lines(), 5); ++line) {
                pen_.write(caption, line, x,
                           flow_.y() + tallest + 3 + static_cast<double>(line) * caption.step());
            }
        }
        flow_.down(tallest + words + 12);
    }
}

void Placer::operator()(const Fields& fields) {
    const double width = (flow_.width() - kColumnGap) / 2;
    for (std::size_t k = 0; k < fields.names.size(); k += 2) {
        const double height = 13 + kWriteRoom;
        flow_.need(height);
        for (std::size_t own = k; own < std::min(k + 2, fields.names.size()); ++own) {
            const double x = flow_.left() + static_cast<double>(own - k) * (width + kColumnGap);
            pen_.write(pen_.layLine(fields.names[own], {8, Face::Words, Tone::Pencil}, width), x,
                       flow_.y() + 3);
            pen_.line(x, flow_.y() + height, x + width, flow_.y() + height, 0.7,
                      {report::kLight.ink});
        }
        flow_.down(height);
    }
    flow_.down(6);
}

void Placer::operator()(const Figures& figures) {
    const auto count = static_cast<double>(figures.figures.size());
    if (figures.figures.empty()) {
        return;
    }
    const double width = (flow_.width() - kColumnGap * (count - 1)) / count;
    std::vector<std::vector<Laid>> columns;
    double tallest = 0;
    for (const auto& figure : figures.figures) {
        std::vector<Laid> column;
        column.push_back(pen_.layLine(figure.name, {8, Face::Words, Tone::Pencil}, width));
        Laid large = pen_.lay(figure.figure, {17, Face::Slab, Tone::Ink}, width);
        for (double size = 16; large.lines() > 1 && size >= 8; --size) {
            large = pen_.lay(figure.figure, {size, Face::Slab, Tone::Ink}, width);
        }
        column.push_back(std::move(large));
        column.push_back(
            pen_.lay(figure.strong + figure.rest, {8.5, Face::Words, Tone::Ink}, width));
        double height = 0;
        for (const auto& part : column) {
            height += part.height();
        }
        tallest = std::max(tallest, height);
        columns.push_back(std::move(column));
    }
    flow_.need(tallest);
    for (std::size_t k = 0; k < columns.size(); ++k) {
        double down = 0;
        for (const auto& part : columns[k]) {
            pen_.write(part, flow_.left() + static_cast<double>(k) * (width + kColumnGap),
                       flow_.y() + down);
            down += part.height();
        }
    }
    flow_.down(tallest + 6);
}

void Placer::operator()(const Beside& beside) {
    const double left = (flow_.width() - kColumnGap) * beside.leftShare;
    const double right = flow_.width() - kColumnGap - left;
    const double tallest = std::max(flow_.measured(left, [&] { place(beside.left); }),
                                    flow_.measured(right, [&] { place(beside.right); }));
    if (tallest > flow_.wholeRoom()) {
        place(beside.left);
        place(beside.right);
        return;
    }
    flow_.gap(10);
    flow_.need(tallest);
    const double x = flow_.left();
    const double one = flow_.inColumn(x, left, [&] { place(beside.left); });
    const double other = flow_.inColumn(x + left + kColumnGap, right, [&] { place(beside.right); });
    flow_.moveTo(std::max(one, other));
}

}  // namespace

model::Result<std::string> pdfBytes(const Paper& paper, Size size) {
    const Sheet sheet = sheetOf(size, paper.isClose);
    Pen pen(sheet.width, sheet.height, paper.title, paper.day);
    // Once with the pen lifted, to know how many pages there are.
    pen.lift(true);
    Flow counted(pen, sheet, paper.foot, 0);
    Placer(counted).place(paper.blocks);
    pen.lift(false);
    Flow drawn(pen, sheet, paper.foot, counted.page());
    Placer(drawn).place(paper.blocks);
    drawn.end();
    return pen.finish();
}

}  // namespace ledgerboard::paper
