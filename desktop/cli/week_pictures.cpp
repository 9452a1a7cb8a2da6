#include "desktop/cli/week_pictures.h"

#include "core/intake/photos/preview.h"
#include "core/report/week_photos.h"
#include "core/store/photos.h"

namespace ledgerboard::cli {

namespace {

constexpr std::size_t kPictures = 3;

std::string captionOf(const model::Photo& photo, const model::JobRows& rows) {
    std::string caption;
    for (const auto& space : rows.spaces) {
        caption = space.id == photo.space ? space.name : caption;
    }
    return caption + (caption.empty() || photo.caption.empty() ? "" : ": ") + photo.caption;
}

}  // namespace

std::vector<report::WeekPhoto> weekPictures(Session& session, const model::JobRows& rows,
                                            model::Date today) {
    const store::Photos photos(session.bookPath());
    std::vector<report::WeekPhoto> pictures;
    for (const auto* photo : report::weekPhotos(rows, today)) {
        if (pictures.size() == kPictures) {
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
        picture.caption = captionOf(*photo, rows);
        if (photo->takenAt) {
            const auto day = session.surroundings().dayIn(*photo->takenAt, rows.job.timeZone);
            picture.takenOn = day.ok() ? day.value() : photo->takenAt->utcDate();
        }
        picture.mediaType = "image/jpeg";
        picture.bytes = std::move(preview).value();
        pictures.push_back(std::move(picture));
    }
    return pictures;
}

}  // namespace ledgerboard::cli
