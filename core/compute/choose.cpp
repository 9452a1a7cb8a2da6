#include "core/compute/choose.h"

#include <algorithm>
#include <string>

#include "core/compute/choose_parts.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Quantity;
using model::Wide;

constexpr std::int64_t kThousandths = 1000;

// Keeps the sum of what each part can come to within a quarter of what fits.
class Most {
  public:
    void add(Wide amount) {
        sum_ += amount < 0 ? -amount : amount;
        isBeyond_ = isBeyond_ || sum_ >= kNoLimit;
        sum_ = isBeyond_ ? 0 : sum_;
    }

    [[nodiscard]] bool isBeyond() const { return isBeyond_; }

  private:
    Wide sum_ = 0;
    bool isBeyond_ = false;
};

model::Error tooLarge() {
    return model::cannotBeMet(
        "the amounts or days of the alternates together are larger than can be counted: check "
        "them for a slip");
}

Wide outgoOf(const ChooseInput& input, Money cost, Quantity days) {
    return Wide{cost.minor()} * kWorthPerMinor +
           model::multiplyWide(input.dayCosts.minor(), days.thousandths()) *
               (kWorthPerMinor / kThousandths);
}

// The numbers of options, alternate after alternate.
std::vector<std::uint32_t> firstFlats(const ChooseInput& input) {
    std::vector<std::uint32_t> firsts;
    std::size_t next = 0;
    for (const auto& options : input.alternates) {
        firsts.push_back(static_cast<std::uint32_t>(next));
        next += options.size();
    }
    firsts.push_back(static_cast<std::uint32_t>(next));
    return firsts;
}

// Since exactly one option of each alternate is taken, to need an option is to rule out the others
// of its alternate: needs and excludes both become pairs that do not go together.
std::vector<std::vector<std::uint32_t>> conflictsOf(const ChooseInput& input,
                                                    const std::vector<std::uint32_t>& firsts) {
    std::vector<std::vector<std::uint32_t>> out(firsts.back());
    const auto part = [&](std::uint32_t a, std::uint32_t b) {
        out[a].push_back(b);
        out[b].push_back(a);
    };
    for (std::size_t k = 0; k < input.alternates.size(); ++k) {
        for (std::size_t p = 0; p < input.alternates[k].size(); ++p) {
            const WeighedOption& option = input.alternates[k][p];
            const auto self = static_cast<std::uint32_t>(firsts[k] + p);
            for (const OptionPlace& place : option.excludes) {
                part(self, static_cast<std::uint32_t>(firsts[place.alternate] + place.option));
            }
            for (const OptionPlace& place : option.needs) {
                const auto needed =
                    static_cast<std::uint32_t>(firsts[place.alternate] + place.option);
                if (place.alternate == k) {
                    // Its own alternate gives one option: it needs itself, or what can't be.
                    if (needed != self) {
                        part(self, self);
                    }
                    continue;
                }
                for (std::uint32_t other = firsts[place.alternate];
                     other < firsts[place.alternate + 1]; ++other) {
                    if (other != needed) {
                        part(self, other);
                    }
                }
            }
        }
    }
    for (auto& list : out) {
        std::sort(list.begin(), list.end());
        list.erase(std::unique(list.begin(), list.end()), list.end());
    }
    return out;
}

model::Result<void> checkSizes(const ChooseInput& input) {
    if (input.alternates.size() > kMostAlternates) {
        return model::cannotBeMet(model::saying(
            "there are more than %1 alternates: choose among fewer at a time", kMostAlternates));
    }
    Most cost;
    Most days;
    Most worth;
    for (std::size_t k = 0; k < input.alternates.size(); ++k) {
        const auto& options = input.alternates[k];
        if (options.empty() || options.size() > kMostAlternates) {
            return model::cannotBeMet(
                "alternate " + std::to_string(k + 1) + " has " +
                (options.empty() ? "no options: give it one, such as leaving things as they are"
                                 : "more than " + std::to_string(kMostAlternates) + " options"));
        }
        // The sum over all options is no less than that over one of each.
        for (const WeighedOption& option : options) {
            cost.add(option.cost.minor());
            days.add(option.days.thousandths());
            worth.add(outgoOf(input, option.cost, option.days));
            worth.add(Wide{option.value.minor()} * kWorthPerMinor);
        }
    }
    worth.add(Wide{input.resale.minor()} * kWorthPerMinor);
    worth.add(Wide{input.ceiling.value_or(Money{}).minor()} * kWorthPerMinor);
    if (cost.isBeyond() || days.isBeyond() || worth.isBeyond()) {
        return tooLarge();
    }
    return {};
}

Sums sumsOf(const ChooseInput& input, const WeighedOption& option) {
    Sums sums;
    sums.cost = option.cost.minor();
    sums.days = option.days.thousandths();
    sums.gain = option.value.minor() * input.keptShare.basisPoints();
    sums.outgo = static_cast<std::int64_t>(outgoOf(input, option.cost, option.days));
    sums.variance = option.valueDeviation * option.valueDeviation;
    return sums;
}

// Whether `a` makes `b`, of the same alternate, needless.
bool makesNeedless(const Weighing& weighing, const Weight& a, const Weight& b) {
    const double worse = weighing.deviations < 0 ? b.variance : a.variance;
    const double better = weighing.deviations < 0 ? a.variance : b.variance;
    if (a.cost > b.cost || a.days > b.days || a.net() < b.net() || worse > better) {
        return false;
    }
    const auto& of = weighing.conflicts[a.flat];
    const auto& more = weighing.conflicts[b.flat];
    if (!std::includes(more.begin(), more.end(), of.begin(), of.end())) {
        return false;
    }
    // Among sets of equal net the cheaper, then the faster, then the earlier listed is wanted. What
    // is worth more may earn no more under the ceiling, so it decides only without one.
    const bool isMoreWorth =
        !weighing.hasCeiling() && weighing.deviations == 0 && a.net() > b.net();
    return isMoreWorth || a.cost < b.cost || a.days < b.days || a.option < b.option;
}

}  // namespace

