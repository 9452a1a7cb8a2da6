// Branch and bound for the best set: alternates in the order they are listed, in each the most
// promising option first.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/compute/choose.h"
#include "core/compute/choose_parts.h"

namespace ledgerboard::compute {

namespace {

// Charges of the three limits, in worth: what one unit of each is charged while the limit itself is
// left out. For any prices not below 0 the sum of the best charged options, and the charge for the
// whole limit given back, is no less than the net of any set within the limits.
struct Charges {
    double cash = 0;
    double days = 0;
    double ceiling = 0;  // 0 to 1: the share of what is added that the ceiling takes
};

double charged(const Sums& sums, const Charges& charges) {
    return (1 - charges.ceiling) * static_cast<double>(sums.gain) -
           static_cast<double>(sums.outgo) - charges.cash * static_cast<double>(sums.cost) -
           charges.days * static_cast<double>(sums.days);
}

// Finds charges that make the bound low: one after the other, each halved in on the point where the
// relaxed choice just keeps its limit.
class ChargeFinder {
  public:
    explicit ChargeFinder(const Weighing& weighing) : weighing_(weighing) {}

    Charges find() {
        const double most = steepest();
        for (int round = 0; round < kRounds; ++round) {
            const Charges before = charges_;
            if (weighing_.cash != kNoLimit) {
                settle(charges_.cash, most,
                       [this](const Sums& sums) { return sums.cost > weighing_.cash; });
            }
            if (weighing_.days != kNoLimit) {
                settle(charges_.days, most,
                       [this](const Sums& sums) { return sums.days > weighing_.days; });
            }
            if (weighing_.hasCeiling()) {
                settle(charges_.ceiling, 1, [this](const Sums& sums) {
                    return weighing_.added(sums) >= weighing_.room;
                });
            }
            if (before.cash == charges_.cash && before.days == charges_.days &&
                before.ceiling == charges_.ceiling) {
                break;
            }
        }
        return charges_;
    }

  private:
    static constexpr int kRounds = 4;
    static constexpr int kHalvings = 24;

    // The most that one unit of cost or of days can be worth.
    [[nodiscard]] double steepest() const {
        double most = 1;
        for (const auto& options : weighing_.alternates) {
            std::int64_t low = kNoLimit;
            std::int64_t high = -kNoLimit;
            for (const Weight& weight : options) {
                low = std::min(low, weight.gain - weight.outgo);
                high = std::max(high, weight.gain - weight.outgo);
            }
            most = std::max(most, static_cast<double>(high - low));
        }
        return most;
    }

    // The options that are best at these charges.
    [[nodiscard]] Sums relaxed() const {
        Sums sums;
        for (const auto& options : weighing_.alternates) {
            const Weight* best = nullptr;
            double most = 0;
            for (const Weight& weight : options) {
                const double worth = charged(weight, charges_);
                if (best == nullptr || worth > most) {
                    best = &weight;
                    most = worth;
                }
            }
            sums = sums + *best;
        }
        return sums;
    }

    template <class Passes>
    void settle(double& charge, double most, Passes passes) {
        charge = 0;
        if (!passes(relaxed())) {
            return;
        }
        double low = 0;
        double high = most;
        // Charges lie far apart in size: half of the way is taken on a scale that grows by factors.
        for (int k = 0; k < kHalvings; ++k) {
            charge = high > 16 * (low + 1e-9) ? std::sqrt(high * (low + 1e-9)) : (low + high) / 2;
            (passes(relaxed()) ? low : high) = charge;
        }
        charge = high;
    }

    const Weighing& weighing_;
    Charges charges_;
};

class Search {
  public:
    Search(Weighing weighing, std::uint64_t mostBranches)
        : weighing_(std::move(weighing)),
          mostBranches_(mostBranches),
          charges_(ChargeFinder(weighing_).find()),
          bans_(weighing_.conflicts.size(), 0),
          chosen_(weighing_.alternates.size(), 0),
          best_(weighing_.alternates.size(), 0) {
        for (auto& options : weighing_.alternates) {
            std::stable_sort(options.begin(), options.end(), [&](const Weight& a, const Weight& b) {
                return charged(a, charges_) > charged(b, charges_);
            });
        }
        fillRests();
    }

