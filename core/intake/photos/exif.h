// What did the camera write into a picture? How it was held, when it was, and whether it says
// where.
//
// Where it was is never read, only that it is there: it stays in the original, which is kept
// untouched, and is in no copy. Source: Exif 2.32 (CIPA DC-008), 4.6.5 and 4.6.6; read by libexif.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace ledgerboard::intake {

struct CameraTime {
    std::string local;                 // "2026-05-08T14:05:00", by the camera's clock
    std::optional<int> offsetMinutes;  // of that clock from UTC, where the camera says
};

struct CameraNote {
    // 1 to 8, as Exif numbers them; 1 where nothing is said, and for HEIF, which says it elsewhere.
    int orientation = 1;
    std::optional<CameraTime> takenAt;
    bool saysWhere = false;
};

// All of it empty where `bytes` are no picture with such a note, or it does not read.
[[nodiscard]] CameraNote cameraNoteOf(std::string_view bytes);

}  // namespace ledgerboard::intake
