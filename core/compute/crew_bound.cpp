#include "core/compute/crew_bound.h"

#include <algorithm>
#include <utility>

#include "core/compute/crew_scheme.h"

namespace ledgerboard::compute {

namespace {

constexpr std::size_t kMostForPairs = 400;      // items: beyond it links alone are looked at
constexpr std::size_t kMostForTrying = 130;     // items: beyond it no starts are tried
constexpr CrewTime kTriedOfLength = 150;        // starts are tried in this part of the length
constexpr int kRounds = 3;                      // of trying, for one length
constexpr std::int64_t kMostAttempts = 20'000;  // starts tried, for all lengths together

// Heads or tails of all items: what must pass before an item's start, or after its finish.
using Times = std::vector<CrewTime>;

// Items that share something of which `capacity` is there.
struct Shared {
    std::int64_t capacity = 0;
    std::vector<std::pair<std::size_t, std::int64_t>> users;  // item and amount
};

// One direction of time: its links, and what must pass before each start.
struct Direction {
    const CrewProblem& problem;
    Times heads;
};

// Where one item may lie.
struct Window {
    CrewTime start = 0;  // earliest
    CrewTime earliestFinish = 0;
    CrewTime latestStart = 0;
    CrewTime finish = 0;  // latest
    CrewTime days = 0;
    std::int64_t amount = 0;
};

// Crew-days that fall between two moments wherever the items lie.
CrewTime needed(const std::vector<Window>& windows, CrewTime from, CrewTime to) {
    CrewTime sum = 0;
    for (const Window& window : windows) {
        const CrewTime early = std::min(window.earliestFinish - from, window.days);
        const CrewTime late = std::min(to - window.latestStart, to - from);
        sum += std::max<CrewTime>(std::min(early, late), 0) * window.amount;
    }
    return sum;
}

void raiseByLinks(const CrewProblem& problem, Times& heads) {
    for (const std::size_t k : problem.order) {
        for (const StartLag& link : problem.items[k].after) {
            heads[k] = std::max(heads[k], heads[link.item] + link.lag);
        }
    }
}

class Refuter {
  public:
    Refuter(const CrewProblem& problem, const std::function<bool()>& goOn);

    // The longest chain of links.
    [[nodiscard]] CrewTime chain() const;
    // Whether no plan of this length or shorter exists, as far as can be seen.
    [[nodiscard]] bool rulesOut(CrewTime length);

  private:
    void findPairs();
    void findShared();
    [[nodiscard]] bool mayGoOn();
    // Each returns false where there is a contradiction.
    [[nodiscard]] bool tighten(Times& heads, Times& tails, CrewTime length);
    [[nodiscard]] bool raise(const CrewProblem& problem, Times& heads, const Times& tails,
                             CrewTime length);
    [[nodiscard]] bool raiseByPairs(Times& heads, const Times& tails, CrewTime length) const;
    [[nodiscard]] bool raiseByFixedParts(Times& heads, const Times& tails, CrewTime length);
    [[nodiscard]] bool raiseByTrying(Times& heads, Times& tails, CrewTime length, bool forward);
    [[nodiscard]] bool enoughCrewDays(const Times& heads, const Times& tails,
                                      CrewTime length) const;

