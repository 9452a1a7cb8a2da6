#include "core/intake/photos/picture.h"

#include <array>
#include <memory>
#include <string>
#include <turbojpeg.h>

#include "core/intake/photos/heif.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

struct Beginning {
    std::size_t at;
    std::string_view bytes;
    std::string_view what;
};

// How files begin that people take for photos. Sources: PNG specification 5.2; RIFF header of WebP
// (RFC 9649, 2.4); GIF89a, section 17; ISO 32000 (PDF), 7.5.2.
constexpr std::array kBeginnings = {
    Beginning{0, "\x89PNG", "a PNG picture"},
    Beginning{8, "WEBP", "a WebP picture"},
    Beginning{0, "GIF8", "a GIF picture"},
    Beginning{0, "%PDF", "a PDF document"},
};

std::string whatItIs(std::string_view bytes) {
    if (bytes.empty()) {
        return "is empty";
    }
    for (const auto& one : kBeginnings) {
        if (bytes.size() > one.at && bytes.substr(one.at).rfind(one.bytes, 0) == 0) {
            return "is " + std::string(one.what);
        }
    }
    return "is not a JPEG or HEIC picture, or damaged";
}

}  // namespace

model::Result<PictureSize> pictureSize(std::string_view bytes) {
    if (isHeif(bytes)) {
        return heifSize(bytes);
    }
    const std::unique_ptr<void, int (*)(tjhandle)> reader(tjInitDecompress(), &tjDestroy);
    PictureSize size;
    int sampling = 0;
    int colours = 0;
    if (!reader || bytes.empty() ||
        tjDecompressHeader3(reader.get(), reinterpret_cast<const unsigned char*>(bytes.data()),
                            bytes.size(), &size.width, &size.height, &sampling, &colours) != 0 ||
        size.width < 1 || size.height < 1) {
        return model::cannotBeMet(
            model::saying("%1: photos are JPEG or HEIC; save it as JPEG", whatItIs(bytes)));
    }
    return size;
}

}  // namespace ledgerboard::intake
