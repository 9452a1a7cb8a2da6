#include "desktop/client/now/plan_move.h"

#include <algorithm>
#include <unordered_map>

#include "core/compute/progress.h"

namespace ledgerboard::desk {

using compute::PlanItem;
using compute::PlanState;
using model::Date;
using model::LinkKind;

namespace {

bool holdsStart(LinkKind kind) {
    return kind != LinkKind::FinishToFinish && kind != LinkKind::StartToFinish;
}

std::int64_t lagOf(const model::Link& link) {
    return link.lag ? link.lag->thousandths() : 0;
}

// Positions of items by id.
std::optional<std::size_t> positionOf(const model::JobRows& rows,
                                      const model::Id<model::Kind::Item>& id) {
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        if (rows.items[k].id == id) {
            return k;
        }
    }
    return std::nullopt;
}

// The links that hold the start of an item, each with the item before it, where that counts.
std::vector<std::pair<std::size_t, std::size_t>> linksInto(const JobNow& now, std::size_t row) {
    std::vector<std::pair<std::size_t, std::size_t>> links;
    for (std::size_t k = 0; k < now.rows.links.size(); ++k) {
        const model::Link& link = now.rows.links[k];
        if (link.toItem != now.rows.items[row].id || !holdsStart(link.type)) {
            continue;
        }
        const auto from = positionOf(now.rows, link.fromItem);
        if (from && now.figures.scope.lines[*from].counting == compute::Counting::Counts) {
            links.emplace_back(k, *from);
        }
    }
    return links;
}

// When an item that is past lets go, where its day is known.
std::optional<std::int64_t> pastAnchor(const JobNow& now, const compute::Marks& marks,
                                       const compute::WorkTime& time, std::size_t from,
                                       bool byStart) {
    const auto actual = compute::actualDaysOf(now.rows.items[from], marks.of(from));
    if (byStart) {
        return actual.startOn ? std::optional(time.before(*actual.startOn)) : std::nullopt;
    }
    return actual.finishOn ? std::optional(time.through(*actual.finishOn)) : std::nullopt;
}

bool isOpen(const JobNow& now, std::size_t row) {
    return now.figures.lines[row].shown < model::Percent::whole();
}

}  // namespace

Unmovable whyUnmovable(const JobNow& now, const compute::Plan& plan, std::size_t item) {
    const PlanItem& one = plan.items[item];
    if (!plan.loop.empty()) {
        return Unmovable::Loop;
    }
    if (one.state != PlanState::Ahead) {
        return one.state == PlanState::Finished ? Unmovable::Finished : Unmovable::UnderWay;
    }
    if (one.line >= now.rows.items.size()) {
        return Unmovable::NotAnItem;
    }
    if (!one.hasDays || !one.startOn) {
        return Unmovable::NoDays;
    }
    const auto links = linksInto(now, one.line);
    const compute::Marks marks(now.rows);
    const compute::WorkTime time(now.rows.job, plan.firstDay);
    const bool anyDay = std::any_of(links.begin(), links.end(), [&](const auto& link) {
        const auto [row, from] = link;
        const bool byStart = now.rows.links[row].type == LinkKind::StartToStart;
        return isOpen(now, from) || pastAnchor(now, marks, time, from, byStart);
    });
    return links.empty() || anyDay ? Unmovable::Movable : Unmovable::BeforeNoDay;
}

PlanMover::PlanMover(std::shared_ptr<const JobNow> now, std::shared_ptr<const compute::Plan> before,
                     std::size_t item)
    : now_(std::move(now)),
      before_(std::move(before)),
      item_(item),
      row_(before_->items[item].line),
      time_(now_->rows.job, before_->firstDay),
      rows_(now_->rows) {
    readHolders(compute::jobNetworkOf(now_->rows, now_->figures, now_->today));
}

void PlanMover::readHolders(const compute::JobNetwork& network) {
    const auto links = linksInto(*now_, row_);
    if (links.empty()) {
        return;
    }
    std::unordered_map<std::size_t, std::size_t> activityOf;  // by line
    for (std::size_t k = 0; k < network.activities.size(); ++k) {
        activityOf.emplace(network.activities[k].line, k);
    }
    std::vector<std::int64_t> durations;
    for (const auto& activity : network.activities) {
        durations.push_back(activity.left);
    }
    std::vector<std::int64_t> start(durations.size());
    std::vector<std::int64_t> finish(durations.size());
    (void)network.network().forward(durations, start, finish);  // the length is the plan's
    const compute::Marks marks(now_->rows);
    for (const auto& [link, from] : links) {
        const model::Link& row = now_->rows.links[link];
        const bool byStart = row.type == LinkKind::StartToStart;
        auto anchor = pastAnchor(*now_, marks, time_, from, byStart);
        if (const auto activity = activityOf.find(from); !anchor && activity != activityOf.end()) {
            anchor = byStart ? start[activity->second] : finish[activity->second];
        }
        if (anchor) {
            holders_.push_back({link, *anchor, lagOf(row)});
        }
    }
}

