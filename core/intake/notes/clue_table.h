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
        if ((rows_.size() + 1) * 2 > slots_.size()) {
            widen();
        }
        Slot& slot = slots_[slotOf(clue)];
        if (slot.row != kFree) {
            return false;
        }
        slot = {clue, static_cast<std::uint32_t>(rows_.size())};
        rows_.push_back(row);
        likely_.add(clue);
        return true;
    }

    // The rows of the clues that have one, each once, in the order of the clues. Most clues have
    // none.
    [[nodiscard]] std::vector<const Row*> of(const std::vector<std::uint64_t>& clues) const {
        std::vector<const Row*> found;
        found.reserve(clues.size());
        // Only rows that share a bit need to be told apart.
        std::bitset<512> met;
        for (const std::uint64_t clue : clues) {
            if (!likely_.mayHave(clue)) {
                continue;
            }
            const Slot& slot = slots_[slotOf(clue)];
            if (slot.row == kFree) {
                continue;
            }
            const Row* row = &rows_[slot.row];
            const std::size_t bit = slot.row % met.size();
            if (!met[bit] || std::find(found.begin(), found.end(), row) == found.end()) {
                met.set(bit);
                found.push_back(row);
            }
        }
        return found;
    }

  private:
    static constexpr std::uint32_t kFree = 0xFFFFFFFF;

    struct Slot {
        std::uint64_t clue = 0;
        std::uint32_t row = kFree;
    };

    // Where the clue is, or else the first free slot from its own on.
    [[nodiscard]] std::size_t slotOf(std::uint64_t clue) const {
        std::size_t at = clue & (slots_.size() - 1);
        while (slots_[at].row != kFree && slots_[at].clue != clue) {
            at = (at + 1) & (slots_.size() - 1);
        }
        return at;
    }

    void widen() {
        std::vector<Slot> before(std::max<std::size_t>(1024, slots_.size() * 2));
        before.swap(slots_);
        for (const Slot& slot : before) {
            if (slot.row != kFree) {
                slots_[slotOf(slot.clue)] = slot;
            }
        }
    }

    Likely likely_;
    std::vector<Slot> slots_;  // a power of two, at most half of them taken
    std::vector<Row> rows_;
};

}  // namespace ledgerboard::intake
