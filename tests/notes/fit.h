// Which weights make a choice among several most likely to be the one that was made?
//
// Each way to choose has a score. The first part of an example tells of the whole of it: there the
// weights of its clues add up. Any further parts are sources that tell of it severally: of their
// sums the logarithm of the mean of e to them is added, so that the one that tells most decides.
// The first way is none of the others and its score is nought. The chance of a way is e to its
// score, over the sum of e to the scores of all.
//
// Source: D. P. Kingma and J. Ba, Adam: A method for stochastic optimization (2015), algorithm 1,
// from memory; the step shrinks evenly, each weight is held near nought in proportion to it
// (ridge), and each clue is left out now and then so that no weight leans on another.
// Deterministic: the order is drawn by a fixed seed.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <random>
#include <string>
#include <unordered_map>
#include <vector>

namespace ledgerboard::notes_weights {

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

// Numbers the clues that were seen often enough, in the order of their names.
class Numbers {
  public:
    Numbers(const std::unordered_map<std::string, int>& seen, int least) {
        for (const auto& [clue, count] : seen) {
            if (count >= least) {
                names_.push_back(clue);
            }
        }
        std::sort(names_.begin(), names_.end());
        for (std::size_t i = 0; i < names_.size(); ++i) {
            byName_.emplace(names_[i], static_cast<std::uint32_t>(i));
        }
    }

    // Those of `clues` that have one.
    [[nodiscard]] std::vector<std::uint32_t> of(const std::vector<std::string>& clues) const {
        std::vector<std::uint32_t> numbers;
        for (const std::string& clue : clues) {
            if (const auto at = byName_.find(clue); at != byName_.end()) {
                numbers.push_back(at->second);
            }
        }
        return numbers;
    }

    [[nodiscard]] const std::vector<std::string>& names() const { return names_; }

  private:
    std::vector<std::string> names_;
    std::unordered_map<std::string, std::uint32_t> byName_;
};

// One choice that was made: the clues by their numbers, and how far each way was right.
template <std::size_t kWays>
struct Example {
    std::vector<std::vector<std::uint32_t>>
        parts;                         // the first is of the whole; there is one at least
    std::array<float, kWays> right{};  // adds up to 1
};

// The weights of a clue, by way; that of the first way is nought.
template <std::size_t kWays>
using Weights = std::array<float, kWays>;

template <std::size_t kWays>
Weights<kWays> sumOf(const std::vector<std::uint32_t>& clues,
                     const std::vector<Weights<kWays>>& weights) {
    Weights<kWays> sum{};
    for (const std::uint32_t clue : clues) {
        for (std::size_t k = 1; k < kWays; ++k) {
            sum[k] += weights[clue][k];
        }
    }
    return sum;
}

// The chances of an example, and by part the share that each has in its score.
template <std::size_t kWays>
struct Judged {
    std::array<float, kWays> chances{};
    std::vector<Weights<kWays>> shares;
};

template <std::size_t kWays>
Judged<kWays> judge(const Example<kWays>& example, const std::vector<Weights<kWays>>& weights) {
    Judged<kWays> judged;
    judged.chances = sumOf<kWays>(example.parts.front(), weights);
    judged.shares.resize(example.parts.size());
    judged.shares.front().fill(1);
    for (std::size_t p = 1; p < example.parts.size(); ++p) {
        judged.shares[p] = sumOf<kWays>(example.parts[p], weights);
    }
    for (std::size_t k = 1; k < kWays && example.parts.size() > 1; ++k) {
        float most = judged.shares[1][k];
        for (std::size_t p = 1; p < example.parts.size(); ++p) {
            most = std::max(most, judged.shares[p][k]);
        }
        float sum = 0;
        for (std::size_t p = 1; p < example.parts.size(); ++p) {
            judged.shares[p][k] = std::exp(judged.shares[p][k] - most);
            sum += judged.shares[p][k];
        }
        judged.chances[k] += most + std::log(sum / static_cast<float>(example.parts.size() - 1));
        for (std::size_t p = 1; p < example.parts.size(); ++p) {
            judged.shares[p][k] /= sum;
        }
    }
    const float most = *std::max_element(judged.chances.begin(), judged.chances.end());
    float sum = 0;
    for (float& chance : judged.chances) {
        chance = std::exp(chance - most);
        sum += chance;
    }
    for (float& chance : judged.chances) {
        chance /= sum;
    }
    return judged;
}

template <std::size_t kWays>
class Fit {
  public:
    Fit(std::vector<const Example<kWays>*> examples, std::size_t clues)
        : examples_(std::move(examples)),
          weights_(clues),
          slope_(clues),
          mean_(clues),
          square_(clues) {}

