#include "core/compute/crew_search.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/compute/crew_scheme.h"
#include "core/compute/seeded_numbers.h"
#include "core/model/overflow.h"

namespace ledgerboard::compute {

namespace {

using Keys = std::vector<CrewTime>;
using model::Wide;

constexpr std::size_t kPopulation = 30;
constexpr int kChildren = 2;               // of each parent; the better one stays
constexpr int kStretches = 3;              // looked at, to find a busy one
constexpr std::int64_t kPatience = 1500;   // tries without a better plan before starting afresh
constexpr std::uint64_t kShakenOf100 = 8;  // items of a plan that is shaken
constexpr std::uint64_t kShakeUnlikeOf100 = 20;  // plans shaken where the parents differ

// A plan, in its own direction of time.
struct Plan {
    Keys starts;
    CrewTime length = 0;
};

// The longest chain of links behind each item, itself included.
Keys chainsBehind(const CrewProblem& problem, const CrewProblem& mirror) {
    Keys chains(problem.items.size());
    for (const std::size_t k : mirror.order) {
        chains[k] = mirror.items[k].head;
        for (const StartLag& link : mirror.items[k].after) {
            chains[k] = std::max(chains[k], chains[link.item] + link.lag);
        }
    }
    for (std::size_t k = 0; k < chains.size(); ++k) {
        chains[k] += problem.items[k].days;
    }
    return chains;
}

Keys plainKeys(const Keys& chains) {
    Keys keys(chains);
    for (CrewTime& key : keys) {
        key = -key;
    }
    return keys;
}

class Search {
  public:
    Search(const CrewProblem& problem, const CrewSearchLimits& limits);

    CrewSearchResult run();

  private:
    using Population = std::vector<Plan>;

    [[nodiscard]] bool isOver() const;
    Plan place(bool forward, const Keys& keys);
    void keep(bool forward, const Plan& plan);
    [[nodiscard]] Keys turned(const Plan& plan) const;
    Keys keysByChance();
    bool fill(Population& plans, bool forward);
    std::size_t otherParent(const Population& parents, std::size_t than);
    CrewTime busyStretch(const Keys& keys, CrewTime length, CrewTime stretch);
    Keys cross(const Keys& mine, CrewTime myLength, const Keys& theirs, CrewTime theirLength);
    void shake(Keys& keys);
    void breed(const Population& parents, Population& children, bool childrenForward);