// Lags with which the item starts at `start`, or as near after it as the items before it allow.
std::vector<LagChange> PlanMover::lagsFor(std::int64_t start) const {
    std::vector<Holder> holders = holders_;
    std::int64_t held = INT64_MIN;
    for (Holder& holder : holders) {
        if (holder.lag > 0 && holder.anchor + holder.lag > start) {
            holder.lag = std::max<std::int64_t>(0, start - holder.anchor);
        }
        held = std::max(held, holder.anchor + holder.lag);
    }
    if (held < start) {
        const auto last = std::max_element(
            holders.begin(), holders.end(),
            [](const Holder& a, const Holder& b) { return a.anchor + a.lag < b.anchor + b.lag; });
        last->lag = start - last->anchor;
    }
    std::vector<LagChange> changes;
    for (std::size_t k = 0; k < holders.size(); ++k) {
        if (holders[k].lag != holders_[k].lag) {
            changes.push_back({holders[k].link, model::Quantity::fromThousandths(holders_[k].lag),
                               model::Quantity::fromThousandths(holders[k].lag)});
        }
    }
    return changes;
}

// Working days from its planned start to its planned finish, as it stands.
int PlanMover::plannedDays() const {
    const model::Item& row = now_->rows.items[row_];
    const PlanItem& stands = before_->items[item_];
    const bool isDated = row.plannedStartOn && row.plannedFinishOn;
    return std::max(1,
                    time_.calendar().workDays(isDated ? *row.plannedStartOn : *stands.startOn,
                                              isDated ? *row.plannedFinishOn : *stands.finishOn));
}

PlanMove PlanMover::to(Date wanted) {
    const compute::WorkCalendar& calendar = time_.calendar();
    const PlanItem& stands = before_->items[item_];
    const Date day = calendar.onOrAfter(std::max(wanted, before_->firstDay));
    PlanMove move;
    move.plan = before_;
    if (day != *stands.startOn) {
        model::Item& row = rows_.items[row_];
        const model::Item kept = row;
        row.plannedStartOn = day;
        row.plannedFinishOn = calendar.finishOf(day, plannedDays());
        if (!holders_.empty()) {
            move.lags = lagsFor(time_.before(day));
        }
        for (const LagChange& change : move.lags) {
            rows_.links[change.link].lag = change.lag;
        }
        move.plan = std::make_shared<const compute::Plan>(
            compute::planOf(rows_, now_->figures, now_->today));
        row = kept;
        for (const LagChange& change : move.lags) {
            rows_.links[change.link].lag = now_->rows.links[change.link].lag;
        }
    }
    compare(move, std::max(wanted, before_->firstDay));
    return move;
}

void PlanMover::compare(PlanMove& move, Date wanted) const {
    const compute::WorkCalendar& calendar = time_.calendar();
    const PlanItem& before = before_->items[item_];
    const PlanItem& after = move.plan->items[item_];
    move.startOn = *after.startOn;
    move.finishOn = *after.finishOn;
    move.isMove = move.startOn != *before.startOn;
    move.isHeld = move.startOn > calendar.onOrAfter(wanted);
    // Without likely days its planned dates are its days, whatever the pace of its crew.
    const auto& likely = now_->rows.items[row_].daysLikely;
    move.plannedFinishOn = likely && *likely > model::Quantity{}
                               ? move.finishOn
                               : calendar.finishOf(move.startOn, plannedDays());
    if (!move.isMove) {
        move.plan = before_;
        move.lags.clear();
        return;
    }
    for (std::size_t k = 0; k < move.plan->items.size(); ++k) {
        const PlanItem& a = before_->items[k];
        const PlanItem& b = move.plan->items[k];
        if (k != item_ &&
            (a.startOn != b.startOn || a.finishOn != b.finishOn || a.resumesOn != b.resumesOn)) {
            move.pushed.push_back(k);
        }
    }
    if (before_->on && move.plan->on) {
        move.finishLaterDays = compute::workDaysLate(calendar, *before_->on, *move.plan->on);
    }
}

}  // namespace ledgerboard::desk
