// What was billed, paid and held, and on which line?
//
// Billed = invoices + receipts + fees - refunds, tax included, before retainage. Paid = payments +
// receipts + fees - refunds. Held = retainage on bills not yet released. Owed = billed - held -
// paid; less than 0 where paid before billed.
// A row without an amount is unfinished and counts nowhere.
//
// Which line: the row's own split; what is not split goes to its item; else, for a payment, where
// the invoice it pays went; else over its contract's items by budget now, largest remainder; else
// its contract's own line; else the whole job. A row that names an item no longer in the job
// belongs to the whole job.
//
// Held of a bill: as entered on it (0 too). Where nothing was entered, the contract's retainage of
// what is billed beyond its deposit, as long as less of its work was seen on the bill's date than
// its "retainage until"; orders have none. Released once its contract is accepted and the final
// waiver is in; without a contract, once its item is accepted.
// Source: project decision.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/scope_lines.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// What one spend row adds.
struct SpendEffect {
    model::Money billed;
    model::Money paid;
    model::Money held;  // not yet released
};

struct LineAmount {
    std::size_t line = 0;  // in ScopeLines::lines
    model::Money amount;
};

struct SpendRead {
    std::size_t spend = 0;  // in rows.spends
    SpendEffect effect;
    std::vector<LineAmount> parts;        // of the row's amount, adding up to it
    std::optional<std::size_t> contract;  // in rows.contracts: the one it counts on
    model::Money openAmount;  // of an invoice: still to be paid on it, retainage left out
};

// Every row that counts, in the order of rows.spends. `contract` is the one named; else that of the
// invoice it pays; else the contract of its item where the row goes to that contract's crew, or is
// an invoice or payment that names no crew; else, for an invoice or payment that names a crew and
// no item, that crew's contract where it has just one. `openAmount` goes down by the payments that
// name the invoice, and by those that name none, oldest invoice first, of the same contract, else
// crew, else payee. A row whose kind is not said counts nowhere either. Errors: OverflowError.
[[nodiscard]] std::vector<SpendRead> spendingOf(const model::JobRows& rows,
                                                const ScopeLines& scope);

}  // namespace ledgerboard::compute
