// Which weights make a choice among several most likely to be the one that was made?
//
// Multinomial logistic regression with a ridge: each weight is held near nought in proportion to
// its square. Source: J. Nocedal and S. J. Wright, Numerical Optimization, 2nd ed., algorithm 7.5
// (L-BFGS) with the step halved until it satisfies (3.6a); from memory.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <deque>
#include <string>
#include <vector>

namespace ledgerboard::notes_weights {

inline constexpr std::size_t kChoices = 10;  // none and nine treatments

// Talk is dealt into so many parts, each judged by weights made of the others.
inline constexpr std::size_t kParts = 5;

// The part that the talk of this name is dealt to.
inline std::size_t partOf(const std::string& name) {
    std::size_t sum = 0;
    for (const char c : name) {
        sum = (sum * 31 + static_cast<unsigned char>(c)) % 9973;
    }
    return sum % kParts;
}

// One choice that was made: the columns that speak for each way, and how far each was right.
template <std::size_t kWays>
struct ExampleOf {
    std::array<std::vector<std::uint32_t>, kWays> columns;
    std::array<double, kWays> right{};  // adds up to 1
};

using Example = ExampleOf<kChoices>;

template <std::size_t kWays>
std::array<double, kWays> chancesOf(const ExampleOf<kWays>& example,
                                    const std::vector<double>& weights) {
    std::array<double, kWays> chances{};
    for (std::size_t k = 1; k < kWays; ++k) {
        for (const std::uint32_t column : example.columns[k]) {
            chances[k] += weights[column];
        }
    }
    const double most = *std::max_element(chances.begin(), chances.end());
    double sum = 0;
    for (double& chance : chances) {
        chance = std::exp(chance - most);
        sum += chance;
    }
    for (double& chance : chances) {
        chance /= sum;
    }
    return chances;
}

template <std::size_t kWays>
class FitOf {
  public:
    // `holds`: the ridge of each column.
    FitOf(const std::vector<const ExampleOf<kWays>*>& examples, const std::vector<double>& holds)
        : examples_(examples), holds_(holds) {}

    [[nodiscard]] std::vector<double> run() {
        constexpr int kMostRounds = 80;
        constexpr double kStill = 1e-5;
        std::vector<double> at(holds_.size(), 0.0);
        std::vector<double> slope;
        double loss = lossAt(at, slope);
        for (int round = 0; round < kMostRounds; ++round) {
            const std::vector<double> way = directionOf(slope);
            double downhill = 0;
            for (std::size_t i = 0; i < way.size(); ++i) {
                downhill -= slope[i] * way[i];
            }
            std::vector<double> next(at.size());
            std::vector<double> nextSlope;
            double nextLoss = 0;
            double step = 1;
            for (int halved = 0; halved < 20; ++halved, step /= 2) {
                for (std::size_t i = 0; i < at.size(); ++i) {
                    next[i] = at[i] - step * way[i];
                }
                nextLoss = lossAt(next, nextSlope);
                if (nextLoss <= loss + 1e-4 * step * downhill) {
                    break;
                }
            }
            keep(at, next, slope, nextSlope);
            const bool still = loss - nextLoss < kStill * std::abs(loss);
            at = std::move(next);
            slope = std::move(nextSlope);
            loss = nextLoss;
            if (still) {
                break;
            }
        }
        return at;
    }

  private:
    struct Step {
        std::vector<double> moved;
        std::vector<double> bent;
        double scale = 0;
    };

    double lossAt(const std::vector<double>& at, std::vector<double>& slope) const {
        double loss = 0;
        slope.assign(at.size(), 0.0);
        for (std::size_t i = 0; i < at.size(); ++i) {
            loss += 0.5 * holds_[i] * at[i] * at[i];
            slope[i] = holds_[i] * at[i];
        }
        for (const ExampleOf<kWays>* example : examples_) {
            const std::array<double, kWays> chances = chancesOf(*example, at);
            for (std::size_t k = 0; k < kWays; ++k) {
                const double right = example->right[k];
                if (right > 0) {
                    loss -= right * std::log(std::max(chances[k], 1e-12));
                }
                const double off = chances[k] - right;
                for (const std::uint32_t column : example->columns[k]) {
                    slope[column] += off;
                }
            }
        }
        return loss;
    }

    [[nodiscard]] static double dot(const std::vector<double>& a, const std::vector<double>& b) {
        double sum = 0;
        for (std::size_t i = 0; i < a.size(); ++i) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    [[nodiscard]] std::vector<double> directionOf(const std::vector<double>& slope) const {
        std::vector<double> way = slope;
        std::vector<double> shares(steps_.size());
        for (std::size_t s = steps_.size(); s-- > 0;) {
            shares[s] = dot(steps_[s].moved, way) * steps_[s].scale;
            for (std::size_t i = 0; i < way.size(); ++i) {
                way[i] -= shares[s] * steps_[s].bent[i];
            }
        }
        const double first =
            steps_.empty()
                ? 1.0 / std::max(1.0, std::sqrt(dot(slope, slope)))
                : 1.0 / (steps_.back().scale * dot(steps_.back().bent, steps_.back().bent));
        for (double& one : way) {
            one *= first;
        }
        for (std::size_t s = 0; s < steps_.size(); ++s) {
            const double back = shares[s] - dot(steps_[s].bent, way) * steps_[s].scale;
            for (std::size_t i = 0; i < way.size(); ++i) {
                way[i] += back * steps_[s].moved[i];
            }
        }
        return way;
    }

    void keep(const std::vector<double>& at, const std::vector<double>& next,
              const std::vector<double>& slope, const std::vector<double>& nextSlope) {
        constexpr std::size_t kRemembered = 8;
        Step step{std::vector<double>(at.size()), std::vector<double>(at.size()), 0};
        for (std::size_t i = 0; i < at.size(); ++i) {
            step.moved[i] = next[i] - at[i];
            step.bent[i] = nextSlope[i] - slope[i];
        }
        const double both = dot(step.moved, step.bent);
        if (both <= 1e-10) {
            return;
        }
        step.scale = 1.0 / both;
        steps_.push_back(std::move(step));
        if (steps_.size() > kRemembered) {
            steps_.pop_front();
        }
    }

    const std::vector<const ExampleOf<kWays>*>& examples_;
    const std::vector<double>& holds_;
    std::deque<Step> steps_;
};

using Fit = FitOf<kChoices>;

}  // namespace ledgerboard::notes_weights
