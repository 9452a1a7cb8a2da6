#include "core/compute/concerns.h"

#include <algorithm>
#include <unordered_set>

#include "core/compute/orders_due.h"
#include "core/compute/planned_value.h"
#include "core/compute/positions.h"
#include "core/compute/progress.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::Percent;
using model::Wide;

constexpr int kStackedDays = 14;

// A level as it is said in a rule: "750", "1000", "99.50".
std::string levelText(Money level) {
    std::string text = level.toString();
    if (text.ends_with(".00")) {
        text.erase(text.size() - 3);
    }
    return text;
}

// part is at least `percent` of whole. Requires: whole > 0.
bool isAtLeast(Money part, Percent percent, Money whole) {
    return Wide{part.minor()} * 10'000 >= Wide{whole.minor()} * percent.basisPoints();
}

std::string days(int count) {
    return std::to_string(count) + (count == 1 ? " day" : " days");
}

// Collects the concerns of a job, one kind of rule a function. Lives for one call of concernsOf.
class Collector {
  public:
    Collector(const model::JobRows& rows, const JobFigures& figures, const Plan& plan, Date today,
              const Outlook& outlook)
        : rows_(rows),
          figures_(figures),
          plan_(plan),
          today_(today),
          outlook_(outlook),
          levels_(concernLevelsOf(rows.job)),
          items_(rows.items),
          marks_(rows),
          orders_(rows) {}

    std::vector<Concern> collect() {
        addLines();
        addJob();
        addContracts();
        addChanges();
        addOrders();
        addPapers();
        addInsurance();
        addNotMarked();
        addOutsideBaseline();
        addFinish();
        addNoShows();
        addStacked();
        addCash();
        std::stable_sort(out_.begin(), out_.end(), [](const Concern& a, const Concern& b) {
            if (a.level != b.level) {
                return a.level == Level::Act;
            }
            const Money moneyA = a.money.value_or(Money{});
            const Money moneyB = b.money.value_or(Money{});
            return moneyA != moneyB ? moneyA > moneyB : a.days.value_or(0) > b.days.value_or(0);
        });
        return std::move(out_);
    }

  private:
    Concern& add(ConcernKind kind, Level level, std::string about, std::string rule, Page page) {
        Concern concern;
        concern.kind = kind;
        concern.level = level;
        concern.about = std::move(about);
        concern.rule = std::move(rule);
        concern.page = page;
        out_.push_back(std::move(concern));
        return out_.back();
    }

    // The same about a record.
    template <class Row>
    Concern& addAbout(const Row& row, ConcernKind kind, Level level, std::string about,
                      std::string rule, Page page) {
        Concern& concern = add(kind, level, std::move(about), std::move(rule), page);
        concern.recordKind = Row::kKind;
        concern.record = row.id.raw();
        return concern;
    }

    bool isOverBy(const LineFigures& line, Percent percent, Money money) const {
        const Money over = line.beyondBudget();
        return over >= money ||
               (line.budgetNow > Money{} && isAtLeast(over, percent, line.budgetNow));
    }

    void addLines() {
        for (std::size_t k = 0; k < figures_.lines.size(); ++k) {
            const LineFigures& line = figures_.lines[k];
            if (line.beyondBudget() <= Money{} ||
                !isOverBy(line, levels_.lineOverWatchPercent, levels_.lineOverWatchMoney)) {
                continue;
            }
            const bool act = isOverBy(line, levels_.lineOverActPercent, levels_.lineOverActMoney);
            const Percent percent = act ? levels_.lineOverActPercent : levels_.lineOverWatchPercent;
            const Money money = act ? levels_.lineOverActMoney : levels_.lineOverWatchMoney;
            const ScopeLine& scope = figures_.scope.lines[k];
            Concern& concern = add(
                ConcernKind::LineOver, act ? Level::Act : Level::Watch, scope.name,
                "forecast over budget now by " + percent.toString() + " % or " + levelText(money),
                Page::ScopeOfWork);
            concern.money = line.beyondBudget();
            if (scope.kind == LineKind::Item) {
                concern.recordKind = model::Kind::Item;
                concern.record = scope.item.raw();
            } else if (scope.kind == LineKind::Option) {
                concern.recordKind = model::Kind::Option;
                concern.record = scope.option.raw();
            } else if (scope.kind == LineKind::Contract) {
                concern.recordKind = model::Kind::Contract;
                concern.record = scope.contract.raw();
            }
        }
    }

