// What has the book learned of the owner's own words, and how does a correction come into it?
//
// The words are the whole book's, so that one house teaches the next. A correction is written with
// the action that makes it: undoing that takes the lesson back as well.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/intake/notes/lessons.h"
#include "core/model/rows.h"
#include "core/store/action.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

// A drop by a correction counts from this time on.
inline constexpr std::int64_t kDropsThatTeach = 2;

// The words of the book as the reader takes them, in the order in which they came; what a single
// drop seems to say, and what says nothing or two things at once, is left out.
[[nodiscard]] model::Result<std::vector<OwnWord>> ownWordsOf(const store::Book& book);

// Adds to `action` what the corrections teach, and returns it in words, for whoever made them. The
// same sentence corrected alike once more teaches nothing further.
[[nodiscard]] model::Result<std::vector<std::string>> addLessons(
    store::Action& action, store::Book& book, std::span<const Correction> corrections,
    model::Instant now);

// The same of what the edits of `action` change of items and spaces that were read from notes: an
// item that was read is renamed, treated otherwise or dropped; one is added with the sentence it is
// in; a space gets another name. A drop teaches nothing while another item of the job that was read
// has the same name.
[[nodiscard]] model::Result<std::vector<std::string>> addLessonsOfEdits(store::Action& action,
                                                                        store::Book& book,
                                                                        model::Instant now);

}  // namespace ledgerboard::intake
