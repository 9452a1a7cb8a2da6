#include "core/compute/payments_ahead.h"

#include <algorithm>
#include <numeric>

#include "core/compute/budget_parts.h"
#include "core/compute/planned_value.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::Percent;

constexpr int kFriday = 4;
constexpr int kDaysPerWeek = 7;
constexpr int kFallbackDays = 28;
constexpr int kReleaseWorkDays = 5;

Date fridayOnOrAfter(Date day) {
    return day + (kFriday - day.weekday() + kDaysPerWeek) % kDaysPerWeek;
}

// A share of a sum to be paid on a day.
struct Portion {
    Date on;
    std::int64_t weight = 0;
};

// What is owed to one contract, or to everybody without one.
struct Account {
    std::string name;
    Money left;  // still to leave, all in all
    Money toGo;  // of it, what is not billed yet
    Money held;  // retainage of what is billed
    std::vector<CashMove> ahead;
};

// Lays the payments out. Lives for one call of workPaymentsOf.
class Payer {
  public:
    Payer(const model::JobRows& rows, const JobFigures& figures,
          const std::vector<std::optional<WorkSpan>>& ahead, std::optional<Date> finishOn,
          Date today)
        : rows_(rows),
          figures_(figures),
          ahead_(ahead),
          calendar_(rows.job),
          today_(today),
          finishOn_(std::max(today + 1, finishOn.value_or(today + kFallbackDays))),
          contracts_(rows.contracts),
          items_(itemsOfContracts(rows, figures.scope)),
          accounts_(rows.contracts.size() + 1) {
        for (std::size_t k = 0; k < rows.contracts.size(); ++k) {
            accounts_[k].name = rows.contracts[k].name;
        }
    }

    std::vector<CashMove> pay() {
        addSpending();
        for (std::size_t k = 0; k + 1 < accounts_.size(); ++k) {
            addContract(k);
        }
        addLoose();
        for (Account& account : accounts_) {
            settle(account);
            out_.insert(out_.end(), account.ahead.begin(), account.ahead.end());
        }
        return std::move(out_);
    }

  private:
    void addSpending() {
        for (const SpendRead& read : figures_.spending) {
            const model::Spend& spend = rows_.spends[read.spend];
            Account& account = accounts_[read.contract.value_or(rows_.contracts.size())];
            account.left += read.effect.billed - read.effect.paid;
            account.held += read.effect.held;
            const std::string name = read.contract ? account.name : payeeOf(spend);
            if (read.effect.paid != Money{}) {
                out_.push_back({spend.spentOn.value_or(today_), CashKind::Work, -read.effect.paid,
                                name, false});
            }
            if (read.openAmount > Money{}) {
                const Date due =
                    spend.dueOn
                        ? *spend.dueOn
                        : fridayOnOrAfter(std::max(today_ + 1, spend.spentOn.value_or(today_)));
                add(account, due, read.openAmount, name);
            }
        }
    }

    std::string payeeOf(const model::Spend& spend) const {
        if (!spend.payee.empty()) {
            return spend.payee;
        }
        for (const model::Crew& crew : rows_.crews) {
            if (!spend.crew.isNil() && crew.id == spend.crew) {
                return crew.name;
            }
        }
        return "work";
    }

    void add(Account& account, Date on, Money amount, const std::string& name,
             CashKind kind = CashKind::Work) {
        if (amount != Money{}) {
            account.ahead.push_back({std::max(on, today_ + 1), kind, -amount, name, true});
        }
    }

    void addSplit(Account& account, Money amount, const std::vector<Portion>& portions,
                  const std::string& name) {
        std::vector<std::int64_t> weights;
        weights.reserve(portions.size());
        for (const Portion& portion : portions) {
            weights.push_back(portion.weight);
        }
        const std::vector<Money> parts = allocate(amount, weights);
        for (std::size_t k = 0; k < parts.size(); ++k) {
            add(account, portions[k].on, parts[k], name);
        }
    }

