// Are the files that a book names there, its pictures and sounds? Checked against their digests,
// and copied with the book where it is backed up or restored.
#pragma once

#include <string>
#include <vector>

#include "core/model/result.h"
#include "core/store/book.h"
#include "core/store/photos.h"

namespace ledgerboard::store {

// What checking photos found.
struct PhotosChecked {
    std::size_t checked = 0;
    std::vector<std::string> wrong;  // a sentence for each that is not as it should be
};

// Reads every file that a record not dropped names and compares it with its digest.
// Errors: of the book.
[[nodiscard]] model::Result<PhotosChecked> checkPhotos(const Book& book, const Photos& photos);

// How copying photos went.
struct PhotosCopied {
    std::size_t copied = 0;            // files at the goal now
    std::vector<std::string> missing;  // a sentence for each file that no source has
};

// Copies each file that the book names, by dropped records too since they can come back, from the
// first of `sources` that has it right. What none has is said and does not stop the others; of a
// dropped record's it is not said. Errors: of the book; what cannot be written.
[[nodiscard]] model::Result<PhotosCopied> copyPhotos(const Book& book,
                                                     const std::vector<Photos>& sources,
                                                     const Photos& goal);

}  // namespace ledgerboard::store