    void addJob() {
        const Money first = figures_.scope.baselineTotal;
        const Money forecast = figures_.job.forecast;
        if (forecast > first && first > Money{}) {
            const bool act = forecast > first + figures_.contingency.total;
            add(ConcernKind::JobOver, act ? Level::Act : Level::Watch, "The whole job",
                act ? "forecast over the first budget and its contingency"
                    : "forecast over the first budget",
                Page::ThisWeek)
                .money = forecast - first;
        }
        const Contingency& contingency = figures_.contingency;
        if (contingency.used <= Money{}) {
            return;
        }
        const Percent done = figures_.job.shown;
        const auto isUsedBeyond = [&](Percent percent) {
            return Wide{contingency.used.minor()} * 10'000 >
                   Wide{contingency.total.minor()} * percent.basisPoints();
        };
        if (isUsedBeyond(done)) {
            const bool act = isUsedBeyond(done + levels_.contingencyActPoints);
            add(ConcernKind::ContingencyRunsDown, act ? Level::Act : Level::Watch, "Contingency",
                act ? "share used is more than " + levels_.contingencyActPoints.toString() +
                          " points beyond the share of work done"
                    : "share used is beyond the share of work done",
                Page::ThisWeek)
                .money = contingency.left;
        }
    }

    void addContracts() {
        for (const ContractFigures& contract : figures_.contracts) {
            const model::Contract& row = rows_.contracts[contract.contract];
            if (contract.paidAhead > Money{}) {
                const bool act = contract.paidAheadPoints > levels_.paidAheadActPoints ||
                                 contract.paidAhead > levels_.paidAheadActMoney;
                addAbout(row, ConcernKind::PaidAhead, act ? Level::Act : Level::Watch, row.name,
                         act ? "paid ahead of work seen by more than " +
                                   levels_.paidAheadActPoints.toString() + " points or " +
                                   levelText(levels_.paidAheadActMoney)
                             : std::string("paid ahead of work seen"),
                         Page::ContractsAndOrders)
                    .money = contract.paidAhead;
            }
            if (contract.beyond > Money{}) {
                addAbout(row, ConcernKind::BeyondContract, Level::Act, row.name,
                         contract.isSigned ? "billed beyond its sum and signed changes"
                                           : "billed, and not signed",
                         Page::ContractsAndOrders)
                    .money = contract.beyond;
            }
            if (row.acceptedOn && !row.waiverReceivedOn && row.type != model::ContractKind::Order) {
                addWaiver(row, contract.contract);
            }
        }
    }

    void addWaiver(const model::Contract& row, std::size_t contract) {
        const int since = today_ - *row.acceptedOn;
        const bool isPaymentDue = std::any_of(
            figures_.spending.begin(), figures_.spending.end(), [&](const SpendRead& read) {
                const auto& due = rows_.spends[read.spend].dueOn;
                return read.contract == contract && read.openAmount > Money{} && due &&
                       *due <= today_;
            });
        if (since < levels_.paperDays && !isPaymentDue) {
            return;
        }
        addAbout(row, ConcernKind::WaiverMissing, isPaymentDue ? Level::Act : Level::Watch,
                 row.name,
                 isPaymentDue ? std::string("final waiver missing while a payment is due")
                              : "final waiver missing for " + days(levels_.paperDays) + " or more",
                 Page::Closing)
            .days = since;
    }

    void addChanges() {
        for (const model::Change& change : rows_.changes) {
            if (change.signedOn || change.refusedOn) {
                continue;
            }
            const bool begun = isBegun(change);
            const int open = change.askedOn ? today_ - *change.askedOn : 0;
            if (!begun && open <= levels_.unsignedChangeDays) {
                continue;
            }
            Concern& concern = addAbout(
                change, ConcernKind::UnsignedChange, begun ? Level::Act : Level::Watch, change.name,
                begun ? std::string("work begun on a change that is not signed")
                      : "change not signed after " + days(levels_.unsignedChangeDays),
                Page::ContractsAndOrders);
            concern.money = changeAmount(change);
            concern.days = open;
        }
    }