    // The Fridays of a span, each weighing as many working days as it pays.
    std::vector<Portion> fridaysOf(const WorkSpan& span) const {
        std::vector<Portion> out;
        for (Date day = span.first; day <= span.last; day = day + 1) {
            if (!calendar_.isWorkDay(day)) {
                continue;
            }
            const Date friday = fridayOnOrAfter(day);
            if (out.empty() || out.back().on != friday) {
                out.push_back({friday, 0});
            }
            ++out.back().weight;
        }
        if (out.empty()) {
            out.push_back({fridayOnOrAfter(span.last), 1});
        }
        return out;
    }

    // The last planned day of a contract's items; where they tell nothing its agreed finish, else
    // the forecast one.
    Date lastDayOfContract(std::size_t contract) const {
        std::optional<Date> last;
        for (const std::size_t item : items_[contract]) {
            if (ahead_[item] && (!last || *last < ahead_[item]->last)) {
                last = ahead_[item]->last;
            }
        }
        const Date otherwise = items_[contract].empty()
                                   ? rows_.contracts[contract].finishOn.value_or(finishOn_)
                                   : today_;
        return std::max(today_, last.value_or(otherwise));
    }

    bool isCommitted(std::size_t contract) const { return figures_.contracts[contract].isSigned; }

    // The to-go of the lines under a contract.
    Money toGoOf(std::size_t contract) const {
        Money sum;
        for (std::size_t k = 0; k < figures_.lines.size(); ++k) {
            if (contracts_.of(figures_.scope.lines[k].contract) == contract) {
                sum += figures_.lines[k].toGo;
            }
        }
        return sum;
    }

    void addContract(std::size_t k) {
        Account& account = accounts_[k];
        const model::Contract& contract = rows_.contracts[k];
        if (isCommitted(k)) {
            account.toGo = toGoOf(k);
            account.left += account.toGo;
        }
        const Money retained = retainageAhead(k);
        Money toPay = account.toGo - retained;
        const Money billed = figures_.contracts[k].billed;
        const Money deposit =
            std::min(toPay, std::max(Money{}, contract.deposit.value_or(Money{}) - billed));
        if (deposit > Money{}) {
            add(account, today_ + 1, deposit, account.name + ", deposit");
            toPay -= deposit;
        }
        if (toPay != Money{}) {
            addSplit(account, toPay, portionsOf(k, deposit), account.name);
        }
        const Date release = calendar_.finishOf(lastDayOfContract(k) + 1, kReleaseWorkDays);
        add(account, release, account.held + retained, account.name + ", retainage",
            CashKind::Retainage);
    }

    // What will be held of what is still to be billed.
    Money retainageAhead(std::size_t k) const {
        const model::Contract& contract = rows_.contracts[k];
        if (!contract.retainage || contract.type == model::ContractKind::Order ||
            (contract.acceptedOn && contract.waiverReceivedOn)) {
            return Money{};
        }
        const Money toGo = accounts_[k].toGo;
        const Percent until = contract.retainageUntil.value_or(Percent::whole());
        const Money most = share(*contract.retainage, share(until, figures_.contracts[k].now));
        const Money room = std::max(Money{}, most - accounts_[k].held);
        return std::max(Money{}, std::min(share(*contract.retainage, toGo), room));
    }

    std::vector<Portion> portionsOf(std::size_t k, Money depositAhead) const {
        const model::Contract& contract = rows_.contracts[k];
        if (contract.type == model::ContractKind::Order) {
            const Date on = contract.finishOn.value_or(lastDayOfContract(k));
            return {{on, 1}};
        }
        std::vector<Portion> steps = stepsOf(k, depositAhead);
        if (!steps.empty()) {
            return steps;
        }
        std::vector<Portion> out;
        for (const std::size_t item : items_[k]) {
            if (ahead_[item]) {
                const std::int64_t toGo =
                    std::max<std::int64_t>(0, figures_.lines[item].toGo.minor());
                const auto fridays = fridaysOf(*ahead_[item]);
                const std::int64_t days = std::accumulate(
                    fridays.begin(), fridays.end(), std::int64_t{0},
                    [](std::int64_t sum, const Portion& one) { return sum + one.weight; });
                for (const Portion& friday : fridays) {
                    out.push_back({friday.on, toGo / days * friday.weight});
                }
            }
        }
        if (out.empty() && items_[k].empty()) {
            const Date first = std::max(today_ + 1, contract.startOn.value_or(today_ + 1));
            return fridaysOf({first, std::max(first, lastDayOfContract(k))});
        }
        if (out.empty()) {
            out.push_back({fridayOnOrAfter(today_ + 1), 1});
        }
        return out;
    }