    void run() {
        Sums none;
        descend(0, none);
    }

    [[nodiscard]] const Weighing& weighing() const { return weighing_; }

    [[nodiscard]] bool found() const { return found_; }

    [[nodiscard]] bool stopped() const { return stopped_; }

    [[nodiscard]] std::uint64_t branches() const { return branches_; }

    [[nodiscard]] std::vector<std::size_t> best() const { return {best_.begin(), best_.end()}; }

  private:
    // The best that the alternates from one on can bring, each figure by itself.
    struct Rest {
        std::int64_t cost = 0;
        std::int64_t days = 0;
        std::int64_t net = 0;
        std::int64_t outgo = 0;
        double leastVariance = 0;
        double mostVariance = 0;
        double charged = 0;
    };

    void fillRests() {
        rests_.resize(weighing_.alternates.size() + 1);
        for (std::size_t k = weighing_.alternates.size(); k-- > 0;) {
            const auto& options = weighing_.alternates[k];
            Rest one{kNoLimit, kNoLimit, -kNoLimit, kNoLimit, HUGE_VAL, 0, -HUGE_VAL};
            for (const Weight& weight : options) {
                one.cost = std::min(one.cost, weight.cost);
                one.days = std::min(one.days, weight.days);
                one.net = std::max(one.net, weight.gain - weight.outgo);
                one.outgo = std::min(one.outgo, weight.outgo);
                one.leastVariance = std::min(one.leastVariance, weight.variance);
                one.mostVariance = std::max(one.mostVariance, weight.variance);
                one.charged = std::max(one.charged, charged(weight, charges_));
                magnitude_ += std::abs(static_cast<double>(weight.gain)) +
                              std::abs(static_cast<double>(weight.outgo)) +
                              charges_.cash * std::abs(static_cast<double>(weight.cost)) +
                              charges_.days * std::abs(static_cast<double>(weight.days));
            }
            const Rest& next = rests_[k + 1];
            rests_[k] = {next.cost + one.cost,
                         next.days + one.days,
                         next.net + one.net,
                         next.outgo + one.outgo,
                         next.leastVariance + one.leastVariance,
                         next.mostVariance + one.mostVariance,
                         next.charged + one.charged};
        }
        base_ = 0;
        if (weighing_.cash != kNoLimit) {
            base_ += charges_.cash * static_cast<double>(weighing_.cash);
        }
        if (weighing_.days != kNoLimit) {
            base_ += charges_.days * static_cast<double>(weighing_.days);
        }
        if (weighing_.hasCeiling()) {
            base_ += charges_.ceiling * static_cast<double>(weighing_.room);
        }
        // Far more than floating point can lose over these sums.
        margin_ = 1 + (magnitude_ + std::abs(base_)) * 1e-12;
    }

    // No set that begins with these sums and goes on from alternate `next` has a higher net.
    [[nodiscard]] std::int64_t bound(const Sums& sums, const Rest& rest) const {
        std::int64_t risk = 0;
        if (weighing_.deviations != 0) {
            risk = weighing_.risk(sums.variance + (weighing_.deviations > 0 ? rest.leastVariance
                                                                            : rest.mostVariance)) -
                   1;
        }
        const std::int64_t gain = sums.gain + weighing_.beyond - risk;
        const std::int64_t plain = gain - sums.outgo + rest.net;
        const std::int64_t capped = weighing_.room - sums.outgo - rest.outgo;
        const double relaxed =
            base_ + (1 - charges_.ceiling) * static_cast<double>(gain) -
            static_cast<double>(sums.outgo) - charges_.cash * static_cast<double>(sums.cost) -
            charges_.days * static_cast<double>(sums.days) + rest.charged + margin_;
        std::int64_t least = std::min(plain, capped);
        if (relaxed < static_cast<double>(least)) {
            least = static_cast<std::int64_t>(std::floor(relaxed));
        }
        return least;
    }

