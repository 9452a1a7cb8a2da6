// The frontier: partial sets grown alternate by alternate, of which those are kept that no other
// can make needless whatever is added to both.
#include <algorithm>
#include <map>
#include <tuple>

#include "core/compute/choose.h"
#include "core/compute/choose_parts.h"

namespace ledgerboard::compute {

namespace {

// What is ruled out among the alternates still to come, as sorted flat numbers. Only partial sets
// that leave the same choices open are compared.
using Bans = std::vector<std::uint32_t>;

struct Partial {
    Sums sums;
    std::int64_t worth = 0;    // what is compared: gain - outgo; at the end the net
    std::uint32_t bans = 0;    // number of its Bans
    std::uint32_t before = 0;  // the partial set it grew from
    std::uint32_t option = 0;
};

class Grower {
  public:
    Grower(const Weighing& weighing, std::size_t mostKept)
        : weighing_(weighing), mostKept_(mostKept), firstLater_(firstLaters()) {}

    // Whether the sets were cut.
    bool grow() {
        levels_.push_back({Partial{}});
        bans_.push_back({{}});
        for (std::size_t k = 0; k < weighing_.alternates.size(); ++k) {
            addAlternate(k);
        }
        for (Partial& whole : levels_.back()) {
            whole.worth = weighing_.net(whole.sums);
            whole.sums.variance = 0;  // nothing is added any more: only the net counts
        }
        std::vector<Partial> wholes = std::move(levels_.back());
        levels_.back().clear();
        keepWorthwhile(wholes, levels_.size() - 1);
        return isCut_;
    }

    [[nodiscard]] std::size_t size() const { return levels_.back().size(); }

    [[nodiscard]] std::vector<std::size_t> options(std::size_t set) const {
        return path(levels_.size() - 1, static_cast<std::uint32_t>(set));
    }

  private:
    // The first flat number of each later alternate: bans below it are over.
    [[nodiscard]] std::vector<std::uint32_t> firstLaters() const {
        std::vector<std::uint32_t> out(weighing_.alternates.size() + 1, UINT32_MAX);
        for (std::size_t k = weighing_.alternates.size(); k-- > 0;) {
            out[k] = out[k + 1];
            for (const Weight& weight : weighing_.alternates[k]) {
                out[k] = std::min(out[k], weight.flat);
            }
        }
        return out;
    }

    void addAlternate(std::size_t k) {
        const std::vector<Partial>& from = levels_.back();
        std::map<Bans, std::uint32_t> numbers;
        std::vector<Partial> grown;
        std::vector<Bans> lists;
        for (const Weight& weight : weighing_.alternates[k]) {
            std::vector<std::uint32_t> becomes(bans_.back().size(), UINT32_MAX);
            const std::size_t sortedUpTo = grown.size();
            for (std::size_t p = 0; p < from.size(); ++p) {
                const Bans& bans = bans_.back()[from[p].bans];
                if (std::binary_search(bans.begin(), bans.end(), weight.flat)) {
                    continue;
                }
                std::uint32_t& number = becomes[from[p].bans];
                if (number == UINT32_MAX) {
                    number =
                        numberOf(merged(bans, weight.flat, firstLater_[k + 1]), numbers, lists);
                }
                addGrown(grown, from[p], static_cast<std::uint32_t>(p), weight, number, k + 1);
            }
            // Each part is in order already, for all of it grew by the same.
            std::inplace_merge(grown.begin(),
                               grown.begin() + static_cast<std::ptrdiff_t>(sortedUpTo), grown.end(),
                               isBefore);
        }
        levels_.emplace_back();
        bans_.push_back(std::move(lists));
        keepWorthwhile(grown, k + 1);
    }

    void addGrown(std::vector<Partial>& grown, const Partial& from, std::uint32_t before,
                  const Weight& weight, std::uint32_t bans, std::size_t level) {
        Partial one;
        one.sums = from.sums + weight;
        if (one.sums.cost + leastCost(level) > weighing_.cash ||
            one.sums.days + leastDays(level) > weighing_.days) {
            return;
        }
        one.worth = one.sums.net();
        one.bans = bans;
        one.before = before;
        one.option = weight.option;
        grown.push_back(one);
    }

    std::int64_t leastCost(std::size_t level) {
        fillLeast();
        return leastCost_[level];
    }

    std::int64_t leastDays(std::size_t level) {
        fillLeast();
        return leastDays_[level];
    }

    void fillLeast() {
        if (!leastCost_.empty()) {
            return;
        }
        leastCost_.assign(weighing_.alternates.size() + 1, 0);
        leastDays_ = leastCost_;
        for (std::size_t k = weighing_.alternates.size(); k-- > 0;) {
            std::int64_t cost = kNoLimit;
            std::int64_t days = kNoLimit;
            for (const Weight& weight : weighing_.alternates[k]) {
                cost = std::min(cost, weight.cost);
                days = std::min(days, weight.days);
            }
            leastCost_[k] = leastCost_[k + 1] + cost;
            leastDays_[k] = leastDays_[k + 1] + days;
        }
    }

