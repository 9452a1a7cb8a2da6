#include "desktop/client/week_pictures.h"

#include "core/intake/photos/preview.h"
#include "core/store/photos.h"

#include "desktop/client/book_reader.h"

namespace ledgerboard::desk {

report::PictureSource pictureSource(const std::string& bookPath, const std::string& timeZone) {
    report::PictureSource source;
    source.preview = [bookPath](const model::Photo& photo) {
        const auto bytes = store::Photos(bookPath).read(photo.digest);
        auto preview = bytes.ok() ? intake::previewOf(bytes.value())
                                  : model::Result<std::string>(bytes.error());
        return preview.ok() ? std::optional(std::move(preview).value()) : std::nullopt;
    };
    source.dayAt = [timeZone](model::Instant at) { return dayAt(at, timeZone); };
    return source;
}

}  // namespace ledgerboard::desk
