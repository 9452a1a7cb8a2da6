// May a number be one of many?
//
// Asked before a table where most of what is looked up is not in it: a few bits of the number tell
// that sooner than the table does.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace ledgerboard::intake {

class Likely {
  public:
    // 2 to the power of `bits` are kept: many times as many as numbers are added.
    explicit Likely(int bits = 20) : shift_(64 - bits), bits_(std::size_t{1} << bits) {}

    void add(std::uint64_t number) { bits_[indexOf(number)] = true; }

    // False only for what was never added.
    [[nodiscard]] bool mayHave(std::uint64_t number) const { return bits_[indexOf(number)]; }

  private:
    // Fibonacci hashing: the upper bits of the product depend on all bits of the number.
    [[nodiscard]] std::size_t indexOf(std::uint64_t number) const {
        return static_cast<std::size_t>((number * 0x9E3779B97F4A7C15ULL) >> shift_);
    }

    int shift_;
    std::vector<bool> bits_;
};

}  // namespace ledgerboard::intake
