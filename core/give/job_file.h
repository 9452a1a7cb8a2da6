// How does a whole job travel in one file, so that nobody is locked in?
//
// A zip (APPNOTE 6.3, written and read by libzip): job.json with every record (job_document.h),
// csv/ with the same for people and spreadsheets, one file a kind, photos/ and sounds/ with the
// originals under their digests, and README.txt. docs/job-file.md tells the form to others.
// Bringing it adds what the book does not have, under the ids it had: records that are there stay
// as they are, so that a file brought twice adds nothing and an old one takes nothing back.
// Threads: any number, each its own Book.
#pragma once

#include <string>
#include <vector>

#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::give {

struct GivenJob {
    std::size_t records = 0;
    std::size_t photos = 0;            // and sounds
    std::vector<std::string> missing;  // of them what is not there, in sentences
};

// Writes the file aside and renames it; what stands at `path` is replaced whole or not at all.
// Errors (CannotBeMet): the file can't be written. (Damaged): of the book.
[[nodiscard]] model::Result<GivenJob> giveJobFile(const store::Book& book,
                                                  model::Id<model::Kind::Job> job,
                                                  const std::string& path, model::Instant now);

struct BroughtJob {
    std::string name;
    std::size_t added = 0;   // records
    std::size_t same = 0;    // that were there and say the same
    std::size_t differ = 0;  // that were there and say something else; the book's stand
    std::size_t photos = 0;  // and sounds, kept now
    std::vector<std::string> remarks;
};

// With `tryOnly` nothing is written. Errors (CannotBeMet): no zip, cut off, no job in it, larger
// than can be taken, a photo whose bytes are not those of its name; as readJobDocument and
// Book::commit. The book is then as it was; photos that were kept already stay and harm nothing.
[[nodiscard]] model::Result<BroughtJob> bringJobFile(store::Book& book, const std::string& path,
                                                     bool tryOnly, model::Instant now);

}  // namespace ledgerboard::give
