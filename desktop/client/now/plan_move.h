// What does moving an item to another day do to the plan, before it is kept?
//
// The plan is compute::planOf over the rows with the move in them; nothing is estimated here. An
// item that nothing comes before gets the day as its planned start. One that waits for others gets
// it by the lag of its links: later raises the lag of the one that holds it longest, earlier takes
// lags back, never below what the items before it need. What is pushed keeps its planned dates, so
// that planned against actual still tells how far it came. Source: project decision, for the plan
// looks at a planned start only where no link says when an item can start (job_network.h).
// Threads: any, one at a time.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/compute/plan.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

// Why an item stays where it is.
enum class Unmovable {
    Movable,
    Finished,
    UnderWay,     // what is left of it goes on from the first day planned
    NotAnItem,    // an option without items of its own
    NoDays,       // it takes no time, so there is nothing to move
    Loop,         // the plan has no days
    BeforeNoDay,  // it waits only for items whose day is not known
};

[[nodiscard]] Unmovable whyUnmovable(const JobNow& now, const compute::Plan& plan,
                                     std::size_t item);

struct LagChange {
    std::size_t link = 0;  // in rows.links
    model::Quantity before;
    model::Quantity lag;
};

struct PlanMove {
    std::shared_ptr<const compute::Plan> plan;
    bool isMove = false;  // false: it stands where it stood, and nothing is to be kept
    bool isHeld = false;  // it could not come to stand where it was wanted
    model::Date startOn;
    model::Date finishOn;
    model::Date plannedFinishOn;  // beside startOn, its new planned dates
    std::vector<LagChange> lags;
    std::vector<std::size_t> pushed;  // others, in plan.items, whose days change
    int finishLaterDays = 0;          // working days by which the finish of the job moves
};

// Requires: whyUnmovable is Movable.
class PlanMover {
  public:
    PlanMover(std::shared_ptr<const JobNow> now, std::shared_ptr<const compute::Plan> before,
              std::size_t item);

    [[nodiscard]] std::size_t item() const { return item_; }

    // The item wanted to start on that day, or the next one worked. Errors: OverflowError.
    [[nodiscard]] PlanMove to(model::Date wanted);

  private:
    // A link that holds the start, and when the item before it lets go.
    struct Holder {
        std::size_t link = 0;
        std::int64_t anchor = 0;
        std::int64_t lag = 0;
    };

    void readHolders(const compute::JobNetwork& network);
    [[nodiscard]] std::vector<LagChange> lagsFor(std::int64_t start) const;
    [[nodiscard]] int plannedDays() const;
    void compare(PlanMove& move, model::Date wanted) const;

    std::shared_ptr<const JobNow> now_;
    std::shared_ptr<const compute::Plan> before_;
    std::size_t item_ = 0;
    std::size_t row_ = 0;  // in rows.items
    compute::WorkTime time_;
    std::vector<Holder> holders_;
    model::JobRows rows_;  // with the move in them while it is looked at
};

}  // namespace ledgerboard::desk
