#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/compute/risk_parts.h"

namespace ledgerboard::compute {

namespace {

// Ranks less their mean. Equal totals share the middle of their ranks.
std::vector<double> centredRanks(std::span<const std::int64_t> totals) {
    std::vector<std::uint32_t> order(totals.size());
    std::iota(order.begin(), order.end(), 0U);
    std::sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
        return totals[a] != totals[b] ? totals[a] < totals[b] : a < b;
    });
    const double middle = (static_cast<double>(totals.size()) - 1) / 2;
    std::vector<double> ranks(totals.size());
    for (std::size_t from = 0; from < order.size();) {
        std::size_t to = from;
        while (to < order.size() && totals[order[to]] == totals[order[from]]) {
            ++to;
        }
        const double shared = (static_cast<double>(from) + static_cast<double>(to) - 1) / 2;
        for (; from < to; ++from) {
            ranks[order[from]] = shared - middle;
        }
    }
    return ranks;
}

// Sums over the trials, of the causes from `first` up to `last`.
struct Sums {
    std::vector<double> places;
    std::vector<double> squares;
    std::vector<double> products;  // with the centred ranks

    Sums(const Grades& grades, std::size_t first, std::size_t last,
         const std::vector<double>& ranks)
        : places(last - first), squares(last - first), products(last - first) {
        for (std::size_t trial = 0; trial < grades.trials; ++trial) {
            const auto row = grades.row(trial).subspan(first, last - first);
            const double rank = ranks[trial];
            for (std::size_t cause = 0; cause < row.size(); ++cause) {
                const double place = row[cause];
                places[cause] += place;
                squares[cause] += place * place;
                products[cause] += place * rank;
            }
        }
    }
};

// With a factor that all share, even what does not enter a total goes along with it.
bool canMove(Total total, DriverKind kind) {
    switch (kind) {
        case DriverKind::ItemCost:
            return total != Total::Finish;
        case DriverKind::ItemDuration:
        case DriverKind::ItemReady:
            return total != Total::Cost;
        case DriverKind::Unknown:
            return true;
        case DriverKind::Income:
            return total == Total::Profit;
    }
    return false;
}

// Whether its place may be the house's. An unknown's depends mostly on whether it strikes.
bool takesPart(DriverKind kind) {
    return kind != DriverKind::Unknown && kind != DriverKind::Income;
}

double correlationOf(double places, double squares, double products, double rankSquares,
                     double trials) {
    const double spread = squares - places * places / trials;
    const double both = std::sqrt(std::max(0.0, spread) * rankSquares);
    return both > 0 ? std::clamp(products / both, -1.0, 1.0) : 0;
}

// The rank correlation of the factor itself.
double sharedCorrelation(const Grades& grades, const std::vector<double>& ranks,
                         double rankSquares) {
    double places = 0;
    double squares = 0;
    double products = 0;
    for (std::size_t trial = 0; trial < grades.trials; ++trial) {
        const double place = grades.shared[trial];
        places += place;
        squares += place * place;
        products += place * ranks[trial];
    }
    return correlationOf(places, squares, products, rankSquares,
                         static_cast<double>(grades.trials));
}

// What each cause does by itself (risk.h), from its correlation.
class ByItself {
  public:
    ByItself(const Grades& grades, double shared)
        : isWhole_(grades.correlation >= 1),
          factor_(shared * std::sqrt(grades.correlation)),
          own_(1 - grades.correlation),
          byChance_(2 / std::sqrt(static_cast<double>(grades.trials))) {}

    // 0 where it is no more than chance shows.
    [[nodiscard]] double of(DriverKind kind, double correlation) const {
        const bool isApart = takesPart(kind) && !isWhole_;
        const double alone = isApart ? (correlation - factor_) / own_ : correlation;
        const double byChance = isApart ? byChance_ / own_ : byChance_;
        return std::abs(alone) > byChance ? alone : 0;
    }

  private:
    bool isWhole_;  // all at one place: none can be told from the others
    double factor_;
    double own_;
    double byChance_;
};

}  // namespace

std::vector<Driver> driversOf(const Grades& grades, Total total,
                              std::span<const std::int64_t> totals) {
    std::vector<Driver> out;
    if (grades.trials < 2) {
        return out;
    }
    const std::vector<double> ranks = centredRanks(totals.first(grades.trials));
    const double rankSquares = std::inner_product(ranks.begin(), ranks.end(), ranks.begin(), 0.0);
    // They stand together (risk_parts.h).
    const auto moves = [total](const Cause& cause) { return canMove(total, cause.kind); };
    const auto first = std::find_if(grades.causes.begin(), grades.causes.end(), moves);
    const auto last = std::find_if_not(first, grades.causes.end(), moves);
    const Sums sums(grades, static_cast<std::size_t>(first - grades.causes.begin()),
                    static_cast<std::size_t>(last - grades.causes.begin()), ranks);
    const ByItself byItself(grades, sharedCorrelation(grades, ranks, rankSquares));
    double all = 0;
    for (auto cause = first; cause != last; ++cause) {
        const auto at = static_cast<std::size_t>(cause - first);
        const double correlation =
            correlationOf(sums.places[at], sums.squares[at], sums.products[at], rankSquares,
                          static_cast<double>(grades.trials));
        const double alone = byItself.of(cause->kind, correlation);
        if (alone != 0) {
            out.push_back({cause->kind, cause->index, correlation, alone * alone});
            all += alone * alone;
        }
    }
    for (Driver& driver : out) {
        driver.sharePercent *= 100 / all;
    }
    std::stable_sort(out.begin(), out.end(), [](const Driver& a, const Driver& b) {
        return a.sharePercent > b.sharePercent;
    });
    return out;
}

}  // namespace ledgerboard::compute
