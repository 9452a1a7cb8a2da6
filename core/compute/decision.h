// What does deciding an alternate do to the job: does it make a scope item, and, once a baseline is
// frozen, which difference is a change order?
//
// Source: project decisions. An option has items, or cost and days from which choosing makes one
// item. After a baseline the difference is a signed change: frozen money stays with the alternate
// (scope_lines.h), and what the chosen option costs beyond or below it is the change's amount.
#pragma once

#include <optional>
#include <vector>

#include "core/model/rows.h"

namespace ledgerboard::compute {

// The item that choosing the option makes, without an id: its space, name, cost as a lump sum and
// days. Empty where it has items, or neither cost nor days. Requires: positions in rows.
[[nodiscard]] std::optional<model::Item> itemMadeBy(const model::JobRows& rows,
                                                    std::size_t alternate, std::size_t option);

struct Difference {
    std::optional<model::Date> baselineOn;  // empty: nothing is frozen, and nothing to sign
    model::Money amount;  // what the alternate costs as decided, less its budget now
    // What the change is over: the chosen option's items, else those whose money is given back.
    std::vector<model::Id<model::Kind::Item>> items;
};

// Requires: rows as they are once the option is chosen, with the item that choosing made.
// Errors: OverflowError.
[[nodiscard]] Difference differenceOf(const model::JobRows& rows, std::size_t alternate);

}  // namespace ledgerboard::compute
