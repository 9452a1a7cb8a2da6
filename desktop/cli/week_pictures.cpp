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

std::optional<report::WeekPhoto> pagePicture(Session& session, const model::Photo& photo,
                                             const std::string& timeZone) {
    const auto bytes = store::Photos(session.bookPath()).read(photo.digest);
    if (!bytes.ok()) {
        return std::nullopt;
    }
    auto preview = intake::previewOf(bytes.value());
    if (!preview.ok()) {
        return std::nullopt;
    }
    report::WeekPhoto picture;
    if (photo.takenAt) {
        const auto day = session.surroundings().dayIn(*photo.takenAt, timeZone);
        picture.takenOn = day.ok() ? day.value() : photo.takenAt->utcDate();
    }
    picture.mediaType = "image/jpeg";
    picture.bytes = std::move(preview).value();
    return picture;
}

std::vector<report::WeekPhoto> weekPictures(Session& session, const model::JobRows& rows,
                                            model::Date today) {
    std::vector<report::WeekPhoto> pictures;
    for (const auto* photo : report::weekPhotos(rows, today)) {
        if (pictures.size() == kPictures) {
            break;
        }
        if (auto picture = pagePicture(session, *photo, rows.job.timeZone)) {
            picture->caption = captionOf(*photo, rows);
            pictures.push_back(std::move(*picture));
        }
    }
    return pictures;
}

}  // namespace ledgerboard::cli
