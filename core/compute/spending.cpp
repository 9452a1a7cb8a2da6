#include "core/compute/spending.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

#include "core/compute/positions.h"
#include "core/compute/progress.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Spend;
using model::SpendKind;

SpendEffect effectOf(const Spend& spend) {
    const Money amount = *spend.amount;
    switch (spend.type) {
        case SpendKind::Invoice:
            return {amount, Money{}, Money{}};
        case SpendKind::Payment:
            return {Money{}, amount, Money{}};
        case SpendKind::Receipt:
        case SpendKind::Fee:
            return {amount, amount, Money{}};
        case SpendKind::Refund:
            return {-amount, -amount, Money{}};
        case SpendKind::Unset:
            break;
    }
    return {};
}

// Reads the spend rows. Lives for one call of spendingOf.
class Reader {
  public:
    Reader(const model::JobRows& rows, const ScopeLines& scope)
        : rows_(rows),
          scope_(scope),
          items_(rows.items),
          contracts_(rows.contracts),
          spends_(rows.spends),
          itemsOfContract_(rows.contracts.size()),
          readOf_(rows.spends.size()) {
        for (std::size_t k = 0; k < rows.items.size(); ++k) {
            const auto contract = contracts_.of(rows.items[k].contract);
            if (contract && scope.lines[k].counting == Counting::Counts) {
                itemsOfContract_[*contract].push_back(k);
            }
        }
        for (std::size_t k = 0; k < rows.contracts.size(); ++k) {
            contractsOfCrew_[rows.contracts[k].crew].push_back(k);
        }
    }

    std::vector<SpendRead> read() {
        // What pays an invoice follows it, so invoices are read first.
        for (const bool paying : {false, true}) {
            for (std::size_t k = 0; k < rows_.spends.size(); ++k) {
                const Spend& spend = rows_.spends[k];
                if (counts(spend) && spends_.of(spend.pays).has_value() == paying) {
                    readOf_[k] = readOne(k);
                }
            }
        }
        retain();
        settleInvoices();
        std::vector<SpendRead> out;
        for (auto& read : readOf_) {
            if (read) {
                out.push_back(std::move(*read));
            }
        }
        return out;
    }

  private:
    static bool counts(const Spend& spend) {
        return spend.amount && spend.type != SpendKind::Unset;
    }

    SpendRead readOne(std::size_t k) {
        const Spend& spend = rows_.spends[k];
        SpendRead read;
        read.spend = k;
        read.contract = contractOf(spend);
        read.effect = effectOf(spend);
        if (spend.type == SpendKind::Invoice) {
            read.effect.held = heldOf(spend, read.contract);
            read.openAmount = *spend.amount - read.effect.held;
        }
        read.parts = partsOf(spend, read.contract);
        return read;
    }

    // Bills that do not say what was held of them: their contract's retainage says it.
    void retain() {
        std::vector<Money> depositLeft;
        for (const model::Contract& contract : rows_.contracts) {
            depositLeft.push_back(std::max(Money{}, contract.deposit.value_or(Money{})));
        }
        for (const std::size_t k : invoicesByDate()) {
            const Spend& spend = rows_.spends[k];
            SpendRead& read = *readOf_[k];
            if (!read.contract) {
                continue;
            }
            const model::Contract& contract = rows_.contracts[*read.contract];
            const Money ofDeposit = std::clamp(*spend.amount, Money{}, depositLeft[*read.contract]);
            depositLeft[*read.contract] -= ofDeposit;
            const bool isReleased = contract.acceptedOn && contract.waiverReceivedOn;
            if (spend.held || isReleased || !contract.retainage ||
                contract.type == model::ContractKind::Order ||
                isPastRetainage(*read.contract, spend.spentOn)) {
                continue;
            }
            read.effect.held = share(*contract.retainage, *spend.amount - ofDeposit);
            read.openAmount = *spend.amount - read.effect.held;
        }
    }

    bool isPastRetainage(std::size_t contract, std::optional<model::Date> on) {
        const auto until = rows_.contracts[contract].retainageUntil;
        if (!until) {
            return false;
        }
        if (!marks_) {
            marks_.emplace(rows_);
        }
        WeightedPercent seen;
        for (const std::size_t item : itemsOfContract_[contract]) {
            seen.add(scope_.lines[item].budgetNow(),
                     on ? marks_->seenOn(item, *on) : marks_->seen(item));
        }
        return seen.value() >= *until;
    }

    // Those that count, by date, then as they were entered.
    std::vector<std::size_t> invoicesByDate() const {
        std::vector<std::size_t> invoices;
        for (std::size_t k = 0; k < readOf_.size(); ++k) {
            if (readOf_[k] && rows_.spends[k].type == SpendKind::Invoice) {
                invoices.push_back(k);
            }
        }
        std::sort(invoices.begin(), invoices.end(), [&](std::size_t a, std::size_t b) {
            return std::make_tuple(rows_.spends[a].spentOn, rows_.spends[a].id) <
                   std::make_tuple(rows_.spends[b].spentOn, rows_.spends[b].id);
        });
        return invoices;
    }

    const std::optional<SpendRead>* paidInvoice(const Spend& spend) const {
        const auto k = spends_.of(spend.pays);
        return k && readOf_[*k] ? &readOf_[*k] : nullptr;
    }

