#include <algorithm>
#include <unordered_set>

#include "core/compute/bank_lines.h"
#include "core/compute/concern_list.h"
#include "core/compute/positions.h"
#include "core/compute/progress.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::Percent;
using model::saying;
using model::Wide;

// A level as it is said in a rule: "750", "1000", "99.50".
model::Place levelPlace(Money level) {
    model::Place place = model::placed(level);
    if (place.text.ends_with(".00")) {
        place.text.erase(place.text.size() - 3);
        place.is = model::Place::Is::Money;
    }
    return place;
}

// part is at least `percent` of whole. Requires: whole > 0.
bool isAtLeast(Money part, Percent percent, Money whole) {
    return Wide{part.minor()} * 10'000 >= Wide{whole.minor()} * percent.basisPoints();
}

class MoneyCollector : private ConcernList {
  public:
    MoneyCollector(const ConcernsInput& in, std::vector<Concern>& out)
        : ConcernList(out),
          rows_(in.rows),
          figures_(in.figures),
          today_(in.today),
          outlook_(in.outlook),
          levels_(in.levels),
          items_(in.rows.items),
          marks_(in.rows) {}

    void collect() {
        addLines();
        addJob();
        addContracts();
        addChanges();
        addPapers();
        addBankLines();
        addInsurance();
        addOutsideBaseline();
        addCash();
    }

  private:
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
            Concern& concern =
                add(ConcernKind::LineOver, act ? Level::Act : Level::Watch,
                    model::asWritten(scope.name),
                    saying("forecast over budget now by %1 % or %2", percent, levelPlace(money)),
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

    bool isOverBy(const LineFigures& line, Percent percent, Money money) const {
        const Money over = line.beyondBudget();
        return over >= money ||
               (line.budgetNow > Money{} && isAtLeast(over, percent, line.budgetNow));
    }

    void addJob() {
        const Money first = figures_.scope.baselineTotal;
        const Money forecast = figures_.job.forecast;
        if (forecast > first && first > Money{}) {
            const bool act = forecast > first + figures_.contingency.total;
            add(ConcernKind::JobOver, act ? Level::Act : Level::Watch, saying("The whole job"),
                act ? saying("forecast over the first budget and its contingency")
                    : saying("forecast over the first budget"),
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
            add(ConcernKind::ContingencyRunsDown, act ? Level::Act : Level::Watch,
                saying("Contingency"),
                act ? saying("share used is more than %1 points beyond the share of work done",
                             levels_.contingencyActPoints)
                    : saying("share used is beyond the share of work done"),
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
                addAbout(
                    row, ConcernKind::PaidAhead, act ? Level::Act : Level::Watch, row.name,
                    act ? saying("paid ahead of work seen by more than %1 points or %2",
                                 levels_.paidAheadActPoints, levelPlace(levels_.paidAheadActMoney))
                        : saying("paid ahead of work seen"),
                    Page::ContractsAndOrders)
                    .money = contract.paidAhead;
            }
            if (contract.beyond > Money{}) {
                addAbout(row, ConcernKind::BeyondContract, Level::Act, row.name,
                         contract.isSigned ? saying("billed beyond its sum and signed changes")
                                           : saying("billed, and not signed"),
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
                 isPaymentDue
                     ? saying("final waiver missing while a payment is due")
                     : saying("final waiver missing for %1 or more", daysSaid(levels_.paperDays)),
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
                begun ? saying("work begun on a change that is not signed")
                      : saying("change not signed after %1", daysSaid(levels_.unsignedChangeDays)),
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
                unfinished == 1 ? saying("%1 spend", unfinished) : saying("%1 spends", unfinished),
                saying("without an amount, so counted nowhere"), Page::Spend);
        }
        if (unseen > 0) {
            add(ConcernKind::PaperNotSeen, Level::Watch,
                unseen == 1 ? saying("%1 paper", unseen) : saying("%1 papers", unseen),
                saying("bill or receipt not seen for %1 or more", daysSaid(levels_.paperDays)),
                Page::Spend)
                .money = unseenSum;
        }
    }

    void addBankLines() {
        const SettledLines settled(rows_);
        std::size_t waiting = 0;
        Money sum;
        for (const model::BankLine& line : rows_.bank_lines) {
            const Money amount = line.amount.value_or(Money{});
            if (settled.isWaiting(line)) {
                ++waiting;
                sum += amount < Money{} ? -amount : amount;
            }
        }
        if (waiting > 0) {
            add(ConcernKind::BankLineWaits, Level::Watch,
                waiting == 1 ? saying("%1 bank line", waiting) : saying("%1 bank lines", waiting),
                saying("nobody has said what for, so counted nowhere"), Page::Spend)
                .money = sum;
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
                     lapsed ? saying("insurance has lapsed and work is left")
                            : saying("insurance lapses within %1", daysSaid(levels_.insuranceDays)),
                     Page::ContractsAndOrders)
                .days = lapsed ? today_ - *until : *until - today_;
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
                         scope.inBaseline
                             ? saying("priced after the baseline, and no signed change holds its "
                                      "cost")
                             : saying("added after the baseline, and no signed change holds its "
                                      "cost"),
                         Page::ScopeOfWork)
                    .money = scope.pricing.line;
            }
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
        Concern& concern = add(
            ConcernKind::CashLow, act ? Level::Act : Level::Watch, saying("Cash"),
            act ? saying("cash runs under zero")
                : saying("cash runs under the bills of the next %1", daysSaid(levels_.cashDays)),
            Page::Draws);
        concern.money = lowest;
        if (outlook_.lowestCashOn) {
            concern.days = *outlook_.lowestCashOn - today_;
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    Date today_;
    const Outlook& outlook_;
    const ConcernLevels& levels_;
    Positions<model::Item> items_;
    Marks marks_;
};

}  // namespace

void addMoneyConcerns(const ConcernsInput& in, std::vector<Concern>& out) {
    MoneyCollector(in, out).collect();
}

}  // namespace ledgerboard::compute
