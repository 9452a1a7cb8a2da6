// Which pictures stand on the week's page and in a draw request, as small as a page carries them?
//
// Where pictures are and how one is made small is the caller's: this library reads no files.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/model/rows.h"
#include "core/report/week_page.h"

namespace ledgerboard::report {

struct PictureSource {
    // A JPEG small enough for a page; nothing for one that is missing, damaged or no picture.
    std::function<std::optional<std::string>(const model::Photo&)> preview;
    // The day at the house at an instant.
    std::function<model::Date(model::Instant)> dayAt;
};

// One photo with its day, without a caption; nothing where it can't be shown.
[[nodiscard]] std::optional<WeekPhoto> pagePicture(const model::Photo& photo,
                                                   const PictureSource& source);

// The first three photos of weekPhotos that can be shown, with space and caption.
[[nodiscard]] std::vector<WeekPhoto> weekPictures(const model::JobRows& rows, model::Date today,
                                                  const PictureSource& source);

}  // namespace ledgerboard::report