    std::optional<std::size_t> contractOf(const Spend& spend) const {
        if (const auto named = contracts_.of(spend.contract)) {
            return named;
        }
        if (const auto* invoice = paidInvoice(spend)) {
            return (*invoice)->contract;
        }
        const bool billOrPayment =
            spend.type == SpendKind::Invoice || spend.type == SpendKind::Payment;
        if (const auto item = items_.of(spend.item)) {
            const auto contract = contracts_.of(rows_.items[*item].contract);
            const bool itsCrew =
                contract && !spend.crew.isNil() && spend.crew == rows_.contracts[*contract].crew;
            return contract && (itsCrew || (spend.crew.isNil() && billOrPayment)) ? contract
                                                                                  : std::nullopt;
        }
        const auto ofCrew = contractsOfCrew_.find(spend.crew);
        if (billOrPayment && spend.split.empty() && !spend.crew.isNil() &&
            ofCrew != contractsOfCrew_.end() && ofCrew->second.size() == 1) {
            return ofCrew->second.front();
        }
        return std::nullopt;
    }

    Money heldOf(const Spend& spend, std::optional<std::size_t> contract) const {
        if (!contract) {
            const auto item = items_.of(spend.item);
            const bool accepted = item && rows_.items[*item].acceptedOn;
            return accepted ? Money{} : spend.held.value_or(Money{});
        }
        const model::Contract& under = rows_.contracts[*contract];
        if (under.acceptedOn && under.waiverReceivedOn) {
            return Money{};
        }
        return spend.held.value_or(Money{});
    }

    std::vector<LineAmount> partsOf(const Spend& spend, std::optional<std::size_t> contract) const {
        std::vector<LineAmount> parts;
        Money left = *spend.amount;
        for (const model::ItemAmount& part : spend.split) {
            if (const auto item = items_.of(part.item)) {
                parts.push_back({*item, part.amount});
                left -= part.amount;
            }
        }
        if (left == Money{} && !parts.empty()) {
            return parts;
        }
        std::vector<std::size_t> lines;
        std::vector<Money> weights;
        if (const auto item = items_.of(spend.item)) {
            lines = {*item};
        } else if (const auto* invoice = paidInvoice(spend);
                   invoice && !(*invoice)->parts.empty()) {
            for (const LineAmount& part : (*invoice)->parts) {
                lines.push_back(part.line);
                weights.push_back(part.amount);
            }
        } else if (contract) {
            lines = itemsOfContract_[*contract];
        }
        if (lines.empty()) {
            lines = {contract ? scope_.contractLines[*contract] : scope_.lines.size() - 1};
        }
        if (lines.size() == 1) {
            parts.push_back({lines.front(), left});
            return parts;
        }
        if (weights.empty()) {
            for (const std::size_t line : lines) {
                weights.push_back(scope_.lines[line].budgetNow());
            }
        }
        const std::vector<Money> amounts = splitByBudget(left, weights);
        for (std::size_t k = 0; k < lines.size(); ++k) {
            parts.push_back({lines[k], amounts[k]});
        }
        return parts;
    }

    // Payments that name their invoice go against it; the others against the oldest open invoices
    // of the same contract, else the same crew, else the same payee.
    void settleInvoices() {
        std::unordered_map<std::string, Money> loose;
        for (std::size_t k = 0; k < readOf_.size(); ++k) {
            const Spend& spend = rows_.spends[k];
            if (readOf_[k] && spend.type == SpendKind::Payment) {
                const auto invoice = spends_.of(spend.pays);
                if (invoice && readOf_[*invoice]) {
                    readOf_[*invoice]->openAmount -= *spend.amount;
                } else {
                    loose[partyOf(k)] += *spend.amount;
                }
            }
        }
        for (const std::size_t k : invoicesByDate()) {
            Money& open = readOf_[k]->openAmount;
            const auto found = loose.find(partyOf(k));
            if (found != loose.end() && open > Money{}) {
                const Money taken = std::min(open, std::max(Money{}, found->second));
                open -= taken;
                found->second -= taken;
            }
            open = std::max(open, Money{});
        }
    }

    // Who is paid, as a key: of what is owed to one party, payments settle the oldest first.
    std::string partyOf(std::size_t spend) const {
        const auto& read = readOf_[spend];
        const Spend& row = rows_.spends[spend];
        if (read->contract) {
            return "contract " + rows_.contracts[*read->contract].id.raw().hex();
        }
        return row.crew.isNil() ? "payee " + folded(row.payee) : "crew " + row.crew.raw().hex();
    }

    const model::JobRows& rows_;
    const ScopeLines& scope_;
    Positions<model::Item> items_;
    Positions<model::Contract> contracts_;
    Positions<Spend> spends_;
    std::vector<std::vector<std::size_t>> itemsOfContract_;
    std::unordered_map<model::Id<model::Kind::Crew>, std::vector<std::size_t>> contractsOfCrew_;
    std::vector<std::optional<SpendRead>> readOf_;
    std::optional<Marks> marks_;  // made once something asks
};

}  // namespace

std::vector<SpendRead> spendingOf(const model::JobRows& rows, const ScopeLines& scope) {
    return Reader(rows, scope).read();
}

}  // namespace ledgerboard::compute
