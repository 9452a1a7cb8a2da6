// What does a table of weights hold of the clues that were found?
#pragma once

#include <algorithm>
#include <bitset>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/intake/notes/number_table.h"

namespace ledgerboard::intake {

// Rows by the number of their clue (clues.h).
template <class Row>
class ClueTable {
  public:
    // False where the clue has a row already.
    bool add(std::uint64_t clue, const Row& row) {
        const auto [at, fresh] = rows_.add(clue);
        if (fresh) {
            rows_.row(at) = row;
        }
        return fresh;
    }

    // Hands the rows of the clues that have one to `use`, each once.
    template <class Use>
    void each(const std::vector<std::uint64_t>& clues, Use use) const {
        thread_local std::vector<std::uint32_t> used;  // its memory is used again
        used.resize(std::max(used.size(), clues.size()));
        std::uint32_t* const first = used.data();
        std::uint32_t* end = first;
        // Only rows that share a bit need to be told apart.
        std::bitset<4096> met;
        for (const std::uint64_t clue : clues) {
            const std::uint32_t at = rows_.indexOf(clue);
            if (at == NumberTable<Row>::kNoRow) {
                continue;
            }
            const std::size_t bit = at % met.size();
            if (!met[bit] || std::find(first, end, at) == end) {
                met.set(bit);
                *end++ = at;
                use(rows_.row(at));
            }
        }
    }

  private:
    NumberTable<Row> rows_;
};

}  // namespace ledgerboard::intake
