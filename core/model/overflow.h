// What happens when a sum does not fit? It is an error, never a wrapped or clipped figure.
//
// The strong types throw OverflowError; whoever runs a verb or a calculation catches it at the edge
// and reports it as a Result (see guarded()). Intermediates are 128 bits wide.
#pragma once

#include <cstdint>
#include <limits>
#include <stdexcept>
#include <utility>

#include "core/model/result.h"

namespace ledgerboard::model {

class OverflowError : public std::overflow_error {
  public:
    explicit OverflowError(const char* what) : std::overflow_error(what) {}
};

__extension__ using Wide = __int128;  // intermediates only, never stored

[[nodiscard]] inline std::int64_t addChecked(std::int64_t a, std::int64_t b) {
    std::int64_t sum = 0;
    if (__builtin_add_overflow(a, b, &sum)) {
        throw OverflowError("a sum is larger than can be kept");
    }
    return sum;
}

[[nodiscard]] inline std::int64_t subtractChecked(std::int64_t a, std::int64_t b) {
    std::int64_t difference = 0;
    if (__builtin_sub_overflow(a, b, &difference)) {
        throw OverflowError("a difference is larger than can be kept");
    }
    return difference;
}

[[nodiscard]] inline std::int64_t negateChecked(std::int64_t a) {
    return subtractChecked(0, a);
}

[[nodiscard]] inline Wide multiplyWide(Wide a, Wide b) {
    Wide product = 0;
    if (__builtin_mul_overflow(a, b, &product)) {
        throw OverflowError("a product is larger than can be kept");
    }
    return product;
}

// numerator / denominator, rounded half away from zero.
// Requires: denominator > 0. Errors: OverflowError when the quotient does not fit 64 bits.
[[nodiscard]] inline std::int64_t divideRounded(Wide numerator, Wide denominator) {
    const Wide half = denominator / 2;
    const Wide odd = denominator % 2;  // an odd denominator has no exact half
    const Wide magnitude = numerator < 0 ? -numerator : numerator;
    Wide quotient = magnitude / denominator;
    if (magnitude % denominator >= half + odd) {
        ++quotient;
    }
    if (quotient > std::numeric_limits<std::int64_t>::max()) {
        throw OverflowError("a figure is larger than can be kept");
    }
    const auto whole = static_cast<std::int64_t>(quotient);
    return numerator < 0 ? -whole : whole;
}

// Runs `work`, turning an OverflowError into an Error. `work` returns a Result.
template <class Work>
[[nodiscard]] auto guarded(Work&& work) -> decltype(work()) {
    try {
        return std::forward<Work>(work)();
    } catch (const OverflowError& error) {
        return cannotBeMet(std::string(error.what()) +
                           ": check the amounts and quantities entered");
    }
}

}  // namespace ledgerboard::model
