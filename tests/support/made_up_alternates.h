// How do the tests and benchmarks of choosing make alternates? From a seed, the same every time.
#pragma once

#include <cstdint>

#include "core/compute/choose.h"

namespace ledgerboard::tests {

// Numbers that look like chance (splitmix64: Steele, Lea and Flood 2014, from memory).
class MadeUp {
  public:
    explicit MadeUp(std::uint64_t seed) : state_(seed) {}

    // least to most, both included.
    std::int64_t between(std::int64_t least, std::int64_t most) {
        state_ += 0x9E3779B97F4A7C15U;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
        z ^= z >> 31U;
        return least + static_cast<std::int64_t>(z % static_cast<std::uint64_t>(most - least + 1));
    }

    bool oneIn(std::int64_t many) { return between(1, many) == 1; }

  private:
    std::uint64_t state_;
};

struct MadeUpAlternates {
    std::size_t alternates = 5;
    std::size_t options = 4;
    std::size_t pairs = 0;  // needs and excludes, as many of each
    bool hasLimits = true;
    bool hasCeiling = false;
    bool hasDayCosts = false;  // and selling costs
};

// Options in whole dollars, the first of each alternate "leave as is". About half of what all would
// take is there. Few days and few dollars apart, so that many sets tie.
[[nodiscard]] inline compute::ChooseInput madeUpAlternates(const MadeUpAlternates& like,
                                                           std::uint64_t seed) {
    MadeUp made(seed);
    compute::ChooseInput input;
    const std::int64_t grain = made.oneIn(3) ? 500 : 10;
    std::int64_t cost = 0;
    std::int64_t days = 0;
    for (std::size_t k = 0; k < like.alternates; ++k) {
        std::vector<compute::WeighedOption> options(like.options);
        std::int64_t mostCost = 0;
        std::int64_t mostDays = 0;
        for (std::size_t p = made.oneIn(8) ? 0 : 1; p < like.options; ++p) {
            const std::int64_t price = grain * made.between(0, 9000 / grain);
            const std::int64_t time = made.between(0, 6);
            options[p].cost = model::Money::of(price);
            options[p].days = model::Quantity::of(time);
            options[p].value = model::Money::of(grain * made.between(-500 / grain, 14'000 / grain));
            mostCost = std::max(mostCost, price);
            mostDays = std::max(mostDays, time);
        }
        cost += mostCost;
        days += mostDays;
        input.alternates.push_back(std::move(options));
    }
    const auto place = [&] {
        return compute::OptionPlace{
            static_cast<std::size_t>(
                made.between(0, static_cast<std::int64_t>(like.alternates) - 1)),
            static_cast<std::size_t>(made.between(0, static_cast<std::int64_t>(like.options) - 1))};
    };
    for (std::size_t k = 0; k < like.pairs; ++k) {
        const auto from = place();
        input.alternates[from.alternate][from.option].needs.push_back(place());
        const auto other = place();
        input.alternates[other.alternate][other.option].excludes.push_back(place());
    }
    if (like.hasLimits) {
        input.cash = model::Money::of(made.between(cost / 5, cost * 4 / 5));
        input.days = model::Quantity::of(made.between(days / 4, days));
    }
    if (like.hasCeiling) {
        input.resale = model::Money::of(300'000);
        input.ceiling = model::Money::of(300'000 + made.between(-3'000, cost));
    }
    if (like.hasDayCosts) {
        input.keptShare = model::Percent::fromBasisPoints(made.between(8'800, 9'700));
        input.dayCosts = model::Money::of(made.between(0, 200));
    }
    return input;
}

}  // namespace ledgerboard::tests