    [[nodiscard]] Bans merged(const Bans& bans, std::uint32_t flat, std::uint32_t first) const {
        Bans out;
        const auto& more = weighing_.conflicts[flat];
        std::set_union(bans.begin(), bans.end(), more.begin(), more.end(), std::back_inserter(out));
        out.erase(out.begin(), std::lower_bound(out.begin(), out.end(), first));
        return out;
    }

    static std::uint32_t numberOf(Bans bans, std::map<Bans, std::uint32_t>& numbers,
                                  std::vector<Bans>& lists) {
        const auto [at, isNew] =
            numbers.emplace(std::move(bans), static_cast<std::uint32_t>(lists.size()));
        if (isNew) {
            lists.push_back(at->first);
        }
        return at->second;
    }

    // By cost, then days, then the most worth first.
    static bool isBefore(const Partial& a, const Partial& b) {
        return std::tuple(a.sums.cost, a.sums.days, -a.worth) <
               std::tuple(b.sums.cost, b.sums.days, -b.worth);
    }

    [[nodiscard]] std::vector<std::size_t> path(std::size_t level, std::uint32_t at) const {
        return path(levels_[level][at], level);
    }

    [[nodiscard]] std::vector<std::size_t> path(Partial partial, std::size_t level) const {
        std::vector<std::size_t> out(level);
        while (level > 0) {
            --level;
            out[level] = partial.option;
            partial = levels_[level][partial.before];
        }
        return out;
    }

    // The most worth at up to so many days, of one Bans: days and worth both rise along it.
    using Stairs = std::vector<std::pair<std::int64_t, std::int64_t>>;

    // False where a step is as good or better; else the step is put in.
    static bool climbs(Stairs& stairs, std::int64_t days, std::int64_t worth) {
        auto after = std::upper_bound(
            stairs.begin(), stairs.end(), days,
            [](std::int64_t value, const auto& step) { return value < step.first; });
        if (after != stairs.begin() && std::prev(after)->second >= worth) {
            return false;
        }
        auto from = after;
        if (from != stairs.begin() && std::prev(from)->first == days) {
            --from;
        }
        auto to = from;
        while (to != stairs.end() && to->second <= worth) {
            ++to;
        }
        if (from == to) {
            stairs.insert(from, {days, worth});
        } else {
            *from = {days, worth};
            stairs.erase(from + 1, to);
        }
        return true;
    }

    // Moves into level `level` what of `from`, which is in order, no other of it makes needless.
    void keepWorthwhile(std::vector<Partial>& from, std::size_t level) {
        std::vector<Partial>& kept = levels_[level];
        if (level + 1 == levels_.size() && level == weighing_.alternates.size()) {
            std::sort(from.begin(), from.end(), isBefore);
        }
        std::vector<Stairs> stairs(bans_.back().size());
        for (const Partial& one : from) {
            const bool isWorthwhile = weighing_.deviations == 0
                                          ? climbs(stairs[one.bans], one.sums.days, one.worth)
                                          : isAlone(kept, one);
            if (isWorthwhile) {
                kept.push_back(one);
            }
        }
        thinOut(kept);
    }

    // The same where the spread of the value counts as well: no stairs for four figures.
    [[nodiscard]] bool isAlone(const std::vector<Partial>& kept, const Partial& one) const {
        const double sign = weighing_.deviations > 0 ? 1 : -1;
        return std::none_of(kept.rbegin(), kept.rend(), [&](const Partial& other) {
            return other.bans == one.bans && other.sums.days <= one.sums.days &&
                   other.worth >= one.worth &&
                   sign * other.sums.variance <= sign * one.sums.variance;
        });
    }

    // Keeps an even spread by cost, and the first and the last.
    void thinOut(std::vector<Partial>& kept) {
        if (kept.size() <= mostKept_) {
            return;
        }
        isCut_ = true;
        std::vector<Partial> few;
        few.reserve(mostKept_);
        for (std::size_t k = 0; k < mostKept_; ++k) {
            few.push_back(kept[mostKept_ == 1 ? 0 : k * (kept.size() - 1) / (mostKept_ - 1)]);
        }
        kept = std::move(few);
    }

    const Weighing& weighing_;
    std::size_t mostKept_;
    std::vector<std::uint32_t> firstLater_;
    std::vector<std::vector<Partial>> levels_;
    std::vector<std::vector<Bans>> bans_;  // by level
    std::vector<std::int64_t> leastCost_;
    std::vector<std::int64_t> leastDays_;
    bool isCut_ = false;
};

}  // namespace

model::Result<Frontier> frontierOf(const ChooseInput& input, std::size_t mostKept) {
    auto weighed = weigh(input);
    if (!weighed.ok()) {
        return weighed.error();
    }
    dropNeedless(weighed.value());
    Frontier out;
    for (const auto& options : weighed.value().alternates) {
        if (options.empty()) {
            return out;
        }
    }
    Grower grower(weighed.value(), mostKept);
    out.cut = grower.grow();
    for (std::size_t k = 0; k < grower.size(); ++k) {
        out.sets.push_back(setFigures(input, weighed.value(), grower.options(k)));
    }
    return out;
}

}  // namespace ledgerboard::compute
