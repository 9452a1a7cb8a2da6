// Which pictures stand on the week's page, as small as a page carries them?
#pragma once

#include <string>
#include <vector>

#include "core/model/rows.h"
#include "core/report/week_page.h"

namespace ledgerboard::desk {

// Previews of the first three photos of report::weekPhotos that can be shown, from beside the book
// at `bookPath`; a picture that is missing, damaged or no JPEG gives its place to the next.
[[nodiscard]] std::vector<report::WeekPhoto> weekPictures(const std::string& bookPath,
                                                          const model::JobRows& rows,
                                                          model::Date today);

}  // namespace ledgerboard::desk
