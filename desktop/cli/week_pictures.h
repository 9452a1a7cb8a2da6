// Which pictures stand on the week's page and in a draw request, as small as a page carries them?
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/date.h"
#include "core/model/rows.h"
#include "core/report/week_page.h"

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

// Previews of the first three photos of report::weekPhotos that can be shown; a picture that is
// missing, damaged or no JPEG gives its place to the next. Requires: the session's book is open.
[[nodiscard]] std::vector<report::WeekPhoto> weekPictures(Session& session,
                                                          const model::JobRows& rows,
                                                          model::Date today);

// The preview of one photo with its day, without a caption; nothing where it can't be shown.
// Requires: the session's book is open.
[[nodiscard]] std::optional<report::WeekPhoto> pagePicture(Session& session,
                                                           const model::Photo& photo,
                                                           const std::string& timeZone);

}  // namespace ledgerboard::cli
