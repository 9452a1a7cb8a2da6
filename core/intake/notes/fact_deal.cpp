// The shares are a project decision: wide enough for a ruin and for a house that needs paint.
#include "core/intake/notes/fact_deal.h"

namespace ledgerboard::intake {

namespace {

constexpr double kNever = -50.0;

// How much it speaks for two sums that one is so many percent of the other: `within` from `low` to
// `high`, `beyond` below `least` and above `most`, else nothing.
struct Range {
    double least;
    double low;
    double high;
    double most;
    double within;
    double beyond;
};

double weigh(double share, const Range& range) {
    if (share >= range.low && share <= range.high) {
        return range.within;
    }
    return share < range.least || share > range.most ? range.beyond : 0.0;
}

constexpr Range kPriceOfSale = {25, 42, 90, 96, 0.6, -5.0};
constexpr Range kWorkOfPrice = {4, 7, 70, 95, 0.6, -3.0};
constexpr Range kWorkOfMargin = {14, 30, 80, 130, 0.8, -2.5};
constexpr Range kWorkOfSale = {4, 6, 36, 45, 0.3, -2.7};

double shareOf(std::int64_t part, std::int64_t whole) {
    return 100.0 * static_cast<double>(part) / static_cast<double>(whole);
}

// How well the parts go together; a sum of 0 is none.
double togetherness(std::int64_t price, std::int64_t work, std::int64_t sale) {
    constexpr double kSaleAlone = -1.5;  // who tells what it brings tells what it cost
    double sum = price == 0 && sale > 0 ? kSaleAlone : 0.0;
    if (price > 0 && sale > 0) {
        const double share = shareOf(price, sale);
        sum += share >= 100 ? kNever : weigh(share, kPriceOfSale);
    }
    if (price > 0 && work > 0) {
        sum += weigh(shareOf(work, price), kWorkOfPrice);
    }
    if (work > 0 && sale > price) {
        sum += price > 0 ? weigh(shareOf(work, sale - price), kWorkOfMargin)
                         : weigh(shareOf(work, sale), kWorkOfSale);
    }
    return sum;
}

// A sum that may be a part; its value is 0 where there is none.
struct Likely {
    std::int64_t value = 0;
    double suits = 0;
};

// What may be the part; that there is none comes first. Another reading of a sum speaks for it.
std::vector<Likely> likelyOf(const std::vector<DealSum>& sums, std::size_t part) {
    constexpr double kTold = 2.0;
    constexpr double kReading = 1.5;
    std::vector<Likely> likely = {{}};
    for (const DealSum& sum : sums) {
        if (sum.suits[part] <= kNever) {
            continue;
        }
        likely.push_back({sum.value, sum.suits[part]});
        for (const DealSum& other : sums) {
            const double share = shareOf(other.value, sum.value);
            const bool reading =
                other.value != sum.value && other.suits[part] > kTold && share > 85 && share < 117;
            likely.back().suits += reading ? kReading : 0.0;
        }
    }
    return likely;
}

}  // namespace

Deal weighDeal(const std::vector<DealSum>& sums) {
    const std::vector<Likely> prices = likelyOf(sums, 0);
    const std::vector<Likely> works = likelyOf(sums, 1);
    const std::vector<Likely> sales = likelyOf(sums, 2);
    Deal best = {};
    double most = 0;
    for (const Likely& price : prices) {
        for (const Likely& work : works) {
            for (const Likely& sale : sales) {
                const bool twice = (price.value > 0 && price.value == work.value) ||
                                   (sale.value > 0 && sale.value == work.value);
                const double sum = price.suits + work.suits + sale.suits +
                                   togetherness(price.value, work.value, sale.value);
                if (!twice && sum > most) {
                    most = sum;
                    best = {price.value, work.value, sale.value};
                }
            }
        }
    }
    return best;
}

}  // namespace ledgerboard::intake
