// What size is a JPEG picture? Read from its header, without decoding it.
//
// Units: pixels, as the picture is stored (before any turning that a camera asks for).
#pragma once

#include <string_view>

#include "core/model/result.h"

namespace ledgerboard::intake {

struct PictureSize {
    int width = 0;
    int height = 0;
};

// Errors (CannotBeMet): not a JPEG picture, saying what it seems to be where that is known.
[[nodiscard]] model::Result<PictureSize> jpegSize(std::string_view bytes);

}  // namespace ledgerboard::intake
