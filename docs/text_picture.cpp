// Draws what a program printed, as a terminal of a given width would show it: a picture for the
// manual.
//
// Usage: text-picture OUT.png COLUMNS < TEXT
#include <algorithm>
#include <cairo.h>
#include <cstdlib>
#include <iostream>
#include <iterator>
#include <pango/pangocairo.h>
#include <string>

namespace {

constexpr double kSize = 15;    // of letters, in pixels
constexpr double kMargin = 16;  // around them

PangoLayout* layoutOf(cairo_t* drawing, const std::string& text) {
    PangoLayout* layout = pango_cairo_create_layout(drawing);
    PangoFontDescription* font = pango_font_description_from_string("DejaVu Sans Mono");
    pango_font_description_set_absolute_size(font, kSize * PANGO_SCALE);
    pango_layout_set_font_description(layout, font);
    pango_font_description_free(font);
    pango_layout_set_text(layout, text.data(), static_cast<int>(text.size()));
    return layout;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::cerr << "Usage: text-picture OUT.png COLUMNS < TEXT\n";
        return 2;
    }
    const std::string text{std::istreambuf_iterator<char>(std::cin), {}};
    const std::string widest(static_cast<std::size_t>(std::max(1, std::atoi(argv[2]))), '0');

    cairo_surface_t* probe = cairo_image_surface_create(CAIRO_FORMAT_RGB24, 1, 1);
    cairo_t* measure = cairo_create(probe);
    PangoLayout* columns = layoutOf(measure, widest);
    PangoLayout* lines = layoutOf(measure, text);
    int width = 0;
    int height = 0;
    pango_layout_get_pixel_size(columns, &width, nullptr);
    pango_layout_get_pixel_size(lines, nullptr, &height);
    g_object_unref(columns);
    g_object_unref(lines);
    cairo_destroy(measure);
    cairo_surface_destroy(probe);

    cairo_surface_t* picture =
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, width + static_cast<int>(2 * kMargin),
                                   height + static_cast<int>(2 * kMargin));
    cairo_t* drawing = cairo_create(picture);
    cairo_set_source_rgb(drawing, 0.984, 0.973, 0.949);  // paper, as in core/report/theme.h
    cairo_paint(drawing);
    cairo_set_source_rgb(drawing, 0.125, 0.149, 0.169);  // ink
    cairo_move_to(drawing, kMargin, kMargin);
    PangoLayout* layout = layoutOf(drawing, text);
    pango_cairo_show_layout(drawing, layout);
    g_object_unref(layout);
    cairo_destroy(drawing);
    const cairo_status_t written = cairo_surface_write_to_png(picture, argv[1]);
    cairo_surface_destroy(picture);
    if (written != CAIRO_STATUS_SUCCESS) {
        std::cerr << argv[1] << ": " << cairo_status_to_string(written) << "\n";
        return 1;
    }
    return 0;
}
