// Between a low and a high estimate, which value stands at which chance?
//
// The inverse of a distribution's cumulative function on 0 (low) to 1 (high), as a table of bins of
// equal chance with a straight line in each. The line of a bin keeps the mean of that bin exactly
// and never leaves the bin, so means come out right and no value is outside low to high; what is
// lost of the variance is a few ten-thousandths of it at most.
//
// Units: chances are 32-bit fractions (2^32 would be 1), values 31-bit ones (2^31 is 1): whole
// numbers, so that a seed gives the same samples on every machine.
// Source: PERT-beta: the beta distribution whose mean is (low + 4 likely + high) / 6 and whose mode
// is likely: alpha = 1 + 4 m, beta = 5 - 4 m, with m the place of likely from 0 to 1 (as in the
// textbooks' derivation of PERT). Triangular: its closed form. The table itself: project decision.
// Threads: a table may be asked from any number at once.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace ledgerboard::compute {

enum class SpreadShape { PertBeta, Triangular };

class QuantileTable {
  public:
    static constexpr std::size_t kBins = 256;
    static constexpr unsigned kOneBits = 31;
    static constexpr std::uint32_t kOne = std::uint32_t{1} << kOneBits;

    // `mode`: where likely stands from low (0) to high (1). Requires: 0 <= mode <= 1.
    QuantileTable(SpreadShape shape, double mode);

    // The value at a chance; rises with it.
    [[nodiscard]] std::uint32_t at(std::uint32_t chance) const {
        const Segment& segment = segments_[chance >> kBinShift];
        const std::uint64_t within = chance & kWithinBin;
        return segment.start + static_cast<std::uint32_t>((segment.rise * within) >> kBinShift);
    }

  private:
    static constexpr unsigned kBinShift = 24;  // 32 bits less those of kBins
    static constexpr std::uint32_t kWithinBin = (std::uint32_t{1} << kBinShift) - 1;

    struct Segment {
        std::uint32_t start;
        std::uint32_t rise;
    };

    std::array<Segment, kBins> segments_{};
};

}  // namespace ledgerboard::compute
