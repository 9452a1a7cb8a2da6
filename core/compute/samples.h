// What do the results of many trials say: their mean, how far they spread, and what is kept with
// which chance?
//
// Units: whatever was sampled, as whole numbers (cents, thousandths of a day).
// Percentiles are nearest ranks: the least sample that at least so many percent of all do not
// exceed; no value is shown that no trial had. Source: project decision.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace ledgerboard::compute {

struct Summary {
    double mean = 0;
    double deviation = 0;  // of the sample, over n - 1; 0 for one trial
    std::int64_t least = 0;
    std::int64_t p10 = 0;
    std::int64_t p50 = 0;
    std::int64_t p80 = 0;
    std::int64_t p90 = 0;
    std::int64_t most = 0;
};

// All 0 without samples.
[[nodiscard]] Summary summaryOf(std::span<const std::int64_t> samples);

// 0 to 100. 0 without samples.
[[nodiscard]] double percentAtMost(std::span<const std::int64_t> samples, std::int64_t limit);
[[nodiscard]] double percentAtLeast(std::span<const std::int64_t> samples, std::int64_t limit);

// How many samples lie in each of `bins` equal parts of first to last, both ends included; those
// outside count nowhere. Requires: 1 <= bins, first <= last.
[[nodiscard]] std::vector<std::size_t> countsOf(std::span<const std::int64_t> samples,
                                                std::size_t bins, std::int64_t first,
                                                std::int64_t last);

}  // namespace ledgerboard::compute
