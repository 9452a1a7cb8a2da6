// Which weights make a choice among several most likely to be the one that was made?
//
// Fit: always the same ways. Each way to choose has a score. The first part of an example tells of
// the whole of it: there the weights of its clues add up. Any further parts are sources that tell
// of it severally: of their sums the logarithm of the mean of e to them is added, so that the one
// that tells most decides. The first way is none of the others and its score is nought. The chance
// of a way is e to its score, over the sum of e to the scores of all.
//
// RankFit: other ways each time, each with clues of its own; its score is their weights added up.
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

// Calls use(others, left) for each part: the talk that is left out, and all other.
template <class Talk, class PartOf, class Use>
void eachPart(std::vector<Talk>& talks, PartOf part, Use use) {
    for (std::size_t i = 0; i < kParts; ++i) {
        std::vector<Talk*> others;
        std::vector<Talk*> left;
        for (Talk& talk : talks) {
            (part(talk) == i ? left : others).push_back(&talk);
        }
        use(others, left);
    }
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

// Leaves out what weighs less.
template <std::size_t kWays>
void dropFaint(std::vector<Weights<kWays>>& weights, float least) {
    for (Weights<kWays>& row : weights) {
        for (float& weight : row) {
            weight = std::abs(weight) < least ? 0.0F : weight;
        }
    }
}

// How far and how often the weights are moved.
struct Pace {
    int rounds = 4;
    float step = 0.003F;
};

// Weights that follow their slopes.
template <std::size_t kWays>
class Moved {
  public:
    explicit Moved(std::size_t clues)
        : weights_(clues), slope_(clues), mean_(clues), square_(clues) {}

    [[nodiscard]] const std::vector<Weights<kWays>>& weights() const { return weights_; }

    void lean(std::uint32_t clue, std::size_t way, float slope) { slope_[clue][way] += slope; }

    void move(float length) {
        constexpr float kMean = 0.9F;
        constexpr float kSquare = 0.999F;
        constexpr float kLeast = 1e-8F;
        constexpr float kHold = 3e-5F;
        mean_of_ *= kMean;
        square_of_ *= kSquare;
        const float step = length / (1 - mean_of_);
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

  private:
    std::vector<Weights<kWays>> weights_;
    std::vector<Weights<kWays>> slope_;
    std::vector<Weights<kWays>> mean_;    // of the slopes, fading
    std::vector<Weights<kWays>> square_;  // of their squares
    float mean_of_ = 1;
    float square_of_ = 1;
};

// Goes through `examples` by rounds, each in another order, in batches: learn(example, share) for
// each, then move(length).
template <class Example, class Learn, class Move>
void learnAll(std::vector<const Example*> examples, std::mt19937& chance, const Pace& pace,
              Learn learn, Move move) {
    constexpr std::size_t kBatch = 128;
    const std::size_t batches = (examples.size() + kBatch - 1) / kBatch;
    const std::size_t steps = batches * static_cast<std::size_t>(pace.rounds);
    for (std::size_t step = 0; step < steps; ++step) {
        const std::size_t batch = step % batches;
        // std::shuffle's order is each library's own.
        for (std::size_t i = batch == 0 ? examples.size() : 0; i > 1; --i) {
            std::swap(examples[i - 1], examples[chance() % i]);
        }
        const std::size_t from = batch * kBatch;
        const std::size_t to = std::min(from + kBatch, examples.size());
        for (std::size_t i = from; i < to; ++i) {
            learn(*examples[i], 1.0F / static_cast<float>(to - from));
        }
        const float left = 1 - static_cast<float>(step) / static_cast<float>(steps);
        move(pace.step * std::max(left, 0.02F));
    }
}

// Some of the clues: each is left out now and then.
inline std::vector<std::uint32_t> heardOf(const std::vector<std::uint32_t>& clues,
                                          std::mt19937& chance) {
    constexpr std::uint32_t kOneIn = 10;
    std::vector<std::uint32_t> heard;
    for (const std::uint32_t clue : clues) {
        if (chance() % kOneIn != 0) {
            heard.push_back(clue);
        }
    }
    return heard;
}

template <std::size_t kWays>
class Fit {
  public:
    Fit(std::vector<const Example<kWays>*> examples, std::size_t clues)
        : examples_(std::move(examples)), moved_(clues) {}

    [[nodiscard]] std::vector<Weights<kWays>> run() {
        learnAll(
            examples_, chance_, {},
            [&](const Example<kWays>& example, float share) { learn(example, share); },
            [&](float length) { moved_.move(length); });
        return moved_.weights();
    }

  private:
    void learn(const Example<kWays>& example, float share) {
        Example<kWays> heard;
        heard.parts.reserve(example.parts.size());
        for (const std::vector<std::uint32_t>& part : example.parts) {
            heard.parts.push_back(heardOf(part, chance_));
        }
        const Judged<kWays> judged = judge(heard, moved_.weights());
        for (std::size_t p = 0; p < heard.parts.size(); ++p) {
            Weights<kWays> off{};
            for (std::size_t k = 1; k < kWays; ++k) {
                off[k] = (judged.chances[k] - example.right[k]) * judged.shares[p][k] * share;
            }
            for (const std::uint32_t clue : heard.parts[p]) {
                for (std::size_t k = 1; k < kWays; ++k) {
                    moved_.lean(clue, k, off[k]);
                }
            }
        }
    }

    std::vector<const Example<kWays>*> examples_;
    Moved<kWays> moved_;
    std::mt19937 chance_{20};
};

// One choice among ways of its own: the clues of each by their numbers, and which are right.
struct Ranking {
    std::vector<std::vector<std::uint32_t>> ways;
    std::vector<bool> right;
};

// By way.
inline std::vector<float> scoresOf(const std::vector<std::vector<std::uint32_t>>& ways,
                                   const std::vector<Weights<1>>& weights) {
    std::vector<float> scores;
    for (const std::vector<std::uint32_t>& clues : ways) {
        float sum = 0;
        for (const std::uint32_t clue : clues) {
            sum += weights[clue][0];
        }
        scores.push_back(sum);
    }
    return scores;
}

class RankFit {
  public:
    RankFit(std::vector<const Ranking*> examples, std::size_t clues)
        : examples_(std::move(examples)), moved_(clues) {}

    [[nodiscard]] std::vector<Weights<1>> run() {
        learnAll(
            examples_, chance_, {6, 0.01F},
            [&](const Ranking& example, float share) { learn(example, share); },
            [&](float length) { moved_.move(length); });
        return moved_.weights();
    }

  private:
    // The slope of minus the logarithm of the chance that one of the right ways is chosen.
    void learn(const Ranking& example, float share) {
        std::vector<std::vector<std::uint32_t>> heard;
        for (const std::vector<std::uint32_t>& clues : example.ways) {
            heard.push_back(heardOf(clues, chance_));
        }
        std::vector<float> chances = scoresOf(heard, moved_.weights());
        const float most = *std::max_element(chances.begin(), chances.end());
        float all = 0;
        float right = 0;
        for (std::size_t i = 0; i < chances.size(); ++i) {
            chances[i] = std::exp(chances[i] - most);
            all += chances[i];
            right += example.right[i] ? chances[i] : 0;
        }
        for (std::size_t i = 0; i < chances.size(); ++i) {
            const float meant = example.right[i] ? chances[i] / std::max(right, 1e-9F) : 0;
            for (const std::uint32_t clue : heard[i]) {
                moved_.lean(clue, 0, (chances[i] / all - meant) * share);
            }
        }
    }

    std::vector<const Ranking*> examples_;
    Moved<1> moved_;
    std::mt19937 chance_{20};
};

}  // namespace ledgerboard::notes_weights
