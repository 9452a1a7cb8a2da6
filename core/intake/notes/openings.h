// How likely is it that a choice is left open in a sentence?
//
// Each clue (choice_clues.h) that core/intake/tables/openings.tsv holds has a weight; the weights
// of all that are found add up to the logarithm of the odds.
//
// Source: logistic regression, each weight held near nought in proportion to its square (ridge), on
// the labelled talk in tests/notes, by tests/notes/weigh_openings.cpp, which tells how it is done
// and how to do it again.
// Threads: the functions may be called by several threads.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace ledgerboard::intake {

// Percent, 0 to 100. `clues`: the numbers of those found; each counts once.
[[nodiscard]] int chanceOpen(const std::vector<std::uint64_t>& clues);

// Percent: from here on a choice is taken to be open, less where the rules say so as well.
[[nodiscard]] int leastOpen(bool rules);

// Rows of openings.tsv that cannot be used, each with its line; a test keeps this empty.
[[nodiscard]] const std::vector<std::string>& openingFaults();

}  // namespace ledgerboard::intake
