#include <algorithm>

#include "core/compute/concern_list.h"
#include "core/compute/orders_due.h"
#include "core/compute/planned_value.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Percent;
using model::Saying;
using model::saying;

constexpr int kStackedDays = 14;

class TimeCollector : private ConcernList {
  public:
    TimeCollector(const ConcernsInput& in, std::vector<Concern>& out)
        : ConcernList(out),
          rows_(in.rows),
          figures_(in.figures),
          plan_(in.plan),
          today_(in.today),
          outlook_(in.outlook),
          levels_(in.levels),
          orders_(in.rows) {}

    void collect() {
        addOrders();
        addNotMarked();
        addFinish();
        addNoShows();
        addStacked();
    }

  private:
    void addOrders() {
        const auto due = ordersDue(rows_, figures_, plan_, orders_);
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            const model::Item& item = rows_.items[k];
            const ScopeLine& scope = figures_.scope.lines[k];
            if (scope.counting != Counting::Counts || figures_.lines[k].shown > Percent{}) {
                continue;
            }
            const auto comes = orders_.comesOn(item);
            if (comes && item.plannedStartOn && *comes > *item.plannedStartOn) {
                addAbout(item, ConcernKind::ArrivesLate, Level::Act, scope.name,
                         saying("comes after its planned start"), Page::Schedule)
                    .days = *comes - *item.plannedStartOn;
            }
            if (!due[k] || *due[k] - today_ > levels_.orderDays) {
                continue;
            }
            const bool late = *due[k] < today_;
            const Saying when =
                late ? saying("the day to order by has passed")
                     : saying("to be ordered within %1", daysSaid(levels_.orderDays));
            addAbout(item, ConcernKind::Order, late ? Level::Act : Level::Watch, scope.name,
                     levels_.orderCheckDays > 0 ? saying("%1, %2 to look it over in it", when,
                                                         daysSaid(levels_.orderCheckDays))
                                                : when,
                     Page::Schedule)
                .days = late ? today_ - *due[k] : *due[k] - today_;
        }
    }

    void addNotMarked() {
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            const LineFigures& line = figures_.lines[k];
            const ScopeLine& scope = figures_.scope.lines[k];
            const auto& start = rows_.items[k].plannedStartOn;
            const bool isUnderWay = line.shown > Percent{} || (start && *start <= today_);
            if (scope.counting != Counting::Counts || line.shown == Percent::whole() ||
                !isUnderWay) {
                continue;
            }
            // A mark made before its planned start starts the count there.
            std::optional<Date> since = line.markedOn;
            if (start && *start <= today_) {
                since = std::max(since, start);
            }
            const int open = since ? today_ - *since : 0;
            if (open < levels_.notMarkedWatchDays) {
                continue;
            }
            const bool act = open >= levels_.notMarkedActDays;
            addAbout(rows_.items[k], ConcernKind::NotMarked, act ? Level::Act : Level::Watch,
                     scope.name,
                     saying("not marked for %1 or more while work should go on",
                            daysSaid(act ? levels_.notMarkedActDays : levels_.notMarkedWatchDays)),
                     Page::ScopeOfWork)
                .days = open;
        }
    }

    void addFinish() {
        if (!plan_.on || figures_.job.shown == Percent::whole()) {
            return;
        }
        const Date finish = *plan_.on;
        const WorkCalendar calendar(rows_.job);
        const int late = outlook_.plannedFinishOn && finish > *outlook_.plannedFinishOn
                             ? calendar.workDays(*outlook_.plannedFinishOn + 1, finish)
                             : 0;
        const bool nearsTerm =
            rows_.job.termEndOn && *rows_.job.termEndOn - finish < levels_.termEndDays;
        if (nearsTerm) {
            add(ConcernKind::FinishSlips, Level::Act, saying("The finish"),
                saying("it leaves less than %1 to the term end", daysSaid(levels_.termEndDays)),
                Page::Schedule)
                .days = late;
        } else if (late > 0 && late >= levels_.finishWatchDays) {
            const bool act = late >= levels_.finishActDays;
            add(ConcernKind::FinishSlips, act ? Level::Act : Level::Watch, saying("The finish"),
                saying("it slips by %1 working days or more",
                       act ? levels_.finishActDays : levels_.finishWatchDays),
                Page::Schedule)
                .days = late;
        }
    }

    void addNoShows() {
        for (const NotThere& one : outlook_.notThere) {
            const bool act = one.inARow >= levels_.noShowActDays;
            addAbout(rows_.crews[one.crew], ConcernKind::NoShow, act ? Level::Act : Level::Watch,
                     rows_.crews[one.crew].name,
                     act ? saying("did not come for %1 in a row", daysSaid(levels_.noShowActDays))
                         : saying("did not come though work was planned"),
                     Page::Schedule)
                .days = static_cast<int>(one.days.size());
        }
    }

    // What comes within two weeks: later days will have moved before they are there.
    void addStacked() {
        for (const StackedDays& one : outlook_.stacked) {
            if (one.from - today_ > kStackedDays) {
                continue;
            }
            const bool isCrew = one.crew.has_value();
            Concern& concern = add(
                ConcernKind::Stacked, Level::Watch,
                model::asWritten(isCrew ? rows_.crews[*one.crew].name
                                        : rows_.spaces[*one.space].name),
                isCrew ? saying("the plan has it in %1 places at once and it can be in %2",
                                one.wanted, one.there)
                       : saying("the plan has %1 crews in it at once and it takes one", one.wanted),
                Page::Schedule);
            concern.days = one.to - one.from + 1;
            concern.recordKind = isCrew ? model::Kind::Crew : model::Kind::Space;
            concern.record =
                isCrew ? rows_.crews[*one.crew].id.raw() : rows_.spaces[*one.space].id.raw();
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const Plan& plan_;
    Date today_;
    const Outlook& outlook_;
    const ConcernLevels& levels_;
    Orders orders_;
};

}  // namespace

void addTimeConcerns(const ConcernsInput& in, std::vector<Concern>& out) {
    TimeCollector(in, out).collect();
}

}  // namespace ledgerboard::compute
