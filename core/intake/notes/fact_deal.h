// Which of the sums told in the notes is what is paid, which the work and which the sale, all
// weighed together.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace ledgerboard::intake {

// The parts of a deal, in this order: what is paid, the work, the sale.
constexpr std::size_t kDealParts = 3;

// A sum and how well what is said of it suits each part; far below zero where it can't be one.
struct DealSum {
    std::int64_t value = 0;  // thousandths
    std::array<double, kDealParts> suits = {};
};

// The sum of each part, in thousandths; 0 where there is none.
using Deal = std::array<std::int64_t, kDealParts>;

// The deal whose sums suit their parts and one another best: a house is sold for more than is paid
// for it, and the work costs less than the house.
[[nodiscard]] Deal weighDeal(const std::vector<DealSum>& sums);

}  // namespace ledgerboard::intake