    const CrewProblem& problem_;
    const CrewProblem mirror_;
    const CrewSearchLimits& limits_;
    SerialScheme forward_;
    SerialScheme backward_;
    SeededNumbers chance_;
    Keys chains_;
    std::vector<CrewTime> loads_;  // of an item: share of the crews it takes, in thousandths
    CrewTime far_ = 1;             // further than any key
    CrewSearchResult best_;
    std::int64_t betterAt_ = 0;  // try at which the best was found, or at which it began afresh
};

Search::Search(const CrewProblem& problem, const CrewSearchLimits& limits)
    : problem_(problem),
      mirror_(mirrorOf(problem)),
      limits_(limits),
      forward_(problem_),
      backward_(mirror_),
      chance_(limits.seed),
      chains_(chainsBehind(problem_, mirror_)) {
    for (const CrewWork& work : problem.items) {
        CrewTime load = 0;
        for (const CrewUse& use : work.uses) {
            load += use.party == 0 ? use.amount * 1000 / problem.capacities[use.resource] : 0;
        }
        loads_.push_back(load);
    }
}

bool Search::isOver() const {
    return best_.tries >= limits_.tries || best_.length <= limits_.enough ||
           (limits_.goOn && !limits_.goOn());
}

Plan Search::place(bool forward, const Keys& keys) {
    SerialScheme& scheme = forward ? forward_ : backward_;
    Plan plan;
    plan.length = scheme.place(keys);
    plan.starts = scheme.starts();
    best_.tries += scheme.passes();
    keep(forward, plan);
    return plan;
}

void Search::keep(bool forward, const Plan& plan) {
    if (!best_.starts.empty() && plan.length >= best_.length) {
        return;
    }
    best_.length = plan.length;
    best_.starts = forward ? plan.starts : turned(plan);
    betterAt_ = best_.tries;
}

// The starts as the other direction of time sees them.
Keys Search::turned(const Plan& plan) const {
    Keys keys(plan.starts.size());
    for (std::size_t k = 0; k < keys.size(); ++k) {
        keys[k] = plan.length - plan.starts[k] - problem_.items[k].days;
    }
    return keys;
}

// An order by chance in which each item follows those it waits for. Among those that can come next,
// one is the likelier the longer the chain behind it.
Keys Search::keysByChance() {
    Keys keys(problem_.items.size());
    std::vector<std::size_t> waitsFor;
    std::vector<std::size_t> ready;
    for (std::size_t k = 0; k < keys.size(); ++k) {
        waitsFor.push_back(problem_.items[k].after.size());
        if (waitsFor[k] == 0) {
            ready.push_back(k);
        }
    }
    for (CrewTime place = 0; !ready.empty(); ++place) {
        CrewTime shortest = chains_[ready[0]];
        for (const std::size_t item : ready) {
            shortest = std::min(shortest, chains_[item]);
        }
        CrewTime sum = 0;
        for (const std::size_t item : ready) {
            sum += chains_[item] - shortest + 1;
        }
        auto ticket = static_cast<CrewTime>(chance_.below(static_cast<std::uint64_t>(sum)));
        std::size_t at = 0;
        while (ticket > chains_[ready[at]] - shortest) {
            ticket -= chains_[ready[at]] - shortest + 1;
            ++at;
        }
        const std::size_t item = ready[at];
        ready.erase(ready.begin() + static_cast<std::ptrdiff_t>(at));
        keys[item] = place;
        for (const StartLag& link : problem_.items[item].before) {
            if (--waitsFor[link.item] == 0) {
                ready.push_back(link.item);
            }
        }
    }
    return keys;
}

// Plans by chance. False where the search ended before there were enough.
bool Search::fill(Population& plans, bool forward) {
    plans.clear();
    while (plans.size() < kPopulation) {
        if (isOver()) {
            return false;
        }
        Plan plan = place(true, keysByChance());
        if (!forward && isOver()) {
            return false;
        }
        plans.push_back(forward ? std::move(plan) : place(false, turned(plan)));
    }
    return true;
}

// The better of two by chance.
std::size_t Search::otherParent(const Population& parents, std::size_t than) {
    const auto any = [&] {
        const auto drawn = static_cast<std::size_t>(chance_.below(kPopulation - 1));
        return drawn < than ? drawn : drawn + 1;
    };
    const std::size_t one = any();
    const std::size_t other = any();
    return parents[other].length < parents[one].length ? other : one;
}

// Where the busiest of a few stretches begins. Keys are starts.
CrewTime Search::busyStretch(const Keys& keys, CrewTime length, CrewTime stretch) {
    CrewTime best = 0;
    Wide most = -1;
    for (int k = 0; k < kStretches; ++k) {
        const auto from = static_cast<CrewTime>(
            chance_.below(static_cast<std::uint64_t>(std::max<CrewTime>(length - stretch, 0) + 1)));
        Wide load = 0;
        for (std::size_t item = 0; item < keys.size(); ++item) {
            const CrewTime finish = keys[item] + problem_.items[item].days;
            const CrewTime inside = std::min(finish, from + stretch) - std::max(keys[item], from);
            load += Wide{std::max<CrewTime>(inside, 0)} * loads_[item];
        }
        if (load > most) {
            most = load;
            best = from;
        }
    }
    return best;
}

// What begins within a busy stretch of one parent stays together; all else goes before or after it,
// in the other parent's order.
Keys Search::cross(const Keys& mine, CrewTime myLength, const Keys& theirs, CrewTime theirLength) {
    const auto share = static_cast<CrewTime>(250 + chance_.below(500));  // thousandths
    const auto stretch =
        std::max<CrewTime>(1, static_cast<CrewTime>(Wide{myLength} * share / 1000));
    const CrewTime from = busyStretch(mine, myLength, stretch);
    const CrewTime to = from + stretch;
    Keys child(mine.size());
    for (std::size_t k = 0; k < child.size(); ++k) {
        if (mine[k] >= from && mine[k] < to) {
            child[k] = mine[k];
            continue;
        }
        const auto inMine =
            static_cast<CrewTime>(Wide{theirs[k]} * myLength / std::max<CrewTime>(theirLength, 1));
        child[k] = inMine < from + stretch / 2 ? theirs[k] - far_ : theirs[k] + far_;
    }
    return child;
}

void Search::shake(Keys& keys) {
    for (CrewTime& key : keys) {
        if (chance_.below(100) < kShakenOf100) {
            key = keys[chance_.below(keys.size())];
        }
    }
}

void Search::breed(const Population& parents, Population& children, bool childrenForward) {
    std::vector<Keys> keys;
    far_ = 1;
    for (const Plan& parent : parents) {
        keys.push_back(turned(parent));
        far_ = std::max(far_, parent.length + 1);
    }
    far_ *= 2;
    children.resize(kPopulation);
    for (std::size_t k = 0; k < kPopulation; ++k) {
        for (int child = 0; child < kChildren; ++child) {
            if (isOver()) {
                return;
            }
            const std::size_t other = otherParent(parents, k);
            Keys mixed = cross(keys[k], parents[k].length, keys[other], parents[other].length);
            if (parents[k].length == parents[other].length ||
                chance_.below(100) < kShakeUnlikeOf100) {
                shake(mixed);
            }
            Plan plan = place(childrenForward, mixed);
            if (child == 0 || plan.length < children[k].length) {
                children[k] = std::move(plan);
            }
        }
    }
}

CrewSearchResult Search::run() {
    place(true, plainKeys(chains_));
    std::array<Population, 2> populations;  // packed toward the start, and toward the end
    bool forward = true;
    bool afresh = true;
    while (!isOver()) {
        Population& parents = populations[forward ? 0 : 1];
        if (afresh && !fill(parents, forward)) {
            break;
        }
        afresh = false;
        breed(parents, populations[forward ? 1 : 0], !forward);
        forward = !forward;
        if (best_.tries - betterAt_ > kPatience) {
            betterAt_ = best_.tries;
            afresh = true;
        }
    }
    return best_;
}

}  // namespace

CrewSearchResult plainCrewPlan(const CrewProblem& problem) {
    SerialScheme scheme(problem);
    CrewSearchResult plain;
    plain.length = scheme.place(plainKeys(chainsBehind(problem, mirrorOf(problem))));
    plain.starts = scheme.starts();
    plain.tries = scheme.passes();
    return plain;
}

CrewSearchResult searchCrewPlan(const CrewProblem& problem, const CrewSearchLimits& limits) {
    return Search(problem, limits).run();
}

}  // namespace ledgerboard::compute
