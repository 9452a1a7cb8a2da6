// Is it a picture that can be taken for a photo, and what size is it? JPEG, or HEIF with the coding
// that telephones give it (HEIC). Read from its header, without decoding it.
//
// Units: pixels. Of a JPEG as it is stored, before any turning that a camera asks for in its note;
// of a HEIF as it is seen, for its turning is part of the picture.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "core/model/result.h"

namespace ledgerboard::intake {

struct PictureSize {
    int width = 0;
    int height = 0;
};

// A decoded picture: red, green and blue of each pixel, row after row.
struct Pixels {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> rgb;

    [[nodiscard]] const std::uint8_t* at(int x, int y) const {
        return rgb.data() + 3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                                 static_cast<std::size_t>(x));
    }
};

// Decoded pixels beyond this are no picture of a camera, and memory is not without end.
inline constexpr std::int64_t kMostPixels = 50'000'000;

// Errors (CannotBeMet): neither JPEG nor HEIF, saying what it seems to be where that is known.
[[nodiscard]] model::Result<PictureSize> pictureSize(std::string_view bytes);

}  // namespace ledgerboard::intake
