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
    void add(std::uint64_t number) { bits_[indexOf(number)] = true; }

    // False only for what was never added.
    [[nodiscard]] bool mayHave(std::uint64_t number) const { return bits_[indexOf(number)]; }

  private:
    static constexpr int kBits = 20;

    // Fibonacci hashing: the upper bits of the product depend on all bits of the number.
    static std::size_t indexOf(std::uint64_t number) {
        return static_cast<std::size_t>((number * 0x9E3779B97F4A7C15ULL) >> (64 - kBits));
    }

    std::vector<bool> bits_ = std::vector<bool>(std::size_t{1} << kBits);
};

}  // namespace ledgerboard::intake