model::Result<Weighing> weigh(const ChooseInput& input) {
    if (auto fine = checkSizes(input); !fine.ok()) {
        return fine.error();
    }
    Weighing out;
    const std::vector<std::uint32_t> firsts = firstFlats(input);
    out.conflicts = conflictsOf(input, firsts);
    for (std::size_t k = 0; k < input.alternates.size(); ++k) {
        std::vector<Weight> weights;
        for (std::size_t p = 0; p < input.alternates[k].size(); ++p) {
            Weight weight;
            static_cast<Sums&>(weight) = sumsOf(input, input.alternates[k][p]);
            weight.option = static_cast<std::uint32_t>(p);
            weight.flat = static_cast<std::uint32_t>(firsts[k] + p);
            const auto& list = out.conflicts[weight.flat];
            if (!std::binary_search(list.begin(), list.end(), weight.flat)) {
                weights.push_back(weight);
            }
        }
        out.alternates.push_back(std::move(weights));
    }
    if (input.cash) {
        out.cash = std::clamp(input.cash->minor(), -kNoLimit, kNoLimit);
    }
    if (input.days) {
        out.days = std::clamp(input.days->thousandths(), -kNoLimit, kNoLimit);
    }
    const std::int64_t kept = input.keptShare.basisPoints();
    if (input.ceiling) {
        const std::int64_t room = input.ceiling->minor() - input.resale.minor();
        out.room = std::max<std::int64_t>(0, room) * kept;
        out.beyond = std::max<std::int64_t>(0, -room) * kept;
    }
    out.deviations = input.deviations * static_cast<double>(kept);
    return out;
}

void dropNeedless(Weighing& weighing) {
    for (auto& options : weighing.alternates) {
        std::vector<Weight> needed;
        for (const Weight& one : options) {
            const bool isNeedless =
                std::any_of(options.begin(), options.end(), [&](const Weight& other) {
                    return other.flat != one.flat && makesNeedless(weighing, other, one);
                });
            if (!isNeedless) {
                needed.push_back(one);
            }
        }
        options = std::move(needed);
    }
}

OptionSet setFigures(const ChooseInput& input, const Weighing& weighing,
                     const std::vector<std::size_t>& options) {
    OptionSet set;
    set.options = options;
    Sums sums;
    for (std::size_t k = 0; k < options.size(); ++k) {
        const WeighedOption& option = input.alternates[k][options[k]];
        set.cost += option.cost;
        set.days += option.days;
        set.value += option.value;
        sums = sums + sumsOf(input, option);
    }
    set.net = model::roundedMoney(weighing.net(sums), kWorthPerMinor);
    // `added` is before selling; the kept share of nothing tells nothing of it.
    Money sum = set.value;
    if (input.deviations != 0) {
        sum -= Money::fromMinor(std::llround(input.deviations * std::sqrt(sums.variance)));
    }
    const Money resale = input.resale;
    set.added = input.ceiling
                    ? std::min(resale + sum, *input.ceiling) - std::min(resale, *input.ceiling)
                    : sum;
    return set;
}

model::Result<OptionSet> figuresOfSet(const ChooseInput& input,
                                      const std::vector<std::size_t>& options) {
    auto weighing = weigh(input);
    if (!weighing.ok()) {
        return weighing.error();
    }
    return setFigures(input, weighing.value(), options);
}

bool goesTogether(const ChooseInput& input, const std::vector<std::size_t>& options) {
    for (std::size_t k = 0; k < options.size(); ++k) {
        const WeighedOption& option = input.alternates[k][options[k]];
        const auto isTaken = [&](const OptionPlace& place) {
            return options[place.alternate] == place.option;
        };
        if (!std::all_of(option.needs.begin(), option.needs.end(), isTaken) ||
            std::any_of(option.excludes.begin(), option.excludes.end(), isTaken)) {
            return false;
        }
    }
    return true;
}

model::Result<LeastSets> leastSetsOf(const ChooseInput& input) {
    // The same search, with nothing to gain but a low cost or few days.
    ChooseInput least = input;
    least.cash = std::nullopt;
    least.days = std::nullopt;
    least.ceiling = std::nullopt;
    least.deviations = 0;
    least.dayCosts = Money{};
    for (auto& options : least.alternates) {
        for (WeighedOption& option : options) {
            option.value = Money{};
        }
    }
    ChooseInput fast = least;
    fast.dayCosts = Money::fromMinor(1);
    for (auto& options : fast.alternates) {
        for (WeighedOption& option : options) {
            option.cost = Money{};
        }
    }
    ChooseInput inTime = least;
    inTime.days = input.days;
    LeastSets out;
    const std::pair<const ChooseInput*, std::optional<OptionSet> LeastSets::*> searches[] = {
        {&least, &LeastSets::cheapest},
        {&fast, &LeastSets::fastest},
        {&inTime, &LeastSets::cheapestInTime}};
    for (const auto& [search, into] : searches) {
        auto found = bestSetOf(*search);
        if (!found.ok()) {
            return found.error();
        }
        if (found.value().set) {
            auto set = figuresOfSet(input, found.value().set->options);
            if (!set.ok()) {
                return set.error();
            }
            out.*into = set.value();
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
