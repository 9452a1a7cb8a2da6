#include "core/compute/stacked.h"

#include <algorithm>
#include <set>

namespace ledgerboard::compute {

namespace {

// One item on the crew or in the space that is looked at.
struct Stay {
    std::size_t item = 0;
    std::int64_t from = 0;
    std::int64_t to = 0;
    std::int64_t places = 0;
};

std::vector<Stay> underWay(const std::vector<Stay>& stays, std::int64_t from, std::int64_t to) {
    std::vector<Stay> out;
    for (const Stay& stay : stays) {
        if (stay.from < to && from < stay.to) {
            out.push_back(stay);
        }
    }
    return out;
}

// The stretches in which `wantedBy` says more than `most` of the items then under way.
template <class WantedBy>
std::vector<Stacked> stretches(const std::vector<Stay>& stays, std::int64_t most,
                               WantedBy wantedBy) {
    std::set<std::int64_t> moments;
    for (const Stay& stay : stays) {
        moments.insert(stay.from);
        moments.insert(stay.to);
    }
    std::vector<Stacked> out;
    for (auto from = moments.begin(); from != moments.end() && std::next(from) != moments.end();
         ++from) {
        const std::int64_t to = *std::next(from);
        const std::int64_t wanted = wantedBy(underWay(stays, *from, to));
        if (wanted <= most) {
            continue;
        }
        if (out.empty() || out.back().to != *from) {
            out.push_back({});
            out.back().from = *from;
        }
        out.back().to = to;
        out.back().wanted = std::max(out.back().wanted, wanted);
    }
    for (Stacked& stretch : out) {
        for (const Stay& stay : underWay(stays, stretch.from, stretch.to)) {
            stretch.items.push_back(stay.item);
        }
    }
    return out;
}

}  // namespace

std::vector<Stacked> stackedIn(const CrewPlanInput& input, std::span<const std::int64_t> starts) {
    std::vector<std::vector<Stay>> onCrew(input.crews.size());
    std::vector<std::vector<Stay>> inSpace(input.spaces.size());
    for (std::size_t k = 0; k < input.items.size(); ++k) {
        const CrewedItem& item = input.items[k];
        const std::int64_t finish = starts[k] + item.activity.duration;
        if (item.activity.duration == 0) {
            continue;
        }
        for (const CrewNeed& need : item.needs) {
            onCrew[need.crew].push_back({k, starts[k], finish, need.places});
        }
        if (item.space) {
            inSpace[*item.space].push_back({k, starts[k], finish, 1});
        }
    }
    std::vector<Stacked> out;
    for (std::size_t crew = 0; crew < onCrew.size(); ++crew) {
        const auto places = [](const std::vector<Stay>& stays) {
            std::int64_t sum = 0;
            for (const Stay& stay : stays) {
                sum += stay.places;
            }
            return sum;
        };
        for (Stacked& one : stretches(onCrew[crew], input.crews[crew].capacity, places)) {
            one.crew = crew;
            out.push_back(std::move(one));
        }
    }
    for (std::size_t space = 0; space < inSpace.size(); ++space) {
        const auto parties = [&](const std::vector<Stay>& stays) {
            std::set<CrewParty> distinct;
            for (const Stay& stay : stays) {
                distinct.insert(partyOf(input, stay.item));
            }
            return static_cast<std::int64_t>(distinct.size());
        };
        for (Stacked& one : stretches(inSpace[space], 1, parties)) {
            one.space = space;
            out.push_back(std::move(one));
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
