#include "core/compute/network.h"

#include <algorithm>
#include <functional>

#include <queue>

#include "core/model/check.h"
#include "core/model/overflow.h"

namespace ledgerboard::compute {

namespace {

using model::addChecked;
using model::LinkKind;
using model::subtractChecked;

bool fromFinish(LinkKind kind) {
    return kind != LinkKind::StartToStart && kind != LinkKind::StartToFinish;
}

bool toFinish(LinkKind kind) {
    return kind == LinkKind::FinishToFinish || kind == LinkKind::StartToFinish;
}

// Links grouped by one of their ends: those of activity k are links[first[k]] to
// links[first[k + 1] - 1], in the order given.
struct Grouped {
    std::vector<std::uint32_t> first;
    std::vector<std::uint32_t> links;
};

Grouped groupBy(std::size_t Precedence::*end, std::size_t activities,
                std::span<const Precedence> precedences) {
    Grouped out;
    out.first.assign(activities + 1, 0);
    for (const Precedence& precedence : precedences) {
        ++out.first[precedence.*end + 1];
    }
    for (std::size_t k = 0; k < activities; ++k) {
        out.first[k + 1] += out.first[k];
    }
    std::vector<std::uint32_t> next(out.first.begin(), out.first.end() - 1);
    out.links.resize(precedences.size());
    for (std::size_t k = 0; k < precedences.size(); ++k) {
        out.links[next[precedences[k].*end]++] = static_cast<std::uint32_t>(k);
    }
    return out;
}

// Lowest position first among those that wait for nothing more. Shorter than `activities` where
// there is a loop: what stands in it, or waits for it, is left out.
std::vector<std::uint32_t> orderOf(std::size_t activities, std::span<const Precedence> precedences,
                                   const Grouped& outOf) {
    std::vector<std::uint32_t> waits(activities, 0);
    for (const Precedence& precedence : precedences) {
        ++waits[precedence.to];
    }
    std::priority_queue<std::uint32_t, std::vector<std::uint32_t>, std::greater<>> ready;
    for (std::uint32_t k = 0; k < activities; ++k) {
        if (waits[k] == 0) {
            ready.push(k);
        }
    }
    std::vector<std::uint32_t> order;
    order.reserve(activities);
    while (!ready.empty()) {
        const std::uint32_t k = ready.top();
        ready.pop();
        order.push_back(k);
        for (std::uint32_t at = outOf.first[k]; at < outOf.first[k + 1]; ++at) {
            const auto to = static_cast<std::uint32_t>(precedences[outOf.links[at]].to);
            if (--waits[to] == 0) {
                ready.push(to);
            }
        }
    }
    return order;
}

void requireInRange(std::size_t activities, std::span<const Precedence> precedences) {
    for (const Precedence& precedence : precedences) {
        model::require(precedence.from < activities && precedence.to < activities,
                       "a precedence between activities of the network");
    }
}

}  // namespace

std::vector<std::size_t> findLoop(std::size_t activities, std::span<const Precedence> precedences) {
    requireInRange(activities, precedences);
    const Grouped outOf = groupBy(&Precedence::from, activities, precedences);
    const auto order = orderOf(activities, precedences, outOf);
    if (order.size() == activities) {
        return {};
    }
    std::vector<bool> stuck(activities, true);
    for (const std::uint32_t k : order) {
        stuck[k] = false;
    }
    // Each stuck activity waits for another one that is stuck: walking back among them must come
    // upon one seen before.
    const Grouped into = groupBy(&Precedence::to, activities, precedences);
    std::vector<std::size_t> path;
    std::vector<bool> seen(activities, false);
    auto at = static_cast<std::size_t>(std::find(stuck.begin(), stuck.end(), true) - stuck.begin());
    while (!seen[at]) {
        seen[at] = true;
        path.push_back(at);
        for (std::uint32_t k = into.first[at]; k < into.first[at + 1]; ++k) {
            const std::size_t from = precedences[into.links[k]].from;
            if (stuck[from]) {
                at = from;
                break;
            }
        }
    }
    path.erase(path.begin(), std::find(path.begin(), path.end(), at));
    std::reverse(path.begin(), path.end());
    std::rotate(path.begin(), std::min_element(path.begin(), path.end()), path.end());
    return path;
}

Network::Network(std::vector<Activity> activities, std::vector<Precedence> precedences)
    : activities_(std::move(activities)), precedences_(std::move(precedences)) {
    const std::size_t count = activities_.size();
    requireInRange(count, precedences_);
    order_ = orderOf(count, precedences_, groupBy(&Precedence::from, count, precedences_));
    model::require(order_.size() == count, "a network without a loop");
    Grouped into = groupBy(&Precedence::to, count, precedences_);
    firstInto_ = std::move(into.first);
    into_ = std::move(into.links);
    for (const std::uint32_t k : into_) {
        const Precedence& precedence = precedences_[k];
        arrows_.push_back({static_cast<std::uint32_t>(precedence.from), fromFinish(precedence.kind),
                           toFinish(precedence.kind), precedence.lag});
    }
    for (const Activity& activity : activities_) {
        model::require(activity.duration >= 0, "a duration not below 0");
        releases_.push_back(activity.release);
    }
}

// In line: this is what each trial of a simulation spends most of its time on.
inline std::int64_t Network::startOf(std::size_t k, std::int64_t duration, std::int64_t release,
                                     std::span<const std::int64_t> start,
                                     std::span<const std::int64_t> finish) const {
    std::int64_t earliest = std::max<std::int64_t>(release, 0);
    for (std::uint32_t at = firstInto_[k]; at < firstInto_[k + 1]; ++at) {
        const Arrow& arrow = arrows_[at];
        std::int64_t by =
            addChecked(arrow.fromFinish ? finish[arrow.from] : start[arrow.from], arrow.lag);
        by = arrow.toFinish ? subtractChecked(by, duration) : by;
        earliest = by > earliest ? by : earliest;
    }
    return earliest;
}

std::int64_t Network::forward(std::span<const std::int64_t> durations,
                              std::span<std::int64_t> start, std::span<std::int64_t> finish) const {
    return forward(durations, releases_, start, finish);
}

std::int64_t Network::forward(std::span<const std::int64_t> durations,
                              std::span<const std::int64_t> releases, std::span<std::int64_t> start,
                              std::span<std::int64_t> finish) const {
    const std::size_t count = activities_.size();
    model::require(durations.size() == count && releases.size() == count && start.size() == count &&
                       finish.size() == count,
                   "one element an activity");
    std::int64_t length = 0;
    for (const std::uint32_t k : order_) {
        model::require(durations[k] >= 0, "a duration not below 0");
        start[k] = startOf(k, durations[k], releases[k], start, finish);
        finish[k] = addChecked(start[k], durations[k]);
        length = std::max(length, finish[k]);
    }
    return length;
}

void Network::goBack(NetworkTimes& out) const {
    for (std::size_t k = 0; k < activities_.size(); ++k) {
        const auto& deadline = activities_[k].deadline;
        ActivityTimes& times = out.activities[k];
        times.lf = deadline ? std::min(out.length, *deadline) : out.length;
        times.freeFloat = out.length - times.ef;
    }
    for (std::size_t at = order_.size(); at-- > 0;) {
        const std::uint32_t k = order_[at];
        ActivityTimes& to = out.activities[k];
        to.ls = subtractChecked(to.lf, activities_[k].duration);
        to.totalFloat = subtractChecked(to.ls, to.es);
        to.critical = to.totalFloat <= 0;
        for (std::uint32_t link = firstInto_[k]; link < firstInto_[k + 1]; ++link) {
            const Arrow& arrow = arrows_[link];
            ActivityTimes& from = out.activities[arrow.from];
            const std::int64_t latest = subtractChecked(arrow.toFinish ? to.lf : to.ls, arrow.lag);
            const std::int64_t earliest =
                subtractChecked(arrow.toFinish ? to.ef : to.es, arrow.lag);
            const std::int64_t duration = activities_[arrow.from].duration;
            from.lf = std::min(from.lf, arrow.fromFinish ? latest : addChecked(latest, duration));
            from.freeFloat = std::min(
                from.freeFloat, subtractChecked(earliest, arrow.fromFinish ? from.ef : from.es));
        }
    }
}

NetworkTimes Network::times() const {
    const std::size_t count = activities_.size();
    std::vector<std::int64_t> durations(count);
    std::vector<std::int64_t> start(count);
    std::vector<std::int64_t> finish(count);
    std::transform(activities_.begin(), activities_.end(), durations.begin(),
                   [](const Activity& activity) { return activity.duration; });
    NetworkTimes out;
    out.length = forward(durations, start, finish);
    out.activities.resize(count);
    for (std::size_t k = 0; k < count; ++k) {
        out.activities[k].es = start[k];
        out.activities[k].ef = finish[k];
    }
    goBack(out);
    return out;
}

std::int64_t Network::slack(std::size_t k, std::span<const std::int64_t> start,
                            std::span<const std::int64_t> finish) const {
    const Precedence& link = precedences_[k];
    const std::int64_t to = toFinish(link.kind) ? finish[link.to] : start[link.to];
    const std::int64_t from = fromFinish(link.kind) ? finish[link.from] : start[link.from];
    return subtractChecked(subtractChecked(to, link.lag), from);
}

std::span<const std::uint32_t> Network::into(std::size_t k) const {
    return std::span(into_).subspan(firstInto_[k], firstInto_[k + 1] - firstInto_[k]);
}

}  // namespace ledgerboard::compute
