// Crew-plan inputs for tests: some by chance, what makes a plan of one right, and the shortest
// length by trying every start. Written apart from core/compute, so that both can be wrong only in
// different ways. Times are small whole numbers.
#pragma once

#include <algorithm>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "core/compute/crew_plan.h"
#include "core/compute/seeded_numbers.h"

namespace ledgerboard::tests {

struct CrewJobShape {
    std::size_t items = 10;
    std::size_t crews = 3;
    std::size_t spaces = 1;
    std::uint64_t mostDays = 6;
    bool allKinds = true;  // of links, with lags; else finish to start without
    bool releases = true;
};

// Items linked to earlier ones alone, so there is no loop.
inline compute::CrewPlanInput crewJobByChance(compute::SeededNumbers& chance,
                                              const CrewJobShape& shape) {
    compute::CrewPlanInput input;
    for (std::size_t k = 0; k < shape.crews; ++k) {
        input.crews.push_back(
            {"crew " + std::to_string(k), static_cast<std::int64_t>(1 + chance.below(3))});
    }
    for (std::size_t k = 0; k < shape.spaces; ++k) {
        input.spaces.push_back("space " + std::to_string(k));
    }
    for (std::size_t k = 0; k < shape.items; ++k) {
        compute::CrewedItem item;
        item.name = "item " + std::to_string(k);
        item.activity.duration = static_cast<std::int64_t>(chance.below(shape.mostDays + 1));
        if (shape.releases && chance.below(5) == 0) {
            item.activity.release = static_cast<std::int64_t>(chance.below(8));
        }
        for (std::size_t crew = 0; crew < shape.crews; ++crew) {
            if (chance.below(shape.crews) == 0) {
                const auto capacity = static_cast<std::uint64_t>(input.crews[crew].capacity);
                item.needs.push_back({crew, static_cast<std::int64_t>(1 + chance.below(capacity))});
            }
        }
        if (shape.spaces > 0 && chance.below(3) == 0) {
            item.space = chance.below(shape.spaces);
        }
        for (std::size_t earlier = 0; earlier < k; ++earlier) {
            if (chance.below(k + 1) > 1) {
                continue;
            }
            compute::Precedence link{earlier, k};
            if (shape.allKinds) {
                link.kind = static_cast<model::LinkKind>(1 + chance.below(4));
                link.lag = static_cast<std::int64_t>(chance.below(6)) - 2;
            }
            input.precedences.push_back(link);
        }
        input.items.push_back(std::move(item));
    }
    return input;
}

// Whether `link` holds for these starts, straight from the words of the four kinds.
inline bool linkHolds(const compute::CrewPlanInput& input, const compute::Precedence& link,
                      std::span<const std::int64_t> starts) {
    const std::int64_t fromFinish = starts[link.from] + input.items[link.from].activity.duration;
    const std::int64_t toFinish = starts[link.to] + input.items[link.to].activity.duration;
    switch (link.kind) {
        case model::LinkKind::StartToStart:
            return starts[link.to] >= starts[link.from] + link.lag;
        case model::LinkKind::FinishToFinish:
            return toFinish >= fromFinish + link.lag;
        case model::LinkKind::StartToFinish:
            return toFinish >= starts[link.from] + link.lag;
        default:
            return starts[link.to] >= fromFinish + link.lag;
    }
}

// Whether `item` is under way at the moment `time`.
inline bool isUnderWay(const compute::CrewPlanInput& input, std::size_t item,
                       std::span<const std::int64_t> starts, std::int64_t time) {
    return starts[item] <= time && time < starts[item] + input.items[item].activity.duration;
}

// What is wanted of crews and spaces at `time` by the first `count` of `order`: "" where it is
// there, else what is not.
inline std::string lackAt(const compute::CrewPlanInput& input, std::span<const std::int64_t> starts,
                          std::int64_t time, std::span<const std::size_t> order) {
    std::vector<std::int64_t> wanted(input.crews.size());
    std::vector<std::set<std::set<std::size_t>>> inSpace(input.spaces.size());
    std::vector<int> nobodys(input.spaces.size());
    for (const std::size_t k : order) {
        const compute::CrewedItem& item = input.items[k];
        if (!isUnderWay(input, k, starts, time)) {
            continue;
        }
        std::set<std::size_t> party;
        for (const compute::CrewNeed& need : item.needs) {
            wanted[need.crew] += need.places;
            party.insert(need.crew);
        }
        if (item.space) {
            nobodys[*item.space] += party.empty() ? 1 : 0;
            inSpace[*item.space].insert(party);
        }
    }
    for (std::size_t crew = 0; crew < wanted.size(); ++crew) {
        if (wanted[crew] > input.crews[crew].capacity) {
            return input.crews[crew].name + " is in too many places at " + std::to_string(time);
        }
    }
    for (std::size_t space = 0; space < inSpace.size(); ++space) {
        if (inSpace[space].size() > 1 || nobodys[space] > 1) {
            return input.spaces[space] + " holds two crews at " + std::to_string(time);
        }
    }
    return "";
}

// Which rule a plan breaks; "" where it keeps all.
inline std::string brokenRule(const compute::CrewPlanInput& input,
                              std::span<const std::int64_t> starts) {
    if (starts.size() != input.items.size()) {
        return "not one start an item";
    }
    std::vector<std::size_t> all;
    for (std::size_t k = 0; k < starts.size(); ++k) {
        if (starts[k] < 0 || starts[k] < input.items[k].activity.release) {
            return input.items[k].name + " starts too early";
        }
        all.push_back(k);
    }
    for (const compute::Precedence& link : input.precedences) {
        if (!linkHolds(input, link, starts)) {
            return input.items[link.to].name + " does not wait for " + input.items[link.from].name;
        }
    }
    // What is wanted only grows where an item starts.
    for (const std::int64_t time : starts) {
        if (auto lack = lackAt(input, starts, time, all); !lack.empty()) {
            return lack;
        }
    }
    return "";
}

inline std::int64_t lengthOf(const compute::CrewPlanInput& input,
                             std::span<const std::int64_t> starts) {
    std::int64_t length = 0;
    for (std::size_t k = 0; k < starts.size(); ++k) {
        length = std::max(length, starts[k] + input.items[k].activity.duration);
    }
    return length;
}

// Tries every start of every item, one item after another, and turns back where a rule is broken
// among those that have one. Requires: few items; every link leads to a later item.
class EveryPlan {
  public:
    explicit EveryPlan(const compute::CrewPlanInput& input)
        : input_(input), starts_(input.items.size()) {}

