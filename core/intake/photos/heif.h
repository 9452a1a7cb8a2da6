// What is in a HEIF file, as telephones write it (HEIC)?
//
// The turning and mirroring that the file asks for are done: what comes out is the picture as it is
// seen. Source: ISO/IEC 23008-12; read by libheif.
#pragma once

#include <string>
#include <string_view>

#include "core/intake/photos/picture.h"
#include "core/model/result.h"

namespace ledgerboard::intake {

// Whether `bytes` begin as such a file does.
[[nodiscard]] bool isHeif(std::string_view bytes);

// Of the file's main picture. Errors (CannotBeMet): damaged, cut short, of a coding that is not
// read here, or larger than a camera makes.
[[nodiscard]] model::Result<PictureSize> heifSize(std::string_view bytes);
[[nodiscard]] model::Result<Pixels> heifPixels(std::string_view bytes);

// The camera's note in the form it has in a JPEG ("Exif", two zeros, a TIFF header); empty where
// there is none.
[[nodiscard]] std::string heifNote(std::string_view bytes);

}  // namespace ledgerboard::intake
