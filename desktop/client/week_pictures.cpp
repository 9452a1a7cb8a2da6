#include "desktop/client/week_pictures.h"

#include "core/intake/photos/preview.h"
#include "core/report/week_photos.h"
#include "core/store/photos.h"

#include "desktop/client/book_reader.h"
#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

namespace {

constexpr std::size_t kMostPictures = 3;

}  // namespace

std::vector<report::WeekPhoto> weekPictures(const std::string& bookPath, const model::JobRows& rows,
                                            model::Date today) {
    const store::Photos photos(bookPath);
    std::vector<report::WeekPhoto> pictures;
    for (const auto* photo : report::weekPhotos(rows, today)) {
        if (pictures.size() == kMostPictures) {
            break;
        }
        const auto bytes = photos.read(photo->digest);
        if (!bytes.ok()) {
            continue;
        }
        auto preview = intake::previewOf(bytes.value());
        if (!preview.ok()) {
            continue;
        }
        report::WeekPhoto picture;
        picture.caption = spaceName(rows, photo->space);
        picture.caption +=
            (picture.caption.empty() || photo->caption.empty() ? "" : ": ") + photo->caption;
        if (photo->takenAt) {
            picture.takenOn = dayAt(*photo->takenAt, rows.job.timeZone);
        }
        picture.mediaType = "image/jpeg";
        picture.bytes = std::move(preview).value();
        pictures.push_back(std::move(picture));
    }
    return pictures;
}

}  // namespace ledgerboard::desk
