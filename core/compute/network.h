// When can each activity of a network start and finish at the earliest and at the latest, and how
// far may it slip?
//
// Units: thousandths of a working day, counted from the start of the work (0). What a day is, is
// the caller's matter: calendars are not known here. Source: forward and backward pass of the
// critical path method, as in NAVEDTRA 14233 p. 44 (merges take the larger early finish going
// forward and the smaller late start going back; a lag stands between the two). Times never below
// 0: project decision, for nothing happens before the work begins; a link that would ask for it
// holds more slack instead. The latest times are counted back from the length for every activity,
// whether or not anything waits for it, so that no float hides behind an overlap. Threads: a
// Network that is built may be asked from any number at once.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/model/words.h"

namespace ledgerboard::compute {

struct Activity {
    std::int64_t duration = 0;  // 0 is a milestone
    std::int64_t release = 0;   // earliest allowed start; below 0 holds nothing back
    // Latest finish that is wanted. It moves no date: it only makes floats smaller, below 0 where
    // it can't be kept.
    std::optional<std::int64_t> deadline;
};

// `to` waits for `from`. Unset is read as finish to start.
struct Precedence {
    std::size_t from = 0;  // position of an activity
    std::size_t to = 0;
    model::LinkKind kind = model::LinkKind::FinishToStart;
    std::int64_t lag = 0;  // below 0 overlaps
};

struct ActivityTimes {
    std::int64_t es = 0;  // earliest start
    std::int64_t ef = 0;
    std::int64_t ls = 0;  // latest start that keeps the length and the deadlines
    std::int64_t lf = 0;
    std::int64_t totalFloat = 0;  // ls - es; below 0 only where a deadline can't be kept
    // How far it may slip and nothing else moves, the length included; never below 0. Deadlines are
    // not looked at.
    std::int64_t freeFloat = 0;
    bool critical = false;  // no total float
};

struct NetworkTimes {
    std::int64_t length = 0;                // the latest early finish; 0 without activities
    std::vector<ActivityTimes> activities;  // as given
};

// Positions of activities that wait for each other in a ring: each waits for the one before it, the
// first for the last; it begins with the lowest position of the ring. Empty where there is no ring.
// Two activities linked there and back are a ring whatever the kinds of the links.
// Requires: every position in `precedences` is below `activities`.
[[nodiscard]] std::vector<std::size_t> findLoop(std::size_t activities,
                                                std::span<const Precedence> precedences);

// A network built once and timed as often as wanted.
// Errors, of every function that times: OverflowError where a time does not fit.
class Network {
  public:
    // Requires: positions in range, no loop (findLoop), durations not below 0.
    Network(std::vector<Activity> activities, std::vector<Precedence> precedences);

    [[nodiscard]] const std::vector<Activity>& activities() const { return activities_; }

    [[nodiscard]] const std::vector<Precedence>& precedences() const { return precedences_; }

    // Positions of the activities so that none stands before one it waits for; among those that
    // could come next, the lowest position first.
    [[nodiscard]] std::span<const std::uint32_t> order() const { return order_; }

    // Early starts and finishes by position for durations (and earliest allowed starts) other than
    // those it was built with; the length comes out. Allocates nothing.
    // Requires: every span has one element an activity; durations not below 0.
    [[nodiscard]] std::int64_t forward(std::span<const std::int64_t> durations,
                                       std::span<std::int64_t> start,
                                       std::span<std::int64_t> finish) const;
    [[nodiscard]] std::int64_t forward(std::span<const std::int64_t> durations,
                                       std::span<const std::int64_t> releases,
                                       std::span<std::int64_t> start,
                                       std::span<std::int64_t> finish) const;

    // All times with the durations it was built with.
    [[nodiscard]] NetworkTimes times() const;

    // How far precedence k lets `from` slip before `to` moves, with these starts and finishes.
    // 0: it drives `to`. Requires: k below the number of precedences.
    [[nodiscard]] std::int64_t slack(std::size_t k, std::span<const std::int64_t> start,
                                     std::span<const std::int64_t> finish) const;

    // Positions, in precedences(), of those into activity k.
    [[nodiscard]] std::span<const std::uint32_t> into(std::size_t k) const;

  private:
    // One link as the forward pass reads it.
    struct Arrow {
        std::uint32_t from;
        bool fromFinish;
        bool toFinish;
        std::int64_t lag;
    };

    [[nodiscard]] std::int64_t startOf(std::size_t k, std::int64_t duration, std::int64_t release,
                                       std::span<const std::int64_t> start,
                                       std::span<const std::int64_t> finish) const;
    void goBack(NetworkTimes& out) const;

    std::vector<Activity> activities_;
    std::vector<Precedence> precedences_;
    std::vector<std::int64_t> releases_;
    std::vector<std::uint32_t> order_;
    std::vector<std::uint32_t> firstInto_;  // by activity: where its links begin in into_; one more
    std::vector<std::uint32_t> into_;
    std::vector<Arrow> arrows_;  // beside into_
};

}  // namespace ledgerboard::compute
