#include "core/model/money.h"

#include <algorithm>
#include <limits>
#include <numeric>

#include "core/model/check.h"

namespace ledgerboard::model {

std::vector<Money> allocate(Money total, const std::vector<std::int64_t>& weights) {
    std::vector<Money> parts(weights.size());
    if (weights.empty()) {
        return parts;
    }
    Wide sum = 0;
    for (const auto weight : weights) {
        require(weight >= 0, "allocate: no negative weight");
        sum += weight;
    }
    const bool even = sum == 0;
    const Wide denominator = even ? static_cast<Wide>(weights.size()) : sum;
    if (total.minor() == std::numeric_limits<std::int64_t>::min()) {
        throw OverflowError("an amount to be split is larger than can be kept");
    }
    const bool negative = total.minor() < 0;
    const Wide magnitude = negative ? -static_cast<Wide>(total.minor()) : total.minor();
    std::vector<Wide> remainders(weights.size());
    Wide handedOut = 0;
    std::vector<std::int64_t> cents(weights.size());
    for (std::size_t k = 0; k < weights.size(); ++k) {
        const Wide numerator = multiplyWide(magnitude, even ? 1 : weights[k]);
        cents[k] = static_cast<std::int64_t>(numerator / denominator);
        remainders[k] = numerator % denominator;
        handedOut += cents[k];
    }
    std::vector<std::size_t> order(weights.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return remainders[a] > remainders[b]; });
    const auto left = static_cast<std::size_t>(magnitude - handedOut);
    for (std::size_t k = 0; k < left; ++k) {
        ++cents[order[k]];
    }
    for (std::size_t k = 0; k < weights.size(); ++k) {
        parts[k] = Money::fromMinor(negative ? -cents[k] : cents[k]);
    }
    return parts;
}

}  // namespace ledgerboard::model
