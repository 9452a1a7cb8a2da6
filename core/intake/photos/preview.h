// How does a picture become small enough to be carried within a page, and fit for other eyes?
//
// A JPEG of at most 480 pixels' width, or 2,048, turned the way the camera was held, without
// anything else the camera wrote (place, time, maker): it is encoded anew, so nothing of that can
// be left. Units: pixels. Source: project decision: photos stand three abreast on a page, about 240
// wide, and a fine screen has two pixels for one; what a crew lead gets fills a phone's screen
// twice over.
#pragma once

#include <string>
#include <string_view>

#include "core/model/result.h"

namespace ledgerboard::intake {

inline constexpr int kPreviewWidth = 480;
inline constexpr int kPreviewQuality = 80;  // of JPEG, 1 to 100

// A smaller JPEG of the picture in `bytes`, JPEG or HEIF; one that is small enough already keeps
// its size. Errors (CannotBeMet): no picture, damaged or cut short, or far larger than a camera
// makes.
[[nodiscard]] model::Result<std::string> previewOf(std::string_view bytes);

inline constexpr int kCopyWidth = 2'048;
inline constexpr int kCopyQuality = 85;

// The same, larger: what other roles than the owner get of a photo.
[[nodiscard]] model::Result<std::string> copyOf(std::string_view bytes);

}  // namespace ledgerboard::intake
