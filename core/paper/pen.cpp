#include "core/paper/pen.h"

#include <cairo-pdf.h>
#include <cmath>
#include <cstdint>
#include <pango/pangocairo.h>
#include <turbojpeg.h>

#include "core/model/saying.h"
#include "core/report/plain_text.h"
#include "core/report/theme.h"

namespace ledgerboard::paper {

namespace {

constexpr double kLeading = 1.28;   // of the size, from line to line
constexpr double kBaseline = 0.98;  // of the size, below the top of a line
constexpr double kPi = 3.14159265358979323846;

struct FreeObject {
    void operator()(void* object) const { g_object_unref(object); }
};

struct FreeSurface {
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};

struct FreeDrawing {
    void operator()(cairo_t* drawing) const { cairo_destroy(drawing); }
};

struct FreeFont {
    void operator()(PangoFontDescription* font) const { pango_font_description_free(font); }
};

struct FreeOptions {
    void operator()(cairo_font_options_t* options) const { cairo_font_options_destroy(options); }
};

using Layout = std::unique_ptr<PangoLayout, FreeObject>;
using Surface = std::unique_ptr<cairo_surface_t, FreeSurface>;

double points(int pangoUnits) {
    return static_cast<double>(pangoUnits) / PANGO_SCALE;
}

int pangoUnits(double length) {
    return static_cast<int>(std::lround(length * PANGO_SCALE));
}

cairo_status_t append(void* to, const unsigned char* bytes, unsigned int count) {
    try {
        static_cast<std::string*>(to)->append(reinterpret_cast<const char*>(bytes), count);
        return CAIRO_STATUS_SUCCESS;
    } catch (const std::bad_alloc&) {
        return CAIRO_STATUS_NO_MEMORY;
    }
}

double channel(std::string_view hex, std::size_t at) {
    return static_cast<double>(std::stoi(std::string(hex.substr(at, 2)), nullptr, 16)) / 255;
}

void setColour(cairo_t* drawing, Colour colour) {
    cairo_set_source_rgb(drawing, channel(colour.hex, 1), channel(colour.hex, 3),
                         channel(colour.hex, 5));
}

void outline(cairo_t* drawing, double x, double y, double width, double height, double round) {
    if (round <= 0) {
        cairo_rectangle(drawing, x, y, width, height);
        return;
    }
    cairo_new_sub_path(drawing);
    cairo_arc(drawing, x + width - round, y + round, round, -kPi / 2, 0);
    cairo_arc(drawing, x + width - round, y + height - round, round, 0, kPi / 2);
    cairo_arc(drawing, x + round, y + height - round, round, kPi / 2, kPi);
    cairo_arc(drawing, x + round, y + round, round, kPi, 3 * kPi / 2);
    cairo_close_path(drawing);
}

void setStroke(cairo_t* drawing, double thick, Colour colour, bool isDashed) {
    setColour(drawing, colour);
    cairo_set_line_width(drawing, thick);
    const double dashes[] = {4.0, 3.0};
    cairo_set_dash(drawing, dashes, isDashed ? 2 : 0, 0);
}

// The face of a style. Figures are all of one width, so that columns of them line up; letters are
// not joined, so that a reader finds and copies them as they were typed.
void setFont(PangoLayout* layout, const Style& style) {
    const std::unique_ptr<PangoFontDescription, FreeFont> font(pango_font_description_new());
    pango_font_description_set_family(font.get(),
                                      style.face == Face::Slab ? "Roboto Slab" : "Lato");
    pango_font_description_set_weight(
        font.get(), style.face == Face::Bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_absolute_size(font.get(), style.size * PANGO_SCALE);
    pango_layout_set_font_description(layout, font.get());
    PangoAttrList* attributes = pango_attr_list_new();
    pango_attr_list_insert(attributes,
                           pango_attr_font_features_new("tnum=1, lnum=1, liga=0, clig=0"));
    // A name that is broken is not spelled otherwise.
    pango_attr_list_insert(attributes, pango_attr_insert_hyphens_new(FALSE));
    pango_layout_set_attributes(layout, attributes);
    pango_attr_list_unref(attributes);
}

}  // namespace

Colour colourOf(Tone tone) {
    switch (tone) {
        case Tone::Ink:
            return {report::kLight.ink};
        case Tone::Pencil:
            return {report::kLight.pencil};
        case Tone::Ochre:
            return {report::kLight.ochre};
        case Tone::Brick:
            return {report::kLight.brick};
    }
    return {report::kLight.ink};
}

struct Laid::Inside {
    Layout layout;
    Style style;
    double room = 0;
};

Laid::Laid(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

Laid::Laid(Laid&&) noexcept = default;
Laid& Laid::operator=(Laid&&) noexcept = default;
Laid::~Laid() = default;

std::size_t Laid::lines() const {
    return static_cast<std::size_t>(pango_layout_get_line_count(inside_->layout.get()));
}

double Laid::step() const {
    return inside_->style.size * kLeading;
}

double Laid::width() const {
    int width = 0;
    pango_layout_get_size(inside_->layout.get(), &width, nullptr);
    return points(width);
}

struct Pen::Inside {
    std::string bytes;
    Surface surface;
    std::unique_ptr<cairo_t, FreeDrawing> drawing;
    std::unique_ptr<PangoFontMap, FreeObject> fonts;
    std::unique_ptr<PangoContext, FreeObject> context;
};

Pen::Pen(double width, double height, const std::string& title, model::Date day)
    : inside_(std::make_unique<Inside>()) {
    auto& in = *inside_;
    in.surface.reset(cairo_pdf_surface_create_for_stream(&append, &in.bytes, width, height));
    cairo_pdf_surface_restrict_to_version(in.surface.get(), CAIRO_PDF_VERSION_1_5);
    const auto say = [&](cairo_pdf_metadata_t what, const std::string& text) {
        cairo_pdf_surface_set_metadata(in.surface.get(), what, text.c_str());
    };
    say(CAIRO_PDF_METADATA_TITLE, report::shownText(title, report::Script::Unicode));
    say(CAIRO_PDF_METADATA_CREATOR, "Ledgerboard");
    say(CAIRO_PDF_METADATA_CREATE_DATE, day.toString() + "T00:00:00Z");
    in.drawing.reset(cairo_create(in.surface.get()));
    in.fonts.reset(pango_cairo_font_map_new());
    pango_cairo_font_map_set_resolution(PANGO_CAIRO_FONT_MAP(in.fonts.get()), 72);
    in.context.reset(pango_font_map_create_context(in.fonts.get()));
    // A printer's dots are fine: letters stand where their shapes say.
    const std::unique_ptr<cairo_font_options_t, FreeOptions> options(cairo_font_options_create());
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
    pango_cairo_context_set_font_options(in.context.get(), options.get());
    pango_context_set_round_glyph_positions(in.context.get(), FALSE);
    pango_context_set_language(in.context.get(), pango_language_from_string("en"));
}

Pen::~Pen() {
    // The surface may still write into bytes while it is closed.
    inside_->drawing.reset();
    inside_->surface.reset();
}

Laid Pen::lay(std::string_view text, const Style& style, double room) const {
    auto inside = std::make_unique<Laid::Inside>();
    inside->layout.reset(pango_layout_new(inside_->context.get()));
    inside->style = style;
    inside->room = room;
    PangoLayout* layout = inside->layout.get();
    const std::string shown = report::shownText(text, report::Script::Unicode);
    pango_layout_set_text(layout, shown.data(), static_cast<int>(shown.size()));
    setFont(layout, style);
    pango_layout_set_auto_dir(layout, FALSE);
    pango_layout_set_wrap(layout, PANGO_WRAP_WORD_CHAR);
    pango_layout_set_width(layout, room > 0 ? pangoUnits(room) : -1);
    return Laid(std::move(inside));
}

Laid Pen::layLine(std::string_view text, const Style& style, double room) const {
    Laid laid = lay(text, style, room);
    pango_layout_set_ellipsize(laid.inside_->layout.get(), PANGO_ELLIPSIZE_END);
    return laid;
}

void Pen::writeLine(Colour colour, const Laid& laid, std::size_t line, double x, double top) {
    if (isUp_) {
        return;
    }
    const auto& in = *laid.inside_;
    PangoLayoutLine* shown =
        pango_layout_get_line_readonly(in.layout.get(), static_cast<int>(line));
    PangoRectangle extents{};
    pango_layout_line_get_extents(shown, nullptr, &extents);
    const double spare = in.room - points(extents.width);
    const double shift = in.style.side == Side::Right    ? spare
                         : in.style.side == Side::Middle ? spare / 2
                                                         : 0;
    setColour(inside_->drawing.get(), colour);
    cairo_move_to(inside_->drawing.get(), x + shift, top + in.style.size * kBaseline);
    pango_cairo_show_layout_line(inside_->drawing.get(), shown);
}

void Pen::write(const Laid& laid, std::size_t line, double x, double top) {
    writeLine(colourOf(laid.inside_->style.tone), laid, line, x, top);
}

void Pen::write(const Laid& laid, double x, double top) {
    writeIn(colourOf(laid.inside_->style.tone), laid, x, top);
}

void Pen::writeIn(Colour colour, const Laid& laid, double x, double top) {
    for (std::size_t k = 0; k < laid.lines(); ++k) {
        writeLine(colour, laid, k, x, top + static_cast<double>(k) * laid.step());
    }
}

void Pen::line(double fromX, double fromY, double toX, double toY, double thick, Colour colour,
               bool isDashed) {
    path({fromX, fromY, toX, toY}, thick, colour, isDashed);
}

void Pen::path(const std::vector<double>& places, double thick, Colour colour, bool isDashed) {
    if (isUp_ || places.size() < 4) {
        return;
    }
    cairo_t* drawing = inside_->drawing.get();
    setStroke(drawing, thick, colour, isDashed);
    cairo_set_line_join(drawing, CAIRO_LINE_JOIN_ROUND);
    cairo_move_to(drawing, places[0], places[1]);
    for (std::size_t k = 2; k + 1 < places.size(); k += 2) {
        cairo_line_to(drawing, places[k], places[k + 1]);
    }
    cairo_stroke(drawing);
}

void Pen::fill(double x, double y, double width, double height, Colour colour, double round) {
    if (isUp_) {
        return;
    }
    setColour(inside_->drawing.get(), colour);
    outline(inside_->drawing.get(), x, y, width, height, round);
    cairo_fill(inside_->drawing.get());
}

void Pen::frame(double x, double y, double width, double height, double thick, Colour colour,
                double round) {
    if (isUp_) {
        return;
    }
    setStroke(inside_->drawing.get(), thick, colour, false);
    outline(inside_->drawing.get(), x, y, width, height, round);
    cairo_stroke(inside_->drawing.get());
}

void Pen::picture(const std::string& jpeg, int pixelsAcross, int pixelsDown, double x, double y,
                  double width, double height) {
    if (isUp_) {
        return;
    }
    // An empty picture of that size; the file takes the JPEG that is tied to it instead.
    const Surface image(cairo_image_surface_create(CAIRO_FORMAT_RGB24, pixelsAcross, pixelsDown));
    auto kept = std::make_unique<std::string>(jpeg);
    const auto* bytes = reinterpret_cast<const unsigned char*>(kept->data());
    const auto drop = [](void* held) { delete static_cast<std::string*>(held); };
    if (cairo_surface_set_mime_data(image.get(), CAIRO_MIME_TYPE_JPEG, bytes, kept->size(), drop,
                                    kept.get()) != CAIRO_STATUS_SUCCESS) {
        return;
    }
    (void)kept.release();  // the surface's from now on
    cairo_t* drawing = inside_->drawing.get();
    cairo_save(drawing);
    cairo_translate(drawing, x, y);
    cairo_scale(drawing, width / pixelsAcross, height / pixelsDown);
    cairo_set_source_surface(drawing, image.get(), 0, 0);
    cairo_paint(drawing);
    cairo_restore(drawing);
}

void Pen::nextPage() {
    if (!isUp_) {
        cairo_show_page(inside_->drawing.get());
    }
}

model::Result<std::string> Pen::finish() {
    const cairo_status_t drawn = cairo_status(inside_->drawing.get());
    inside_->drawing.reset();
    cairo_surface_finish(inside_->surface.get());
    const cairo_status_t written = cairo_surface_status(inside_->surface.get());
    const cairo_status_t status = drawn != CAIRO_STATUS_SUCCESS ? drawn : written;
    if (status != CAIRO_STATUS_SUCCESS) {
        return model::cannotBeMet(
            model::saying("the PDF could not be made: %1", cairo_status_to_string(status)));
    }
    return std::move(inside_->bytes);
}

std::optional<Pixels> pixelsOf(const std::string& jpeg) {
    const std::unique_ptr<void, int (*)(tjhandle)> reader(tjInitDecompress(), &tjDestroy);
    Pixels pixels;
    int sampling = 0;
    int colours = 0;
    if (!reader ||
        tjDecompressHeader3(reader.get(), reinterpret_cast<const unsigned char*>(jpeg.data()),
                            jpeg.size(), &pixels.across, &pixels.down, &sampling, &colours) != 0 ||
        pixels.across <= 0 || pixels.down <= 0) {
        return std::nullopt;
    }
    return pixels;
}

}  // namespace ledgerboard::paper
