#include "core/compute/crew_scheme.h"

#include <algorithm>

namespace ledgerboard::compute {

CrewUsage::CrewUsage(std::int64_t capacity) : capacity_(capacity) {
    clear();
}

void CrewUsage::clear() {
    steps_.assign(1, Step{});
}

std::size_t CrewUsage::stepAt(CrewTime time) const {
    const auto after =
        std::upper_bound(steps_.begin(), steps_.end(), time,
                         [](CrewTime at, const Step& step) { return at < step.from; });
    return static_cast<std::size_t>(after - steps_.begin()) - 1;
}

bool CrewUsage::fits(const Step& step, const CrewUse& use) const {
    return step.amount == 0 || (step.party == use.party && step.amount + use.amount <= capacity_);
}

CrewTime CrewUsage::earliest(CrewTime from, CrewTime days, const CrewUse& use) const {
    CrewTime start = from;
    for (std::size_t k = stepAt(from); k + 1 < steps_.size(); ++k) {
        const Step& step = steps_[k];
        if (step.from >= start + days) {
            break;
        }
        if (!fits(step, use)) {
            start = steps_[k + 1].from;
        }
    }
    return start;
}

CrewTime CrewUsage::freeUntil(CrewTime from, CrewTime until, const CrewUse& use) const {
    CrewTime start = from;
    for (std::size_t k = stepAt(from); k + 1 < steps_.size() && steps_[k].from < until; ++k) {
        if (!fits(steps_[k], use)) {
            start = std::min(steps_[k + 1].from, until);
        }
    }
    return start;
}

std::size_t CrewUsage::splitAt(CrewTime time) {
    const std::size_t k = stepAt(time);
    if (steps_[k].from == time) {
        return k;
    }
    Step later = steps_[k];
    later.from = time;
    steps_.insert(steps_.begin() + static_cast<std::ptrdiff_t>(k) + 1, later);
    return k + 1;
}

void CrewUsage::take(CrewTime from, CrewTime days, const CrewUse& use) {
    const std::size_t first = splitAt(from);
    const std::size_t end = splitAt(from + days);
    for (std::size_t k = first; k < end; ++k) {
        steps_[k].amount += use.amount;
        steps_[k].party = use.party;
    }
}

SerialScheme::SerialScheme(const CrewProblem& problem)
    : problem_(problem),
      rank_(problem.items.size()),
      earliest_(problem.items.size()),
      starts_(problem.items.size()),
      isPlaced_(problem.items.size()),
      waitsFor_(problem.items.size()) {
    for (const std::int64_t capacity : problem.capacities) {
        usages_.emplace_back(capacity);
    }
    for (std::size_t k = 0; k < problem.order.size(); ++k) {
        const std::size_t item = problem.order[k];
        rank_[item] = k;
        earliest_[item] = problem.items[item].head;
        for (const StartLag& link : problem.items[item].after) {
            earliest_[item] = std::max(earliest_[item], earliest_[link.item] + link.lag);
        }
    }
}

CrewTime SerialScheme::place(std::span<const CrewTime> keys) {
    heldBack_ = earliest_;
    passes_ = 1;
    while (!placeOnce(keys, passes_ == kMostPasses)) {
        ++passes_;
    }
    return lengthOf(problem_, starts_);
}

bool SerialScheme::placeOnce(std::span<const CrewTime> keys, bool inOrder) {
    const auto later = [&](std::size_t one, std::size_t other) {
        return keys[one] != keys[other] ? keys[one] > keys[other] : rank_[one] > rank_[other];
    };
    const auto mustFollow = [&](const StartLag& link) { return inOrder || link.lag >= 0; };
    for (CrewUsage& usage : usages_) {
        usage.clear();
    }
    ready_.clear();
    for (const std::size_t item : problem_.order) {
        const auto& after = problem_.items[item].after;
        waitsFor_[item] =
            static_cast<std::size_t>(std::count_if(after.begin(), after.end(), mustFollow));
        isPlaced_[item] = 0;
        if (waitsFor_[item] == 0) {
            ready_.push_back(item);
        }
    }
    std::make_heap(ready_.begin(), ready_.end(), later);
    while (!ready_.empty()) {
        std::pop_heap(ready_.begin(), ready_.end(), later);
        const std::size_t item = ready_.back();
        ready_.pop_back();
        putAtEarliest(item);
        if (!inOrder && holdBack(item)) {
            return false;
        }
        for (const StartLag& link : problem_.items[item].before) {
            if (mustFollow(link) && --waitsFor_[link.item] == 0) {
                ready_.push_back(link.item);
                std::push_heap(ready_.begin(), ready_.end(), later);
            }
        }
    }
    return true;
}

void SerialScheme::putAtEarliest(std::size_t item) {
    const CrewWork& work = problem_.items[item];
    CrewTime start = heldBack_[item];
    for (const StartLag& link : work.after) {
        if (isPlaced_[link.item] != 0) {
            start = std::max(start, starts_[link.item] + link.lag);
        }
    }
    // Each resource may push it later; done once all of them leave it where it is.
    for (std::size_t agreed = 0, k = 0; agreed < work.uses.size();
         k = k + 1 == work.uses.size() ? 0 : k + 1) {
        const CrewUse& use = work.uses[k];
        const CrewTime moved = usages_[use.resource].earliest(start, work.days, use);
        agreed = moved == start ? agreed + 1 : 1;
        start = moved;
    }
    for (const CrewUse& use : work.uses) {
        usages_[use.resource].take(start, work.days, use);
    }
    starts_[item] = start;
    isPlaced_[item] = 1;
}

// Whether something that waits for `item` was placed too early for where `item` came to be.
bool SerialScheme::holdBack(std::size_t item) {
    bool any = false;
    for (const StartLag& link : problem_.items[item].before) {
        const CrewTime from = starts_[item] + link.lag;
        if (isPlaced_[link.item] != 0 && starts_[link.item] < from) {
            heldBack_[link.item] = std::max(heldBack_[link.item], from);
            any = true;
        }
    }
    return any;
}

}  // namespace ledgerboard::compute
