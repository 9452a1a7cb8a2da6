#include "core/compute/plan.h"

#include <algorithm>

namespace ledgerboard::compute {

namespace {

using model::Date;

// The days of a plan, looked up rather than searched for on the calendar each time.
class DayTable {
  public:
    DayTable(const WorkTime& time, std::int64_t length) : time_(time) {
        const Date last = time.startDay(length);
        if (last - time.first() <= kMostDays) {
            for (Date day = time.first(); day <= last; day = day + 1) {
                ends_.push_back(time.through(day));
            }
        }
    }

    // As those of WorkTime. Requires: at not beyond the length.
    [[nodiscard]] Date startDay(std::int64_t at) const {
        return ends_.empty() ? time_.startDay(at)
                             : dayAt(std::upper_bound(ends_.begin(), ends_.end(), at));
    }

    [[nodiscard]] Date finishDay(std::int64_t at) const {
        return ends_.empty() || at == 0 ? time_.finishDay(at)
                                        : dayAt(std::lower_bound(ends_.begin(), ends_.end(), at));
    }

  private:
    static constexpr int kMostDays = 100'000;  // beyond it a table is no saving

    [[nodiscard]] Date dayAt(std::vector<std::int64_t>::const_iterator end) const {
        return time_.first() + static_cast<int>(end - ends_.begin());
    }

    const WorkTime& time_;
    std::vector<std::int64_t> ends_;  // working time to the end of each day from the first
};

class Planner {
  public:
    Planner(const model::JobRows& rows, const JobFigures& figures, const JobNetwork& network)
        : rows_(rows), figures_(figures), network_(network), time_(network.time), marks_(rows) {}

    Plan plan() {
        out_.firstDay = time_.first();
        out_.checkDays = network_.checkDays;
        out_.paces = network_.paces;
        out_.goodsWithoutDay = network_.goodsWithoutDay;
        out_.waitingForInspection = network_.waitingForInspection;
        out_.unplacedChangeDays = network_.unplacedChangeDays;
        addItems();
        if (network_.loop.empty()) {
            timeActivities();
        }
        for (const std::size_t k : network_.loop) {
            out_.loop.push_back(itemOf_[k]);
        }
        return std::move(out_);
    }

  private:
    void addItems() {
        itemOf_.resize(network_.activities.size());
        itemAtLine_.resize(figures_.scope.lines.size());
        std::size_t activity = 0;
        std::size_t finished = 0;
        for (std::size_t line = 0; line < figures_.scope.lines.size(); ++line) {
            const ScopeLine& scope = figures_.scope.lines[line];
            if (!scope.isWork() || scope.counting != Counting::Counts) {
                continue;
            }
            itemAtLine_[line] = out_.items.size();
            PlanItem item;
            item.line = line;
            if (activity < network_.activities.size() &&
                network_.activities[activity].line == line) {
                itemOf_[activity] = out_.items.size();
                fillFrom(network_.activities[activity], item);
                ++activity;
            } else {
                fillFinished(item);
                ++finished;
            }
            out_.items.push_back(item);
        }
        out_.isFinished = !out_.items.empty() && finished == out_.items.size();
        if (out_.isFinished) {
            for (const PlanItem& item : out_.items) {
                out_.on = std::max(out_.on, item.finishOn);
            }
        }
    }

    void fillFrom(const JobActivity& activity, PlanItem& item) {
        item.state = activity.isBegun ? PlanState::UnderWay : PlanState::Ahead;
        item.hasDays = activity.hasDays;
        item.left = activity.left;
        out_.withoutDays += activity.hasDays ? 0 : 1;
        if (activity.isOrdered || activity.isBegun) {
            item.goodsOn = activity.goodsOn;
        }
    }

    void fillFinished(PlanItem& item) const {
        item.state = PlanState::Finished;
        if (figures_.scope.lines[item.line].kind == LineKind::Item) {
            const ActualDays actual = actualDaysOf(rows_.items[item.line], marks_.of(item.line));
            item.finishOn = actual.finishOn;
            item.startOn = actual.startOn && actual.finishOn
                               ? std::min(actual.startOn, actual.finishOn)
                               : actual.startOn;
        }
    }

    void timeActivities() {
        const Network network = network_.network();
        const NetworkTimes times = network.times();
        std::vector<std::int64_t> start;
        std::vector<std::int64_t> finish;
        for (const ActivityTimes& one : times.activities) {
            start.push_back(one.es);
            finish.push_back(one.ef);
        }
        const DayTable days(time_, times.length);
        bool anyDays = false;
        for (std::size_t k = 0; k < network_.activities.size(); ++k) {
            PlanItem& item = out_.items[itemOf_[k]];
            fillDays(days, times.activities[k], network_.activities[k], item);
            fillHold(network, k, start, finish, item);
            orderFor(network_.activities[k], item);
            anyDays = anyDays || item.hasDays;
        }
        if (anyDays) {
            for (const std::size_t at : itemOf_) {
                out_.on = std::max(out_.on, out_.items[at].finishOn);
            }
            drive(times);
        }
    }

