#include "core/compute/samples.h"

#include <algorithm>
#include <cmath>

#include "core/model/check.h"
#include "core/model/overflow.h"

namespace ledgerboard::compute {

namespace {

double percentOfAll(std::size_t part, std::size_t all) {
    return all == 0 ? 0 : 100.0 * static_cast<double>(part) / static_cast<double>(all);
}

// Position of the nearest rank among `count` samples in order. Requires: count > 0.
std::size_t rankOf(std::size_t percent, std::size_t count) {
    return (percent * count + 99) / 100 - 1;
}

}  // namespace

Summary summaryOf(std::span<const std::int64_t> samples) {
    Summary out;
    const std::size_t count = samples.size();
    if (count == 0) {
        return out;
    }
    // From the first sample, so that large numbers that lie close together keep their digits.
    const std::int64_t origin = samples[0];
    model::Wide sum = 0;
    double squares = 0;
    for (const std::int64_t sample : samples) {
        const std::int64_t off = model::subtractChecked(sample, origin);
        sum += off;
        squares += static_cast<double>(off) * static_cast<double>(off);
    }
    const auto n = static_cast<double>(count);
    const double off = static_cast<double>(sum) / n;
    out.mean = static_cast<double>(origin) + off;
    if (count > 1) {
        out.deviation = std::sqrt(std::max(0.0, (squares - n * off * off) / (n - 1)));
    }
    // Each percentile is looked for among what the one before it left behind.
    std::vector<std::int64_t> ordered(samples.begin(), samples.end());
    auto from = ordered.begin();
    const auto at = [&](std::size_t percent) {
        const auto place = ordered.begin() + static_cast<std::ptrdiff_t>(rankOf(percent, count));
        std::nth_element(from, place, ordered.end());
        from = place;
        return *place;
    };
    out.p10 = at(10);
    out.least = *std::min_element(ordered.begin(), from + 1);
    out.p50 = at(50);
    out.p80 = at(80);
    out.p90 = at(90);
    out.most = *std::max_element(from, ordered.end());
    return out;
}

double percentAtMost(std::span<const std::int64_t> samples, std::int64_t limit) {
    return percentOfAll(static_cast<std::size_t>(std::count_if(
                            samples.begin(), samples.end(),
                            [limit](std::int64_t sample) { return sample <= limit; })),
                        samples.size());
}

double percentAtLeast(std::span<const std::int64_t> samples, std::int64_t limit) {
    return percentOfAll(static_cast<std::size_t>(std::count_if(
                            samples.begin(), samples.end(),
                            [limit](std::int64_t sample) { return sample >= limit; })),
                        samples.size());
}

std::vector<std::size_t> countsOf(std::span<const std::int64_t> samples, std::size_t bins,
                                  std::int64_t first, std::int64_t last) {
    model::require(bins >= 1 && first <= last, "at least one bin, and ends in order");
    std::vector<std::size_t> counts(bins, 0);
    const double width =
        (static_cast<double>(last) - static_cast<double>(first)) / static_cast<double>(bins);
    for (const std::int64_t sample : samples) {
        if (sample < first || sample > last) {
            continue;
        }
        const double place =
            width > 0 ? (static_cast<double>(sample) - static_cast<double>(first)) / width : 0;
        ++counts[std::min(static_cast<std::size_t>(place), bins - 1)];
    }
    return counts;
}

}  // namespace ledgerboard::compute
