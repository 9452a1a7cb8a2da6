// How does a folder of pictures come into the book?
//
// The folder's photos.csv lists them, one a row: file, space, item, stage, when it was taken (else
// the camera's own word for it), the spot it was taken from, a caption, and whether the lender may
// see it. Without a list every picture comes in as the camera says, to be filed later; so does a
// single picture that is named in place of a folder. They come in as site photos, whole or not at
// all; everything wrong is reported at once, by line and column. A picture is known again by its
// bytes, so bringing a folder twice adds nothing; what its row says anew of filing (space, item,
// stage, spot, caption) is written.
#pragma once

#include <string>

#include "core/intake/files/bring.h"
#include "core/model/id.h"
#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

// The list within the folder.
inline constexpr const char* kPictureList = "photos.csv";

// Brings the pictures that photos.csv in `folder` lists, or all of them, or the one at `folder`.
// The files are on disk before the book says that it has them; of a picture the book has already, a
// file that was lost is put back. Errors (WrongUse): no job, a --match that can't be read.
// (CannotBeMet): no folder, no picture in it, a list that can't be taken: one line for the whole
// and one for each thing to mend. The book is then as it was. (Damaged): from the book or its photo
// folder.
[[nodiscard]] model::Result<BringReport> bringPhotos(store::Book& book,
                                                     model::Id<model::Kind::Job> job,
                                                     const std::string& folder,
                                                     const BringOptions& options,
                                                     model::Instant now);

}  // namespace ledgerboard::intake
