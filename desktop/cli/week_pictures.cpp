#include "desktop/cli/week_pictures.h"

#include "core/intake/photos/preview.h"
#include "core/store/photos.h"

namespace ledgerboard::cli {

report::PictureSource pictureSource(Session& session, const std::string& timeZone) {
    report::PictureSource source;
    source.preview = [path = session.bookPath()](const model::Photo& photo) {
        const auto bytes = store::Photos(path).read(photo.digest);
        auto preview = bytes.ok() ? intake::previewOf(bytes.value())
                                  : model::Result<std::string>(bytes.error());
        return preview.ok() ? std::optional(std::move(preview).value()) : std::nullopt;
    };
    source.dayAt = [&session, timeZone](model::Instant at) {
        const auto day = session.surroundings().dayIn(at, timeZone);
        return day.ok() ? day.value() : at.utcDate();
    };
    return source;
}

}  // namespace ledgerboard::cli
