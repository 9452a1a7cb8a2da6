// Where are the pictures of a page, for report/week_pictures.h? Beside the session's book.
#pragma once

#include <string>

#include "core/report/week_pictures.h"

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

// Requires: the session's book is open, and the session outlives what is returned.
[[nodiscard]] report::PictureSource pictureSource(Session& session, const std::string& timeZone);

}  // namespace ledgerboard::cli
