#include "core/compute/quantile_table.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/model/check.h"

namespace ledgerboard::compute {

namespace {

constexpr std::size_t kBins = QuantileTable::kBins;

// At a chance u: the value there, and the sum of all values below it (the integral of the quantile
// from 0 to u), from which the mean of a bin comes.
struct Knot {
    double value = 0;
    double below = 0;
};

using Knots = std::array<Knot, kBins + 1>;

// The beta density is summed over x = sin^2(t), t from 0 to a quarter turn: that draws the places
// apart at both ends, where the density is steep, and leaves it without a pole.
class BetaSum {
  public:
    explicit BetaSum(double mode) : sinPower_(1 + 8 * mode), cosPower_(9 - 8 * mode) {
        for (std::size_t k = 0; k < kCells; ++k) {
            addCell(k);
        }
        for (Knot& edge : sums_) {
            edge.value /= total_;
            edge.below /= total_;
        }
    }

    // The quantiles: each by walking to its cell, then within it.
    [[nodiscard]] Knots knots() const {
        Knots out;
        std::size_t cell = 0;
        for (std::size_t k = 1; k < kBins; ++k) {
            const double chance = static_cast<double>(k) / kBins;
            while (sums_[cell + 1].value < chance) {
                ++cell;
            }
            out[k] = knotIn(cell, chance);
        }
        out[kBins] = {1, sums_[kCells].below};
        return out;
    }

  private:
    static constexpr std::size_t kCells = 128;
    static constexpr std::size_t kPlaces = 2 * kCells + 1;  // ends and middles of the cells
    static constexpr double kCell = std::numbers::pi / 2 / kCells;

    // Of every place: the logarithms that the density is made of, and x.
    struct Places {
        std::array<double, kPlaces> logSin{};
        std::array<double, kPlaces> logCos{};
        std::array<double, kPlaces> x{};
        std::array<double, kCells + 1> slopes{};  // of x over t, at the ends of the cells

        Places() {
            x[kPlaces - 1] = 1;
            for (std::size_t k = 1; k + 1 < kPlaces; ++k) {
                const double turn = kCell / 2 * static_cast<double>(k);
                logSin[k] = std::log(std::sin(turn));
                logCos[k] = std::log(std::cos(turn));
                x[k] = std::sin(turn) * std::sin(turn);
            }
            for (std::size_t k = 0; k < slopes.size(); ++k) {
                slopes[k] = std::sin(2 * kCell * static_cast<double>(k));
            }
        }
    };

    static const Places& places() {
        static const Places kTable;
        return kTable;
    }

    // Not scaled; 0 at both ends, for alpha and beta are at least 1.
    [[nodiscard]] double density(std::size_t place) const {
        if (place == 0 || place + 1 == kPlaces) {
            return 0;
        }
        const Places& table = places();
        return std::exp(sinPower_ * table.logSin[place] + cosPower_ * table.logCos[place]);
    }

    // Simpson's rule over one cell, of the density and of x times it.
    void addCell(std::size_t cell) {
        const std::size_t left = 2 * cell;
        const double middle = density(left + 1);
        const double right = density(left + 2);
        const auto& x = places().x;
        densities_[cell + 1] = right;
        sums_[cell + 1].value =
            sums_[cell].value + kCell / 6 * (densities_[cell] + 4 * middle + right);
        sums_[cell + 1].below =
            sums_[cell].below +
            kCell / 6 *
                (x[left] * densities_[cell] + 4 * x[left + 1] * middle + x[left + 2] * right);
        total_ = sums_[cell + 1].value;
    }

    // A quantity over one cell, `at` 0 to 1 within it: the cubic with its values and slopes at the
    // cell's ends.
    struct Cubic {
        double from;
        double rise;
        double bendFrom;
        double bendTo;

        Cubic(double first, double last, double slopeFirst, double slopeLast)
            : from(first),
              rise(last - first),
              bendFrom(slopeFirst * kCell - rise),
              bendTo(rise - slopeLast * kCell) {}

        [[nodiscard]] double at(double place) const {
            return from + rise * place +
                   place * (1 - place) * (bendFrom * (1 - place) + bendTo * place);
        }

        [[nodiscard]] double slope(double place) const {
            return rise + (1 - 2 * place) * (bendFrom * (1 - place) + bendTo * place) +
                   place * (1 - place) * (bendTo - bendFrom);
        }
    };

    // Requires: a cell but the first and the last, whose chances are less than a bin's; its
    // densities are above 0 at both ends, and nearly straight between.
    [[nodiscard]] Knot knotIn(std::size_t cell, double chance) const {
        const Knot& from = sums_[cell];
        const Knot& to = sums_[cell + 1];
        const double left = densities_[cell] / total_;
        const double right = densities_[cell + 1] / total_;
        const Cubic chances(from.value, to.value, left, right);
        // Where a straight density would have it, then one step of Newton on the cubic.
        const double wanted = (chance - from.value) / kCell;
        double place = 2 * wanted / (left + std::sqrt(left * left + 2 * (right - left) * wanted));
        place -= (chances.at(place) - chance) / chances.slope(place);
        const Places& table = places();
        const double x = table.x[2 * cell];
        const double nextX = table.x[2 * cell + 2];
        return {Cubic(x, nextX, table.slopes[cell], table.slopes[cell + 1]).at(place),
                Cubic(from.below, to.below, left * x, right * nextX).at(place)};
    }

    double sinPower_;  // 2 alpha - 1
    double cosPower_;  // 2 beta - 1
    double total_ = 0;
    std::array<double, kCells + 1> densities_{};
    std::array<Knot, kCells + 1> sums_{};  // value: the chance of being below this place
};

Knot triangularKnot(double mode, double chance) {
    if (chance <= mode) {
        const double value = std::sqrt(chance * mode);
        return {value, 2.0 / 3 * value * chance};
    }
    const double fall = std::sqrt((1 - chance) * (1 - mode));
    const double atMode = 2.0 / 3 * mode * mode;
    return {1 - fall,
            atMode + (chance - mode) - 2.0 / 3 * ((1 - mode) * (1 - mode) - (1 - chance) * fall)};
}

Knots triangularKnots(double mode) {
    Knots out;
    for (std::size_t k = 0; k <= kBins; ++k) {
        out[k] = triangularKnot(mode, static_cast<double>(k) / kBins);
    }
    return out;
}

std::uint32_t fixedPoint(double value) {
    return static_cast<std::uint32_t>(
        std::lround(std::clamp(value, 0.0, 1.0) * QuantileTable::kOne));
}

}  // namespace

QuantileTable::QuantileTable(SpreadShape shape, double mode) {
    model::require(mode >= 0 && mode <= 1, "a mode from 0 to 1");
    const Knots knots =
        shape == SpreadShape::Triangular ? triangularKnots(mode) : BetaSum(mode).knots();
    for (std::size_t k = 0; k < kBins; ++k) {
        const double mean = (knots[k + 1].below - knots[k].below) * kBins;
        const double half =
            std::max(0.0, std::min(mean - knots[k].value, knots[k + 1].value - mean));
        const std::uint32_t start = fixedPoint(mean - half);
        segments_[k] = {start, std::min(fixedPoint(2 * half), kOne - start)};
    }
}

}  // namespace ledgerboard::compute
