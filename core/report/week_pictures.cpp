#include "core/report/week_pictures.h"

#include "core/report/week_photos.h"

namespace ledgerboard::report {

namespace {

constexpr std::size_t kMostPictures = 3;

std::string captionOf(const model::Photo& photo, const model::JobRows& rows) {
    std::string caption;
    for (const auto& space : rows.spaces) {
        caption = space.id == photo.space ? space.name : caption;
    }
    return caption + (caption.empty() || photo.caption.empty() ? "" : ": ") + photo.caption;
}

}  // namespace

std::optional<WeekPhoto> pagePicture(const model::Photo& photo, const PictureSource& source) {
    auto preview = source.preview(photo);
    if (!preview) {
        return std::nullopt;
    }
    WeekPhoto picture;
    if (photo.takenAt) {
        picture.takenOn = source.dayAt(*photo.takenAt);
    }
    picture.mediaType = "image/jpeg";
    picture.bytes = std::move(*preview);
    return picture;
}

std::vector<WeekPhoto> weekPictures(const model::JobRows& rows, model::Date today,
                                    const PictureSource& source) {
    std::vector<WeekPhoto> pictures;
    for (const auto* photo : weekPhotos(rows, today)) {
        if (pictures.size() == kMostPictures) {
            break;
        }
        if (auto picture = pagePicture(*photo, source)) {
            picture->caption = captionOf(*photo, rows);
            pictures.push_back(std::move(*picture));
        }
    }
    return pictures;
}

}  // namespace ledgerboard::report
