// What does a table of weights hold of the clues that were found?
#pragma once

#include <algorithm>
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

    // The rows of the clues that have one, each once, in no particular order. Most clues have none.
    [[nodiscard]] std::vector<const Row*> of(const std::vector<std::uint64_t>& clues) const {
        std::vector<const Row*> found;
        found.reserve(clues.size());
        for (const std::uint64_t clue : clues) {
            if (!likely_.mayHave(clue)) {
                continue;
            }
            if (const Slot& slot = slots_[slotOf(clue)]; slot.row != kFree) {
                found.push_back(&rows_[slot.row]);
            }
        }
        std::sort(found.begin(), found.end());
        found.erase(std::unique(found.begin(), found.end()), found.end());
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