    void fillDays(const DayTable& days, const ActivityTimes& one, const JobActivity& activity,
                  PlanItem& item) const {
        const bool takesTime = activity.left > 0;
        // What takes no time falls on the day it waits for, or on the one it may begin on.
        const bool isReleased = !takesTime && one.es == activity.release;
        item.startOn = takesTime || isReleased ? days.startDay(one.es) : days.finishDay(one.es);
        item.finishOn = takesTime ? days.finishDay(one.ef) : *item.startOn;
        item.latestFinishOn = std::max(*item.finishOn, days.finishDay(one.lf));
        item.latestStartOn =
            takesTime ? days.startDay(one.ls) : std::max(*item.startOn, *item.latestFinishOn);
        if (item.state == PlanState::UnderWay) {
            item.resumesOn = item.startOn;
            item.startOn = activity.startedOn ? *activity.startedOn : *item.startOn;
        }
        item.totalFloat = one.totalFloat;
        item.freeFloat = one.freeFloat;
        item.isCritical = one.critical;
        item.isNearCritical = !one.critical && one.totalFloat <= kNearCritical;
    }

    // A link before it that leaves no slack, the lowest position first; else its release.
    void fillHold(const Network& network, std::size_t k, const std::vector<std::int64_t>& start,
                  const std::vector<std::int64_t>& finish, PlanItem& item) const {
        std::optional<std::size_t> by;
        for (const std::uint32_t link : network.into(k)) {
            if (network.slack(link, start, finish) == 0) {
                const std::size_t from = network.precedences()[link].from;
                by = by ? std::min(*by, from) : from;
            }
        }
        const JobActivity& activity = network_.activities[k];
        if (by) {
            item.hold = Hold::Link;
            item.heldBy = itemOf_[*by];
        } else if (activity.hold != Hold::Nothing && start[k] == activity.release) {
            item.hold = activity.hold;
            item.heldBy = activity.heldByLine ? itemAtLine_[*activity.heldByLine] : std::nullopt;
        }
    }

    void orderFor(const JobActivity& activity, PlanItem& item) const {
        if (activity.isOption || activity.isOrdered || activity.isBegun) {
            return;
        }
        const model::Item& row = rows_.items[item.line];
        const Date soonest = network_.tomorrow;
        if (activity.goodsOn) {
            const int lead = static_cast<int>(std::min<std::int64_t>(*row.leadDays, kMostLead));
            item.orderBy = *item.startOn - lead - network_.checkDays;
        }
        if (row.orderOn) {
            item.orderBy = item.orderBy ? std::min(*item.orderBy, *row.orderOn) : *row.orderOn;
        }
        if (item.orderBy) {
            item.orderBy = std::max(*item.orderBy, soonest);
        }
    }

    // Back from the item that finishes last, each time to what holds it.
    void drive(const NetworkTimes& times) {
        std::optional<std::size_t> last;
        for (std::size_t k = 0; k < times.activities.size(); ++k) {
            if (times.activities[k].ef == times.length && network_.activities[k].hasDays) {
                last = itemOf_[k];
                break;
            }
        }
        while (last) {
            out_.driving.push_back(*last);
            last = out_.items[*last].heldBy;
        }
        std::reverse(out_.driving.begin(), out_.driving.end());
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const JobNetwork& network_;
    const WorkTime& time_;
    Marks marks_;
    Plan out_;
    std::vector<std::size_t> itemOf_;                     // by activity
    std::vector<std::optional<std::size_t>> itemAtLine_;  // by line
};

}  // namespace

Plan planOf(const model::JobRows& rows, const JobFigures& figures, Date today) {
    return planOf(rows, figures, jobNetworkOf(rows, figures, today));
}

Plan planOf(const model::JobRows& rows, const JobFigures& figures, const JobNetwork& network) {
    return Planner(rows, figures, network).plan();
}

std::string loopText(const Plan& plan, const JobFigures& figures) {
    std::string text;
    for (const std::size_t k : plan.loop) {
        text += figures.scope.lines[plan.items[k].line].name + " > ";
    }
    return plan.loop.empty() ? text
                             : text + figures.scope.lines[plan.items[plan.loop[0]].line].name;
}

}  // namespace ledgerboard::compute
