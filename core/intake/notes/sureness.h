// How likely is it that an item is what the speaker meant?
//
// Each sign of how the item came about has a weight in core/intake/tables/sureness.tsv, for every
// treatment and for the item's own. Their sum is the logarithm of the odds that the item is right.
//
// Source: logistic regression, each weight held near nought in proportion to its square (ridge),
// on the notes of tests/notes/open and tests/notes/learning by tests/notes/weigh_sureness.cpp,
// which tells how it is done and how to do it again.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/intake/notes/signs.h"
#include "core/model/words.h"

namespace ledgerboard::intake {

// In percent, 1 to 99. `treatment` is what the item came to, which may differ from the phrase's.
// Signs without a weight weigh nothing; the order does not matter.
[[nodiscard]] int sureness(std::span<const Sign> signs, model::Treatment treatment);

// Percent: what is less sure is not made an item.
[[nodiscard]] int leastSure();

// Rows of the table that cannot be used, each with its line; a test keeps this empty. A row for a
// phrase or an object that its table no longer holds is none of them: it weighs nothing until the
// signs are weighed again.
[[nodiscard]] const std::vector<std::string>& surenessFaults();

}  // namespace ledgerboard::intake
