// Which row has a number?
//
// Read far more often than it is written, and mostly for numbers that have no row: a slot holds
// some bits of its number, so that most of those are told from it without a look at the row.
#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace ledgerboard::intake {

template <class Row>
class NumberTable {
  public:
    static constexpr std::uint32_t kNoRow = 0xFFFFFFFF;

    // The index of the number's row, made where it has none, and whether it was made.
    std::pair<std::uint32_t, bool> add(std::uint64_t number) {
        if (const std::uint32_t row = indexOf(number); row != kNoRow) {
            return {row, false};
        }
        const auto row = static_cast<std::uint32_t>(entries_.size());
        entries_.push_back({number, {}});
        if (entries_.size() * 2 > slots_.size()) {
            widen();
        } else {
            put(row);
        }
        return {row, true};
    }

    // The index of the number's row; kNoRow where it has none. Rows are numbered as they were made.
    [[nodiscard]] std::uint32_t indexOf(std::uint64_t number) const {
        const std::uint64_t mixed = number * kSpread;
        std::size_t at = mixed >> shift_;
        while (slots_[at].row != kNoRow) {
            if (slots_[at].tag == static_cast<std::uint32_t>(mixed) &&
                entries_[slots_[at].row].number == number) {
                break;
            }
            at = (at + 1) & (slots_.size() - 1);
        }
        return slots_[at].row;
    }

    [[nodiscard]] Row& row(std::uint32_t index) { return entries_[index].row; }

    [[nodiscard]] const Row& row(std::uint32_t index) const { return entries_[index].row; }

  private:
    // Fibonacci hashing: the upper bits of the product depend on all bits of the number.
    static constexpr std::uint64_t kSpread = 0x9E3779B97F4A7C15ULL;
    static constexpr int kFewest = 4;  // 2 to the power of this

    struct Slot {
        std::uint32_t tag = 0;  // of the number, spread
        std::uint32_t row = kNoRow;
    };

    struct Entry {
        std::uint64_t number = 0;
        Row row{};
    };

    void put(std::uint32_t row) {
        const std::uint64_t mixed = entries_[row].number * kSpread;
        std::size_t at = mixed >> shift_;
        while (slots_[at].row != kNoRow) {
            at = (at + 1) & (slots_.size() - 1);
        }
        slots_[at] = {static_cast<std::uint32_t>(mixed), row};
    }

    void widen() {
        --shift_;
        slots_.assign(slots_.size() * 2, {});
        for (std::uint32_t row = 0; row < entries_.size(); ++row) {
            put(row);
        }
    }

    int shift_ = 64 - kFewest;
    // A power of two, at most half of them taken.
    std::vector<Slot> slots_ = std::vector<Slot>(std::size_t{1} << kFewest);
    std::vector<Entry> entries_;
};

}  // namespace ledgerboard::intake
