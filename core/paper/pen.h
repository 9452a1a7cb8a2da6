// What is a page of a PDF written with: text in lines, hairlines, boxes, pictures?
//
// Over cairo and Pango: text of any script is shaped, its fonts are embedded as far as they are
// used, a JPEG is put in as it is. Asks for no display and no clock: the same strokes make the same
// bytes wherever the same fonts are.
// Units: points, 72 to an inch, from the top left of the sheet, y downwards.
// Source: ISO 32000-1 (PDF 1.5), by cairo.
// Threads: one pen, one thread.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/date.h"
#include "core/model/result.h"
#include "core/paper/paper.h"

namespace ledgerboard::paper {

enum class Face { Words, Bold, Slab };

enum class Side { Left, Middle, Right };

struct Style {
    double size = 9.5;
    Face face = Face::Words;
    Tone tone = Tone::Ink;
    Side side = Side::Left;
};

// "#RRGGBB". Requires: report::isColour.
struct Colour {
    std::string_view hex;
};

[[nodiscard]] Colour colourOf(Tone tone);

// Text broken into lines no wider than the room it was laid for, within a word only where a word
// alone is wider.
class Laid {
  public:
    Laid(Laid&&) noexcept;
    Laid& operator=(Laid&&) noexcept;
    ~Laid();

    [[nodiscard]] std::size_t lines() const;
    // From one line to the next.
    [[nodiscard]] double step() const;
    // Of the widest line.
    [[nodiscard]] double width() const;

    [[nodiscard]] double height() const { return static_cast<double>(lines()) * step(); }

  private:
    friend class Pen;
    struct Inside;
    explicit Laid(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

class Pen {
  public:
    // A sheet of this size; `title` and `day` are what a reader shows of the file.
    Pen(double width, double height, const std::string& title, model::Date day);
    Pen(const Pen&) = delete;
    Pen& operator=(const Pen&) = delete;
    Pen(Pen&&) = delete;
    Pen& operator=(Pen&&) = delete;
    ~Pen();

    // While it is up nothing is drawn: for measuring. Text is laid all the same.
    void lift(bool isUp) { isUp_ = isUp; }

    [[nodiscard]] bool isUp() const { return isUp_; }

    [[nodiscard]] Laid lay(std::string_view text, const Style& style, double room) const;
    // In one line, with an ellipsis where it was cut.
    [[nodiscard]] Laid layLine(std::string_view text, const Style& style, double room) const;

    // One line of `laid`, in the room it was laid for.
    void write(const Laid& laid, std::size_t line, double x, double top);
    // All of them.
    void write(const Laid& laid, double x, double top);
    // The same in a colour of its own.
    void writeIn(Colour colour, const Laid& laid, double x, double top);

    void line(double fromX, double fromY, double toX, double toY, double thick, Colour colour,
              bool isDashed = false);
    // Requires: points of x and y in turn.
    void path(const std::vector<double>& places, double thick, Colour colour, bool isDashed);
    void fill(double x, double y, double width, double height, Colour colour, double round = 0);
    void frame(double x, double y, double width, double height, double thick, Colour colour,
               double round = 0);
    // Requires: `jpeg` is a JPEG of these pixels.
    void picture(const std::string& jpeg, int pixelsAcross, int pixelsDown, double x, double y,
                 double width, double height);

    void nextPage();

    // The file. The pen is done with then. Errors: CannotBeMet where memory ran out.
    [[nodiscard]] model::Result<std::string> finish();

  private:
    struct Inside;
    void writeLine(Colour colour, const Laid& laid, std::size_t line, double x, double top);

    std::unique_ptr<Inside> inside_;
    bool isUp_ = false;
};

// Pixels across and down of a JPEG; nothing where it is none.
struct Pixels {
    int across = 0;
    int down = 0;
};

[[nodiscard]] std::optional<Pixels> pixelsOf(const std::string& jpeg);

}  // namespace ledgerboard::paper
