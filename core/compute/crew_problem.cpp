#include "core/compute/crew_problem.h"

#include <algorithm>

#include "core/model/check.h"

namespace ledgerboard::compute {

void CrewProblem::finish() {
    std::vector<std::size_t> waitsFor(items.size());
    for (std::size_t k = 0; k < items.size(); ++k) {
        items[k].before.clear();
    }
    for (std::size_t k = 0; k < items.size(); ++k) {
        waitsFor[k] = items[k].after.size();
        for (const StartLag& link : items[k].after) {
            items[link.item].before.push_back({k, link.lag});
        }
    }
    order.clear();
    for (std::size_t k = 0; k < items.size(); ++k) {
        if (waitsFor[k] == 0) {
            order.push_back(k);
        }
    }
    for (std::size_t at = 0; at < order.size(); ++at) {
        for (const StartLag& link : items[order[at]].before) {
            if (--waitsFor[link.item] == 0) {
                order.push_back(link.item);
            }
        }
    }
    model::require(order.size() == items.size(), "the links of a crew problem make no loop");
}

CrewProblem mirrorOf(const CrewProblem& problem) {
    CrewProblem mirror;
    mirror.capacities = problem.capacities;
    mirror.items.resize(problem.items.size());
    for (std::size_t k = 0; k < problem.items.size(); ++k) {
        const CrewWork& here = problem.items[k];
        CrewWork& there = mirror.items[k];
        there.days = here.days;
        there.head = here.tail;
        there.tail = here.head;
        there.uses = here.uses;
        for (const StartLag& link : here.before) {
            const CrewTime lag = link.lag + problem.items[link.item].days - here.days;
            there.after.push_back({link.item, lag});
        }
    }
    mirror.finish();
    return mirror;
}

bool areApart(const CrewProblem& problem, std::size_t one, std::size_t other) {
    for (const CrewUse& mine : problem.items[one].uses) {
        for (const CrewUse& theirs : problem.items[other].uses) {
            if (mine.resource == theirs.resource &&
                (mine.party != theirs.party ||
                 mine.amount + theirs.amount > problem.capacities[mine.resource])) {
                return true;
            }
        }
    }
    return false;
}

CrewTime lengthOf(const CrewProblem& problem, const std::vector<CrewTime>& starts) {
    CrewTime length = 0;
    for (std::size_t k = 0; k < problem.items.size(); ++k) {
        const CrewWork& work = problem.items[k];
        length = std::max(length, starts[k] + work.days + work.tail);
    }
    return length;
}

}  // namespace ledgerboard::compute