    // Some item of it shows more than on the day the change was asked for.
    bool isBegun(const model::Change& change) const {
        std::vector<model::Id<model::Kind::Item>> named = change.items;
        for (const model::ItemAmount& part : change.split) {
            named.push_back(part.item);
        }
        return std::any_of(named.begin(), named.end(), [&](const auto& item) {
            const auto k = items_.of(item);
            const Percent before =
                k && change.askedOn ? marks_.shownOn(*k, *change.askedOn) : Percent{};
            return k && marks_.shown(*k) > before;
        });
    }

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
                         "comes after its planned start", Page::Schedule)
                    .days = *comes - *item.plannedStartOn;
            }
            if (!due[k] || *due[k] - today_ > levels_.orderDays) {
                continue;
            }
            const bool late = *due[k] < today_;
            const std::string check =
                levels_.orderCheckDays > 0
                    ? ", " + days(levels_.orderCheckDays) + " to look it over in it"
                    : "";
            addAbout(item, ConcernKind::Order, late ? Level::Act : Level::Watch, scope.name,
                     (late ? std::string("the day to order by has passed")
                           : "to be ordered within " + days(levels_.orderDays)) +
                         check,
                     Page::Schedule)
                .days = late ? today_ - *due[k] : *due[k] - today_;
        }
    }

    // One concern for all rows without an amount, and one for all papers not seen: the list by
    // name is missingPapersOf.
    void addPapers() {
        std::size_t unfinished = 0;
        std::size_t unseen = 0;
        Money unseenSum;
        for (const model::Spend& spend : rows_.spends) {
            const bool isOld = spend.spentOn && today_ - *spend.spentOn >= levels_.paperDays;
            unfinished += spend.amount ? 0 : 1;
            if (isOld && isPaperUnseen(spend)) {
                ++unseen;
                unseenSum += *spend.amount;
            }
        }
        if (unfinished > 0) {
            add(ConcernKind::Unfinished, Level::Watch,
                std::to_string(unfinished) + (unfinished == 1 ? " spend" : " spends"),
                "without an amount, so counted nowhere", Page::Spend);
        }
        if (unseen > 0) {
            add(ConcernKind::PaperNotSeen, Level::Watch,
                std::to_string(unseen) + (unseen == 1 ? " paper" : " papers"),
                "bill or receipt not seen for " + days(levels_.paperDays) + " or more", Page::Spend)
                .money = unseenSum;
        }
    }

    void addInsurance() {
        std::unordered_set<model::Id<model::Kind::Crew>> working;
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            if (figures_.scope.lines[k].counting == Counting::Counts &&
                figures_.lines[k].shown < Percent::whole()) {
                working.insert(figures_.scope.lines[k].crew);
            }
        }
        for (const model::Crew& crew : rows_.crews) {
            const auto until = insuredUntil(rows_, crew);
            if (!until || !working.contains(crew.id) || *until - today_ > levels_.insuranceDays) {
                continue;
            }
            const bool lapsed = *until < today_;
            addAbout(crew, ConcernKind::Insurance, lapsed ? Level::Act : Level::Watch, crew.name,
                     lapsed ? std::string("insurance has lapsed and work is left")
                            : "insurance lapses within " + days(levels_.insuranceDays),
                     Page::ContractsAndOrders)
                .days = lapsed ? today_ - *until : *until - today_;
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
                     "not marked for " +
                         days(act ? levels_.notMarkedActDays : levels_.notMarkedWatchDays) +
                         " or more while work should go on",
                     Page::ScopeOfWork)
                .days = open;
        }
    }

    void addOutsideBaseline() {
        if (!figures_.scope.baseline) {
            return;
        }
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            const ScopeLine& scope = figures_.scope.lines[k];
            if (scope.counting == Counting::Counts && scope.baseline == Money{} &&
                scope.changes.empty() && scope.pricing.line > Money{}) {
                addAbout(rows_.items[k], ConcernKind::OutsideBaseline, Level::Watch, scope.name,
                         std::string(scope.inBaseline ? "priced" : "added") +
                             " after the baseline, and no signed change holds its cost",
                         Page::ScopeOfWork)
                    .money = scope.pricing.line;
            }
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
            add(ConcernKind::FinishSlips, Level::Act, "The finish",
                "it leaves less than " + days(levels_.termEndDays) + " to the term end",
                Page::Schedule)
                .days = late;
        } else if (late > 0 && late >= levels_.finishWatchDays) {
            const bool act = late >= levels_.finishActDays;
            add(ConcernKind::FinishSlips, act ? Level::Act : Level::Watch, "The finish",
                "it slips by " +
                    std::to_string(act ? levels_.finishActDays : levels_.finishWatchDays) +
                    " working days or more",
                Page::Schedule)
                .days = late;
        }
    }

    void addNoShows() {
        for (const NotThere& one : outlook_.notThere) {
            const bool act = one.inARow >= levels_.noShowActDays;
            addAbout(rows_.crews[one.crew], ConcernKind::NoShow, act ? Level::Act : Level::Watch,
                     rows_.crews[one.crew].name,
                     act ? "did not come for " + days(levels_.noShowActDays) + " in a row"
                         : std::string("did not come though work was planned"),
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
            Concern& concern =
                add(ConcernKind::Stacked, Level::Watch,
                    isCrew ? rows_.crews[*one.crew].name : rows_.spaces[*one.space].name,
                    isCrew ? "the plan has it in " + std::to_string(one.wanted) +
                                 " places at once and it can be in " + std::to_string(one.there)
                           : "the plan has " + std::to_string(one.wanted) +
                                 " crews in it at once and it takes one",
                    Page::Schedule);
            concern.days = one.to - one.from + 1;
            concern.recordKind = isCrew ? model::Kind::Crew : model::Kind::Space;
            concern.record =
                isCrew ? rows_.crews[*one.crew].id.raw() : rows_.spaces[*one.space].id.raw();
        }
    }

    void addCash() {
        if (!outlook_.lowestCash) {
            return;
        }
        const Money lowest = *outlook_.lowestCash;
        if (lowest >= Money{} && lowest >= outlook_.billsAhead) {
            return;
        }
        const bool act = lowest < Money{};
        Concern& concern =
            add(ConcernKind::CashLow, act ? Level::Act : Level::Watch, "Cash",
                act ? std::string("cash runs under zero")
                    : "cash runs under the bills of the next " + days(levels_.cashDays),
                Page::Draws);
        concern.money = lowest;
        if (outlook_.lowestCashOn) {
            concern.days = *outlook_.lowestCashOn - today_;
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const Plan& plan_;
    Date today_;
    const Outlook& outlook_;
    ConcernLevels levels_;
    Positions<model::Item> items_;
    Marks marks_;
    Orders orders_;
    std::vector<Concern> out_;
};

}  // namespace

std::string_view wordsFor(ConcernKind kind) {
    switch (kind) {
        case ConcernKind::LineOver:
            return "over";
        case ConcernKind::JobOver:
            return "whole job over";
        case ConcernKind::ContingencyRunsDown:
            return "contingency runs down";
        case ConcernKind::PaidAhead:
            return "paid ahead";
        case ConcernKind::BeyondContract:
            return "beyond contract";
        case ConcernKind::UnsignedChange:
            return "unsigned change";
        case ConcernKind::Order:
            return "order";
        case ConcernKind::ArrivesLate:
            return "arrives late";
        case ConcernKind::Unfinished:
            return "no amount";
        case ConcernKind::PaperNotSeen:
            return "paper not seen";
        case ConcernKind::WaiverMissing:
            return "waiver missing";
        case ConcernKind::Insurance:
            return "insurance";
        case ConcernKind::NotMarked:
            return "not marked";
        case ConcernKind::OutsideBaseline:
            return "outside the baseline";
        case ConcernKind::FinishSlips:
            return "finish slips";
        case ConcernKind::NoShow:
            return "did not come";
        case ConcernKind::Stacked:
            return "in two places at once";
        case ConcernKind::CashLow:
            return "cash low";
    }
    return "";
}

std::string_view wordsFor(Page page) {
    switch (page) {
        case Page::ThisWeek:
            return "This week";
        case Page::ScopeOfWork:
            return "Scope of work";
        case Page::Schedule:
            return "Schedule";
        case Page::ContractsAndOrders:
            return "Contracts and orders";
        case Page::Spend:
            return "Spend";
        case Page::Closing:
            return "Closing";
        case Page::Draws:
            return "Draws";
    }
    return "";
}

std::vector<Concern> concernsOf(const model::JobRows& rows, const JobFigures& figures,
                                const Plan& plan, Date today, const Outlook& outlook) {
    return Collector(rows, figures, plan, today, outlook).collect();
}

}  // namespace ledgerboard::compute
