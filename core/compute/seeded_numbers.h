// Where do the chance numbers of a simulation come from?
//
// A generator written out here, so that one seed gives the same numbers on every machine and with
// every standard library. Source: xoshiro256** 1.0 and SplitMix64, D. Blackman and S. Vigna,
// "Scrambled Linear Pseudorandom Number Generators" (both in the public domain). Good for
// simulation, never for secrets. Threads: one generator each.
#pragma once

#include <array>
#include <cstdint>

namespace ledgerboard::compute {

// Spreads a seed over 64 bits; its numbers set up the generator below.
class SplitMix64 {
  public:
    explicit constexpr SplitMix64(std::uint64_t seed) : state_(seed) {}

    constexpr std::uint64_t next() {
        state_ += 0x9e3779b97f4a7c15U;
        std::uint64_t mixed = state_;
        mixed = (mixed ^ (mixed >> 30U)) * 0xbf58476d1ce4e5b9U;
        mixed = (mixed ^ (mixed >> 27U)) * 0x94d049bb133111ebU;
        return mixed ^ (mixed >> 31U);
    }

  private:
    std::uint64_t state_;
};

// xoshiro256**.
class SeededNumbers {
  public:
    explicit constexpr SeededNumbers(std::uint64_t seed) {
        SplitMix64 spread(seed);
        for (std::uint64_t& word : state_) {
            word = spread.next();
        }
    }

    // Requires: not all 0.
    explicit constexpr SeededNumbers(const std::array<std::uint64_t, 4>& state) : state_(state) {}

    // 64 even bits.
    constexpr std::uint64_t next() {
        const std::uint64_t result = rotated(state_[1] * 5, 7) * 9;
        const std::uint64_t shifted = state_[1] << 17U;
        state_[2] ^= state_[0];
        state_[3] ^= state_[1];
        state_[1] ^= state_[2];
        state_[0] ^= state_[3];
        state_[2] ^= shifted;
        state_[3] = rotated(state_[3], 45);
        return result;
    }

    // Evenly in [0, 1), 53 bits.
    constexpr double uniform() { return static_cast<double>(next() >> 11U) * 0x1.0p-53; }

    // A whole number from 0 to `end`, `end` itself not among them; even but for less than `end` in
    // 2^64. Requires: 1 <= end.
    constexpr std::uint64_t below(std::uint64_t end) {
        __extension__ using Wide = unsigned __int128;
        return static_cast<std::uint64_t>((Wide{next()} * end) >> 64U);
    }

  private:
    static constexpr std::uint64_t rotated(std::uint64_t word, unsigned by) {
        return (word << by) | (word >> (64U - by));
    }

    std::array<std::uint64_t, 4> state_{};
};

}  // namespace ledgerboard::compute
