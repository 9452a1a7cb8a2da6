// What does a surface look like where it is hit: boards, tile, wallpaper, brick?
#pragma once

#include "demo-data/photos/vec.h"

namespace ledgerboard::photos {

enum class Pattern : std::uint8_t {
    Plain,
    Boards,     // wood floor, boards running into the picture
    Tile,       // square tile with grout
    Courses,    // tile, brick or block in courses, every other one shifted by half
    Wallpaper,  // stripes with sprigs
    Blotches,   // stains and worn places
    Carpet,
    Siding,  // lapped boards
    Shingle,
    Checker,  // sheet vinyl
    Cracked,  // plaster with a crack and a stain
    Grass,
    View  // what is seen through a window: gives light of its own
};

struct Material {
    Pattern pattern = Pattern::Plain;
    Colour main;
    Colour other;       // grout, stripe, stain
    double size = 1.0;  // of a board, tile, stripe or course, feet
};

// Colour of `material` at a place of its surface. `u` and `v` are feet along the surface; v is up
// where there is an up, and into the picture on floors.
[[nodiscard]] Colour colourAt(const Material& material, double u, double v);

// Smooth noise 0 to 1 with features about one unit across.
[[nodiscard]] double noise(double u, double v, std::int64_t seed);

}  // namespace ledgerboard::photos
