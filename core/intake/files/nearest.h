// Which of these names did a person probably mean?
//
// Source: project decision; the distance is the number of letters to put in, take out, change or
// swap with a neighbour (optimal string alignment), after names are folded as the catalog folds
// them.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace ledgerboard::intake {

// Edits that turn `a` into `b`; symmetric, 0 for equal texts.
[[nodiscard]] std::size_t editDistance(std::string_view a, std::string_view b);

// The name nearest to `text`, the first among equals; empty where none is near enough to be meant
// (more than a third of the letters differ, and it does not begin or contain the text).
[[nodiscard]] std::string nearestName(std::string_view text, const std::vector<std::string>& names);

}  // namespace ledgerboard::intake
