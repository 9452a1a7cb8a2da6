// What does a table of weights hold of the clues that were found?
#pragma once

#include <algorithm>
#include <bitset>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/intake/notes/likely.h"

namespace ledgerboard::intake {

// Rows by the number of their clue (clues.h).
template <class Row>
class ClueTable {
  public:
    // False where the clue has a row already.
    bool add(std::uint64_t clue, const Row& row) {
        if ((entries_.size() + 1) * 2 > slots_.size()) {
            widen();
        }
        std::uint32_t& slot = slots_[slotOf(clue)];
        if (slot != kFree) {
            return false;
        }
        slot = static_cast<std::uint32_t>(entries_.size());
        entries_.push_back({clue, row});
        likely_.add(clue);
        return true;
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
            if (!likely_.mayHave(clue)) {
                continue;
            }
            const std::uint32_t at = slots_[slotOf(clue)];
            if (at == kFree) {
                continue;
            }
            const std::size_t bit = at % met.size();
            if (!met[bit] || std::find(first, end, at) == end) {
                met.set(bit);
                *end++ = at;
                use(entries_[at].row);
            }
        }
    }

  private:
    static constexpr std::uint32_t kFree = 0xFFFFFFFF;

    struct Entry {
        std::uint64_t clue = 0;
        Row row{};
    };

    // Where the clue is, or else the first free slot from its own on.
    [[nodiscard]] std::size_t slotOf(std::uint64_t clue) const {
        std::size_t at = clue & (slots_.size() - 1);
        while (slots_[at] != kFree && entries_[slots_[at]].clue != clue) {
            at = (at + 1) & (slots_.size() - 1);
        }
        return at;
    }

    void widen() {
        slots_.assign(std::max<std::size_t>(1024, slots_.size() * 2), kFree);
        for (std::uint32_t i = 0; i < entries_.size(); ++i) {
            slots_[slotOf(entries_[i].clue)] = i;
        }
    }

    Likely<20> likely_;
    std::vector<std::uint32_t> slots_;  // indexes; a power of two, at most half of them taken
    std::vector<Entry> entries_;
};

}  // namespace ledgerboard::intake
