#include "core/compute/job_network.h"

#include <algorithm>
#include <unordered_map>

#include "core/compute/concern_levels.h"
#include "core/compute/orders.h"
#include "core/compute/positions.h"
#include "core/compute/progress.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::LinkKind;
using model::Percent;

constexpr std::int64_t kMostLag = 3650 * kWorkDay;  // ten years, as days are kept to

bool holdsStart(LinkKind kind) {
    return kind != LinkKind::FinishToFinish && kind != LinkKind::StartToFinish;
}

bool goesFromStart(LinkKind kind) {
    return kind == LinkKind::StartToStart || kind == LinkKind::StartToFinish;
}

class Builder {
  public:
    Builder(const model::JobRows& rows, const JobFigures& figures, Date today)
        : rows_(rows),
          figures_(figures),
          items_(rows.items),
          contracts_(rows.contracts),
          marks_(rows),
          orders_(rows),
          out_{WorkTime(rows.job, std::max(today + 1, rows.job.beginOn.value_or(today + 1))),
               concernLevelsOf(rows.job).orderCheckDays,
               today + 1,
               {},
               {},
               {},
               {},
               0,
               0,
               {}} {}

    JobNetwork build() {
        out_.paces = pacesOf(rows_, figures_.scope, marks_, out_.time.calendar());
        for (const Pace& pace : out_.paces) {
            paceOf_.emplace(pace.crew, pace.thousandths);
        }
        readChanges();
        activityOf_.resize(figures_.scope.lines.size());
        for (std::size_t line = 0; line < figures_.scope.lines.size(); ++line) {
            addLine(line);
        }
        readLinks();
        holdByPlannedStart();
        countInspections();
        out_.loop = findLoop(out_.activities.size(), out_.precedences);
        return std::move(out_);
    }

  private:
    bool isOpen(std::size_t line) const {
        return figures_.scope.lines[line].counting == Counting::Counts &&
               figures_.lines[line].shown < Percent::whole();
    }

    // The days of each signed change, evenly over its unfinished items (those of its contract where
    // it names none).
    void readChanges() {
        for (const model::Change& change : rows_.changes) {
            if (!change.signedOn || !change.days || *change.days == model::Quantity{}) {
                continue;
            }
            auto items = itemsOf(change);
            if (items.empty()) {
                out_.unplacedChangeDays += *change.days;
                continue;
            }
            std::erase_if(items, [&](std::size_t k) { return !isOpen(k); });
            const auto count = static_cast<std::int64_t>(items.size());
            std::int64_t left = change.days->thousandths();
            for (std::int64_t k = 0; k < count; ++k) {
                const std::int64_t part = left / (count - k);
                changeDays_[items[static_cast<std::size_t>(k)]] += part;
                left -= part;
            }
        }
    }

    // Positions in rows.items.
    std::vector<std::size_t> itemsOf(const model::Change& change) const {
        std::vector<std::size_t> all;
        for (const auto& id : change.items) {
            if (const auto k = items_.of(id)) {
                all.push_back(*k);
            }
        }
        for (std::size_t k = 0; change.items.empty() && k < rows_.items.size(); ++k) {
            if (!change.contract.isNil() && rows_.items[k].contract == change.contract) {
                all.push_back(k);
            }
        }
        return all;
    }

    void addLine(std::size_t line) {
        const ScopeLine& scope = figures_.scope.lines[line];
        if (!scope.isWork() || !isOpen(line)) {
            return;
        }
        JobActivity activity;
        activity.line = line;
        activity.isOption = scope.kind == LineKind::Option;
        activity.shown = figures_.lines[line].shown;
        activity.crew = scope.crew;
        activity.space = scope.space;
        const auto pace = paceOf_.find(scope.crew);
        activity.pace = pace == paceOf_.end() ? kAsPlanned : pace->second;
        if (activity.isOption) {
            activity.days = optionDays(scope.option);
        } else {
            readItem(rows_.items[line], activity);
        }
        activity.hasDays = activity.days > 0;
        activity.left = leftOf(activity.days, activity.shown, activity.pace);
        activityOf_[line] = out_.activities.size();
        out_.activities.push_back(activity);
    }

    std::int64_t optionDays(const model::Id<model::Kind::Option>& id) const {
        for (const model::Option& option : rows_.options) {
            if (option.id == id && option.days) {
                return std::min(option.days->thousandths(), kMostLag);
            }
        }
        return 0;
    }

    void readItem(const model::Item& item, JobActivity& activity) {
        const auto change = changeDays_.find(activity.line);
        activity.changeDays = change == changeDays_.end() ? 0 : change->second;
        activity.days = std::clamp<std::int64_t>(
            likelyDays(item, out_.time.calendar()) + activity.changeDays, 0, 2 * kMostLag);
        activity.startedOn = actualDaysOf(item, marks_.of(activity.line)).startOn;
        activity.isBegun = activity.shown > Percent{} || activity.startedOn.has_value();
        if (const auto contract = contracts_.of(item.contract); contract && !activity.isBegun) {
            hold(activity, rows_.contracts[*contract].startOn, Hold::ContractStart);
        }
        holdByGoods(item, activity);
    }

    void hold(JobActivity& activity, std::optional<Date> until, Hold why) const {
        if (until && out_.time.before(*until) > activity.release) {
            activity.release = out_.time.before(*until);
            activity.hold = why;
        }
    }

