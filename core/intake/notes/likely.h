// May a number be one of many?
//
// Asked before a table where most of what is looked up is not in it: a few bits of the number tell
// that sooner than the table does.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace ledgerboard::intake {

// Of 2 to the power of `kBits` bits: many times as many as numbers are added.
template <int kBits>
class Likely {
  public:
    void add(std::uint64_t number) {
        const std::uint64_t at = indexOf(number);
        words_[at / 64] |= std::uint64_t{1} << (at % 64);
    }

    // False only for what was never added.
    [[nodiscard]] bool mayHave(std::uint64_t number) const {
        const std::uint64_t at = indexOf(number);
        return (words_[at / 64] >> (at % 64) & 1) != 0;
    }

  private:
    // Fibonacci hashing: the upper bits of the product depend on all bits of the number.
    [[nodiscard]] static std::uint64_t indexOf(std::uint64_t number) {
        return (number * 0x9E3779B97F4A7C15ULL) >> (64 - kBits);
    }

    std::vector<std::uint64_t> words_ = std::vector<std::uint64_t>(std::size_t{1} << (kBits - 6));
};

}  // namespace ledgerboard::intake
