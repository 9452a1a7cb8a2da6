#include <algorithm>
#include <unordered_set>

#include "core/compute/budget_parts.h"
#include "core/compute/contract_terms.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Percent;

// now x seen, less the deposit as far as work is still unseen, taken from what was paid.
void setPaidAhead(ContractFigures& figures, const model::Contract& contract, Money seenValue) {
    if (contract.type == model::ContractKind::Order || figures.paid <= Money{}) {
        return;
    }
    const Money unseen = std::max(Money{}, figures.now - seenValue);
    const Money deposit = std::min(std::max(Money{}, contract.deposit.value_or(Money{})), unseen);
    figures.paidAhead = std::max(Money{}, figures.paid - seenValue - deposit);
    if (figures.paidAhead == Money{}) {
        return;
    }
    figures.paidAheadPoints =
        figures.now > Money{}
            ? Percent::fromBasisPoints(model::divideRounded(
                  model::multiplyWide(figures.paidAhead.minor(), 10'000), figures.now.minor()))
            : Percent::whole();
}

// What may have been paid on the work seen: less its retainage, of which no more is held once the
// percent is done until which anything is.
Money allowedOnSeen(const ContractFigures& figures, const model::Contract& contract,
                    const WeightedPercent& seen) {
    if (!contract.retainage || (contract.acceptedOn && contract.waiverReceivedOn)) {
        return figures.seenValue;
    }
    if (contract.retainageUntil && seen.value() > *contract.retainageUntil) {
        return figures.seenValue -
               share(*contract.retainage, share(*contract.retainageUntil, figures.now));
    }
    return seen.of(figures.now, Percent::whole() - *contract.retainage);
}

void setSeen(ContractFigures& figures, const model::Contract& contract, const ScopeLines& scope,
             const Marks& marks, const std::vector<std::size_t>& items,
             const std::vector<bool>& isOnSite) {
    WeightedPercent shown;
    WeightedPercent seen;
    WeightedPercent seenOrOnSite;
    for (const std::size_t item : items) {
        const Money budget = scope.lines[item].budgetNow();
        shown.add(budget, marks.shown(item));
        seen.add(budget, marks.seen(item));
        seenOrOnSite.add(budget, isOnSite[item] ? Percent::whole() : marks.seen(item));
    }
    figures.shown = shown.value();
    figures.seen = seen.value();
    figures.seenValue = seen.of(figures.now);
    const Money allowed = allowedOnSeen(figures, contract, seen) - figures.paid;
    figures.payableOnceCleared = std::max(Money{}, std::min(figures.owed, allowed));
    figures.payableToday = figures.barredBy.empty() ? figures.payableOnceCleared : Money{};
    setPaidAhead(figures, contract, seenOrOnSite.of(figures.now));
}

// Bought goods that have arrived, by item.
std::vector<bool> goodsOnSite(const model::JobRows& rows) {
    std::unordered_set<model::Id<model::Kind::Item>> arrived;
    for (const model::Delivery& delivery : rows.deliveries) {
        if (delivery.arrivedOn) {
            arrived.insert(delivery.item);
        }
    }
    std::vector<bool> out;
    for (const model::Item& item : rows.items) {
        out.push_back(item.boughtGoods && arrived.contains(item.id));
    }
    return out;
}

}  // namespace

std::vector<std::vector<std::size_t>> itemsOfContracts(const model::JobRows& rows,
                                                       const ScopeLines& scope) {
    const Positions<model::Contract> contracts(rows.contracts);
    std::vector<std::vector<std::size_t>> out(rows.contracts.size());
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        const auto contract = contracts.of(rows.items[k].contract);
        if (contract && scope.lines[k].counting == Counting::Counts) {
            out[*contract].push_back(k);
        }
    }
    return out;
}

std::vector<ContractFigures> contractFiguresOf(
    const model::JobRows& rows, const ScopeLines& scope, const Marks& marks,
    const std::vector<SpendRead>& spending,
    const std::vector<std::vector<std::size_t>>& itemsOfContract, model::Date today) {
    const Positions<model::Contract> contracts(rows.contracts);
    std::vector<ContractFigures> out(rows.contracts.size());
    for (std::size_t k = 0; k < out.size(); ++k) {
        out[k].contract = k;
        out[k].isSigned = rows.contracts[k].signedOn.has_value();
        out[k].sum = out[k].isSigned ? rows.contracts[k].sum.value_or(Money{}) : Money{};
    }
    for (const model::Change& change : rows.changes) {
        const auto contract = contracts.of(change.contract);
        if (contract && out[*contract].isSigned && change.signedOn) {
            out[*contract].signedChanges += changeAmount(change);
        }
    }
    for (const SpendRead& read : spending) {
        if (read.contract) {
            ContractFigures& figures = out[*read.contract];
            figures.billed += read.effect.billed;
            figures.paid += read.effect.paid;
            figures.held += read.effect.held;
        }
    }
    const std::vector<bool> isOnSite = goodsOnSite(rows);
    for (std::size_t k = 0; k < out.size(); ++k) {
        ContractFigures& figures = out[k];
        figures.now = figures.sum + figures.signedChanges;
        figures.owed = figures.billed - figures.held - figures.paid;
        figures.beyond = std::max(Money{}, figures.billed - figures.now);
        figures.barredBy = barredBy(rows, rows.contracts[k], today);
        figures.depositBeyondLimit = depositBeyondLimit(rows.job, rows.contracts[k], figures.now);
        setSeen(figures, rows.contracts[k], scope, marks, itemsOfContract[k], isOnSite);
    }
    return out;
}

}  // namespace ledgerboard::compute