    // Each payment step not yet billed, on the Friday after its work is planned to be there. Empty
    // where the contract has no steps, or they are all billed.
    std::vector<Portion> stepsOf(std::size_t k, Money depositAhead) const {
        const model::Contract& contract = rows_.contracts[k];
        std::vector<Portion> out;
        const ContractFigures& figures = figures_.contracts[k];
        const Money before = figures.billed + depositAhead;
        Percent reached;
        Money through;
        const Date last = lastDayOfContract(k);
        Date day = today_ + 1;
        for (const model::NamedShare& step : contract.paymentSteps) {
            reached = std::min(Percent::whole(), reached + step.percent);
            const Money upTo = share(reached, figures.now);
            const Money due = upTo - std::max(before, through);
            through = upTo;
            if (due <= Money{}) {
                continue;
            }
            while (day < last && seenBy(figures_, items_[k], ahead_, day, calendar_) < reached) {
                day = day + 1;
            }
            out.push_back({fridayOnOrAfter(day), due.minor()});
        }
        return out;
    }

    // Whatever is under no signed contract.
    void addLoose() {
        Account& account = accounts_.back();
        std::optional<Date> last;
        for (std::size_t k = 0; k < figures_.lines.size(); ++k) {
            const ScopeLine& scope = figures_.scope.lines[k];
            const auto contract = contracts_.of(scope.contract);
            if (contract && isCommitted(*contract)) {
                continue;
            }
            const Money toGo = figures_.lines[k].toGo;
            account.left += toGo;
            if (toGo == Money{}) {
                continue;
            }
            const bool isItem = scope.kind == LineKind::Item;
            if (isItem && ahead_[k] && rows_.items[k].boughtGoods) {
                add(account, ahead_[k]->first, toGo, scope.name);
            } else {
                const WorkSpan span =
                    isItem && ahead_[k] ? *ahead_[k] : WorkSpan{today_ + 1, finishOn_};
                addSplit(account, toGo, fridaysOf(span), scope.name);
            }
        }
        for (const auto& span : ahead_) {
            last = span && (!last || *last < span->last) ? span->last : last;
        }
        add(account, calendar_.finishOf(last.value_or(finishOn_) + 1, kReleaseWorkDays),
            account.held, "retainage", CashKind::Retainage);
    }

    // Makes what is laid out come to what is left to leave: what was paid ahead of bills is taken
    // off the next payments; what no bill explains is paid last.
    void settle(Account& account) {
        std::stable_sort(account.ahead.begin(), account.ahead.end(),
                         [](const CashMove& a, const CashMove& b) { return a.on < b.on; });
        Money surplus = -account.left;
        for (const CashMove& move : account.ahead) {
            surplus -= move.amount;
        }
        for (CashMove& move : account.ahead) {
            const Money taken = std::min(std::max(Money{}, surplus), -move.amount);
            if (taken > Money{}) {
                move.amount += taken;
                surplus -= taken;
            }
        }
        std::erase_if(account.ahead, [](const CashMove& move) { return move.amount == Money{}; });
        if (surplus != Money{}) {
            const Date on =
                account.ahead.empty() ? fridayOnOrAfter(today_ + 1) : account.ahead.back().on;
            const std::string name = account.name.empty() ? "work" : account.name;
            account.ahead.push_back({on, CashKind::Work, surplus,
                                     name + (surplus > Money{} ? ", paid beyond the forecast" : ""),
                                     true});
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const std::vector<std::optional<WorkSpan>>& ahead_;
    WorkCalendar calendar_;
    Date today_;
    Date finishOn_;
    Positions<model::Contract> contracts_;
    std::vector<std::vector<std::size_t>> items_;
    std::vector<Account> accounts_;
    std::vector<CashMove> out_;
};

}  // namespace

std::vector<CashMove> workPaymentsOf(const model::JobRows& rows, const JobFigures& figures,
                                     const std::vector<std::optional<WorkSpan>>& ahead,
                                     std::optional<Date> finishOn, Date today) {
    return Payer(rows, figures, ahead, finishOn, today).pay();
}

}  // namespace ledgerboard::compute
