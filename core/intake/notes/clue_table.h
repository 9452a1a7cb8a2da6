// What does a table of weights hold of the clues that were found?
#pragma once

#include <algorithm>
#include <cstdint>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/likely.h"

namespace ledgerboard::intake {

// Rows by the number of their clue (clues.h).
template <class Row>
class ClueTable {
  public:
    // False where the clue has a row already.
    bool add(std::uint64_t clue, const Row& row) {
        likely_.add(clue);
        return rows_.emplace(clue, row).second;
    }

    // The rows of the clues that have one, each once, in no particular order. Most clues have none.
    [[nodiscard]] std::vector<const Row*> of(const std::vector<std::uint64_t>& clues) const {
        std::vector<const Row*> found;
        for (const std::uint64_t clue : clues) {
            if (!likely_.mayHave(clue)) {
                continue;
            }
            if (const auto at = rows_.find(clue); at != rows_.end()) {
                found.push_back(&at->second);
            }
        }
        std::sort(found.begin(), found.end());
        found.erase(std::unique(found.begin(), found.end()), found.end());
        return found;
    }

  private:
    Likely likely_;
    std::unordered_map<std::uint64_t, Row> rows_;
};

}  // namespace ledgerboard::intake
