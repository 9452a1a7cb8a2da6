// How is a scene put on paper: light, a wash of colour, ink at the edges, grain?
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "demo-data/photos/scene.h"

namespace ledgerboard::photos {

inline constexpr int kWidth = 1200;  // pixels
inline constexpr int kHeight = 900;  // pixels

// Rows from the top, three bytes a pixel: red, green, blue.
using Pixels = std::vector<std::uint8_t>;

// The picture of a settled scene; the same bytes for the same scene.
[[nodiscard]] Pixels paint(const Scene& scene);

// Writes a baseline JPEG. What comes out is empty, or says what went wrong.
[[nodiscard]] std::string writeJpeg(const Pixels& pixels, const std::string& path);

}  // namespace ledgerboard::photos
