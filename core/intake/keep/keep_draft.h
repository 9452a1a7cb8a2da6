// How does the draft that was read from walk notes come into the job?
//
// One action: spaces, scope items, alternates with their options, facts of the deal that the job
// does not have yet, cautions; each with the sentence it was read from. What is already there (a
// space of that name; an item of that space, treatment and object; an alternate with that question)
// is left as it is, so that keeping the same notes twice adds nothing. A thing whose material alone
// is open becomes an item of each option, the first carried until one is chosen: so it counts once.
// Where the book has that item already it becomes the first option's, with its price and progress.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/intake/notes/draft.h"
#include "core/intake/notes/lessons.h"
#include "core/model/id.h"
#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

struct KeepReport {
    std::size_t spaces = 0;
    std::size_t items = 0;
    std::size_t alternates = 0;
    std::size_t cautions = 0;
    std::size_t alreadyThere = 0;
    std::vector<std::string> factsSet;   // "Built 1936"
    std::vector<std::string> factsLeft;  // why a fact was not taken: the notes conflict, or the job
                                         // says otherwise
    std::vector<std::string> taught;     // what the corrections of the draft say of words
};

// `corrections` are what was changed of the draft before it is kept; what they teach is part of the
// action (keep_words.h).
// Errors: as Book::commit; the book is then as it was. Requires: `job` is in the book.
[[nodiscard]] model::Result<KeepReport> keepDraft(store::Book& book,
                                                  model::Id<model::Kind::Job> job,
                                                  const Draft& draft, model::Instant now,
                                                  std::span<const Correction> corrections = {});

// What was changed of a draft: the items as read, and as they are to be kept, one for one; empty
// where an item was dropped. A drop is none while another item of the same name is kept: its words
// do name a thing.
[[nodiscard]] std::vector<Correction> correctionsOf(
    const std::vector<DraftItem>& read, const std::vector<std::optional<DraftItem>>& wanted);

}  // namespace ledgerboard::intake