    [[nodiscard]] std::vector<Weights<kWays>> run() {
        constexpr int kRounds = 4;
        constexpr std::size_t kBatch = 128;
        const std::size_t batches = (examples_.size() + kBatch - 1) / kBatch;
        const std::size_t steps = batches * kRounds;
        for (std::size_t step = 0; step < steps; ++step) {
            const std::size_t batch = step % batches;
            if (batch == 0) {
                shuffle();
            }
            const std::size_t from = batch * kBatch;
            const std::size_t to = std::min(from + kBatch, examples_.size());
            for (std::size_t i = from; i < to; ++i) {
                learn(*examples_[i], 1.0F / static_cast<float>(to - from));
            }
            const float left = 1 - static_cast<float>(step) / static_cast<float>(steps);
            move(std::max(left, 0.02F));
        }
        return weights_;
    }

  private:
    // std::shuffle's order is each library's own.
    void shuffle() {
        for (std::size_t i = examples_.size(); i > 1; --i) {
            std::swap(examples_[i - 1], examples_[chance_() % i]);
        }
    }

    void learn(const Example<kWays>& example, float share) {
        constexpr std::uint32_t kOneIn = 10;  // clues, left out
        Example<kWays> heard;
        heard.parts.reserve(example.parts.size());
        for (const std::vector<std::uint32_t>& part : example.parts) {
            std::vector<std::uint32_t>& kept = heard.parts.emplace_back();
            for (const std::uint32_t clue : part) {
                if (chance_() % kOneIn != 0) {
                    kept.push_back(clue);
                }
            }
        }
        const Judged<kWays> judged = judge(heard, weights_);
        for (std::size_t p = 0; p < heard.parts.size(); ++p) {
            Weights<kWays> off{};
            for (std::size_t k = 1; k < kWays; ++k) {
                off[k] = (judged.chances[k] - example.right[k]) * judged.shares[p][k] * share;
            }
            for (const std::uint32_t clue : heard.parts[p]) {
                for (std::size_t k = 1; k < kWays; ++k) {
                    slope_[clue][k] += off[k];
                }
            }
        }
    }

    void move(float left) {
        constexpr float kStep = 0.003F;
        constexpr float kMean = 0.9F;
        constexpr float kSquare = 0.999F;
        constexpr float kLeast = 1e-8F;
        constexpr float kHold = 3e-5F;
        mean_of_ *= kMean;
        square_of_ *= kSquare;
        const float step = kStep * left / (1 - mean_of_);
        const float root = 1 / std::sqrt(1 - square_of_);
        for (std::size_t i = 0; i < weights_.size(); ++i) {
            for (std::size_t k = 0; k < kWays; ++k) {
                const float slope = slope_[i][k] + kHold * weights_[i][k];
                mean_[i][k] = kMean * mean_[i][k] + (1 - kMean) * slope;
                square_[i][k] = kSquare * square_[i][k] + (1 - kSquare) * slope * slope;
                weights_[i][k] -= step * mean_[i][k] / (std::sqrt(square_[i][k]) * root + kLeast);
                slope_[i][k] = 0;
            }
        }
    }

    std::vector<const Example<kWays>*> examples_;
    std::vector<Weights<kWays>> weights_;
    std::vector<Weights<kWays>> slope_;
    std::vector<Weights<kWays>> mean_;    // of the slopes, fading
    std::vector<Weights<kWays>> square_;  // of their squares
    float mean_of_ = 1;
    float square_of_ = 1;
    std::mt19937 chance_{20};
};

}  // namespace ledgerboard::notes_weights
