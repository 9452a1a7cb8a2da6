#include "core/intake/photos/exif.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <libexif/exif-data.h>
#include <memory>

#include "core/intake/photos/heif.h"

namespace ledgerboard::intake {

namespace {

// The text of an entry, up to its first zero; empty where there is none.
std::string textIn(const ExifContent* content, ExifTag tag) {
    const ExifEntry* entry =
        exif_content_get_entry(const_cast<ExifContent*>(content), tag);  // it only looks
    if (entry == nullptr || entry->format != EXIF_FORMAT_ASCII || entry->data == nullptr) {
        return "";
    }
    const std::string text(reinterpret_cast<const char*>(entry->data), entry->size);
    return text.substr(0, text.find('\0'));
}

// "2026:05:08 14:05:00" as "2026-05-08T14:05:00". Cameras whose clock was never set say zeros or
// spaces.
std::optional<std::string> localTime(const std::string& text) {
    std::array<int, 6> part{};
    char after = 0;
    const int read = std::sscanf(text.c_str(), "%4d:%2d:%2d %2d:%2d:%2d%c", &part[0], &part[1],
                                 &part[2], &part[3], &part[4], &part[5], &after);
    const bool good = read == 6 && text.size() == 19 && part[0] >= 1990 && part[1] >= 1 &&
                      part[1] <= 12 && part[2] >= 1 && part[2] <= 31 && part[3] >= 0 &&
                      part[3] <= 23 && part[4] >= 0 && part[4] <= 59 && part[5] >= 0 &&
                      part[5] <= 59;
    if (!good) {
        return std::nullopt;
    }
    std::string out = text;
    out[4] = out[7] = '-';
    out[10] = 'T';
    std::replace(out.begin(), out.end(), ' ', '0');
    return out;
}

// "+02:00", "-05:30".
std::optional<int> offsetIn(const std::string& text) {
    int hours = 0;
    int minutes = 0;
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':' ||
        std::sscanf(text.c_str() + 1, "%2d:%2d", &hours, &minutes) != 2 || hours > 14 ||
        minutes > 59) {
        return std::nullopt;
    }
    return (text[0] == '-' ? -1 : 1) * (hours * 60 + minutes);
}

}  // namespace

CameraNote cameraNoteOf(std::string_view bytes) {
    CameraNote note;
    const bool inHeif = isHeif(bytes);
    const std::string inside = inHeif ? heifNote(bytes) : "";
    if (inHeif) {
        bytes = inside;
    }
    const std::unique_ptr<ExifData, void (*)(ExifData*)> exif(
        exif_data_new_from_data(reinterpret_cast<const unsigned char*>(bytes.data()),
                                static_cast<unsigned int>(bytes.size())),
        &exif_data_unref);
    if (!exif) {
        return note;
    }
    const ExifEntry* held = exif_content_get_entry(exif->ifd[EXIF_IFD_0], EXIF_TAG_ORIENTATION);
    // A HEIF says by itself how it is turned; what the note says of that is not for its readers
    // (ISO/IEC 23008-12, annex A).
    if (!inHeif && held != nullptr && held->format == EXIF_FORMAT_SHORT && held->size >= 2) {
        const int said = exif_get_short(held->data, exif_data_get_byte_order(exif.get()));
        note.orientation = said >= 1 && said <= 8 ? said : 1;
    }
    const ExifContent* taken = exif->ifd[EXIF_IFD_EXIF];
    if (auto local = localTime(textIn(taken, EXIF_TAG_DATE_TIME_ORIGINAL))) {
        note.takenAt = CameraTime{*local, offsetIn(textIn(taken, EXIF_TAG_OFFSET_TIME_ORIGINAL))};
    }
    note.saysWhere = exif->ifd[EXIF_IFD_GPS] != nullptr && exif->ifd[EXIF_IFD_GPS]->count > 0;
    return note;
}

}  // namespace ledgerboard::intake
