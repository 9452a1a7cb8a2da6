// Where are the pictures of a page, for report/week_pictures.h? Beside the book on the desk.
#pragma once

#include <string>

#include "core/report/week_pictures.h"

namespace ledgerboard::desk {

// Beside the book at `bookPath`; days by a time zone. Threads: any.
[[nodiscard]] report::PictureSource pictureSource(const std::string& bookPath,
                                                  const std::string& timeZone);

}  // namespace ledgerboard::desk