    // Whether nothing that begins like this can be the best.
    [[nodiscard]] bool isHopeless(const Sums& sums, std::size_t next) const {
        const Rest& rest = rests_[next];
        const std::int64_t cost = sums.cost + rest.cost;
        const std::int64_t days = sums.days + rest.days;
        if (cost > weighing_.cash || days > weighing_.days) {
            return true;
        }
        if (!found_) {
            return false;
        }
        const std::int64_t most = bound(sums, rest);
        if (most != bestNet_) {
            return most < bestNet_;
        }
        if (cost != bestSums_.cost) {
            return cost > bestSums_.cost;
        }
        if (days != bestSums_.days) {
            return days > bestSums_.days;
        }
        const auto end = chosen_.begin() + static_cast<std::ptrdiff_t>(next);
        return std::lexicographical_compare(
            best_.begin(), best_.begin() + static_cast<std::ptrdiff_t>(next), chosen_.begin(), end);
    }

    void take(const Sums& sums) {
        const std::int64_t net = weighing_.net(sums);
        const auto rank = [](std::int64_t worth, const Sums& s) {
            return std::array<std::int64_t, 3>{-worth, s.cost, s.days};
        };
        const auto mine = rank(net, sums);
        const auto theirs = rank(bestNet_, bestSums_);
        if (found_ && (mine > theirs || (mine == theirs && best_ <= chosen_))) {
            return;
        }
        found_ = true;
        bestNet_ = net;
        bestSums_ = sums;
        best_ = chosen_;
    }

    void descend(std::size_t at, const Sums& sums) {
        if (at == weighing_.alternates.size()) {
            take(sums);
            return;
        }
        for (const Weight& weight : weighing_.alternates[at]) {
            if (bans_[weight.flat] > 0) {
                continue;
            }
            if (branches_ == mostBranches_) {
                stopped_ = true;
                return;
            }
            ++branches_;
            chosen_[at] = weight.option;
            const Sums with = sums + weight;
            if (isHopeless(with, at + 1)) {
                continue;
            }
            ban(weight.flat, 1);
            descend(at + 1, with);
            ban(weight.flat, -1);
            if (stopped_) {
                return;
            }
        }
    }

    void ban(std::uint32_t flat, int change) {
        for (const std::uint32_t other : weighing_.conflicts[flat]) {
            bans_[other] += change;
        }
    }

    Weighing weighing_;
    std::uint64_t mostBranches_;
    Charges charges_;
    std::vector<int> bans_;  // by flat number: chosen options that rule it out
    std::vector<std::uint32_t> chosen_;
    std::vector<std::uint32_t> best_;
    std::vector<Rest> rests_;  // of the alternates from each one on
    double magnitude_ = 0;
    double base_ = 0;
    double margin_ = 0;
    std::int64_t bestNet_ = 0;
    Sums bestSums_;
    bool found_ = false;
    bool stopped_ = false;
    std::uint64_t branches_ = 0;
};

}  // namespace

model::Result<BestSet> bestSetOf(const ChooseInput& input, std::uint64_t mostBranches) {
    auto weighed = weigh(input);
    if (!weighed.ok()) {
        return weighed.error();
    }
    dropNeedless(weighed.value());
    BestSet out;
    for (const auto& options : weighed.value().alternates) {
        if (options.empty()) {  // each of them is ruled out by what it needs or excludes itself
            return out;
        }
    }
    Search search(std::move(weighed).value(), mostBranches);
    search.run();
    out.proven = !search.stopped();
    out.branches = search.branches();
    if (search.found()) {
        out.set = setFigures(input, search.weighing(), search.best());
    }
    return out;
}

}  // namespace ledgerboard::compute
