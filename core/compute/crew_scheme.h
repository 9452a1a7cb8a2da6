// In which plan do items end up when they are placed one after another, each as early as its links
// and the crews let it?
//
// Source: the serial schedule generation scheme of J. E. Kelley, "The critical-path method:
// resources planning and scheduling", in Muth and Thompson, Industrial Scheduling (1963); and
// R. Kolisch, European Journal of Operational Research 90 (1996), 320 to 333 (both from memory).
// For each resource a list of the times at which its use changes: cost grows with the items on it,
// not with the length of the plan.
// Threads: one at a time; each thread makes its own.
#pragma once

#include <span>
#include <vector>

#include "core/compute/crew_problem.h"

namespace ledgerboard::compute {

// How much of one resource is in use, and by whom, from each moment on.
class CrewUsage {
  public:
    explicit CrewUsage(std::int64_t capacity);

    void clear();
    // The first moment at or after `from` from which `use` fits for `days`. Requires: 0 <= from,
    // 1 <= days, use.amount <= capacity.
    [[nodiscard]] CrewTime earliest(CrewTime from, CrewTime days, const CrewUse& use) const;
    // The first moment at or after `from` from which `use` fits until `until`; `until` where it
    // does not fit just before that. Requires: 0 <= from <= until.
    [[nodiscard]] CrewTime freeUntil(CrewTime from, CrewTime until, const CrewUse& use) const;
    // Requires: it fits, as earliest() tells.
    void take(CrewTime from, CrewTime days, const CrewUse& use);

  private:
    struct Step {
        CrewTime from = 0;
        std::int64_t amount = 0;
        std::size_t party = 0;  // of those in it; any where amount is 0
    };

    [[nodiscard]] bool fits(const Step& step, const CrewUse& use) const;
    [[nodiscard]] std::size_t stepAt(CrewTime time) const;
    [[nodiscard]] std::size_t splitAt(CrewTime time);

    std::int64_t capacity_;
    std::vector<Step> steps_;  // by time; the first is at 0, nothing is used in the last
};

// A link with a lag below 0 lets an item start before the one it waits for; then it may also be
// placed before it. Where that turns out to have been too early, all is placed anew with that item
// held back; after kMostPasses, with every item placed after those it waits for.
class SerialScheme {
  public:
    // Requires: `problem` outlives this; every use is within its capacity.
    explicit SerialScheme(const CrewProblem& problem);

    // Places all items, always next the one with the least key among those that may be placed (of
    // equal keys the earlier in problem.order). Returns the length. Requires: one key for each
    // item. The plan stands in starts() until the next call.
    CrewTime place(std::span<const CrewTime> keys);

    [[nodiscard]] const std::vector<CrewTime>& starts() const { return starts_; }

    // How often the last call placed items from the beginning; 1 where no lag is below 0.
    [[nodiscard]] int passes() const { return passes_; }

  private:
    static constexpr int kMostPasses = 10;

    // False where an item was placed too early: it is held back from now on.
    bool placeOnce(std::span<const CrewTime> keys, bool inOrder);
    void putAtEarliest(std::size_t item);
    [[nodiscard]] bool holdBack(std::size_t item);

    const CrewProblem& problem_;
    std::vector<std::size_t> rank_;   // place in problem.order
    std::vector<CrewTime> earliest_;  // by links alone
    std::vector<CrewUsage> usages_;
    std::vector<CrewTime> starts_;
    std::vector<CrewTime> heldBack_;  // no earlier than this
    std::vector<char> isPlaced_;
    std::vector<std::size_t> waitsFor_;
    std::vector<std::size_t> ready_;  // a heap
    int passes_ = 0;
};

}  // namespace ledgerboard::compute