    // Whether a plan no longer than `length` exists.
    bool exists(std::int64_t length) { return place(0, length); }

    std::int64_t shortest() {
        std::int64_t length = 0;
        while (!exists(length)) {
            ++length;
        }
        return length;
    }

  private:
    bool place(std::size_t item, std::int64_t length) {
        if (item == starts_.size()) {
            return true;
        }
        placed_.push_back(item);
        const compute::Activity& activity = input_.items[item].activity;
        for (starts_[item] = std::max<std::int64_t>(activity.release, 0);
             starts_[item] + activity.duration <= length; ++starts_[item]) {
            if (fits(item) && place(item + 1, length)) {
                return true;
            }
        }
        placed_.pop_back();
        return false;
    }

    bool fits(std::size_t item) const {
        for (const compute::Precedence& link : input_.precedences) {
            if (link.to == item && !linkHolds(input_, link, starts_)) {
                return false;
            }
        }
        const std::int64_t finish = starts_[item] + input_.items[item].activity.duration;
        for (std::int64_t time = starts_[item]; time < finish; ++time) {
            if (!lackAt(input_, starts_, time, placed_).empty()) {
                return false;
            }
        }
        return true;
    }

    const compute::CrewPlanInput& input_;
    std::vector<std::int64_t> starts_;
    std::vector<std::size_t> placed_;
};

}  // namespace ledgerboard::tests