    const CrewProblem& problem_;
    const CrewProblem mirror_;
    const std::function<bool()>& goOn_;
    std::int64_t attempts_ = 0;  // starts tried so far
    Times heads_;
    Times tails_;
    std::vector<std::vector<std::size_t>> users_;             // of each resource
    std::vector<std::pair<std::size_t, std::size_t>> pairs_;  // apart, the lower item first
    std::vector<Shared> shared_;
    std::vector<CrewUsage> usages_;
};

Refuter::Refuter(const CrewProblem& problem, const std::function<bool()>& goOn)
    : problem_(problem), mirror_(mirrorOf(problem)), goOn_(goOn) {
    users_.resize(problem.capacities.size());
    for (std::size_t k = 0; k < problem.items.size(); ++k) {
        heads_.push_back(problem.items[k].head);
        tails_.push_back(problem.items[k].tail);
        for (const CrewUse& use : problem.items[k].uses) {
            users_[use.resource].push_back(k);
        }
    }
    for (const std::int64_t capacity : problem.capacities) {
        usages_.emplace_back(capacity);
    }
    raiseByLinks(problem_, heads_);
    raiseByLinks(mirror_, tails_);
    if (problem.items.size() <= kMostForPairs) {
        findPairs();
        findShared();
    }
}

CrewTime Refuter::chain() const {
    CrewTime longest = 0;
    for (std::size_t k = 0; k < heads_.size(); ++k) {
        longest = std::max(longest, heads_[k] + problem_.items[k].days + tails_[k]);
    }
    return longest;
}

void Refuter::findPairs() {
    for (std::size_t one = 0; one < problem_.items.size(); ++one) {
        for (std::size_t other = one + 1; other < problem_.items.size(); ++other) {
            if (areApart(problem_, one, other)) {
                pairs_.emplace_back(one, other);
            }
        }
    }
}

// Crews by what they can do at once, and groups of items of which no two can be under way together:
// one group from each item, the longest items first.
void Refuter::findShared() {
    const std::size_t count = problem_.items.size();
    for (std::size_t r = 0; r < users_.size(); ++r) {
        Shared crew{problem_.capacities[r], {}};
        for (const std::size_t item : users_[r]) {
            for (const CrewUse& use : problem_.items[item].uses) {
                if (use.resource == r && use.party == 0) {
                    crew.users.emplace_back(item, use.amount);
                }
            }
        }
        shared_.push_back(std::move(crew));
    }
    std::vector<bool> apart(count * count);
    for (const auto& [one, other] : pairs_) {
        apart[one * count + other] = apart[other * count + one] = true;
    }
    std::vector<std::size_t> longestFirst = problem_.order;
    std::stable_sort(longestFirst.begin(), longestFirst.end(),
                     [&](std::size_t one, std::size_t other) {
                         return problem_.items[one].days > problem_.items[other].days;
                     });
    for (std::size_t k = 0; k < count; ++k) {
        Shared group{1, {{k, 1}}};
        for (const std::size_t next : longestFirst) {
            const bool fromAll =
                std::all_of(group.users.begin(), group.users.end(),
                            [&](const auto& user) { return apart[user.first * count + next]; });
            if (fromAll) {
                group.users.emplace_back(next, 1);
            }
        }
        std::sort(group.users.begin(), group.users.end());
        const bool known = std::any_of(shared_.begin(), shared_.end(), [&](const Shared& other) {
            return other.users == group.users;
        });
        if (group.users.size() > 2 && !known) {
            shared_.push_back(std::move(group));
        }
    }
}

bool Refuter::rulesOut(CrewTime length) {
    Times heads = heads_;
    Times tails = tails_;
    if (!tighten(heads, tails, length) || !enoughCrewDays(heads, tails, length)) {
        return true;
    }
    if (problem_.items.size() > kMostForTrying) {
        return false;
    }
    for (int round = 0; round < kRounds; ++round) {
        const Times before[] = {heads, tails};
        if (!raiseByTrying(heads, tails, length, true) ||
            !raiseByTrying(heads, tails, length, false)) {
            return true;
        }
        if (before[0] == heads && before[1] == tails) {
            break;
        }
    }
    return !enoughCrewDays(heads, tails, length);
}

// Whether another start may be tried.
bool Refuter::mayGoOn() {
    return ++attempts_ <= kMostAttempts && (!goOn_ || goOn_());
}

bool Refuter::tighten(Times& heads, Times& tails, CrewTime length) {
    for (;;) {
        const Times before = heads;
        if (!raise(problem_, heads, tails, length)) {
            return false;
        }
        const Times tailsBefore = tails;
        if (!raise(mirror_, tails, heads, length)) {
            return false;
        }
        if (tailsBefore == tails && before == heads) {
            return true;
        }
    }
}

bool Refuter::raise(const CrewProblem& problem, Times& heads, const Times& tails, CrewTime length) {
    raiseByLinks(problem, heads);
    for (std::size_t k = 0; k < heads.size(); ++k) {
        if (heads[k] + problem.items[k].days + tails[k] > length) {
            return false;
        }
    }
    return raiseByPairs(heads, tails, length) && raiseByFixedParts(heads, tails, length);
}

bool Refuter::raiseByPairs(Times& heads, const Times& tails, CrewTime length) const {
    for (const auto& [one, other] : pairs_) {
        const CrewTime both = problem_.items[one].days + problem_.items[other].days;
        const bool oneFirst = heads[one] + both + tails[other] <= length;
        const bool otherFirst = heads[other] + both + tails[one] <= length;
        if (!oneFirst && !otherFirst) {
            return false;
        }
        if (!oneFirst) {
            heads[one] = std::max(heads[one], heads[other] + problem_.items[other].days);
        }
        if (!otherFirst) {
            heads[other] = std::max(heads[other], heads[one] + problem_.items[one].days);
        }
    }
    return true;
}

bool Refuter::raiseByFixedParts(Times& heads, const Times& tails, CrewTime length) {
    if (pairs_.empty()) {
        return true;
    }
    const auto latestStart = [&](std::size_t k) {
        return length - tails[k] - problem_.items[k].days;
    };
    for (std::size_t r = 0; r < users_.size(); ++r) {
        CrewUsage& usage = usages_[r];
        usage.clear();
        const auto useOf = [&](std::size_t k) {
            return *std::find_if(problem_.items[k].uses.begin(), problem_.items[k].uses.end(),
                                 [&](const CrewUse& use) { return use.resource == r; });
        };
        for (const std::size_t k : users_[r]) {
            const CrewTime from = latestStart(k);
            const CrewTime fixed = heads[k] + problem_.items[k].days - from;
            if (fixed > 0) {
                if (from < heads[k] || usage.earliest(from, fixed, useOf(k)) != from) {
                    return false;
                }
                usage.take(from, fixed, useOf(k));
            }
        }
        for (const std::size_t k : users_[r]) {
            const CrewTime last = latestStart(k);
            const bool isFixed = heads[k] + problem_.items[k].days > last;
            const CrewTime days = problem_.items[k].days;
            heads[k] = isFixed ? usage.freeUntil(heads[k], last, useOf(k))
                               : usage.earliest(heads[k], days, useOf(k));
            if (heads[k] > last) {
                return false;
            }
        }
    }
    return true;
}

// Where the units are fine, several starts at the beginning are tried together.
bool Refuter::raiseByTrying(Times& heads, Times& tails, CrewTime length, bool forward) {
    const CrewTime step = std::max<CrewTime>(1, length / kTriedOfLength);
    Times& mine = forward ? heads : tails;
    for (std::size_t k = 0; k < problem_.items.size(); ++k) {
        const CrewTime days = problem_.items[k].days;
        while (!problem_.items[k].uses.empty() && heads[k] + days + tails[k] + step <= length &&
               mayGoOn()) {
            Times triedHeads = heads;
            Times triedTails = tails;
            (forward ? triedTails : triedHeads)[k] = length - days - mine[k] - (step - 1);
            if (tighten(triedHeads, triedTails, length) &&
                enoughCrewDays(triedHeads, triedTails, length)) {
                break;
            }
            mine[k] += step;
            if (!tighten(heads, tails, length)) {
                return false;
            }
        }
    }
    return true;
}

bool Refuter::enoughCrewDays(const Times& heads, const Times& tails, CrewTime length) const {
    std::vector<Window> windows;
    for (const Shared& shared : shared_) {
        windows.clear();
        for (const auto& [k, amount] : shared.users) {
            const CrewTime days = problem_.items[k].days;
            const CrewTime latest = length - tails[k];
            windows.push_back({heads[k], heads[k] + days, latest - days, latest, days, amount});
        }
        for (const Window& first : windows) {
            for (const Window& last : windows) {
                if (first.start < last.finish &&
                    needed(windows, first.start, last.finish) >
                        shared.capacity * (last.finish - first.start)) {
                    return false;
                }
            }
        }
    }
    return true;
}

}  // namespace

CrewTime crewLowerBound(const CrewProblem& problem, CrewTime longest,
                        const std::function<bool()>& goOn) {
    Refuter refuter(problem, goOn);
    CrewTime bound = refuter.chain();  // no plan is shorter
    CrewTime open = longest;           // not ruled out
    while (bound < open) {
        const CrewTime middle = bound + (open - bound) / 2;
        if (refuter.rulesOut(middle)) {
            bound = middle + 1;
        } else {
            open = middle;
        }
    }
    return bound;
}

}  // namespace ledgerboard::compute