    void holdByGoods(const model::Item& item, JobActivity& activity) {
        activity.isOrdered = orders_.isOrdered(item);
        if (const auto comes = orders_.comesOn(item)) {
            activity.goodsOn = std::max(*comes, out_.tomorrow);
            hold(activity, *activity.goodsOn + out_.checkDays, Hold::Goods);
        } else if (activity.isOrdered) {
            out_.goodsWithoutDay += orders_.hasArrived(item) || activity.isBegun ? 0 : 1;
        } else if (item.leadDays && *item.leadDays > 0 && !activity.isBegun) {
            const auto lead = static_cast<int>(std::min(*item.leadDays, kMostLead));
            activity.goodsOn = std::max(item.orderOn.value_or(out_.tomorrow), out_.tomorrow) + lead;
            hold(activity, *activity.goodsOn + out_.checkDays, Hold::Order);
        }
    }

    void readLinks() {
        isHeldByLink_.assign(out_.activities.size(), false);
        for (const model::Link& link : rows_.links) {
            const auto from = items_.of(link.fromItem);
            const auto to = items_.of(link.toItem);
            if (!from || !to || !activityOf_[*to] ||
                figures_.scope.lines[*from].counting != Counting::Counts) {
                continue;
            }
            const std::size_t waits = *activityOf_[*to];
            const bool isMoot = out_.activities[waits].isBegun && holdsStart(link.type);
            isHeldByLink_[waits] = isHeldByLink_[waits] || holdsStart(link.type);
            if (isMoot) {
                continue;
            }
            const std::int64_t lag =
                std::clamp(link.lag.value_or(model::Quantity{}).thousandths(), -kMostLag, kMostLag);
            const auto past = pastEnd(*from, goesFromStart(link.type));
            if (past) {
                holdByPast(*past + lag, link.type, *from, out_.activities[waits]);
            } else if (activityOf_[*from]) {
                out_.precedences.push_back({*activityOf_[*from], waits, link.type, lag});
            }
        }
    }

    // When an item's start or finish happened, where it is past and the day is known.
    std::optional<std::int64_t> pastEnd(std::size_t item, bool start) const {
        const ActualDays actual = actualDaysOf(rows_.items[item], marks_.of(item));
        if (start) {
            return actual.startOn ? std::optional(out_.time.before(*actual.startOn)) : std::nullopt;
        }
        return actual.finishOn ? std::optional(out_.time.through(*actual.finishOn)) : std::nullopt;
    }

    static void holdByPast(std::int64_t until, LinkKind kind, std::size_t from,
                           JobActivity& activity) {
        const std::int64_t release = holdsStart(kind) ? until : until - activity.left;
        if (release > activity.release) {
            activity.release = release;
            activity.hold = Hold::Link;
            activity.heldByLine = from;
        }
    }

    void holdByPlannedStart() {
        for (std::size_t k = 0; k < out_.activities.size(); ++k) {
            JobActivity& activity = out_.activities[k];
            if (!activity.isOption && !activity.isBegun && !isHeldByLink_[k]) {
                hold(activity, rows_.items[activity.line].plannedStartOn, Hold::PlannedStart);
            }
        }
    }

    void countInspections() {
        std::vector<bool> waits(out_.activities.size(), false);
        for (const model::Inspection& inspection : rows_.inspections) {
            for (const auto& id : inspection.holdsUp) {
                const auto item = items_.of(id);
                if (!inspection.heldOn && item && activityOf_[*item]) {
                    waits[*activityOf_[*item]] = !out_.activities[*activityOf_[*item]].isBegun;
                }
            }
        }
        out_.waitingForInspection =
            static_cast<std::size_t>(std::count(waits.begin(), waits.end(), true));
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    Positions<model::Item> items_;
    Positions<model::Contract> contracts_;
    Marks marks_;
    Orders orders_;
    std::unordered_map<model::Id<model::Kind::Crew>, std::int64_t> paceOf_;
    std::unordered_map<std::size_t, std::int64_t> changeDays_;  // by line
    std::vector<std::optional<std::size_t>> activityOf_;        // by line
    std::vector<bool> isHeldByLink_;  // by activity: a link holds its start
    JobNetwork out_;
};

}  // namespace

Network JobNetwork::network() const {
    std::vector<Activity> plain;
    plain.reserve(activities.size());
    for (const JobActivity& activity : activities) {
        plain.push_back({activity.left, activity.release, std::nullopt});
    }
    return {std::move(plain), precedences};
}

std::int64_t leftOf(std::int64_t days, Percent shown, std::int64_t pace) {
    const model::Wide left =
        model::multiplyWide(model::multiplyWide(days, 10'000 - shown.basisPoints()), pace);
    const model::Wide one = model::Wide{10'000} * kAsPlanned;
    return static_cast<std::int64_t>((left + one - 1) / one);
}

JobNetwork jobNetworkOf(const model::JobRows& rows, const JobFigures& figures, Date today) {
    return Builder(rows, figures, today).build();
}

ActualDays actualDaysOf(const model::Item& item, std::span<const MarkRead> marks) {
    ActualDays out;
    out.startOn = item.actualStartOn;
    for (const MarkRead& mark : marks) {
        if (mark.percent > Percent{} && mark.on && !out.startOn) {
            out.startOn = mark.on;
        }
        if (mark.percent < Percent::whole()) {
            out.finishOn.reset();
        } else if (!out.finishOn) {
            out.finishOn = mark.on;
        }
    }
    const bool isFinished = !marks.empty() && marks.back().percent == Percent::whole();
    if (isFinished && item.actualFinishOn) {
        out.finishOn = item.actualFinishOn;
    }
    return out;
}

}  // namespace ledgerboard::compute
